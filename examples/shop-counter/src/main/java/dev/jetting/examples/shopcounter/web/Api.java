package dev.jetting.examples.shopcounter.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.examples.shopcounter.bench.PlanView;
import dev.jetting.examples.shopcounter.bench.ReadWith;
import dev.jetting.examples.shopcounter.bench.StepView;
import dev.jetting.examples.shopcounter.bench.Summary;
import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.store.Machines;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.json.KitValidationJson;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The same for programs; openapi.json describes it. */
final class Api {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String JSON_TYPE = "application/json";

  private final Machines machines;
  private final KitValidator kits;
  private final Templates templates;
  private final Limits limits;

  Api(Machines machines, Stock stock, Templates templates, Limits limits) {
    this.machines = machines;
    this.kits = KitValidator.of(stock.catalogue());
    this.templates = templates;
    this.limits = limits;
  }

  void on(RoutesConfig routes) {
    routes.get("/api", request -> templates.show(request, "api.jte", Map.of()));
    routes.get("/api/openapi.json", Api::description);
    routes.post("/api/report", this::report);
    routes.post("/api/plan", this::plan);
    routes.post("/api/series", this::series);
    routes.post("/api/session/next", this::next);
    routes.post("/api/kit", this::kit);
    routes.get("/api/machines", this::list);
    routes.post("/api/machines", this::add);
    routes.get("/api/machines/{id}", this::sheet);
    routes.delete("/api/machines/{id}", this::remove);
  }

  private static void description(Context request) throws IOException {
    try (InputStream in = Api.class.getResourceAsStream("openapi.json")) {
      request.contentType(JSON_TYPE).result(Objects.requireNonNull(in).readAllBytes());
    }
  }

  private void report(Context request) {
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheetIn(request)));
    if (oneOf(request, "form", "short", "full").equals("full")) {
      request.contentType(JSON_TYPE).result(ReportJson.write(report));
    } else {
      answer(request, Summary.of(report, Languages.of(request)));
    }
  }

  private void plan(Context request) {
    PlanView plan = PlanView.of(Machine.passing(sheetIn(request)), Languages.of(request));
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("text", plan.text());
    answer.put("steps", plan.steps());
    answer.put("buy", plan.buy());
    answer.put("left", plan.left());
    answer(request, answer);
  }

  private void series(Context request) {
    SetupSheet sheet = sheetIn(request);
    AssessedSetting assessed = AssessedSetting.of(sheet);
    var profile =
        switch (oneOf(request, "day", "today", "coldest", "hottest")) {
          case "coldest" -> assessed.coldest();
          case "hottest" -> assessed.hottest();
          default -> assessed.profile();
        };
    MixtureSeries series = MixtureSeries.of(profile, sheet.setup().engine().need());
    if (oneOf(request, "format", "json", "csv").equals("csv")) {
      request.contentType("text/csv; charset=utf-8").result(series.csv());
    } else {
      answer(request, Map.of("rows", series.rows().stream().map(Api::row).toList()));
    }
  }

  private static Map<String, Object> row(MixtureSeries.Row row) {
    Map<String, Object> numbers = new LinkedHashMap<>();
    numbers.put("throttlePercent", row.throttle().percent());
    numbers.put("speedRpm", row.speed().rpm());
    numbers.put("lambda", row.lambda().value());
    numbers.put("band", List.of(row.band().rich(), row.band().lean()));
    numbers.put("needed", row.needed().value());
    numbers.put("limits", List.of(row.limits().rich(), row.limits().lean()));
    numbers.put("leanRisk", row.leanRisk().value());
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Circuit circuit : Circuit.values()) {
      shares.put(circuit.name().toLowerCase(Locale.ROOT), row.shares().get(circuit));
    }
    numbers.put("shares", shares);
    return numbers;
  }

  private void next(Context request) {
    TuningSession session = SessionJson.read(body(request));
    ReadWith with = ReadWith.of(oneOf(request, "with", "plug", "sensor", "thermometer", "both"));
    Tuner tuner = Tuner.readingWith(with.instruments());
    Map<String, Object> answer = new LinkedHashMap<>();
    StepView view = StepView.of(session, tuner, Languages.of(request));
    answer.put("kind", view.kind().name().toLowerCase(Locale.ROOT));
    answer.put("title", view.title());
    answer.put("why", view.why());
    answer.put("howTo", view.howTo());
    answer.put("checks", view.checks());
    answer.put("ends", tuner.next(session).isEnd());
    answer(request, answer);
  }

  private void kit(Context request) {
    String depth = oneOf(request, "depth", "setting", "fit", "coverage");
    KitDepth asked = KitDepth.valueOf(depth.toUpperCase(Locale.ROOT));
    String text = body(request);
    request
        .contentType(JSON_TYPE)
        .result(KitValidationJson.write(kits.validate(KitJson.read(text), asked)));
  }

  private void list(Context request) {
    List<Map<String, String>> list = machines.of(known(request)).stream().map(Api::line).toList();
    answer(request, Map.of("machines", list));
  }

  private static Map<String, String> line(Machine machine) {
    return Map.of(
        "id", machine.id(), "name", machine.name(), "changed", machine.changed().toString());
  }

  private void add(Context request) {
    String id = machines.add(known(request), sheetIn(request));
    request.status(201).header("Location", "/api/machines/" + id);
    answer(request, Map.of("id", id));
  }

  private void sheet(Context request) {
    request.contentType(JSON_TYPE).result(SheetJson.write(machine(request).sheet()));
  }

  private void remove(Context request) {
    machines.remove(known(request), machine(request).id());
    request.status(204);
  }

  private Machine machine(Context request) {
    return machines.find(known(request), request.pathParam("id")).orElseThrow(Problem::notFound);
  }

  /** Machines are kept under the caller's own secret. */
  private static String known(Context request) {
    return Optional.of(request)
        .filter(Visitor::isKnown)
        .map(Visitor::of)
        .orElseThrow(() -> Problem.of(401, "problem.who", Words.message("problem.who.detail")));
  }

  private SetupSheet sheetIn(Context request) {
    return SheetJson.read(body(request));
  }

  private String body(Context request) {
    byte[] bytes = request.bodyAsBytes();
    if (bytes.length > limits.bodyBytes()) {
      throw Problem.tooLarge(limits.bodyBytes());
    }
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** A parameter out of some words; the first one where it is left out. */
  private static String oneOf(Context request, String name, String... words) {
    String asked = Objects.requireNonNullElse(request.queryParam(name), words[0]);
    if (!List.of(words).contains(asked)) {
      throw Problem.unusable(
          Words.message(
              "problem.parameter",
              "name",
              name,
              "value",
              asked,
              "words",
              String.join(", ", words)));
    }
    return asked;
  }

  private static void answer(Context request, Object value) {
    try {
      request
          .header("Content-Language", Languages.of(request).tag())
          .contentType(JSON_TYPE)
          .result(JSON.writeValueAsBytes(value));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
