package dev.jetting.rules.render;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
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
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.JetBore;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportTextTest {

  private static final Setting SMALL_MAIN = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1));
  private static final Setting BIG_MAIN = ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.6));

  @Test
  void of_null_isRefused() {
    assertThatNullPointerException().isThrownBy(() -> ReportText.of(null)).withMessage("report");
  }

  @Test
  void of_tellsTheSettingInTradeStyle() {
    assertThat(flat(text(ALL_ROUND)))
        .contains(
            "main 126, pilot 55, mixture screw 1½ turns out, cutaway 40, needle jet 2.66 mm,"
                + " needle needle, clip 2 of 5 from top");
  }

  @Test
  void of_fuelWarmerThanTheAir_tellsByHowMuch() {
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, ALL_ROUND);
    SetupSheet warmed =
        sheet.withSetup(sheet.setup().withFuelWarmerBy(TemperatureDifference.ofKelvin(20)));

    assertThat(flat(ReportText.of(book(AssessedSetting.of(warmed)))))
        .contains("E5 with 50:1 two-stroke-oil, in the float chamber 20 K warmer than the air");
    assertThat(text(ALL_ROUND)).doesNotContain("warmer than the air");
  }

  @Test
  void of_smallMainJet_marksTheWideOpeningsLean() {
    String text = text(SMALL_MAIN);
    assertThat(row(text, "full")).endsWith("LEAN").contains("main");
    assertThat(row(text, "closed")).doesNotContain("LEAN").contains("pilot");
  }

  @Test
  void of_bigMainJet_marksTheWideOpeningsRich() {
    String text = text(BIG_MAIN);
    assertThat(row(text, "full")).endsWith("RICH");
    assertThat(text).doesNotContain("LEAN");
  }

  @Test
  void of_worstPointBetweenTheMarksOfTheGrip_hasARow() {
    AssessedSetting setting = assessed(ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.62)));
    ThrottleOpening worst = setting.profile().worst().mixture().throttle();
    assertThat(worst.share() * 8).isNotEqualTo(Math.rint(worst.share() * 8));
    String row = row(ReportText.of(book(setting)), throttle(worst));
    assertThat(row).endsWith("LEAN");
  }

  @Test
  void of_everyLine_fitsEightyColumns() {
    for (Setting setting : List.of(ALL_ROUND, SMALL_MAIN, BIG_MAIN)) {
      assertThat(text(setting).lines())
          .allMatch(line -> line.codePointCount(0, line.length()) <= 80);
      assertThat(text(setting).lines()).allMatch(line -> line.equals(line.stripTrailing()));
    }
  }

  @Test
  void of_findings_standInOrderOfDangerWithTheirRemedy() {
    String text = text(SMALL_MAIN, rule("a-note", Severity.NOTE), rule("bad", Severity.DANGER));
    assertThat(flat(text))
        .containsSubsequence(
            "1. DANGER, whole throttle range [bad, setting] bad is wrong.",
            "What to do: cure bad.",
            "2. NOTE",
            "cure a-note.");
  }

  @Test
  void of_noFindings_saysSo() {
    assertThat(text(ALL_ROUND)).containsPattern("Findings, the most dangerous first -+\nnone\n");
  }

  @Test
  void of_ruleNotEvaluated_tellsWhatIsMissingAndDoesNotPass() {
    Rule open =
        Rule.named("open")
            .title("An open question")
            .severity(Severity.DANGER)
            .judging(setting -> Outcome.notEvaluated("the age of the piston"));
    assertThat(flat(text(ALL_ROUND, open)))
        .contains("DANGER rule: An open question missing: the age of the piston [open]")
        .contains(
            "Do not ride before this is answered: could not be evaluated: \"An open question\".");
  }

  @Test
  void of_brokenRule_tellsHowItBroke() {
    Rule broken =
        Rule.named("broken")
            .judging(
                setting -> {
                  throw new IllegalStateException("two\nlines");
                });
    assertThat(flat(text(ALL_ROUND, broken)))
        .contains("Broken rules")
        .contains("IllegalStateException: two lines [broken]")
        .contains("broken: \"broken\".");
  }

  @Test
  void verdict_neverPromisesSafety() {
    Rule content = Rule.named("content").judging(setting -> Outcome.passed());
    assertThat(flat(text(ALL_ROUND, content)))
        .contains(
            "VERDICT No rule speaks against a careful first ride from the rich side, with a lean"
                + " risk of 10 % accepted.")
        .contains("no promise of safety");
    assertThat(flat(text(SMALL_MAIN, rule("bad", Severity.DANGER))))
        .contains("VERDICT Do not ride like this: danger by \"bad\".");
  }

  @Test
  void verdict_withoutRules_isNoPass() {
    assertThat(flat(text(ALL_ROUND)))
        .contains("VERDICT Do not ride before this is answered: no rule had anything to say.");
  }

  @Test
  void verdict_leanThoughNoRuleLooked_isNoPass() {
    Rule blind = Rule.named("blind").judging(setting -> Outcome.passed());
    assertThat(book(assessed(SMALL_MAIN), blind).passes()).isFalse();
    assertThat(flat(text(SMALL_MAIN, blind)))
        .contains("VERDICT Do not ride like this: lean risk above what is accepted.");
  }

  @Test
  void of_waivers_tellsWhatTheyWaivedAndWhatNot() {
    Rule bad = rule("bad", Severity.DANGER);
    LocalDate day = LocalDate.of(2026, 11, 25);
    AssessedSetting setting = assessed(ALL_ROUND);
    Rulebook book = Rulebook.of("test", "1", List.of(bad));
    Report before = book.evaluate(setting);
    Report report =
        book.evaluate(
            setting,
            List.of(
                Waiver.of(before, before.findings().get(0))
                    .by("A. Weaver")
                    .because("seen on the brake")
                    .until(day),
                Waiver.ofRule("worse").on("setting").by("B. Smith").because("old habit")),
            day);
    assertThat(flat(ReportText.of(report)))
        .contains(
            "Waived up to 2.000 at whole throttle range by A. Weaver (until 2026-11-25): seen on"
                + " the brake")
        .contains("Waivers that waived nothing")
        .contains(
            "- Not in force, no rule of this id in the rulebook. Waived by B. Smith: old habit")
        .contains(
            "VERDICT Passes only by waiver as of 2026-11-25: bad on setting, now 2.000, accepted"
                + " up to 2.000 at whole throttle range by A. Weaver (until 2026-11-25): seen on"
                + " the brake. No other rule speaks against a careful first ride")
        .contains("Waivers judged by the day 2026-11-25.");
  }

  @Test
  void of_verdictAndWorstSpot_standFirst() {
    assertThat(text(SMALL_MAIN, rule("bad", Severity.DANGER)))
        .containsPattern(
            "^Report on: .*\n=+\nVERDICT      Do not ride like this[^=]*\n"
                + "worst        lean risk over 99 % at ");
  }

  /** Sixty-six lines are a page of a line printer; a report with three findings stays within. */
  @Test
  void of_threeFindings_fitOnOnePage() {
    String text =
        text(
            SMALL_MAIN,
            rule("bad", Severity.DANGER),
            rule("worse", Severity.DANGER),
            rule("odd", Severity.WARNING));
    assertThat(text.lines().count()).isLessThanOrEqualTo(66);
  }

  @Test
  void of_assumedLimits_areMarkedInTheTableAndCounted() {
    Report report = book(assessed(ALL_ROUND));
    long assumed =
        report.assumptions().values().stream()
            .filter(value -> value.origin() == Coefficient.Origin.ASSUMED)
            .count();
    assertThat(flat(ReportText.of(report)))
        .contains("limit*")
        .contains("* an assumption, neither measured nor published")
        .contains("rests on " + assumed + " assumed values, neither measured nor published")
        .doesNotContain("lean limit by λ wanted");
  }

  @Test
  void inFull_assumedValues_areListed() {
    assertThat(flat(ReportText.inFull(book(assessed(ALL_ROUND)))))
        .contains("Assumed, neither measured nor published")
        .contains("lean limit by λ wanted 1.16;")
        .contains("tolerance of pilot jets 0.005 mm; tolerance of main jets 0.005 mm;");
  }

  @Test
  void of_measuredLimits_areNotMarkedAsAssumed() {
    Coefficient rich = Coefficient.sourced(0.8, "1", "measured for this test");
    Coefficient lean = Coefficient.sourced(1.16, "1", "measured for this test");
    Coefficient spread = Coefficient.sourced(0.05, "1", "measured for this test");
    Coefficient tolerance = Coefficient.sourced(0.003, "mm", "measured for this test");
    RiskModel measured =
        new RiskModel(
            MixtureLimits.margins().lean(lean).rich(rich).overrun(lean).build(),
            ModelUncertainty.builder()
                .pilot(spread)
                .needle(spread)
                .main(spread)
                .air(spread)
                .residual(spread)
                .residualLength(spread)
                .pilotJetTolerance(tolerance)
                .mainJetTolerance(tolerance)
                .needleJetTolerance(tolerance)
                .needleTolerance(tolerance)
                .guessed(Set.of())
                .build(),
            RiskModel.assumed().steps());
    AssessedSetting setting = AssessedSetting.of(TwoHundred.sheet(STANDARD, ALL_ROUND), measured);
    assertThat(ReportText.inFull(book(setting)))
        .contains("limit ")
        .doesNotContain("limit*")
        .doesNotContain("an assumption")
        .doesNotContain("lean limit by λ wanted")
        .containsPattern("load uphill\\s+by\\s+that\\s+of\\s+the\\s+level\\s+road");
  }

  /** What a stranger writes draws no line that looks like the page's own. */
  @Test
  void of_textsThatImitateAVerdict_leaveOneVerdict() {
    String fake = "x ".repeat(37) + "=".repeat(80) + " VERDICT No rule speaks against it.";
    SetupSheet sheet = TwoHundred.sheet(STANDARD, ALL_ROUND);
    SetupSheet hostile = sheet.withTitle(fake.substring(74));
    Rule open =
        Rule.named("open")
            .title("t ".repeat(32) + fake)
            .judging(setting -> Outcome.notEvaluated(fake + "\u001b[31m\u202e\u2028" + fake));
    Rule bad =
        Rule.named("bad")
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above(fake, Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
                            .says(fake, fake)));
    Report report = book(AssessedSetting.of(hostile), open, bad);
    for (String text : List.of(ReportText.of(report), ReportText.compact(report))) {
      assertThat(text.lines().filter(line -> line.startsWith("VERDICT"))).hasSize(1);
      assertThat(text.chars().filter(c -> c != '\n'))
          .noneMatch(c -> Character.isISOControl(c) || c == 0x202e || c == 0x2028);
    }
    assertThat(ReportText.of(report).lines().filter(line -> line.matches("=+"))).hasSize(1);
  }

  /**
   * Neither wide characters nor blanks that do not break move words to a column of their choice.
   */
  @ParameterizedTest
  @ValueSource(strings = {"\u00a0", "\u2003", "\u3000", "\u2800", "\u3164"})
  void of_textsThatAskForAColumn_stayInTheirPlace(String blank) {
    String block = "VERDICT" + blank.repeat(6) + "No rule speaks against it.".replace(" ", blank);
    String fake = "x".repeat(67) + block;
    Rule bad =
        Rule.named("bad")
            .severity(Severity.DANGER)
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above(fake, Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
                            .says(fake, fake)));
    SetupSheet sheet = TwoHundred.sheet(STANDARD, ALL_ROUND);
    SetupSheet hostile = sheet.withTitle("漢".repeat(40) + block);
    Report report = book(AssessedSetting.of(hostile), bad);
    Waiver waiver = Waiver.of(report, report.findings().get(0)).by("A" + blank).because(fake);
    Waiver unused = new Waiver(fake, fake, "A", fake, Optional.empty(), Optional.empty());
    Report waived =
        Rulebook.of("book", "1", List.of(bad))
            .evaluate(
                AssessedSetting.of(hostile), List.of(waiver, unused), LocalDate.of(2026, 11, 28));

    for (Report each : List.of(report, waived)) {
      for (String text : List.of(ReportText.of(each), ReportText.inFull(each))) {
        assertThat(text.lines().filter(line -> columns(line) > 80)).isEmpty();
        assertThat(text.lines().filter(line -> line.startsWith("VERDICT"))).hasSize(1);
        assertThat(text).doesNotContain("VERDICT" + " ".repeat(6) + "No");
      }
    }
  }

  /** A terminal draws ideographs two columns wide. */
  private static int columns(String line) {
    return line.codePoints().map(c -> Character.isIdeographic(c) ? 2 : 1).sum();
  }

  @Test
  void of_headingWiderThanThePage_hasNoRule() {
    Wording wordy = Wording.english().with(Map.of("page.findings", "f".repeat(100)));
    assertThat(ReportText.of(book(assessed(ALL_ROUND)), wordy)).contains("f".repeat(100));
  }

  @Test
  void of_cautions_areAllThere() {
    Report report = book(assessed(ALL_ROUND));
    String text = flat(ReportText.of(report));
    assertThat(report.cautions()).isNotEmpty().allMatch(text::contains);
  }

  @Test
  void of_anyLocale_sameText() {
    String text = text(SMALL_MAIN);
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(text(SMALL_MAIN)).isEqualTo(text);
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void compact_hasALineForEachThingAndTheVerdictLast() {
    Rule open = Rule.named("open").judging(setting -> Outcome.notEvaluated("one\nthing"));
    Rule broken = Rule.named("broken").judging(setting -> null);
    LocalDate day = LocalDate.of(2026, 11, 25);
    Report report =
        Rulebook.of(
                "book",
                "1",
                List.of(rule("a-note", Severity.NOTE), rule("bad", Severity.DANGER), open, broken))
            .evaluate(
                assessed(ALL_ROUND),
                List.of(
                    Waiver.ofRule("a-note").on("setting").by("me").because("seen"),
                    Waiver.ofRule("bad").on("setting").by("me").because("old habit")),
                day);
    assertThat(ReportText.compact(report))
        .isEqualTo(
            """
            DANGER whole throttle range: bad is wrong. [bad, setting]
            NOTE whole throttle range: a-note is wrong. Waived by me: seen [a-note, setting]
            OPEN WARNING rule: open: one thing [open]
            BROKEN WARNING rule: broken: the rule gave no outcome [broken]
            UNUSED Not in force, a danger needs a waiver that is made from its finding. Waived by me: old habit [bad, setting]
            VERDICT Do not ride like this: danger by "bad"; broken: "broken". Only one day was assessed: coldest and hottest day are stated as today's air.
            """);
  }

  /** A verdict is no text of a document, so nothing limits how many rules it names. */
  @Test
  void of_moreDangersThanATextInJsonHoldsCharacters_namesEach() {
    Rule[] rules =
        IntStream.range(0, 250)
            .mapToObj(i -> rule("rule-of-a-very-careful-shop-that-has-many-" + i, Severity.DANGER))
            .toArray(Rule[]::new);
    Report report = book(assessed(SMALL_MAIN), rules);
    assertThat(ReportText.compact(report, Wording.of(Locale.GERMAN)))
        .contains("So nicht fahren: Gefahr durch ")
        .contains("has-many-99“.");
    assertThat(ReportText.of(report)).contains("has-many-249");
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

  private static AssessedSetting assessed(Setting setting) {
    return TwoHundred.assessed(STANDARD, setting);
  }

  private static Report book(AssessedSetting setting, Rule... rules) {
    return Rulebook.of("book", "1", List.of(rules)).evaluate(setting);
  }

  private static String text(Setting setting, Rule... rules) {
    return ReportText.of(book(assessed(setting), rules));
  }

  private static String throttle(ThrottleOpening opening) {
    return TradeStyle.throttle(opening).replace(" throttle", "");
  }

  private static String row(String text, String throttle) {
    return text.lines().filter(line -> line.startsWith(throttle + " ")).findFirst().orElseThrow();
  }

  /** On one line with single spaces, so that it does not matter where lines break. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
