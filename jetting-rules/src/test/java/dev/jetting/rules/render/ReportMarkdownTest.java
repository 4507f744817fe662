package dev.jetting.rules.render;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.Waiver;
import dev.jetting.units.JetBore;
import java.time.LocalDate;
import java.util.List;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.junit.jupiter.api.Test;

class ReportMarkdownTest {

  private static final AssessedSetting SMALL_MAIN =
      TwoHundred.assessed(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1)));

  @Test
  void of_null_isRefused() {
    assertThatNullPointerException()
        .isThrownBy(() -> ReportMarkdown.of(null))
        .withMessage("report");
  }

  @Test
  void of_anyReport_hasTheVerdictFirst() {
    assertThat(paragraphs(report(rule("bad", Severity.DANGER))).get(0))
        .startsWith("Verdict: Do not ride like this: danger by \"bad\".");
    Rule content = Rule.named("content").judging(setting -> Outcome.passed());
    AssessedSetting good = TwoHundred.assessed(STANDARD, ALL_ROUND);
    assertThat(paragraphs(Rulebook.of("book", "1", List.of(content)).evaluate(good)).get(0))
        .contains("no promise of safety");
  }

  @Test
  void of_throttleRange_hasARowOfEveryRowOfTheTextPage() {
    Report report = report();
    List<String> cells = MarkdownReader.cells(read(report));
    assertThat(cells).containsSubsequence("closed", "1/16", "1/8", "1/4", "1/2", "3/4", "full");
    assertThat(cells.subList(cells.indexOf("full"), cells.indexOf("full") + 8))
        .contains("main")
        .endsWith("LEAN");
    assertThat(cells)
        .contains(
            "main 100, pilot 55, mixture screw 1½ turns out, cutaway 40, needle"
                + " jet 2.66 mm, needle needle, clip 2 of 5 from top");
  }

  @Test
  void of_findings_areNumberedInOrderOfDangerWithRemedyAndIds() {
    Node document = read(report(rule("a-note", Severity.NOTE), rule("bad", Severity.DANGER)));
    assertThat(MarkdownReader.texts(document, ListItem.class))
        .startsWith(
            """
            DANGER, whole throttle range: bad is wrong.
            What to do: cure bad.
            [bad, setting]\
            """,
            """
            NOTE, whole throttle range: a-note is wrong.
            What to do: cure a-note.
            [a-note, setting]\
            """);
  }

  @Test
  void of_noFindings_saysSo() {
    assertThat(paragraphs(report())).contains("none");
  }

  @Test
  void of_openAndBrokenRules_areTold() {
    Rule open =
        Rule.named("open").judging(setting -> Outcome.notEvaluated("the age of the piston"));
    Rule broken =
        Rule.named("broken")
            .judging(
                setting -> {
                  throw new IllegalStateException("two\nlines");
                });
    Node document = read(report(open, broken));
    assertThat(MarkdownReader.texts(document, Heading.class))
        .contains("Could not be evaluated", "Broken rules");
    assertThat(MarkdownReader.texts(document, ListItem.class))
        .anyMatch(item -> item.contains("missing: the age of the piston"))
        .anyMatch(item -> item.contains("IllegalStateException: two lines"));
  }

  @Test
  void of_waivers_tellsWhatTheyWaivedAndWhatNot() {
    LocalDate day = LocalDate.of(2026, 11, 25);
    Rulebook book = Rulebook.of("book", "1", List.of(rule("bad", Severity.DANGER)));
    Report before = book.evaluate(SMALL_MAIN);
    Report report =
        book.evaluate(
            SMALL_MAIN,
            List.of(
                Waiver.of(before, before.findings().get(0))
                    .by("A. Weaver")
                    .because("seen on the brake")
                    .until(day),
                Waiver.ofRule("worse").on("setting").by("B. Smith").because("old habit")),
            day);
    assertThat(MarkdownReader.texts(read(report), ListItem.class))
        .anyMatch(item -> item.contains("by A. Weaver (until 2026-11-25): seen on the brake"))
        .contains(
            "Not in force, no rule of this id in the rulebook. Waived by B. Smith: old habit\n"
                + "[worse, setting]");
    assertThat(paragraphs(report))
        .anyMatch(text -> text.contains("Waived as of 2026-11-25: bad on setting"))
        .anyMatch(text -> text.contains("Waivers judged by the day 2026-11-25."));
  }

  @Test
  void of_assumptionsAndCautions_areAllThere() {
    Report report = report();
    Node document = read(report);
    assertThat(MarkdownReader.texts(document, ListItem.class)).containsAll(report.cautions());
    assertThat(paragraphs(report))
        .anyMatch(text -> text.contains(" assumed values, neither measured nor published"))
        .contains("* an assumption, neither measured nor published");
  }

  @Test
  void inFull_assumedValues_areListed() {
    Node document = MarkdownReader.read(ReportMarkdown.inFull(report()));
    assertThat(MarkdownReader.texts(document, Paragraph.class))
        .anyMatch(text -> text.contains("lean limit by λ wanted 1.16;"));
  }

  @Test
  void of_hostileTexts_standInItAsText() {
    SetupSheet sheet = TwoHundred.sheet(STANDARD, ALL_ROUND);
    String title = "<script>a|b</script> [x](https://a.example)";
    SetupSheet hostile = sheet.withTitle(title);
    Rule rule =
        Rule.named("r").title("![t](u)").judging(setting -> Outcome.notEvaluated("# x\n---\n> y"));
    Node document =
        read(Rulebook.of("_b_", "1", List.of(rule)).evaluate(AssessedSetting.of(hostile)));
    assertThat(MarkdownReader.texts(document, Heading.class).get(0))
        .isEqualTo("Report on: " + title);
    assertThat(MarkdownReader.texts(document, ListItem.class))
        .contains("WARNING rule: ![t](u)\nmissing: # x --- > y\n[r]");
    assertThat(MarkdownReader.kinds(document))
        .doesNotContain("Link", "Image", "HtmlInline", "HtmlBlock", "BlockQuote", "Emphasis");
  }

  private static Rule rule(String id, Severity severity) {
    return Rule.named(id)
        .severity(severity)
        .judging(
            setting ->
                Outcome.failed(
                    Finding.above("setting", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
                        .says(id + " is wrong.", "cure " + id + ".")));
  }

  private static Report report(Rule... rules) {
    return Rulebook.of("book", "1", List.of(rules)).evaluate(SMALL_MAIN);
  }

  private static Node read(Report report) {
    return MarkdownReader.read(ReportMarkdown.of(report));
  }

  private static List<String> paragraphs(Report report) {
    return MarkdownReader.texts(read(report), Paragraph.class);
  }
}
