package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Displacement;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A proven setup counts in the session and in the start as it does in a report. */
class ProvenSessionTest {

  private static final Tuner SENSOR = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  /** Measured when it ran well, by so much in ln λ leaner than the model says. */
  private static SetupSheet proven(double leaner) {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND);
    return sheet.withProvenance(
        Provenance.builder()
            .observed(
                List.of(HALF, ThrottleOpening.FULL).stream()
                    .map(at -> new ProvenObservation(at, measured(sheet.setup(), at, leaner)))
                    .toList())
            .build());
  }

  private static Evidence measured(Setup setup, ThrottleOpening at, double leaner) {
    double modelled = MixtureModel.of(setup).at(at).lambda().value();
    return new Evidence.Wideband(Lambda.of(modelled * StrictMath.exp(leaner)));
  }

  private static RiskPoint at(ThrottleOpening throttle, SetupSheet sheet, Calibration known) {
    return AssessedSetting.of(sheet, SENSOR.riskModel(), known).profile().nearest(throttle);
  }

  @Test
  void assess_nothingReadYet_isTheReportWithTheProof() {
    SetupSheet sheet = proven(0.05);
    assertThat(SENSOR.assess(Sessions.begin(sheet)).profile())
        .isEqualTo(AssessedSetting.of(sheet).profile());
    assertThat(SENSOR.assess(Sessions.begin(sheet)).profile())
        .isNotEqualTo(AssessedSetting.of(Workshop.sheet(ALL_ROUND)).profile());
  }

  /** A change of parts moves the setting and not what was proven. */
  @Test
  void calibration_afterAChangeOfParts_keepsTheProof() {
    SetupSheet sheet = proven(0.05);
    TuningSession changed =
        Sessions.begin(sheet)
            .changing(
                sheet
                    .setup()
                    .withSetting(
                        Workshop.PARTS.mainJets().stream()
                            .reduce((a, b) -> b)
                            .map(ALL_ROUND::withMainJet)
                            .orElseThrow()));
    assertThat(SENSOR.calibration(changed).readings())
        .isEqualTo(SENSOR.calibration(Sessions.begin(sheet)).readings());
  }

  /** Void on another engine: then its spread is that of a new one. */
  @Test
  void calibration_engineChangedSince_isThatOfANewEngine() {
    SetupSheet sheet = proven(0.05);
    Setup setup = sheet.setup();
    SetupSheet bigger =
        sheet.withSetup(
            setup.withEngine(
                setup
                    .engine()
                    .withDisplacement(
                        Displacement.ofCubicCentimetres(
                            setup.engine().displacement().cubicCentimetres() * 1.15))));
    Calibration known = SENSOR.calibration(Sessions.begin(bigger));
    SetupSheet unproven = bigger.withProvenance(Provenance.unknown());
    Calibration none = SENSOR.calibration(Sessions.begin(unproven));
    for (ThrottleOpening held : Held.OPENINGS) {
      assertThat(at(held, bigger, known).spread())
          .isGreaterThanOrEqualTo(at(held, unproven, none).spread() * (1 - 1e-12));
    }
    assertThat(known.readings()).isEmpty();
  }

  /** A kit on jets that were proven before: the main jet goes up before anything is ridden. */
  @Test
  void next_engineChangedOnProvenJets_isRicherBeforeTheFirstRide_orIsNotRidden() {
    SetupSheet sheet = proven(-0.1);
    Setup setup = sheet.setup();
    SetupSheet kit =
        sheet.withSetup(
            setup.withEngine(
                setup
                    .engine()
                    .withDisplacement(
                        Displacement.ofCubicCentimetres(
                            setup.engine().displacement().cubicCentimetres() * 1.15))));
    TuningSession session = Sessions.begin(kit);
    NextStep step = SENSOR.next(session);
    while (Sessions.change(step).isPresent()) {
      session = Sessions.take(session, step, (now, test) -> new Evidence.Proven());
      step = SENSOR.next(session);
    }
    assertThat(step).isInstanceOf(NextStep.Ride.class);
    assertThat(session.now().setup().setting().mainJet().hundredths())
        .isGreaterThanOrEqualTo(ALL_ROUND.mainJet().hundredths() + 4);
    SetupSheet bare = kit.withParts(PartsAtHand.unknown());
    assertThat(SENSOR.next(Sessions.begin(bare)))
        .isInstanceOfAny(NextStep.Refused.class, NextStep.NotToBeRidden.class);
  }

  /**
   * It ran leaner than the model says when it ran well, so the start is richer, and the reverse.
   */
  @Test
  void start_followsTheProof() {
    double lean = SENSOR.start(proven(0.08)).setting().mainJet().hundredths();
    double rich = SENSOR.start(proven(-0.08)).setting().mainJet().hundredths();
    assertThat(lean).isGreaterThan(rich);
    StartingSetting start = SENSOR.start(proven(0.08));
    assertThat(start.safe()).isTrue();
    RiskPoint full = start.profile().nearest(ThrottleOpening.FULL);
    assertThat(StrictMath.log(full.lambda().value() / full.mixture().lambda().value()))
        .isCloseTo(0.08, within(0.03));
  }

  /** It ran well then and reads a fifth leaner now: something has changed, and the proof goes. */
  @Test
  void next_readingsContradictTheProof_looksForAFault_andDropsTheProof() {
    SetupSheet sheet = proven(-0.05);
    TuningSession session = Sessions.begin(sheet);
    Observation off =
        new Observation(
            HALF, sheet.setup().engine().loadLine().at(HALF), measured(sheet.setup(), HALF, 0.15));
    session = session.observing(off);
    assertThat(SENSOR.next(session))
        .isInstanceOfAny(NextStep.CheckReading.class, NextStep.LookForFault.class);
    session = session.observing(off);
    NextStep.LookForFault look = (NextStep.LookForFault) SENSOR.next(session);
    session = Sessions.take(session, look, (now, test) -> off.evidence());
    assertThat(SENSOR.calibration(session).readings()).hasSize(1);
    assertThat(SessionText.of(session, SENSOR))
        .contains("The proven setting no longer counts: what was read now contradicts it.");
  }

  @Test
  void text_ofAProvenSheet_saysThatTheProofCounts() {
    assertThat(SessionText.of(Sessions.begin(proven(0)), SENSOR))
        .contains("The proven setting counts, by 2 observations.");
  }

  /** A fault that came since was not there when the engine ran well. */
  @Test
  void hypotheses_provenRichAndReadLean_holdAFaultForLikelierThanWithoutTheProof() {
    SetupSheet sheet = proven(0);
    SetupSheet unproven = Workshop.sheet(ALL_ROUND);
    double withProof = fault(sheet);
    assertThat(withProof).isGreaterThan(2 * fault(unproven));
  }

  private static double fault(SetupSheet sheet) {
    TuningSession session = Sessions.begin(sheet);
    for (ThrottleOpening at : List.of(HALF, ThrottleOpening.FULL)) {
      session =
          session.observing(
              new Observation(
                  at, sheet.setup().engine().loadLine().at(at), measured(sheet.setup(), at, 0.07)));
    }
    return new Findings(SENSOR, session).hypotheses().anyFault();
  }
}
