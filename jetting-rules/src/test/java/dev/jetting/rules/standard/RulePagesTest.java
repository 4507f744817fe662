package dev.jetting.rules.standard;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.json.SheetJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages against the rules that they speak of. */
class RulePagesTest {

  private static final Path WRITTEN =
      Path.of("src/main/resources/dev/jetting/rules/standard/pages");
  private static final Path PUBLISHED =
      Path.of("src/main/java/dev/jetting/rules/standard/doc-files");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Stream<Rule> rules() {
    return StandardRulebook.rulebook().rules().stream();
  }

  @Test
  void everyRule_hasItsPageAndEveryPageItsRule() throws IOException {
    Set<String> ids = rules().map(rule -> rule.id() + ".md").collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(WRITTEN)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(ids.stream(), Stream.of("base.json")).toList());
    }
  }

  @Test
  void baseSheet_everyRuleSpeaksAndNoneFails() {
    Report report =
        StandardRulebook.rulebook()
            .evaluate(AssessedSetting.of(SheetJson.read(RulePages.baseSheet())));
    assertThat(report.results())
        .extracting(RuleResult::ruleId, result -> result.outcome().status())
        .allSatisfy(result -> assertThat(result.toList().get(1)).isEqualTo(Status.PASSED));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void passingExample_passes(Rule rule) throws IOException {
    assertThat(example(rule, "Passes").status()).isEqualTo(Status.PASSED);
  }

  /** What passes a rule should not be shown where another one finds a danger. */
  @ParameterizedTest
  @MethodSource("rules")
  void passingExample_isNoDanger(Rule rule) throws IOException {
    assertThat(
            StandardRulebook.rulebook()
                .evaluate(AssessedSetting.of(sheet(rule, "Passes")))
                .findings())
        .filteredOn(found -> found.severity() == Severity.DANGER)
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void waiver_hasWhatAWaiverNeeds_andThatOfADangerSaysWhereItsCeilingComesFrom(Rule rule)
      throws IOException {
    assertThat(MAPPER.readTree(block(rule, "Waive")).fieldNames())
        .toIterable()
        .containsExactly("ruleId", "subject", "author", "reason", "expires");
    assertThat(page(rule).contains("`Waiver.of(report, finding)`"))
        .isEqualTo(rule.severity() == Severity.DANGER);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void failingExample_failsOnTheSubjectThatTheWaiverNames(Rule rule) throws IOException {
    Outcome outcome = example(rule, "Fails");
    JsonNode waiver = MAPPER.readTree(block(rule, "Waive"));
    assertThat(outcome.status()).isEqualTo(Status.FAILED);
    assertThat(outcome.findings())
        .extracting(Finding::subject)
        .contains(waiver.get("subject").asText());
    assertThat(waiver.get("ruleId").asText()).isEqualTo(rule.id());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void page_hasEverySectionOnceAndInOrder(Rule rule) {
    assertThat(page(rule).lines().filter(line -> line.startsWith("#")))
        .containsExactly(
            "# " + rule.title(),
            "## Why",
            "## What it checks",
            "## Source",
            "## Passes",
            "## Fails",
            "## Remedy",
            "## Waive");
    assertThat(page(rule)).contains(rule.rationale());
  }

  @Test
  void page_ofAnotherRule_isNone() {
    assertThat(RulePages.page("no-such-rule")).isEmpty();
  }

  /** A run with {@code -Dgolden.update=true} writes them anew. */
  @Test
  void publishedPages_areTheGeneratedOnes() throws IOException {
    Map<String, String> generated = new TreeMap<>();
    generated.put("index.md", RulePages.index());
    generated.put("base.json", RulePages.baseSheet());
    rules().forEach(rule -> generated.put(rule.id() + ".md", page(rule)));
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(PUBLISHED);
      for (Map.Entry<String, String> file : generated.entrySet()) {
        Files.writeString(PUBLISHED.resolve(file.getKey()), file.getValue(), UTF_8);
      }
    }
    Map<String, String> published = new TreeMap<>();
    try (Stream<Path> files = Files.list(PUBLISHED)) {
      for (Path file : files.toList()) {
        published.put(file.getFileName().toString(), Files.readString(file, UTF_8));
      }
    }
    assertThat(published).isEqualTo(generated);
  }

  private static String page(Rule rule) {
    return RulePages.page(rule.id()).orElseThrow();
  }

  private static String block(Rule rule, String section) {
    Matcher block =
        Pattern.compile("## " + section + "\\n.*?```json\\n(.*?)```", Pattern.DOTALL)
            .matcher(page(rule));
    assertThat(block.find()).as("block of %s on the page of %s", section, rule).isTrue();
    return block.group(1);
  }

  private static Outcome example(Rule rule, String section) throws IOException {
    return rule.evaluate(AssessedSetting.of(sheet(rule, section)));
  }

  /** The base sheet with the edits of an example. */
  static SetupSheet sheet(Rule rule, String section) throws IOException {
    JsonNode sheet = MAPPER.readTree(RulePages.baseSheet());
    MAPPER
        .readTree(block(rule, section))
        .properties()
        .forEach(edit -> edit(sheet, edit.getKey(), edit.getValue()));
    return SheetJson.read(MAPPER.writeValueAsString(sheet));
  }

  /** Puts a value into the place of one that is there: an edit of nothing would prove nothing. */
  private static void edit(JsonNode sheet, String pointer, JsonNode value) {
    JsonPointer path = JsonPointer.compile(pointer);
    assertThat(sheet.at(path)).as(pointer).isNotEqualTo(value);
    assertThat(sheet.at(path).isMissingNode()).as("missing %s", pointer).isFalse();
    ((ObjectNode) sheet.at(path.head())).set(path.last().getMatchingProperty(), value);
  }
}
