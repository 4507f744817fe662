package dev.jetting.examples.shopcounter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.number.Decimals;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds openapi.json against the running program: each operation, each answer, nothing beside. */
class ApiTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SECRET = "shop";

  private static Running counter;
  private static JsonNode description;

  @BeforeAll
  static void start() throws IOException {
    counter = Running.start();
    description = JSON.readTree(counter.get(SECRET, "/api/openapi.json").body());
  }

  @AfterAll
  static void stop() {
    counter.close();
  }

  @Test
  void description_namesEachOperationThatTheProgramHas_andNoOther() {
    Set<String> described = new TreeSet<>();
    description
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .properties()
                    .forEach(op -> described.add(op.getKey() + " " + path.getKey())));
    assertThat(counter.apiOperations()).isEqualTo(described);
  }

  @Test
  void answers_areAsDescribed() throws IOException {
    String sheet = resource("lean-in-the-middle.json");
    String kit = resource("kits.jsonl").lines().findFirst().orElseThrow();
    assertThat(checked("post", "/api/report", "/api/report", sheet)).isEqualTo(200);
    assertThat(checked("post", "/api/report", "/api/report?form=full", sheet)).isEqualTo(200);
    assertThat(checked("post", "/api/plan", "/api/plan", sheet)).isEqualTo(200);
    assertThat(checked("post", "/api/series", "/api/series?day=coldest", sheet)).isEqualTo(200);
    String session = SessionJson.write(TuningSession.beginning(SheetJson.read(sheet)));
    assertThat(checked("post", "/api/session/next", "/api/session/next", session)).isEqualTo(200);
    assertThat(checked("post", "/api/kit", "/api/kit?depth=fit", kit)).isEqualTo(200);
    assertThat(checked("post", "/api/machines", "/api/machines", sheet)).isEqualTo(201);
    assertThat(checked("get", "/api/machines", "/api/machines", "")).isEqualTo(200);
    assertThat(checked("get", "/api/openapi.json", "/api/openapi.json", "")).isEqualTo(200);
    JsonNode list = JSON.readTree(counter.get(SECRET, "/api/machines").body());
    String machine = "/api/machines/" + list.path("machines").path(0).path("id").asText();
    assertThat(checked("get", "/api/machines/{id}", machine, "")).isEqualTo(200);
    assertThat(checked("delete", "/api/machines/{id}", machine, "")).isEqualTo(204);
    assertThat(checked("get", "/api/machines/{id}", machine, "")).isEqualTo(404);
  }

  @Test
  void refusals_areAsDescribed() throws IOException {
    String sheet = resource("lean-in-the-middle.json");
    String tooLong = " ".repeat(Running.WIDE.bodyBytes()) + sheet;
    ObjectNode badJet = (ObjectNode) JSON.readTree(sheet);
    ((ObjectNode) badJet.path("setting")).put("mainJet", "96 furlongs");
    assertThat(checked("post", "/api/report", "/api/report", "{}")).isEqualTo(422);
    assertThat(checked("post", "/api/report", "/api/report", badJet.toString())).isEqualTo(422);
    assertThat(checked("post", "/api/report", "/api/report?form=odd", sheet)).isEqualTo(422);
    assertThat(checked("post", "/api/series", "/api/series", tooLong)).isEqualTo(413);
    assertThat(checked("post", "/api/kit", "/api/kit", "[1]")).isEqualTo(422);
    HttpRequest.Builder nobody =
        HttpRequest.newBuilder(java.net.URI.create(counter.address("/api/machines"))).GET();
    HttpResponse<String> refused = counter.send(nobody);
    assertThat(refused.statusCode()).isEqualTo(401);
    matches("get", "/api/machines", refused);
  }

  /** What is too lean on a climb alone counts, too. */
  @Test
  void days_haveTheWorstSpotOfTheReport() throws IOException {
    for (String demo : List.of("lean-in-the-middle", "mild-all-round", "tuned-on-mild-main")) {
      String sheet = resource(demo + ".json");
      JsonNode days =
          JSON.readTree(counter.postJson(SECRET, "/api/report", sheet).body()).path("days");
      WorstSpot worst = AssessedSetting.of(SheetJson.read(sheet)).worst();
      JsonNode day = days.path(worst.day().name().toLowerCase(Locale.ROOT));
      // A report has six digits of a risk and of a speed.
      assertThat(day.path("leanRisk").asDouble()).isCloseTo(worst.leanRisk().value(), within(1e-6));
      assertThat(day.path("speedRpm").asDouble())
          .isEqualTo(Decimals.rounded(worst.speed().rpm(), 6));
    }
  }

  @Test
  void badValue_isNamedWithItsPlaceAndWhatIsAllowed() throws IOException {
    ObjectNode sheet = (ObjectNode) JSON.readTree(resource("lean-in-the-middle.json"));
    ((ObjectNode) sheet.path("setting")).put("mainJet", "96 furlongs");
    JsonNode problem =
        JSON.readTree(counter.postJson(SECRET, "/api/report", sheet.toString()).body());
    assertThat(problem.path("path").asText()).contains("mainJet");
    assertThat(problem.path("value").asText()).contains("96 furlongs");
    assertThat(problem.path("allowed").asText()).isNotEmpty();
  }

  @Test
  void series_asCsv_hasALineForEachRow() throws IOException {
    String sheet = resource("mild-all-round.json");
    HttpResponse<String> csv = counter.postJson(SECRET, "/api/series?format=csv", sheet);
    JsonNode rows = JSON.readTree(counter.postJson(SECRET, "/api/series", sheet).body());
    assertThat(csv.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/csv");
    assertThat(csv.body().lines()).hasSize(rows.path("rows").size() + 1);
  }

  /** Asks, holds the answer against the description, and returns its status. */
  private static int checked(String method, String operation, String path, String body)
      throws IOException {
    HttpRequest.Builder request =
        counter
            .request(SECRET, path)
            .method(method.toUpperCase(Locale.ROOT), BodyPublishers.ofString(body));
    HttpResponse<String> answer = counter.send(request);
    matches(method, operation, answer);
    return answer.statusCode();
  }

  private static void matches(String method, String operation, HttpResponse<String> answer)
      throws IOException {
    String status = Integer.toString(answer.statusCode());
    JsonNode response =
        description.path("paths").path(operation).path(method).path("responses").path(status);
    assertThat(response.isMissingNode()).as(method + " " + operation + " " + status).isFalse();
    if (response.has("$ref")) {
      response = description.at(response.path("$ref").asText().substring(1));
    }
    if (!response.has("content")) {
      assertThat(answer.body()).isEmpty();
      return;
    }
    String type = answer.headers().firstValue("Content-Type").orElseThrow().replaceAll(";.*", "");
    JsonNode schema = response.path("content").path(type).path("schema");
    assertThat(schema.isMissingNode()).as(type + " of " + operation + " " + status).isFalse();
    assertThat(errors(schema, answer.body())).as(method + " " + operation).isEmpty();
  }

  /** The schema among the components that it refers to. */
  private static List<String> errors(JsonNode schema, String json) throws IOException {
    ObjectNode whole = JSON.createObjectNode();
    whole.setAll((ObjectNode) schema.deepCopy());
    whole.set("components", description.path("components"));
    List<Error> errors =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(whole)
            .validate(JSON.readTree(json));
    List<String> texts = new ArrayList<>();
    errors.forEach(error -> texts.add(error.toString()));
    return texts;
  }

  static String resource(String name) throws IOException {
    String path = "/dev/jetting/examples/shopcounter/demo/" + name;
    try (InputStream in = Objects.requireNonNull(ApiTest.class.getResourceAsStream(path), path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void machines_ofAnotherSecret_areNotFound() throws IOException {
    String sheet = resource("mild-all-round.json");
    JsonNode added = JSON.readTree(counter.postJson("one", "/api/machines", sheet).body());
    String machine = "/api/machines/" + added.path("id").asText();
    assertThat(counter.get("one", machine).statusCode()).isEqualTo(200);
    assertThat(counter.get("two", machine).statusCode()).isEqualTo(404);
    assertThat(counter.postForm("two", machine, Map.of()).statusCode()).isEqualTo(404);
  }
}
