package dev.jetting.examples.tuningtrial;

import java.util.Objects;
import java.util.SplittableRandom;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/** Chance that is the same in every run: named by a seed and by what it decides. */
final class Chance {

  /** Degrees of freedom of the heavy-tailed draws: few enough for an outlier in a hundred. */
  private static final int FREEDOM = 4;

  /** Words of a generator's seed. */
  private static final int WORDS = 16;

  private final RandomGenerator generator;

  private Chance(int[] seed) {
    generator = new Well19937c(seed);
  }

  static Chance of(long seed, Object... decides) {
    // Stirred, for the first draws of this generator hardly differ where its seeds hardly do.
    long engine = new SplittableRandom(seed).nextLong();
    SplittableRandom stirred = new SplittableRandom(engine + Objects.hash(decides));
    return new Chance(stirred.ints(WORDS).toArray());
  }

  /** Normal, of zero mean. */
  double normal(double deviation) {
    return deviation * generator.nextGaussian();
  }

  /** Student's t with four degrees of freedom, scaled to a standard deviation. */
  double heavy(double deviation) {
    double squares = 0;
    for (int i = 0; i < FREEDOM; i++) {
      double draw = generator.nextGaussian();
      squares += draw * draw;
    }
    double t = generator.nextGaussian() / Math.sqrt(squares / FREEDOM);
    return deviation * t * Math.sqrt((FREEDOM - 2.0) / FREEDOM);
  }

  /** A factor about one. */
  double factor(double deviation) {
    return StrictMath.exp(normal(deviation));
  }

  /** Evenly between two bounds. */
  double between(double low, double high) {
    return low + (high - low) * generator.nextDouble();
  }

  /** A seed for what is drawn later. */
  long seed() {
    return generator.nextLong();
  }

  boolean happens(double probability) {
    return generator.nextDouble() < probability;
  }

  int below(int bound) {
    return generator.nextInt(bound);
  }
}
