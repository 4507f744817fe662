package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.air.Air;
import dev.jetting.rules.Verdict.Ruling;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WaiverTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private static final Rulebook BOOK = measuring(Measure.ratio(2), ThrottleBand.WHOLE);

  private static final AssessedSetting SETTING = TwoHundred.assessed(STANDARD, ALL_ROUND);

  private static final AssessedSetting SMALL_MAIN = small(1.1);

  @Test
  void waivedFinding_staysInTheReportAndTheVerdictNamesIt() {
    Waiver waiver = accepted(BOOK.evaluate(SETTING)).until(TODAY);

    Report report = BOOK.evaluate(SETTING, List.of(waiver), TODAY);

    assertThat(report.findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.waiver()).contains(waiver));
    assertThat(report.passes()).isTrue();
    assertThat(report.passesWithoutWaivers()).isFalse();
    assertThat(report.verdict().ruling()).isEqualTo(Ruling.PASSES_BY_WAIVER);
    assertThat(report.verdict().waived())
        .containsExactly(
            new WaivedDanger("danger", "setting.x", Measure.ratio(2), ThrottleBand.WHOLE, waiver));
    assertThat(report.verdict().waiversJudgedOn()).contains(TODAY);
    assertThat(report.unusedWaivers()).isEmpty();
  }

  /** No form and no language is silent about who accepted what, when, or about the rulebook. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "it"})
  void waivedDanger_andChangedRulebook_areNamedInEveryForm(String language) {
    Rule other = Rule.named("left-behind").judging(setting -> Outcome.passed());
    Rulebook book = BOOK.with(other);
    Rulebook whole = Rulebook.of(book.name(), book.version(), book.rules());
    Rulebook less = whole.without("left-behind");
    Waiver waiver = accepted(less.evaluate(SETTING)).until(TODAY);
    Report report = less.evaluate(SETTING, List.of(waiver), TODAY);
    Wording wording = Wording.of(Locale.forLanguageTag(language));

    for (String form :
        List.of(
            ReportText.of(report, wording),
            ReportText.inFull(report, wording),
            ReportText.compact(report, wording),
            ReportMarkdown.of(report, wording),
            ReportMarkdown.inFull(report, wording),
            ReportJson.write(report))) {
      assertThat(form.replaceAll("\\s+", " "))
          .contains("danger", "setting.x", waiver.author(), waiver.reason(), "2026-11-25")
          .contains("left-behind");
    }
    String compact = ReportText.compact(report, wording);
    assertThat(compact.lines().reduce((first, last) -> last).orElseThrow())
        .contains(waiver.author(), waiver.reason(), "2026-11-25", "left-behind");
  }

  @Test
  void waivedWarning_changesNoVerdict() {
    Rule warning = BOOK.rules().get(0).withSeverity(Severity.WARNING);
    Rulebook book = Rulebook.of("book", "1", List.of(warning));
    Waiver waiver = Waiver.ofRule("danger").on("setting.x").by("me").because("known");

    Report report = book.evaluate(SETTING, List.of(waiver), TODAY);

    assertThat(report.findings().get(0).waiver()).contains(waiver);
    assertThat(report.passesWithoutWaivers()).isTrue();
  }

  /** Without a ceiling nobody knows what was accepted. */
  @Test
  void waiverWithoutCeiling_silencesNoDanger() {
    Waiver waiver = Waiver.ofRule("danger").on("setting.x").by("me").because("known");

    Report report = BOOK.evaluate(SETTING, List.of(waiver), TODAY);

    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers())
        .extracting(WaiverTest::words)
        .containsExactly(unused(waiver, "a danger needs a waiver that is made from its finding"));
  }

  @Test
  void worseThanAccepted_isNotCoveredAndSaysFromWhatToWhat() {
    Rulebook at13 = measuring(Measure.leanRisk(Probability.of(0.13)), ThrottleBand.WHOLE);
    Rulebook at41 = measuring(Measure.leanRisk(Probability.of(0.41)), ThrottleBand.WHOLE);
    Waiver waiver = accepted(at13.evaluate(SETTING));

    Report worse = at41.evaluate(SETTING, List.of(waiver), TODAY);

    assertThat(at13.evaluate(SETTING, List.of(waiver), TODAY).passes()).isTrue();
    assertThat(worse.passes()).isFalse();
    assertThat(worse.unusedWaivers().get(0).why())
        .isEqualTo("accepted to 13 % at whole throttle range, now 41 % at whole throttle range");
    assertThat(ReportText.compact(worse)).contains("accepted to 13 %").contains("now 41 %");
    Waiver bold = accepted(at41.evaluate(SETTING));
    assertThat(at13.evaluate(SETTING, List.of(bold), TODAY).passes()).isTrue();
  }

  /** What falls short of its limit is worse the smaller it is. */
  @Test
  void shorterThanAccepted_isNotCovered() {
    Function<Double, Rulebook> measured =
        value ->
            bookOf(
                Finding.below(
                    "setting.x", Measure.ratio(value), Measure.ratio(1), ThrottleBand.WHOLE));
    Waiver waiver = accepted(measured.apply(0.5).evaluate(SETTING));
    assertThat(measured.apply(0.6).evaluate(SETTING, List.of(waiver), TODAY).passes()).isTrue();
    assertThat(measured.apply(0.5).evaluate(SETTING, List.of(waiver), TODAY).passes()).isTrue();
    assertThat(measured.apply(0.4).evaluate(SETTING, List.of(waiver), TODAY).passes()).isFalse();
  }

  @Test
  void sameMeasureInAWiderBandOrAnotherUnit_isNotCovered() {
    Rulebook lower = measuring(Measure.ratio(2), ThrottleBand.eighths(0, 4));
    Waiver waiver = accepted(lower.evaluate(SETTING));
    assertThat(passes(measuring(Measure.ratio(2), ThrottleBand.eighths(0, 4)), waiver)).isTrue();
    assertThat(passes(measuring(Measure.ratio(2), ThrottleBand.eighths(1, 3)), waiver)).isTrue();
    assertThat(passes(measuring(Measure.ratio(2), ThrottleBand.eighths(1, 5)), waiver)).isFalse();
    assertThat(passes(measuring(new Measure(2, "mm"), ThrottleBand.eighths(1, 3)), waiver))
        .isFalse();
  }

  @Test
  void otherEngine_isNotCovered() {
    Waiver waiver = accepted(BOOK.evaluate(SETTING));
    AssessedSetting tuned = TwoHundred.assessed(TwoHundred.tuned(210), ALL_ROUND);
    Report report = BOOK.evaluate(tuned, List.of(waiver), TODAY);
    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers().get(0).why()).startsWith("accepted on engine standard 200");
  }

  /** Accepting one danger accepts no lean place that another rule, or none, would have found. */
  @Test
  void waiverOfAnUnrelatedDanger_isNoneForALeanMixture() {
    Waiver waiver = accepted(BOOK.evaluate(SMALL_MAIN));

    Report report = BOOK.evaluate(SMALL_MAIN, List.of(waiver), TODAY);

    assertThat(report.findings()).allMatch(finding -> finding.waiver().isPresent());
    assertThat(report.verdict().tooLean()).isTrue();
    assertThat(report.passes()).isFalse();
    assertThat(ReportText.compact(report))
        .contains("Do not ride like this: lean risk above what is accepted")
        .contains(" Waived as of 2026-11-25: danger on setting.x, now 2.000, accepted up to 2.000");
  }

  /** Who takes one lean place upon himself has not taken another, nor a leaner one. */
  @Test
  void waiverOfALeanRisk_coversItsOpeningsUpToThatRisk() {
    Probability worst = highest(SMALL_MAIN);
    assertThat(SMALL_MAIN.profile().worst().mixture().throttle().share()).isGreaterThan(0.5);
    assertThat(passesByItsOwnWaiver(worst, ThrottleBand.WHOLE)).isTrue();
    assertThat(passesByItsOwnWaiver(worst, ThrottleBand.eighths(0, 4))).isFalse();
    Probability less = Probability.of(worst.value() - 0.001);
    assertThat(passesByItsOwnWaiver(less, ThrottleBand.WHOLE)).isFalse();
  }

  private static boolean passesByItsOwnWaiver(Probability risk, ThrottleBand band) {
    Rulebook book = measuring(Measure.leanRisk(risk), band);
    Waiver waiver = accepted(book.evaluate(SMALL_MAIN));
    return book.evaluate(SMALL_MAIN, List.of(waiver), TODAY).passes();
  }

  /** A waiver of the leanest opening of a cold day does not waive that day's others. */
  @Test
  void waiverOfTheRiskiestOpeningOfAColdDay_isNoneForItsOtherLeanOpenings() {
    AssessedSetting setting = AssessedSetting.of(coldMorning());
    Probability accepted = setting.sheet().riding().acceptedRisk();
    assertThat(setting.profile().above(accepted)).isEmpty();
    assertThat(setting.coldest().above(accepted)).hasSizeGreaterThan(1);
    RiskPoint riskiest = setting.coldest().worst();
    Measure risk = Measure.leanRisk(riskiest.leanRisk());
    Rulebook book = measuring(risk, ThrottleBand.at(riskiest.mixture().throttle()));
    Rulebook wide = measuring(risk, ThrottleBand.WHOLE);

    Report report = book.evaluate(setting, List.of(accepted(book.evaluate(setting))), TODAY);

    assertThat(report.findings()).allMatch(finding -> finding.waiver().isPresent());
    assertThat(report.verdict().tooLean()).isTrue();
    assertThat(report.passes()).isFalse();
    Report all = wide.evaluate(setting, List.of(accepted(wide.evaluate(setting))), TODAY);
    assertThat(all.verdict().tooLean()).isFalse();
  }

  /** A pilot jet two sizes too small, which nothing but the overrun shows. */
  @Test
  void leanOverrun_passesNoRulebookUnlessAnOverrunAsLeanIsWaived() {
    SetupSheet mild =
        TwoHundred.sheet(STANDARD, ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.5)));
    Riding bold =
        Riding.builder()
            .acceptedRisk(Probability.of(0.5))
            .profile(mild.riding().profile())
            .coldest(mild.riding().coldest())
            .hottest(mild.riding().hottest())
            .build();
    SetupSheet sheet = mild.withRiding(bold);
    AssessedSetting setting = AssessedSetting.of(sheet);
    assertThat(setting.profile().above(bold.acceptedRisk())).isEmpty();
    Rulebook blind =
        Rulebook.of("book", "1", List.of(Rule.named("blind").judging(any -> Outcome.passed())));

    Report report = blind.evaluate(setting);

    assertThat(report.passes()).isFalse();
    assertThat(ReportText.of(report)).contains("Do not ride like this: too lean on the overrun.");
    Measure overrun = Measure.onOverrun(setting.overrun().lambda());
    ThrottleBand shut = ThrottleBand.at(ThrottleOpening.CLOSED);
    assertThat(waives(setting, measuring(overrun, shut))).isTrue();
    assertThat(waives(setting, measuring(overrun, ThrottleBand.eighths(1, 8)))).isFalse();
    assertThat(waives(setting, measuring(Measure.ratio(overrun.value()), shut))).isFalse();
  }

  private static boolean waives(AssessedSetting setting, Rulebook book) {
    return book.evaluate(setting, List.of(accepted(book.evaluate(setting))), TODAY).passes();
  }

  /** The issue's own case: every danger of a lean setting waived, then the jet gets smaller. */
  @Test
  void smallerJetThanTheOneThatWasWaived_doesNotPass() {
    Rulebook book = StandardRulebook.rulebook().without("two-leanest-mid-range-parts");
    Report before = book.evaluate(SMALL_MAIN);
    List<Waiver> waivers =
        before.findings().stream()
            .map(f -> Waiver.of(before, f).by("A. Weaver").because("until the jet arrives"))
            .toList();
    assertThat(before.passes()).isFalse();
    Report waived = book.evaluate(SMALL_MAIN, waivers, TODAY);
    assertThat(waived.passes()).as(ReportText.compact(waived)).isTrue();
    assertThat(book.evaluate(small(1.12), waivers, TODAY).passes()).isTrue();
    assertThat(book.evaluate(small(1.08), waivers, TODAY).passes()).isFalse();
  }

  private static AssessedSetting small(double mainJet) {
    return TwoHundred.assessed(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(mainJet)));
  }

  private static Probability highest(AssessedSetting setting) {
    return Stream.of(setting.profile(), setting.coldest(), setting.hottest())
        .map(RiskProfile::worst)
        .map(RiskPoint::leanRisk)
        .max(Probability::compareTo)
        .orElseThrow();
  }

  private static SetupSheet coldMorning() {
    SetupSheet mild = TwoHundred.sheet(STANDARD, ALL_ROUND);
    Air frost =
        Air.of(
            Pressure.ofHectopascals(1030),
            Temperature.ofCelsius(-15),
            RelativeHumidity.ofPercent(60));
    Riding riding =
        Riding.builder()
            .acceptedRisk(mild.riding().acceptedRisk())
            .profile(mild.riding().profile())
            .coldest(frost)
            .hottest(mild.riding().hottest())
            .build();
    return mild.withRiding(riding);
  }

  @Test
  void waiverOfAFormerId_stillHolds() {
    Waiver now = accepted(BOOK.evaluate(SETTING));
    Waiver waiver =
        new Waiver(
            "old-danger", now.subject(), now.author(), now.reason(), now.expires(), now.accepted());
    assertThat(passes(BOOK, waiver)).isTrue();
  }

  @Test
  void expiredWaiver_waivesNothingAndIsTold() {
    Waiver waiver = accepted(BOOK.evaluate(SETTING)).until(TODAY.minusDays(1));
    Report report = BOOK.evaluate(SETTING, List.of(waiver), TODAY);
    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers())
        .extracting(WaiverTest::words)
        .containsExactly(unused(waiver, "expired on 2026-11-24"));
  }

  @Test
  void waiverThatMeetsNothing_isToldWithItsReason() {
    Waiver otherSubject = Waiver.ofRule("danger").on("setting.y").by("me").because("known");
    Waiver otherRule = Waiver.ofRule("dangr").on("setting.x").by("me").because("known");
    Report report = BOOK.evaluate(SETTING, List.of(otherSubject, otherRule), TODAY);
    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers())
        .extracting(WaiverTest::words)
        .containsExactly(
            unused(otherSubject, "no finding of this rule on this subject"),
            unused(otherRule, "no rule of this id in the rulebook"));
  }

  /** Otherwise a waiver of thousands of letters would end the evaluation that says so. */
  @Test
  void ceilingOnAnEngineWhoseNameIsNoId_isRefusedWithItsField() {
    for (String engine : new String[] {"", "e".repeat(61), "a\u202eb"}) {
      assertThatExceptionOfType(InvalidValueException.class)
          .isThrownBy(() -> new Ceiling(engine, "slide", Measure.ratio(1), ThrottleBand.WHOLE))
          .satisfies(e -> assertThat(e.field()).isEqualTo("engine"));
    }
  }

  @Test
  void of_findingOfAnotherReport_isRefused() {
    Report other = measuring(Measure.ratio(3), ThrottleBand.WHOLE).evaluate(SETTING);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Waiver.of(BOOK.evaluate(SETTING), other.findings().get(0)))
        .withMessage("finding of rule danger: allowed one of the report");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "VERDICT\nNo rule speaks", "a\u202eb", "a\u001b[2J"})
  void authorOrReasonThatIsNoLine_isRefused(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Waiver.ofRule("danger").on("x").by("me").because(text))
        .withMessageStartingWith("reason of a waiver ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Waiver.ofRule("danger").on("x").by(text).because("known"))
        .withMessageStartingWith("author of a waiver ");
  }

  private static boolean passes(Rulebook book, Waiver waiver) {
    return book.evaluate(SETTING, List.of(waiver), TODAY).passes();
  }

  private static Waiver accepted(Report report) {
    return Waiver.of(report, report.findings().get(0)).by("A. Weaver").because("measured by hand");
  }

  private static Rulebook measuring(Measure measured, ThrottleBand band) {
    Measure limit = new Measure(measured.value() / 2, measured.unit());
    return bookOf(Finding.above("setting.x", measured, limit, band));
  }

  private static UnusedWaiver unused(Waiver waiver, String why) {
    return new UnusedWaiver(waiver, Message.plain(why));
  }

  /** The same with its reason as a plain text. */
  private static UnusedWaiver words(UnusedWaiver unused) {
    return unused(unused.waiver(), unused.why());
  }

  private static Rulebook bookOf(Finding.Texts finding) {
    Rule rule =
        Rule.named("danger")
            .formerly("old-danger")
            .severity(Severity.DANGER)
            .judging(setting -> Outcome.failed(finding.says("Wrong.", "Mend it.")));
    return Rulebook.of("book", "1", List.of(rule));
  }
}
