package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * One of nine quadrature nodes over the error of the engine's air.
 *
 * <p>ln λ has a kink in the air where the main path cuts in, so one slope does not describe its
 * answer. Nine nodes replace the normal distribution of the difference. They lie about three
 * quarters of a standard deviation apart and are weighted by their densities; a stretch of 0.4 %
 * keeps the variance. This trapezoidal rule is nearly exact on a smooth function, and better than a
 * Gauss rule near a kink. The number of nodes is assumed: more cost more.
 *
 * @param probability of this case, more than 0 and at most 1
 * @param z by how much the air differs in it, as {@link Calibration#difference} has it; −5 to 5
 */
public record AirCase(double probability, double z) {

  private static final int TO_EACH_SIDE = 4;
  private static final double STEP = 0.75;

  /** Further than this no carburettor is off; readings that say so are wrong. */
  private static final double FURTHEST = 5;

  /**
   * Checks the numbers.
   *
   * @param probability of this case, more than 0 and at most 1
   * @param z by how much the air differs in it, −5 to 5
   * @throws IllegalArgumentException if a number is out of range
   */
  public AirCase {
    Checks.that(
        probability > 0 && probability <= 1,
        "probability of a case",
        probability,
        "more than 0 and at most 1");
    z = Checks.within("difference of the air", z, -FURTHEST, FURTHEST);
  }

  /** From little air to much, as many to each side; a single one where the difference is known. */
  static List<AirCase> of(Normal difference) {
    if (difference.deviation() == 0) {
      return List.of(new AirCase(1, held(difference.mean())));
    }
    double sum = 0;
    double square = 0;
    for (int i = -TO_EACH_SIDE; i <= TO_EACH_SIDE; i++) {
      double density = Normal.density(i * STEP);
      sum += density;
      square += density * (i * STEP) * (i * STEP);
    }
    double step = STEP / Math.sqrt(square / sum) * difference.deviation();
    List<AirCase> cases = new ArrayList<>();
    for (int i = -TO_EACH_SIDE; i <= TO_EACH_SIDE; i++) {
      double probability = Normal.density(i * STEP) / sum;
      cases.add(new AirCase(probability, held(difference.mean() + i * step)));
    }
    return cases;
  }

  /** A difference of any source, held to what a carburettor can be off. */
  static double held(double z) {
    return Math.min(Math.max(z, -FURTHEST), FURTHEST);
  }
}
