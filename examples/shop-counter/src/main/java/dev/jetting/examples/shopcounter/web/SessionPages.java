package dev.jetting.examples.shopcounter.web;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.bench.ReadWith;
import dev.jetting.examples.shopcounter.bench.SessionView;
import dev.jetting.examples.shopcounter.bench.StepView;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.store.Machines;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.RiderInput;
import dev.jetting.units.ThrottleOpening;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The tuning session: the next step, readings in, undo, another day. */
final class SessionPages {

  private static final String PATH = "/machines/{id}/session";

  private final Machines machines;
  private final Templates templates;

  SessionPages(Machines machines, Templates templates) {
    this.machines = machines;
    this.templates = templates;
  }

  void on(RoutesConfig routes) {
    routes.get(PATH, this::show);
    routes.get(PATH + "/words", this::words);
    routes.post(PATH + "/reading", this::read);
    routes.post(PATH + "/change", this::change);
    routes.post(PATH + "/checks", this::tickOff);
    routes.post(PATH + "/undo", this::undo);
    routes.post(PATH + "/day", this::anotherDay);
  }

  private void show(Context request) {
    Machine machine = machine(request);
    templates.show(
        request,
        "session.jte",
        Map.of("session", SessionView.of(machine, ReadWith.of(request.queryParam("with")))));
  }

  private void words(Context request) {
    request
        .contentType("text/plain; charset=utf-8")
        .result(SessionView.words(machine(request), ReadWith.of(request.queryParam("with"))));
  }

  private void read(Context request) {
    Machine machine = machine(request);
    Setup setup = machine.session().now().setup();
    ThrottleOpening throttle = RiderInput.throttle(said(request, "at"));
    Observation observation =
        new Observation(
            throttle,
            setup.engine().loadLine().at(throttle),
            SeenForm.evidence(request::formParam, setup.engine().need().at(throttle)));
    keep(
        request,
        machine,
        machine.session().observing(observation),
        Entry.Kind.READ,
        observation.text());
  }

  private void change(Context request) {
    Machine machine = machine(request);
    NextChange change =
        StepView.changeOf(SessionView.next(machine, ReadWith.of(request.formParam("with"))))
            .orElseThrow(
                () ->
                    Problem.of(
                        409, "Not now", "The session has moved on. Look at its next step again."));
    Setup setup = machine.session().now().setup().withSetting(change.setting());
    keep(request, machine, machine.session().changing(setup), Entry.Kind.CHANGED, change.what());
  }

  private void tickOff(Context request) {
    Machine machine = machine(request);
    Set<Check> looked = EnumSet.noneOf(Check.class);
    for (Check check : Check.values()) {
      if (request.formParams("check").contains(check.name().toLowerCase(Locale.ROOT))) {
        looked.add(check);
      }
    }
    if (looked.isEmpty()) {
      throw Problem.unusable("Nothing ticked. Tick what you looked at and found right.");
    }
    keep(
        request,
        machine,
        machine.session().checking(looked),
        Entry.Kind.CHECKED,
        looked.stream()
            .map(check -> check.name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .collect(Collectors.joining(", ")));
  }

  private void undo(Context request) {
    Machine machine = machine(request);
    keep(request, machine, machine.session().undone(), Entry.Kind.NOTED, "took the last back");
  }

  private void anotherDay(Context request) {
    Machine machine = machine(request);
    Setup now = machine.session().now().setup();
    Air air =
        Air.at(
            RiderInput.altitude(said(request, "height")),
            RiderInput.temperature(said(request, "temperature")),
            now.air().humidity());
    keep(
        request,
        machine,
        machine.session().changing(now.withAir(air)),
        Entry.Kind.NOTED,
        "another day: " + said(request, "temperature") + " at " + said(request, "height"));
  }

  private void keep(
      Context request, Machine machine, TuningSession session, Entry.Kind kind, String text) {
    machines.keep(Visitor.of(request), machine.id(), session, kind, text);
    request.redirect(
        "/machines/"
            + machine.id()
            + "/session?with="
            + ReadWith.of(request.formParam("with")).key(),
        HttpStatus.SEE_OTHER);
  }

  private static String said(Context request, String field) {
    return Objects.requireNonNullElse(request.formParam(field), "").strip();
  }

  private Machine machine(Context request) {
    return machines
        .find(Visitor.of(request), request.pathParam("id"))
        .orElseThrow(Problem::notFound);
  }
}
