package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.air.Air;
import dev.jetting.rules.risk.Riding;
import dev.jetting.units.JetBore;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WaiverTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private static final Rule DANGER =
      Rule.named("danger")
          .formerly("old-danger")
          .severity(Severity.DANGER)
          .judging(
              setting ->
                  Outcome.failed(
                      Finding.above(
                              "setting.x", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
                          .says("Wrong.", "Mend it.")));

  private static final Rulebook BOOK = Rulebook.of("book", "1", List.of(DANGER));

  private static final AssessedSetting SETTING = TwoHundred.assessed(STANDARD, ALL_ROUND);

  @Test
  void waivedFinding_staysInTheReportAndNoLongerStopsIt() {
    Waiver waiver = waiver("danger", "setting.x", Optional.of(TODAY));
    Report report = BOOK.evaluate(SETTING, List.of(waiver), TODAY);
    assertThat(report.findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.waiver()).contains(waiver));
    assertThat(report.passes()).isTrue();
    assertThat(report.unusedWaivers()).isEmpty();
  }

  /** Who takes one lean place upon himself has not taken another. */
  @Test
  void waiverOfOneOpening_isNoneForALeanMixtureAtAnother() {
    AssessedSetting lean =
        TwoHundred.assessed(STANDARD, ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.1)));
    assertThat(lean.profile().worst().mixture().throttle().share()).isGreaterThan(0.5);
    Waiver waiver = waiver("danger", "setting.x", Optional.empty());

    assertThat(bookOf(ThrottleBand.WHOLE).evaluate(lean, List.of(waiver), TODAY).passes()).isTrue();
    assertThat(bookOf(ThrottleBand.eighths(0, 4)).evaluate(lean, List.of(waiver), TODAY).passes())
        .isFalse();
  }

  /** Whoever takes the leanest place of a cold day upon himself has not taken that day's others. */
  @Test
  void waiverOfTheRiskiestOpeningOfAColdDay_isNoneForItsOtherLeanOpenings() {
    AssessedSetting setting = AssessedSetting.of(coldMorning());
    Probability accepted = setting.sheet().riding().acceptedRisk();
    assertThat(setting.profile().above(accepted)).isEmpty();
    assertThat(setting.coldest().above(accepted)).hasSizeGreaterThan(1);
    ThrottleOpening riskiest = setting.coldest().worst().mixture().throttle();
    Rulebook book = bookOf(new ThrottleBand(riskiest, riskiest));
    Waiver waiver = waiver("danger", "setting.x", Optional.empty());

    Report report = book.evaluate(setting, List.of(waiver), TODAY);

    assertThat(report.findings()).allMatch(finding -> finding.waiver().isPresent());
    assertThat(report.passes()).isFalse();
    assertThat(bookOf(ThrottleBand.WHOLE).evaluate(setting, List.of(waiver), TODAY).passes())
        .isTrue();
  }

  /** A pilot jet two sizes too small, which nothing but the overrun shows. */
  @Test
  void leanOverrun_passesNoRulebookUnlessADangerAtClosedThrottleIsWaived() {
    SetupSheet mild =
        TwoHundred.sheet(STANDARD, ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.5)));
    Riding bold =
        new Riding(
            Probability.of(0.5),
            mild.riding().profile(),
            mild.riding().coldest(),
            mild.riding().hottest());
    SetupSheet sheet =
        new SetupSheet(mild.title(), mild.setup(), bold, mild.parts(), mild.provenance());
    AssessedSetting setting = AssessedSetting.of(sheet);
    assertThat(setting.profile().above(bold.acceptedRisk())).isEmpty();
    Rulebook blind =
        Rulebook.of("book", "1", List.of(Rule.named("blind").judging(any -> Outcome.passed())));

    Report report = blind.evaluate(setting);

    assertThat(report.passes()).isFalse();
    assertThat(ReportText.of(report)).contains("Do not ride like this: too lean on the overrun.");
    Waiver waiver = waiver("danger", "setting.x", Optional.empty());
    assertThat(bookOf(ThrottleBand.WHOLE).evaluate(setting, List.of(waiver), TODAY).passes())
        .isTrue();
    assertThat(
            bookOf(ThrottleBand.eighths(1, 8)).evaluate(setting, List.of(waiver), TODAY).passes())
        .isFalse();
  }

  private static SetupSheet coldMorning() {
    SetupSheet mild = TwoHundred.sheet(STANDARD, ALL_ROUND);
    Air frost =
        Air.of(
            Pressure.ofHectopascals(1030),
            Temperature.ofCelsius(-15),
            RelativeHumidity.ofPercent(60));
    Riding riding =
        new Riding(
            mild.riding().acceptedRisk(), mild.riding().profile(), frost, mild.riding().hottest());
    return new SetupSheet(mild.title(), mild.setup(), riding, mild.parts(), mild.provenance());
  }

  private static Rulebook bookOf(ThrottleBand band) {
    Rule rule =
        Rule.named("danger")
            .severity(Severity.DANGER)
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above("setting.x", Measure.ratio(2), Measure.ratio(1), band)
                            .says("Wrong.", "Mend it.")));
    return Rulebook.of("book", "1", List.of(rule));
  }

  @Test
  void waiverOfAFormerId_stillHolds() {
    Waiver waiver = waiver("old-danger", "setting.x", Optional.empty());
    assertThat(BOOK.evaluate(SETTING, List.of(waiver), TODAY).passes()).isTrue();
  }

  @Test
  void expiredWaiver_waivesNothingAndIsTold() {
    Waiver waiver = waiver("danger", "setting.x", Optional.of(TODAY.minusDays(1)));
    Report report = BOOK.evaluate(SETTING, List.of(waiver), TODAY);
    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers())
        .containsExactly(new UnusedWaiver(waiver, "expired on 2026-11-24"));
  }

  @Test
  void waiverThatMeetsNothing_isToldWithItsReason() {
    Waiver otherSubject = waiver("danger", "setting.y", Optional.empty());
    Waiver otherRule = waiver("dangr", "setting.x", Optional.empty());
    Report report = BOOK.evaluate(SETTING, List.of(otherSubject, otherRule), TODAY);
    assertThat(report.passes()).isFalse();
    assertThat(report.unusedWaivers())
        .containsExactly(
            new UnusedWaiver(otherSubject, "no finding of this rule on this subject"),
            new UnusedWaiver(otherRule, "no rule of this id in the rulebook"));
  }

  @Test
  void waiverWithoutReason_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Waiver("danger", "setting.x", " ", Optional.empty()))
        .withMessageContaining("danger")
        .withMessageContaining("sentence");
  }

  private static Waiver waiver(String rule, String subject, Optional<LocalDate> expires) {
    return new Waiver(rule, subject, "measured by hand", expires);
  }
}
