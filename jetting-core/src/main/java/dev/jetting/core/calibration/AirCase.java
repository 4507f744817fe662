package dev.jetting.core.calibration;

import java.util.List;

/**
 * One of the few ways in which the engine's air may differ that stand for all of them.
 *
 * <p>ln λ has a kink in the air where the main path cuts in, so that no one slope tells how it
 * answers. The normal distribution of the difference is replaced by five of its values, those of
 * the Gauss–Hermite rule that is exact for polynomials up to the ninth degree (calculated: the
 * roots of x⁵ − 10x³ + 15x; the tests hold its moments to those of the normal distribution).
 *
 * @param probability of this case
 * @param z by how much the air differs in it, as {@link Calibration#difference} has it; −5 to 5
 */
public record AirCase(double probability, double z) {

  private static final double ROOT = Math.sqrt(10);
  private static final double INNER = Math.sqrt(5 - ROOT);
  private static final double OUTER = Math.sqrt(5 + ROOT);
  private static final double INNERS_PROBABILITY = (7 + 2 * ROOT) / 60;
  private static final double OUTERS_PROBABILITY = (7 - 2 * ROOT) / 60;
  private static final double MIDDLES_PROBABILITY = 8.0 / 15;

  /** Further than this no carburettor is off; readings that say so are wrong. */
  private static final double FURTHEST = 5;

  /** From little air to much; a single one where the difference is known. */
  static List<AirCase> of(Normal difference) {
    double mean = difference.mean();
    double deviation = difference.deviation();
    return deviation == 0
        ? List.of(held(1, mean))
        : List.of(
            held(OUTERS_PROBABILITY, mean - OUTER * deviation),
            held(INNERS_PROBABILITY, mean - INNER * deviation),
            held(MIDDLES_PROBABILITY, mean),
            held(INNERS_PROBABILITY, mean + INNER * deviation),
            held(OUTERS_PROBABILITY, mean + OUTER * deviation));
  }

  private static AirCase held(double probability, double z) {
    return new AirCase(probability, Math.min(Math.max(z, -FURTHEST), FURTHEST));
  }
}
