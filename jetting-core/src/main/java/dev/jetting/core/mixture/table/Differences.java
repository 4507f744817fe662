package dev.jetting.core.mixture.table;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.ErrorSource;
import java.util.EnumMap;
import java.util.Map;

/** By how much an engine differs from the model: z by source, and its exponential as a factor. */
final class Differences {

  /** Beyond it no carburettor is off. */
  private static final double GREATEST = 5;

  static final Differences NONE = new Differences(new EnumMap<>(ErrorSource.class));

  private final Map<ErrorSource, Double> z;
  private final Map<ErrorSource, Double> factor = new EnumMap<>(ErrorSource.class);

  private Differences(Map<ErrorSource, Double> z) {
    this.z = z;
    z.forEach((source, difference) -> factor.put(source, StrictMath.exp(difference)));
  }

  Differences plus(ErrorSource source, double more) {
    Map<ErrorSource, Double> sum = new EnumMap<>(z);
    sum.merge(source, more, Double::sum);
    Checks.within("difference of " + source, sum.getOrDefault(source, 0.0), -GREATEST, GREATEST);
    return new Differences(sum);
  }

  double factor(ErrorSource source) {
    return factor.getOrDefault(source, 1.0);
  }
}
