package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import java.util.List;
import java.util.Objects;

/**
 * What a part does to the mixture at one operating point.
 *
 * @param part the part
 * @param richer change of ln λ by one customary step towards rich, zero or less
 * @param leaner change of ln λ by one customary step towards lean, zero or more
 * @param authority the part's share in what all parts can do here, 0 to 1; the shares sum to 1
 *     wherever a part can do anything
 */
public record PartEffect(MeteringPart part, double richer, double leaner, double authority) {

  /**
   * Checks the numbers.
   *
   * @param part the part
   * @param richer change of ln λ by one customary step towards rich, zero or less
   * @param leaner change of ln λ by one customary step towards lean, zero or more
   * @param authority the part's share in what all parts can do here, 0 to 1
   * @throws IllegalArgumentException if a number is not finite or the authority is out of range
   */
  public PartEffect {
    Objects.requireNonNull(part, "part");
    if (!(Double.isFinite(richer) && Double.isFinite(leaner) && authority >= 0 && authority <= 1)) {
      Checks.that(Double.isFinite(richer), "effect of a richer " + part, richer, "a finite number");
      Checks.that(Double.isFinite(leaner), "effect of a leaner " + part, leaner, "a finite number");
      Checks.within("authority of " + part, authority, 0, 1);
    }
    authority += 0.0; // −0.0 becomes 0.0
  }

  /**
   * Shares out what all parts can do at a point.
   *
   * @param effects the effects of the parts there; their own authority is not read
   * @return the same effects in their order, each with its share; 0 where no part can do anything
   */
  public static List<PartEffect> sharing(List<PartEffect> effects) {
    double sum = effects.stream().mapToDouble(PartEffect::range).reduce(0, Double::sum);
    return effects.stream()
        .map(e -> new PartEffect(e.part, e.richer, e.leaner, sum == 0 ? 0 : e.range() / sum))
        .toList();
  }

  private double range() {
    return Math.abs(leaner - richer);
  }
}
