package dev.jetting.core.cycle;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * What an inlet's pulsation makes behind a gap: sums of smooth steps over dimensionless groups,
 * fitted to the cycle by {@code SignalFit} of the tests.
 *
 * <p>The groups, with a₀ = √(R T₀): ln of the gap's effective area by V N/a₀; the same of the usual
 * inlet port; the delivery ratio with nothing before the inlet; the timing. Beyond what was fitted
 * a group is held and the gap continued: a very small gap keeps its drop, behind a very large one
 * the drop goes with its area to the power of −2.
 */
final class Pulsation {

  private static final double LEAST_GAP = -3.6;
  private static final double MOST_GAP = 3.7;
  private static final double LEAST_PORT = 1.2;
  private static final double MOST_PORT = 4;
  private static final double KNEE = 2;
  private static final int OUTPUTS = 5;

  private static final Fit PISTON_PORT = Fit.read("piston-port", 2);
  private static final Fit ROTARY_VALVE = Fit.read("rotary-valve", 3);
  private static final Fit REED_VALVE = Fit.read("reed-valve", 1);

  private final Fit fit;
  private final double[] offset;
  private final double leastFlat;
  private final double mostFlat;

  private Pulsation(Fit fit, double opens, double closes, double... timing) {
    this.fit = fit;
    offset = fit.bias.clone();
    for (int j = 0; j < offset.length; j++) {
      for (int i = 0; i < timing.length; i++) {
        offset[j] += fit.timing[i][j] * timing[i];
      }
    }
    leastFlat = fit.least[3] * opens + fit.least[4] * closes;
    mostFlat = fit.most[3] * opens + fit.most[4] * closes;
  }

  /** The pulsation of an inlet by its timing; a timing beyond what was fitted is held. */
  static Pulsation of(Inlet inlet) {
    if (inlet instanceof Inlet.PistonPort port) {
      double opens = (held(port.duration() / 2, 62, 98) - 80) / 18;
      return new Pulsation(PISTON_PORT, opens, 0, opens);
    }
    if (inlet instanceof Inlet.RotaryValve valve) {
      double before = (held(valve.opensBefore(), 112, 150) - 131) / 19;
      double after = (held(valve.closesAfter(), 40, 80) - 60) / 20;
      return new Pulsation(ROTARY_VALVE, before, after, before, after);
    }
    return new Pulsation(REED_VALVE, 0, 0);
  }

  /**
   * The pulsation as the square wave that has its two moments, the mean of the drop's root and the
   * mean drop; and the air.
   *
   * @param openShare φ, share of the turn for which the needle jet's wave stands
   * @param drop height of that wave, share of the ambient pressure
   * @param passed net air by what the gap would pass under that wave without a stream backwards
   * @param pilotShare φ of the pilot's wave, which a stream backwards does not feed
   * @param pilotDrop height of that wave
   */
  record Wave(double openShare, double drop, double passed, double pilotShare, double pilotDrop) {}

  /**
   * The pulsation behind a gap.
   *
   * @param gap effective area of the gap by a₀/(V N), more than 0
   * @param port that of the usual inlet port
   * @param delivery delivery ratio η at this speed, more than 0
   * @return the wave
   */
  Wave at(double gap, double port, double delivery) {
    double speed = (held(StrictMath.log(port), LEAST_PORT, MOST_PORT) - 2.6) / 1.4;
    double least =
        Math.max(0.3, fit.least[0] + speed * (fit.least[1] + speed * fit.least[2]) + leastFlat);
    double most = fit.most[0] + speed * (fit.most[1] + speed * fit.most[2]) + mostFlat;
    double known = held(delivery, least, Math.max(least, most));
    double lnGap = StrictMath.log(gap * known / delivery);
    double heldGap = held(lnGap, LEAST_GAP, MOST_GAP);
    double[] out = fit.out(offset, (heldGap - 0.05) / 3.65, speed, (known - 0.7) / 0.4);

    double bend = 1 + StrictMath.exp(heldGap) / KNEE;
    double beyond = StrictMath.exp(2 * Math.min(0, MOST_GAP - lnGap));
    double drop = Math.min(0.9, StrictMath.exp(out[0]) / (bend * bend)) * beyond;
    double open = Math.min(1, StrictMath.exp(out[1]));
    double root = held(out[3], 0.05, 1);
    double mean = held(out[4], 0.05, 1);
    return new Wave(
        open,
        drop,
        held(out[2], 0.02, 1),
        Math.min(1, open * root * root / mean),
        Math.min(0.9, drop * (mean / root) * (mean / root)));
  }

  private static double held(double value, double least, double most) {
    return Math.min(Math.max(value, least), most);
  }

  /** Out = c₀ + Σ cⱼ s(bⱼ + wⱼ·x), s(z) = z/√(1 + z²). */
  private static final class Fit {

    private final double[] least;
    private final double[] most;
    private final double[] bias;
    private final double[] byGap;
    private final double[] bySpeed;
    private final double[] byDelivery;
    private final double[][] timing;
    private final double[][] heights;

    private Fit(List<double[]> lines, double[][] weights) {
      least = lines.get(0);
      most = lines.get(1);
      bias = weights[0];
      byGap = weights[1];
      bySpeed = weights[2];
      byDelivery = weights[3];
      timing = Arrays.copyOfRange(weights, 4, weights.length);
      heights = lines.subList(2 + bias.length, lines.size()).toArray(double[][]::new);
    }

    double[] out(double[] offset, double gap, double speed, double delivery) {
      double[] out = new double[OUTPUTS];
      for (int o = 0; o < OUTPUTS; o++) {
        out[o] = heights[o][0];
      }
      for (int j = 0; j < offset.length; j++) {
        double z = offset[j] + byGap[j] * gap + bySpeed[j] * speed + byDelivery[j] * delivery;
        double step = z / Math.sqrt(1 + z * z);
        for (int o = 0; o < OUTPUTS; o++) {
          out[o] += heights[o][j + 1] * step;
        }
      }
      return out;
    }

    /** Two lines for the bounds of the delivery, one for each step, one for each output. */
    static Fit read(String kind, int columns) {
      List<double[]> lines = lines("pulsation-" + kind + ".csv");
      int steps = lines.size() - 2 - OUTPUTS;
      double[][] weights = new double[3 + columns][steps];
      for (int j = 0; j < steps; j++) {
        for (int i = 0; i < lines.get(2 + j).length; i++) {
          weights[i][j] = lines.get(2 + j)[i];
        }
      }
      return new Fit(lines, weights);
    }

    private static List<double[]> lines(String resource) {
      try (InputStream in = Pulsation.class.getResourceAsStream(resource);
          BufferedReader reader =
              new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return reader
            .lines()
            .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
            .toList();
      } catch (IOException e) {
        throw new UncheckedIOException("pulsation " + resource, e);
      }
    }
  }
}
