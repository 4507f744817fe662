package dev.jetting.rules.standard;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.FILTER;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.ProofUse;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A proven setting as evidence, and what makes its proof void, on whole reports. */
class ProvenSettingTest {

  private static final ThrottleOpening FULL = ThrottleOpening.FULL;
  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  private static final SetupSheet BEHIND_FILTER =
      TwoHundred.sheet(STANDARD, ALL_ROUND.withIntake(FILTER))
          .withProvenance(ranWell(FULL, HALF, ThrottleOpening.ofEighths(2)));

  private static Provenance ranWell(ThrottleOpening... openings) {
    return Provenance.builder()
        .observed(
            List.of(openings).stream()
                .map(throttle -> new ProvenObservation(throttle, new Evidence.Proven()))
                .toList())
        .build();
  }

  private static Report report(SetupSheet sheet) {
    return StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet));
  }

  private static Status status(String rule, SetupSheet sheet) {
    return StandardRulebook.rulebook()
        .rule(rule)
        .orElseThrow()
        .evaluate(AssessedSetting.of(sheet))
        .status();
  }

  private static RiskPoint at(ThrottleOpening throttle, SetupSheet sheet) {
    return AssessedSetting.of(sheet).profile().nearest(throttle);
  }

  private static SetupSheet withoutFilter() {
    Setup setup = BEHIND_FILTER.setup();
    return BEHIND_FILTER.withSetup(
        setup.withSetting(setup.setting().withIntake(ALL_ROUND.intake())));
  }

  @Test
  void provenSetting_isExpectedAboutAsItWasSeen() {
    Lambda need = STANDARD.need().at(FULL);
    SetupSheet unproven = BEHIND_FILTER.withProvenance(Provenance.unknown());

    assertThat(Math.abs(lnOff(at(FULL, BEHIND_FILTER), need)))
        .isLessThan(Math.abs(lnOff(at(FULL, unproven), need)));
    assertThat(at(FULL, BEHIND_FILTER).spread()).isLessThan(at(FULL, unproven).spread());
  }

  private static double lnOff(RiskPoint point, Lambda from) {
    return StrictMath.log(point.lambda().value() / from.value());
  }

  @Test
  void measuredLambda_countsForMoreThanThatItRanWell() {
    SetupSheet measured =
        BEHIND_FILTER.withProvenance(
            Provenance.builder()
                .observed(
                    new ProvenObservation(FULL, new Evidence.Wideband(STANDARD.need().at(FULL))))
                .build());
    SetupSheet ranWell = BEHIND_FILTER.withProvenance(ranWell(FULL));

    assertThat(at(FULL, measured).spread()).isLessThan(at(FULL, ranWell).spread());
  }

  /** The readings are of the proven setup, and only the change is computed. */
  @Test
  void filterOff_afterItWasProven_isTooLeanAndDoesNotPass() {
    double change =
        StrictMath.log(
            MixtureModel.of(withoutFilter().setup()).at(FULL).lambda().value()
                / MixtureModel.of(BEHIND_FILTER.setup()).at(FULL).lambda().value());

    assertThat(
            StrictMath.log(
                at(FULL, withoutFilter()).lambda().value()
                    / at(FULL, BEHIND_FILTER).lambda().value()))
        .isCloseTo(change, offset(0.02));
    assertThat(status("proven-room", withoutFilter())).isEqualTo(Status.FAILED);
    assertThat(report(withoutFilter()).passes()).isFalse();
  }

  /** As the rider does it: bigger jets until the room is there again; the old jets stay proven. */
  @Test
  void filterOff_andRicherJets_clearsTheDanger() {
    SetupSheet sheet = withoutFilter();
    int sizes = 0;
    while (status("proven-room", sheet) == Status.FAILED && sizes < 20) {
      Setup setup = sheet.setup();
      Setting richer =
          setup
              .setting()
              .withMainJet(JetBore.ofMillimetres(setup.setting().mainJet().millimetres() + 0.02))
              .withNeedleJet(
                  TwoHundred.needleJet(
                      Math.rint((setup.setting().needleJet().bore().millimetres() + 0.01) * 100)
                          / 100));
      sheet = sheet.withSetup(setup.withSetting(richer));
      sizes++;
    }
    assertThat(sizes).isBetween(2, 19);
    assertThat(sheet.provenance().provenSetting(sheet.setup().setting()))
        .isEqualTo(BEHIND_FILTER.setup().setting());
  }

  /** A plug read black at full throttle says that there was more room than usual. */
  @Test
  void seenToBeRich_hasMoreRoom() {
    SetupSheet thin = withoutFilter();
    Provenance black =
        thin.provenance().toBuilder()
            .observed(
                new ProvenObservation(FULL, new Evidence.Wideband(Lambda.of(0.66))),
                new ProvenObservation(FULL, new Evidence.Colour(PlugColour.BLACK)))
            .build();

    assertThat(at(FULL, thin.withProvenance(black)).leanRisk())
        .isLessThan(at(FULL, thin).leanRisk());
  }

  /** 70 cm³ on a 50's jets: the model alone sees no harm in it, and that is what it must not do. */
  @Test
  void cylinderKit_onProvenJets_isRefusedUntilTheMainJetIsUp() {
    Engine small = enlarged(0.5);
    SetupSheet proven = TwoHundred.sheet(small, ALL_ROUND).withProvenance(ranWell(FULL));
    SetupSheet kit = proven.withSetup(proven.setup().withEngine(enlarged(0.7)));

    assertThat(status("engine-change", proven)).isEqualTo(Status.NOT_APPLICABLE);
    assertThat(status("engine-change", kit)).isEqualTo(Status.FAILED);
    assertThat(report(kit).passes()).isFalse();

    SetupSheet rich =
        kit.withSetup(kit.setup().withSetting(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.30))));
    assertThat(status("engine-change", rich)).isEqualTo(Status.PASSED);
    assertThat(status("engine-unread", rich)).isEqualTo(Status.FAILED);

    SetupSheet read = rich.withProvenance(ranWell(FULL));
    assertThat(status("engine-unread", read)).isEqualTo(Status.NOT_APPLICABLE);
  }

  private static Engine enlarged(double by) {
    return STANDARD.withDisplacement(
        Displacement.ofCubicCentimetres(STANDARD.displacement().cubicCentimetres() * by));
  }

  /** One line of every rendering, and data for programs. */
  @Test
  void report_saysThatAProofWasUsedAndWhatItDid() {
    Report report = report(BEHIND_FILTER);
    ProofUse proof = report.proof().orElseThrow();
    assertThat(proof.observations()).isEqualTo(3);
    assertThat(proof.band()).isLessThan(proof.bandWithout());
    assertThat(proof.text())
        .startsWith(
            "The proven setting counts, by 3 observations: on average the 90 % band of λ is ±")
        .doesNotContain("\n");
    assertThat(ReportText.of(report)).contains(proof.text().substring(0, 40));
    assertThat(ReportMarkdown.of(report)).contains("The proven setting counts");
    assertThat(ReportJson.read(ReportJson.write(report)).proof()).contains(proof);
    assertThat(report(BEHIND_FILTER.withProvenance(Provenance.unknown())).proof()).isEmpty();
  }

  @Test
  void proof_onAnotherEngineOrInAnotherCarburettor_isNone() {
    Setup setup = BEHIND_FILTER.setup();
    SetupSheet otherEngine = BEHIND_FILTER.withSetup(setup.withEngine(enlarged(1.1)));
    SetupSheet otherCarburettor =
        BEHIND_FILTER.withSetup(
            setup.withSetting(
                setup
                    .setting()
                    .withCarburettor(TwoHundred.carburettor(Diameter.ofMillimetres(28)))));
    RiskModel model = RiskModel.assumed();

    assertThat(AssessedSetting.known(BEHIND_FILTER, model).readings()).hasSize(3);
    assertThat(AssessedSetting.known(otherEngine, model).readings()).isEmpty();
    assertThat(AssessedSetting.known(otherCarburettor, model).readings()).isEmpty();
  }
}
