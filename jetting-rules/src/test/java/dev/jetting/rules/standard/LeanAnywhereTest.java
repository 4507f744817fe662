package dev.jetting.rules.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import org.junit.jupiter.api.Test;

class LeanAnywhereTest {

  private static final RiskPoint POINT =
      AssessedSetting.of(TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND))
          .profile()
          .points()
          .get(4);

  private static final double LIMIT = POINT.leanLimit().value();

  /** 1.2816 and 2.3263 deviations: the 90 % and 99 % quantiles, from any table. */
  @Test
  void need_ofANormalDistribution_bringsTheRiskToTheAcceptedOne() {
    RiskPoint tenPercent = point(LIMIT * StrictMath.exp(-1.2815516 * 0.1), 0.1);

    assertThat(LeanAnywhere.need(tenPercent, Probability.of(0.01)))
        .isCloseTo((2.3263479 - 1.2815516) * 0.1, within(1e-6));
    assertThat(LeanAnywhere.need(tenPercent, Probability.of(0.1))).isCloseTo(0, within(1e-6));
    assertThat(LeanAnywhere.need(tenPercent, Probability.of(0.2))).isZero();
  }

  /**
   * The risk is not quite that of a normal distribution: where it is too high, something needs
   * doing.
   */
  @Test
  void need_riskAboveWhatIsAcceptedThoughLambdaLooksWell_isNotNone() {
    RiskPoint looksWell = point(LIMIT * StrictMath.exp(-1.4 * 0.1), 0.2);

    assertThat(LeanAnywhere.need(looksWell, Probability.of(0.1)))
        .isCloseTo((1.2815516 - 0.8416212) * 0.1, within(1e-6));
    for (double risk : new double[] {0.1000001, 0.5, 0.999999999, 1}) {
      assertThat(LeanAnywhere.need(point(LIMIT / 1.5, risk), Probability.of(0.1)))
          .as("risk %s", risk)
          .isPositive()
          .isFinite();
    }
  }

  /** A point of this λ and risk, whose ln λ has the standard deviation 0.1. */
  private static RiskPoint point(double lambda, double risk) {
    return new RiskPoint(
        POINT.mixture(),
        Lambda.of(lambda),
        0.1,
        POINT.leanLimit(),
        POINT.richLimit(),
        Probability.of(risk),
        POINT.uphill(),
        POINT.effects());
  }
}
