package dev.jetting.rules.risk;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.number.Decimals;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The lean risk at one throttle opening, at the speed of the level road and on a climb.
 *
 * @param mixture the mixture there, by the model
 * @param lambda the mixture expected there, conditioned on the readings and with the mean of the
 *     engine's air; without readings the model's own
 * @param spread standard deviation of ln λ: near enough, the relative uncertainty of λ
 * @param leanLimit the leanest mixture that does no harm there
 * @param richLimit the richest mixture on which the engine runs cleanly there
 * @param leanRisk probability that the true mixture is leaner than the lean limit
 * @param uphill the same opening on a climb
 * @param effects what each part does there; empty where that is not stated
 */
public record RiskPoint(
    MixturePoint mixture,
    Lambda lambda,
    double spread,
    Lambda leanLimit,
    Lambda richLimit,
    Probability leanRisk,
    UphillRisk uphill,
    List<PartEffect> effects) {

  /**
   * Checks the spread and copies the effects.
   *
   * @param mixture the mixture there, by the model
   * @param lambda the mixture expected there, with what readings have taught; the model's own
   *     without readings
   * @param spread standard deviation of ln λ: near enough, the relative uncertainty of λ
   * @param leanLimit the leanest mixture that does no harm there
   * @param richLimit the richest mixture on which the engine runs cleanly there
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   * @param uphill the same opening on a climb
   * @param effects what each part does there
   * @throws IllegalArgumentException if the spread is below zero or not finite
   */
  public RiskPoint {
    Objects.requireNonNull(mixture, "mixture");
    Objects.requireNonNull(lambda, "lambda");
    Objects.requireNonNull(leanLimit, "leanLimit");
    Objects.requireNonNull(richLimit, "richLimit");
    Objects.requireNonNull(leanRisk, "leanRisk");
    Objects.requireNonNull(uphill, "uphill");
    effects = List.copyOf(effects);
    if (!Double.isFinite(spread) || spread < 0) {
      String shown = Double.isFinite(spread) ? Decimals.shortest(spread) : "not finite";
      throw new IllegalArgumentException(
          "spread of ln λ " + shown + ": allowed a finite number, 0 or more");
    }
  }

  /** {@return the higher of the lean risks on the level road and on a climb} */
  public Probability riddenRisk() {
    return uphill.leanRisk().isMoreThan(leanRisk) ? uphill.leanRisk() : leanRisk;
  }

  /**
   * The circuit in charge: the one whose parts together have the most authority.
   *
   * @return the circuit; of equals the one further down the throttle range
   * @throws IllegalStateException if the effects are not stated, as on another day of a report
   */
  public Circuit inCharge() {
    if (effects.isEmpty()) {
      throw new IllegalStateException(
          "circuit in charge at "
              + mixture.throttle()
              + " throttle: allowed with effects of parts");
    }
    Map<Circuit, Double> sums = new EnumMap<>(Circuit.class);
    effects.forEach(e -> sums.merge(e.part().circuit(), e.authority(), Double::sum));
    Circuit most = Circuit.PILOT;
    for (Map.Entry<Circuit, Double> entry : sums.entrySet()) {
      if (entry.getValue() > sums.getOrDefault(most, 0.0)) {
        most = entry.getKey();
      }
    }
    return most;
  }

  /**
   * By how much ln λ must fall here for the risk to be an accepted one: as if it were normal, with
   * the spread and either the λ or the risk. It is not quite, so the greater of both.
   *
   * @param accepted the accepted risk, more than 0 and less than 1
   * @return zero or more
   */
  public double leanBeyond(Probability accepted) {
    double quantile = quantile(accepted.value());
    double over = StrictMath.log(lambda.value() / leanLimit.value());
    double byLambda = over - quantile * spread;
    double byRisk = (quantile(leanRisk.value()) - quantile) * spread;
    return Math.max(0, Math.max(byLambda, byRisk));
  }

  private static double quantile(double probability) {
    double held = Math.min(Math.max(probability, 1e-9), 1 - 1e-6);
    return STANDARD.inverseCumulativeProbability(held);
  }

  /** {@return λ at the lower end of the band that holds it with 90 % probability} */
  public double richEnd() {
    return lambda.value() * StrictMath.exp(-NORMAL_95 * spread);
  }

  /** {@return λ at the upper end of the band that holds it with 90 % probability} */
  public double leanEnd() {
    return lambda.value() * StrictMath.exp(NORMAL_95 * spread);
  }

  private static final NormalDistribution STANDARD = new NormalDistribution(0, 1);

  /** The 95 % quantile of the standard normal distribution (from any table). */
  private static final double NORMAL_95 = 1.6448536269514722;
}
