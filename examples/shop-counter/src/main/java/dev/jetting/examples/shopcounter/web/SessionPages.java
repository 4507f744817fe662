package dev.jetting.examples.shopcounter.web;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.bench.ReadWith;
import dev.jetting.examples.shopcounter.bench.SessionView;
import dev.jetting.examples.shopcounter.bench.StepView;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.store.Machines;
import dev.jetting.examples.shopcounter.words.Typed;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

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
    SessionView session =
        SessionView.of(
            machine(request), ReadWith.of(request.queryParam("with")), Languages.of(request));
    templates.show(request, "session.jte", Map.of("session", session));
  }

  private void words(Context request) {
    Words words = Languages.of(request);
    ReadWith with = ReadWith.of(request.queryParam("with"));
    request
        .header("Content-Language", words.tag())
        .contentType("text/plain; charset=utf-8")
        .result(SessionView.text(machine(request), with, words));
  }

  private void read(Context request) {
    Machine machine = machine(request);
    Setup setup = machine.session().now().setup();
    ThrottleOpening throttle = RiderInput.throttle(said(request, "at"));
    Observation observation =
        new Observation(
            throttle,
            setup.engine().loadLine().at(throttle),
            SeenForm.evidence(
                field -> Typed.plain(Languages.of(request), said(request, field)),
                setup.engine().need().at(throttle)));
    keep(
        request,
        machine,
        machine.session().observing(observation),
        Entry.Kind.READ,
        observation.message());
  }

  private void change(Context request) {
    Machine machine = machine(request);
    NextChange change =
        StepView.changeOf(SessionView.next(machine, ReadWith.of(request.formParam("with"))))
            .orElseThrow(() -> Problem.notNow("session.moved-on"));
    Setup setup = machine.session().now().setup().withSetting(change.setting());
    keep(request, machine, machine.session().changing(setup), Entry.Kind.CHANGED, changed(change));
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
      throw Problem.unusable(Words.message("session.tick-one"));
    }
    keep(
        request,
        machine,
        machine.session().checking(looked),
        Entry.Kind.CHECKED,
        listed(
            looked.stream()
                .map(check -> Argument.words(Words.message("looked." + Words.key(check))))
                .toList()));
  }

  private static Message changed(NextChange change) {
    return listed(List.of(change.to()));
  }

  private static Message listed(List<Argument> values) {
    return Message.plain("{values}").with("values", Argument.items(values));
  }

  private void undo(Context request) {
    Machine machine = machine(request);
    keep(
        request,
        machine,
        machine.session().undone(),
        Entry.Kind.NOTED,
        Words.message("log.undone"));
  }

  private void anotherDay(Context request) {
    Machine machine = machine(request);
    Setup now = machine.session().now().setup();
    Words words = Languages.of(request);
    Air air =
        Air.at(
            RiderInput.altitude(Typed.large(words, said(request, "height"))),
            RiderInput.temperature(Typed.plain(words, said(request, "temperature"))),
            now.air().humidity());
    keep(
        request,
        machine,
        machine.session().changing(now.withAir(air)),
        Entry.Kind.NOTED,
        Words.message(
            "log.day",
            "temperature",
            said(request, "temperature"),
            "height",
            said(request, "height")));
  }

  private void keep(
      Context request, Machine machine, TuningSession session, Entry.Kind kind, Message what) {
    machines.keep(Visitor.of(request), machine.id(), session, kind, what);
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
