package dev.jetting.rules.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HypothesesTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final SetupSheet START = Workshop.start();

  /** Nine faults with an assumed share of one in a hundred each. */
  @Test
  void anyFault_nothingReadNothingChecked_isTheAssumedShare() {
    assertThat(hypotheses(Map.of(), List.of()).anyFault()).isCloseTo(0.09 / 1.09, within(1e-12));
  }

  @Test
  void anyFault_checksDone_isAFifth() {
    assertThat(hypotheses(Map.of(), List.of(EnumSet.allOf(Check.class))).anyFault())
        .isCloseTo(0.018 / 1.018, within(1e-12));
  }

  @Test
  void faults_leanAtIdleAlone_isABlockedPilot() {
    Hypotheses found =
        hypotheses(Map.of(0, 0.33, 8, 0.0, 4, 0.0, 2, 0.0), List.of(EnumSet.allOf(Check.class)));
    assertThat(found.faults().get(0).fault()).contains(Fault.PILOT_BLOCKED);
    assertThat(found.faults().get(0).probability()).isGreaterThan(0.3);
  }

  @Test
  void faults_leanAtFullAlone_isTheFuelSupplyOrTheMain() {
    Hypotheses found = hypotheses(Map.of(0, 0.0, 8, 0.25, 4, 0.0, 2, 0.0), List.of());
    assertThat(found.faults().get(0).fault().orElseThrow())
        .isIn(Fault.FUEL_SHORT, Fault.MAIN_BLOCKED);
  }

  @Test
  void anyFault_everythingAsExpected_isLessThanBefore() {
    Hypotheses found = hypotheses(Map.of(0, 0.0, 8, 0.0, 4, 0.0, 1, 0.0), List.of());
    // Most faults are lean at one of the four openings; a small one may hide in the spread.
    assertThat(found.anyFault()).isLessThan(hypotheses(Map.of(), List.of()).anyFault() / 3);
  }

  /** The short way to the answer is the long way's, on either side of the risk that is left. */
  @Test
  void leaveAccepted_isWhatTheRiskLeftSays() {
    List<Map<Integer, Double>> read =
        List.of(
            Map.of(), Map.of(0, 0.33, 8, 0.0, 4, 0.0, 2, 0.0), Map.of(0, 0.1, 8, -0.1, 1, 0.05));
    int accepted = 0;
    int refused = 0;
    for (Map<Integer, Double> readings : read) {
      Hypotheses found = hypotheses(readings, List.of(EnumSet.allOf(Check.class)));
      double left = found.riskLeft(START).risk().value();
      for (double by : new double[] {0.1, 0.5, 0.9, 0.98, 1.03, 1.1, 2, 5}) {
        SetupSheet sheet =
            START.withRiding(
                START.riding().withAcceptedRisk(Probability.of(Math.min(left * by, 0.4))));
        boolean answer = found.leaveAccepted(sheet);
        assertThat(answer).isEqualTo(found.riskLeft(sheet).isAccepted());
        accepted += answer ? 1 : 0;
        refused += answer ? 0 : 1;
      }
    }
    assertThat(List.of(accepted, refused)).allMatch(count -> count > 5);
  }

  /** Of an engine with a share of faults the risk is a mixture, so it is more than without them. */
  @Test
  void leanRisk_holdsWhatFaultsAdd() {
    for (ThrottleOpening held : Held.OPENINGS) {
      Probability without = RISK.leanRisk(RISK.untried().on(MixtureModel.of(START.setup())), held);
      Probability with = hypotheses(Map.of(), List.of()).leanRisk(START, held);
      assertThat(with.value()).isGreaterThan(without.value() * 0.9);
    }
    Probability idle = hypotheses(Map.of(), List.of()).leanRisk(START, ThrottleOpening.CLOSED);
    assertThat(idle.value()).isBetween(0.0005, 0.03);
  }

  /** Engines with a blocked pilot: the session says so or gets it rich, and never just ends. */
  @Test
  void next_pilotBlocked_looksForAFault() {
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
    TuningSession session = Sessions.begin(START);
    List<Fault> named = new ArrayList<>();
    NextStep step = tuner.next(session);
    while (!step.isEnd() && named.isEmpty()) {
      session =
          Sessions.take(
              session,
              step,
              (now, test) ->
                  Sessions.read(
                      now, test, test.throttle().equals(ThrottleOpening.CLOSED) ? 0.35 : 0));
      step = tuner.next(session);
      if (step instanceof NextStep.LookForFault look) {
        named.addAll(look.faults());
      }
    }
    assertThat(named).contains(Fault.PILOT_BLOCKED);
  }

  /**
   * Marks that are a sixteenth ahead of the slide: each reading is the mixture of a smaller
   * opening, and no part nor any other fault explains all of them.
   */
  @Test
  void likely_readAtSmallerOpenings_isASlackCable() {
    double slack = 1 / 16.0;
    Map<Integer, Double> off = new HashMap<>();
    off.put(0, 0.0);
    for (int eighths : new int[] {1, 2, 3, 4, 6, 8}) {
      double meant = lnLambda(eighths / 8.0);
      off.put(eighths, lnLambda(eighths / 8.0 - slack) - meant);
    }
    Hypotheses found = hypotheses(off, List.of(EnumSet.allOf(Check.class)));
    assertThat(found.likely(0.1)).startsWith(Fault.THROTTLE_SLACK);
  }

  private static double lnLambda(double share) {
    return StrictMath.log(
        MixtureModel.of(START.setup()).at(ThrottleOpening.ofShare(share)).lambda().value());
  }

  private static Hypotheses hypotheses(Map<Integer, Double> leaner, List<Set<Check>> checks) {
    List<Reading> readings = new ArrayList<>();
    leaner.forEach(
        (eighths, off) -> {
          MixturePoint point =
              MixtureModel.of(START.setup()).at(ThrottleOpening.ofEighths(eighths));
          readings.add(
              Reading.measured(
                  START.setup(),
                  point.throttle(),
                  point.speed(),
                  Lambda.of(point.lambda().value() * StrictMath.exp(off)),
                  0.02));
        });
    Calibration calibration = RISK.untried().with(readings);
    return new Hypotheses(RISK, calibration, checks, fault -> 1);
  }
}
