package dev.jetting.core.mixture;

import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The sums of smooth steps of MODEL.md written a second time, step by step from their numbers. */
final class SecondPulsation {

  private static final Path NUMBERS = Path.of("src/main/resources/dev/jetting/core/flow/pulsation");

  private SecondPulsation() {}

  /** φ and d of the needle jet's wave, what the gap passes, φ and d of the pilot's wave. */
  static double[] of(Induction induction, double gap, double port, double delivery) {
    InductionKind kind = induction.kind();
    boolean piston = kind == InductionKind.PISTON_PORT;
    boolean rotary = kind == InductionKind.ROTARY_VALVE;
    double opens =
        piston
            ? (clamp(induction.opens().value(), 62, 98) - 80) / 18
            : rotary ? (clamp(induction.opens().value(), 112, 150) - 131) / 19 : 0;
    double closes = rotary ? (clamp(induction.closes().value(), 40, 80) - 60) / 20 : 0;
    List<double[]> lines = numbers(kind);

    double s = (clamp(Math.log(port), 1.2, 4.0) - 2.6) / 1.4;
    double[] powers = {1, s, s * s, opens, closes};
    double least = Math.max(0.3, dot(lines.get(0), powers));
    double most = Math.max(least, dot(lines.get(1), powers));
    double eta = clamp(delivery, least, most);
    double lnGap = Math.log(gap) + Math.log(eta) - Math.log(delivery);
    double g = clamp(lnGap, -3.6, 3.7);
    double[] x = {1, (g - 0.05) / 3.65, s, (eta - 0.7) / 0.4, opens, closes};

    int steps = lines.size() - 7;
    double[] out = new double[5];
    for (int o = 0; o < 5; o++) {
      double[] heights = lines.get(2 + steps + o);
      out[o] = heights[0];
      for (int j = 0; j < steps; j++) {
        double z = dot(lines.get(2 + j), x);
        out[o] += heights[1 + j] * Math.sin(Math.atan(z)); // z/√(1 + z²)
      }
    }
    double height = Math.min(0.9, Math.exp(out[0] - 2 * Math.log(1 + Math.exp(g) / 2)));
    double drop = lnGap <= 3.7 ? height : height * Math.exp(-2 * (lnGap - 3.7));
    double share = Math.min(1, Math.exp(out[1]));
    double root = clamp(out[3], 0.05, 1);
    double mean = clamp(out[4], 0.05, 1);
    return new double[] {
      share,
      drop,
      clamp(out[2], 0.02, 1),
      Math.min(1, share * root * root / mean),
      Math.min(0.9, drop * mean * mean / (root * root))
    };
  }

  private static double dot(double[] weights, double[] x) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * x[i];
    }
    return sum;
  }

  private static double clamp(double value, double low, double high) {
    return value < low ? low : value > high ? high : value;
  }

  private static List<double[]> numbers(InductionKind kind) {
    String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".csv";
    try {
      return Files.readAllLines(NUMBERS.resolve(name)).stream()
          .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::valueOf).toArray())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
