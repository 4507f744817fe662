package dev.jetting.examples.shopcounter.web;

import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.bench.Bench;
import dev.jetting.examples.shopcounter.bench.Beside;
import dev.jetting.examples.shopcounter.bench.Cards;
import dev.jetting.examples.shopcounter.bench.Guess;
import dev.jetting.examples.shopcounter.bench.MachineForm;
import dev.jetting.examples.shopcounter.bench.Measured;
import dev.jetting.examples.shopcounter.bench.PlanView;
import dev.jetting.examples.shopcounter.bench.Proposal;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.store.Machines;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.tuning.TuningSession;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The visitor's machines: the list, the picture, the log. */
final class MachinePages {

  private static final int LONGEST_NOTE = 2000;

  private final Machines machines;
  private final Templates templates;

  MachinePages(Machines machines, Templates templates) {
    this.machines = machines;
    this.templates = templates;
  }

  void on(RoutesConfig routes) {
    routes.get("/", this::list);
    routes.post("/machines/demo/{name}", this::addDemo);
    routes.post("/machines/sheet", this::addSheet);
    routes.get("/machines/new", request -> form(request, MachineForm.empty(Languages.of(request))));
    routes.post("/machines", this::enter);
    routes.get("/machines/{id}/plan", this::plan);
    routes.post("/machines/{id}/plan", this::takeFirstStep);
    routes.get("/machines/{id}/known", this::known);
    routes.post("/machines/{id}/known", this::measure);
    routes.get("/machines/{id}", this::picture);
    routes.post("/machines/{id}/setting", this::fit);
    routes.get("/machines/{id}/log", this::log);
    routes.post("/machines/{id}/log", this::note);
    routes.get("/machines/{id}/cards", this::cards);
    routes.get("/compare", this::compare);
    routes.post("/machines/{id}/remove", this::remove);
  }

  private void list(Context request) {
    templates.show(
        request,
        "home.jte",
        Map.of("machines", machines.of(Visitor.of(request)), "demos", Demos.all()));
  }

  private void addDemo(Context request) {
    String id =
        machines.add(
            Visitor.of(request), Demos.sheet(request.pathParam("name"), Languages.of(request)));
    request.redirect("/machines/" + id, HttpStatus.SEE_OTHER);
  }

  private void addSheet(Context request) {
    String sheet = Objects.requireNonNullElse(request.formParam("sheet"), "");
    String id = machines.add(Visitor.of(request), SheetJson.read(sheet));
    request.redirect("/machines/" + id, HttpStatus.SEE_OTHER);
  }

  private void form(Context request, MachineForm form) {
    templates.show(request, "new.jte", Map.of("form", form));
  }

  private void enter(Context request) {
    MachineForm form = new MachineForm(request::formParam, Languages.of(request));
    Optional<MachineDescription> machine = form.machine();
    if (machine.isEmpty()) {
      request.status(422);
      form(request, form);
      return;
    }
    String id = machines.add(Visitor.of(request), machine.get().sheet());
    request.redirect("/machines/" + id, HttpStatus.SEE_OTHER);
  }

  private void plan(Context request) {
    PlanView plan = PlanView.of(machine(request), Languages.of(request));
    templates.show(request, "plan.jte", Map.of("plan", plan));
  }

  private void takeFirstStep(Context request) {
    Machine machine = machine(request);
    Remedy.Change change =
        PlanView.first(machine).orElseThrow(() -> Problem.notNow("plan.no-step"));
    Setup setup = machine.sheet().setup().withSetting(change.setting());
    machines.keep(
        Visitor.of(request),
        machine.id(),
        machine.session().changing(setup),
        Entry.Kind.CHANGED,
        change.deedMessage());
    request.redirect("/machines/" + machine.id() + "/plan", HttpStatus.SEE_OTHER);
  }

  private void known(Context request) {
    Machine machine = machine(request);
    List<Guess> guesses = Guess.of(machine, Languages.of(request));
    templates.show(request, "known.jte", Map.of("machine", machine, "guesses", guesses));
  }

  private void measure(Context request) {
    Measured measured =
        Measured.of(
            machine(request),
            request.formParam("value"),
            request.formParam("number"),
            Languages.of(request));
    machines.keep(
        Visitor.of(request),
        measured.machine().id(),
        measured.machine().session(),
        Entry.Kind.MEASURED,
        measured.text());
    request.redirect("/machines/" + measured.machine().id() + "/known", HttpStatus.SEE_OTHER);
  }

  private void picture(Context request) {
    Machine machine = machine(request);
    Proposal proposal = Proposal.of(machine.sheet(), request::queryParam);
    boolean partly = "bench".equals(request.header("X-Part"));
    templates.show(
        request,
        partly ? "bench.jte" : "picture.jte",
        Map.of("bench", Bench.of(machine, proposal, Languages.of(request))));
  }

  private void fit(Context request) {
    Machine machine = machine(request);
    Proposal proposal = Proposal.of(machine.sheet(), request::formParam);
    if (proposal.changesSomething()) {
      Setup setup = machine.sheet().setup().withSetting(proposal.setting());
      TuningSession session = machine.session().changing(setup);
      machines.keep(
          Visitor.of(request), machine.id(), session, Entry.Kind.CHANGED, proposal.changes());
    }
    request.redirect("/machines/" + machine.id(), HttpStatus.SEE_OTHER);
  }

  private void log(Context request) {
    Machine machine = machine(request);
    templates.show(
        request,
        "log.jte",
        Map.of("machine", machine, "entries", machines.log(Visitor.of(request), machine.id())));
  }

  private void cards(Context request) {
    Machine machine = machine(request);
    List<Entry> log = machines.log(Visitor.of(request), machine.id());
    Cards cards = Cards.of(machine, log, Languages.of(request));
    templates.show(request, "cards.jte", Map.of("cards", cards));
  }

  private void compare(Context request) {
    Map<String, Object> values = new HashMap<>();
    values.put("machines", machines.of(Visitor.of(request)));
    String left = request.queryParam("a");
    String right = request.queryParam("b");
    if (left != null && right != null) {
      values.put(
          "beside",
          Beside.of(machine(request, left), machine(request, right), Languages.of(request)));
    }
    templates.show(request, "compare.jte", values);
  }

  private void note(Context request) {
    Machine machine = machine(request);
    String note = Objects.requireNonNullElse(request.formParam("note"), "").strip();
    if (note.isEmpty() || note.length() > LONGEST_NOTE) {
      throw Problem.unusable(
          Words.message("log.length", "length", note.length(), "most", LONGEST_NOTE));
    }
    machines.note(Visitor.of(request), machine.id(), note);
    request.redirect("/machines/" + machine.id() + "/log", HttpStatus.SEE_OTHER);
  }

  private void remove(Context request) {
    machines.remove(Visitor.of(request), machine(request).id());
    request.redirect("/", HttpStatus.SEE_OTHER);
  }

  private Machine machine(Context request) {
    return machine(request, request.pathParam("id"));
  }

  private Machine machine(Context request, String id) {
    return machines.find(Visitor.of(request), id).orElseThrow(Problem::notFound);
  }
}
