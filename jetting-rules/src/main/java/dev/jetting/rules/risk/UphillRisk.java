package dev.jetting.rules.risk;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.number.Decimals;
import java.util.Objects;

/**
 * The lean risk at a throttle opening on a climb, at the lowest speed at which the opening is
 * ridden.
 *
 * <p>The model is set on the load line. How the mixture moves with speed below it depends on the
 * kind of inlet, which is no input of the model. The model always computes leaner; a port or a
 * valve that blows back more at low speed is richer. So the mixture is expected to be that of the
 * load line. Any share of the change that the model computes, from none to all, is equally likely,
 * to either side (assumed). The spread is wider by that.
 *
 * @param speed the engine speed there
 * @param modelled the mixture there by the model alone
 * @param spread standard deviation of ln λ there
 * @param leanRisk probability that the true mixture is leaner than the lean limit there
 */
public record UphillRisk(EngineSpeed speed, Lambda modelled, double spread, Probability leanRisk) {

  static final String DOUBT_NAME = "doubt about the change with speed";

  /** Half width of an even distribution, by the change of ln λ that the model computes. */
  static final Coefficient DOUBT =
      Coefficient.assumed(
          1, "1", "kinds of inlet differ in which way the mixture moves with speed; not measured");

  /**
   * Checks the spread.
   *
   * @param speed the engine speed there
   * @param modelled the mixture there by the model alone
   * @param spread standard deviation of ln λ there
   * @param leanRisk probability that the true mixture is leaner than the lean limit there
   * @throws IllegalArgumentException if the spread is below zero or not finite
   */
  public UphillRisk {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(modelled, "modelled");
    Objects.requireNonNull(leanRisk, "leanRisk");
    if (!Double.isFinite(spread) || spread < 0) {
      String shown = Double.isFinite(spread) ? Decimals.shortest(spread) : "not finite";
      throw new IllegalArgumentException(
          "spread of ln λ uphill " + shown + ": allowed a finite number, 0 or more");
    }
  }

  /** Variance of ln λ that the doubt brings where the model computes a change. */
  static double variance(double change) {
    double most = DOUBT.value() * change;
    return most * most / 3; // of an even distribution over −most to most
  }
}
