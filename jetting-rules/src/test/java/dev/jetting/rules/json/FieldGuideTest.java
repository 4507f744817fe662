package dev.jetting.rules.json;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.jetting.units.QuantityException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * JSON.md lists every field of every document. It is made from the published schemas and from what
 * the readers refuse; {@code -Dgolden.update=true} writes it anew.
 */
class FieldGuideTest {

  private static final Path DOCUMENT = Path.of("JSON.md");
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final Pattern FIRST_UNIT = Pattern.compile("decimal number with ([^,]+)");
  private static final int MOST_WORDS = 8;

  /** A document, its schema, and the class that reads it. */
  private record Kind(String name, String schema, String reader, String what) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind("Setup sheet", "setup-sheet", "SheetJson", "a machine with its setting"),
          new Kind("Report", "report", "ReportJson", "what an assessment found"),
          new Kind(
              "Short report", "short-report", "ShortReportJson", "a report for a page, no reader"),
          new Kind("Tuning session", "tuning-session", "SessionJson", "what was tried and seen"),
          new Kind("Catalogue", "catalogue", "CatalogueJson", "a seller's parts and families"),
          new Kind("Kit", "kit", "KitJson", "parts sold together, with recommended settings"),
          new Kind("Kit validation", "kit-validation", "KitValidationJson", "findings on a kit"),
          new Kind(
              "Kit waivers", "kit-waivers", "KitWaiversJson", "findings that a seller accepts"),
          new Kind("Waivers", "waivers", "WaiversJson", "findings that a rider or shop accepts"),
          new Kind("Rule file", "rule-file", "RuleFile", "rules without Java"),
          new Kind("Rule limits", "rule-limits", "LimitsJson", "replaced limits of rules"),
          new Kind(
              "Report difference",
              "report-difference",
              "ReportDifferenceJson",
              "two reports compared"),
          new Kind("Sheet impact", "sheet-impact", "SheetImpactJson", "what new rules change"));

  /** Measured on the six settings of the quickstart, in bytes of a document on one line. */
  private static final String SIZE =
      """

      A report on one line has 46 kB, the mean of the six settings of the quickstart. It had 289 kB, and 368 kB with
      line breaks, when each number had a name and all of its digits. Half of it is text. A page that needs a few
      kilobytes takes the [short report](#short-report).

      | part | bytes | why it stays |
      |---|---|---|
      | `results` | 10 600 | each rule with its outcome, the findings with typed values for other languages |
      | `profile` | 11 400 | 41 openings: what the parts do 5 100, the mixture 2 500, the risk 2 000, the openings 1 800 |
      | `sheet` | 8 200 | the setup sheet as it was judged, sources and assumptions of its numbers included |
      | `coldestDay`, `hottestDay` | 9 100 | the mixture 4 900 and the risk 4 200 of both; the openings are those of `profile` |
      | `assumptions` | 4 700 | each limit and spread with its reason |
      | all else | 2 200 | verdict, plan, proof, cautions, versions |

      A tenth of 368 kB would take three things more away, 8 800 bytes in all:

      - What is inside the mixture on the other two days, such as suctions and flows: 4 200. `Report.coldestDay` and
        `hottestDay` are profiles of the same kind as today's, so a report read back would not be equal.
      - The reasons of the assumptions: 2 200. Versions of model and rulebook do not name those of a shop, and a reader of
        another version would put its own words there.
      - English texts beside their keys, which are titles, reasons and remedies: 2 400. A program without this library could
        not show them.
      """;

  private final Map<String, String> ranges = new TreeMap<>();
  private final Set<String> described = new HashSet<>();
  private final Map<String, String> quantities = new TreeMap<>();
  private final Map<String, String> words = new TreeMap<>();
  private final StringBuilder page = new StringBuilder();

  @Test
  void guide_listsEveryFieldOfEveryDocument() throws IOException {
    String guide = guide();
    if (Documents.UPDATE) {
      Files.writeString(DOCUMENT, guide);
    }
    assertThat(Files.readString(DOCUMENT)).isEqualTo(guide);

    for (Kind kind : KINDS) {
      for (JsonNode properties : schema(kind).findValues("properties")) {
        properties
            .fieldNames()
            .forEachRemaining(name -> assertThat(guide).contains("`" + name + "`"));
      }
    }
  }

  @Test
  void everySchema_isInTheGuide() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/dev/jetting/rules/json"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              KINDS.stream().map(kind -> kind.schema() + ".schema.json").toList());
    }
  }

  @Test
  void ranges_areThoseOfTheReaders() throws IOException {
    guide();
    assertThat(ranges)
        .containsEntry("setting.mainJet", "0.3 mm to 5 mm")
        .containsEntry("carburettor.bore", "5 mm to 80 mm")
        .containsEntry("needle.grooves", "1 to 9")
        .containsEntry("riding.acceptedRisk", "more than 0 and at most 0.5");
  }

  private String guide() throws IOException {
    page.setLength(0);
    described.clear();
    probe("setup-sheet", "example-sheet.json", SheetJson::read);
    probe("tuning-session", "example-session.json", SessionJson::read);
    probe("catalogue", "example-catalogue.json", CatalogueJson::read);
    probe("kit", "example-kit.json", KitJson::read);
    probe("rule-file", "example-rules.json", RuleFile::read);
    page.append(head());
    for (Kind kind : KINDS) {
      document(kind);
    }
    page.append(
        """

        ## Quantities

        A quantity is a text with its unit, or `{"value": 1.28, "unit": "mm"}`. One without a unit may be a bare number.

        | quantity | written as | range |
        |---|---|---|
        """);
    quantities.forEach(
        (name, how) ->
            page.append("| ")
                .append(name)
                .append(" | ")
                .append(how)
                .append(" | ")
                .append(range(name))
                .append(" |\n"));
    page.append(
        """

        ## Words

        Fields that take one of many words.

        | name | words |
        |---|---|
        """);
    words.forEach(
        (name, all) -> page.append("| `").append(name).append("` | ").append(all).append(" |\n"));
    return page.toString();
  }

  /** What the quantity's own reader allows, by its error at a number that is too big. */
  private static String range(String quantity) {
    return Quantities.PARSERS.entrySet().stream()
        .filter(entry -> Quantities.allowed(entry.getKey()).toString().startsWith(quantity + ", "))
        .map(
            entry -> {
              Matcher unit = FIRST_UNIT.matcher(Quantities.allowed(entry.getKey()).toString());
              String tooBig = "1000000000000" + (unit.find() ? " " + unit.group(1) : "");
              try {
                throw new AssertionError("reads " + entry.getValue().apply(tooBig));
              } catch (QuantityException e) {
                return Quantities.allowed(entry.getKey()).toString().endsWith(e.allowed())
                    ? ""
                    : e.allowed();
              }
            })
        .findFirst()
        .orElse("");
  }

  private static String head() {
    return "# JSON documents, field by field\n\n"
        + "This page is made from the published schemas by a test. A range is what the"
        + " reader of the document\n"
        + "allows: the test makes each number of an example too big and reads the error."
        + " Where the bound is another\n"
        + "field, such as the bore, the meaning names it.\n\n"
        + "Readers are strict: an unknown field, a field that stands twice and a number"
        + " outside its range are\n"
        + "errors with the path, the line, and what is allowed. `JsonSchemas` gives the"
        + " schemas to programs.\n\n"
        + "| document | what it is | class of `rules.json` | schema |\n"
        + "|---|---|---|---|\n"
        + KINDS.stream()
            .map(
                kind ->
                    "| ["
                        + kind.name()
                        + "](#"
                        + anchor(kind.name())
                        + ") | "
                        + kind.what()
                        + " | `"
                        + kind.reader()
                        + "` | ["
                        + kind.schema()
                        + "](src/main/resources/dev/jetting/rules/json/"
                        + kind.schema()
                        + ".schema.json) |\n")
            .collect(joining());
  }

  private static JsonNode schema(Kind kind) throws IOException {
    return schema(kind.schema());
  }

  private static JsonNode schema(String name) throws IOException {
    return MAPPER.readTree(Documents.read(name + ".schema.json"));
  }

  private void probe(String schema, String example, Consumer<String> reader) throws IOException {
    FieldRanges.of(schema(schema), MAPPER.readTree(Documents.read(example)), reader)
        .forEach(ranges::putIfAbsent);
  }

  private void document(Kind kind) throws IOException {
    JsonNode schema = schema(kind);
    page.append("\n## ").append(kind.name()).append('\n');
    if (kind.schema().equals("report")) {
      page.append(SIZE);
    }
    Deque<String> open = new ArrayDeque<>();
    table("", schema, open);
    while (!open.isEmpty()) {
      String type = open.removeFirst();
      if (described.add(type)) {
        type(type, schema.path("$defs").path(type), open);
      }
    }
  }

  private void type(String name, JsonNode definition, Deque<String> open) {
    Deque<String> below = new ArrayDeque<>();
    page.append("\n### Type ").append(name).append('\n');
    List<String> forms = new ArrayList<>();
    for (JsonNode form : forms(definition)) {
      if (form.has("enum")) {
        forms.add(all(form.path("enum")));
      } else if (form.path("type").asText().equals("array")) {
        forms.add(cell(form, below));
      }
    }
    if (!forms.isEmpty()) {
      page.append("\nWritten as ")
          .append(String.join(", or ", forms))
          .append(", or as an object:\n");
    }
    for (JsonNode form : forms(definition)) {
      if (form.has("properties")) {
        table(name, form, below);
      } else if (form.has("$ref")) {
        cell(form, below);
      }
    }
    below.descendingIterator().forEachRemaining(open::addFirst);
  }

  private static List<JsonNode> forms(JsonNode definition) {
    List<JsonNode> forms = new ArrayList<>();
    forms.add(definition);
    definition.path("anyOf").forEach(forms::add);
    if (!definition.has("properties")) {
      definition.path("oneOf").forEach(forms::add);
    }
    return forms;
  }

  private void table(String type, JsonNode object, Deque<String> open) {
    Set<String> required = new TreeSet<>();
    object.path("required").forEach(name -> required.add(name.asText()));
    page.append("\n| field | type | needed | range | meaning |\n|---|---|---|---|---|\n");
    for (Map.Entry<String, JsonNode> field : object.path("properties").properties()) {
      page.append("| `")
          .append(field.getKey())
          .append("` | ")
          .append(cell(field.getValue(), open))
          .append(" | ")
          .append(required.contains(field.getKey()) ? "yes" : "")
          .append(" | ")
          .append(ranges.getOrDefault(type + "." + field.getKey(), ""))
          .append(" | ")
          .append(field.getValue().path("description").asText("").replace("|", "\\|"))
          .append(" |\n");
    }
  }

  private String cell(JsonNode field, Deque<String> open) {
    if (field.has("const")) {
      return "`" + field.get("const") + "`";
    }
    if (field.has("enum")) {
      return all(field.path("enum"));
    }
    if (field.has("$ref")) {
      return reference(field.path("$ref").asText().replace("#/$defs/", ""), open);
    }
    if (field.has("oneOf")) {
      return "a [measure](RULE-FILES.md)";
    }
    return switch (field.path("type").asText()) {
      case "array" -> "list of " + cell(field.path("items"), open);
      case "object" -> "object of " + cell(field.path("additionalProperties"), open);
      case "number" -> "number";
      case "integer" -> "whole number";
      case "boolean" -> "true or false";
      case "string" -> field.has("maxLength") ? "text, at most " + field.get("maxLength") : "text";
      default -> "any value";
    };
  }

  private String reference(String name, Deque<String> open) {
    JsonNode definition = definitions.get(name);
    if (definition.has("description") && !definition.has("properties") && !name.endsWith("Limit")) {
      String[] how = definition.path("description").asText().split(", ", 2);
      quantities.put(how[0], how[1]);
      return "[" + how[0] + "](#quantities)";
    }
    if (definition.has("enum")) {
      String all = all(definition.path("enum"));
      if (definition.path("enum").size() <= MOST_WORDS) {
        return all;
      }
      words.put(name, all);
      return "[" + name + "](#words)";
    }
    open.addLast(name);
    return "[" + name + "](#type-" + name.toLowerCase(Locale.ROOT) + ")";
  }

  private final Map<String, JsonNode> definitions = definitions();

  private static Map<String, JsonNode> definitions() {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    for (Kind kind : KINDS) {
      try {
        schema(kind)
            .path("$defs")
            .properties()
            .forEach(entry -> all.put(entry.getKey(), entry.getValue()));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all;
  }

  private static String all(JsonNode names) {
    return StreamSupport.stream(names.spliterator(), false)
        .map(name -> "`" + name.asText() + "`")
        .collect(joining(", "));
  }

  private static String anchor(String heading) {
    return heading.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
