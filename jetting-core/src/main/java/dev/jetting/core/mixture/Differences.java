package dev.jetting.core.mixture;

/** By how much an engine differs from the model: z and its exponential, source by source. */
final class Differences {

  static final Differences NONE = new Differences(new double[ErrorSource.values().length]);

  private final double[] z;
  private final double[] factor;

  private Differences(double[] z) {
    this.z = z;
    factor = new double[z.length];
    for (int i = 0; i < z.length; i++) {
      factor[i] = StrictMath.exp(z[i]);
    }
  }

  Differences plus(ErrorSource source, double more) {
    double[] sum = z.clone();
    sum[source.ordinal()] += more;
    return new Differences(sum);
  }

  double factor(ErrorSource source) {
    return factor[source.ordinal()];
  }
}
