package dev.jetting.core.flow;

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
 * fitted to the cycle of the crankcase (MODEL.md, "The pulsation"; the fit is a program in the
 * tests of jetting-core-cycle).
 *
 * <p>The groups: ln of the gap's effective area by a₀/(V N), the same of the usual inlet port, with
 * a₀ = √(R T₀); the delivery ratio with nothing before the inlet; the timing of the inlet. Beyond
 * what was fitted a group keeps its last value, and the gap follows the physics. A very small gap
 * keeps its drop. Behind a very large one the drop goes with its area to the power of −2.
 */
public final class Pulsation {

  /** The usual inlet port by a₀/(V N) at the peak of the load line and 288.15 K (assumed). */
  public static final double PORT_AT_PEAK = 7.295;

  private static final double LEAST_GAP = -3.6;
  private static final double MOST_GAP = 3.7;
  private static final double LEAST_PORT = 1.2;
  private static final double MOST_PORT = 4;
  private static final double KNEE = 2;
  private static final int OUTPUTS = 5;

  private static final Fit PISTON_PORT = Fit.read("piston-port", 2);
  private static final Fit ROTARY_VALVE = Fit.read("rotary-valve", 3);
  private static final Fit REED_VALVE = Fit.read("reed-valve", 1);
  private static final Fit UNKNOWN = Fit.read("unknown", 1);

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

  /**
   * The inlet that the piston's skirt opens.
   *
   * @param duration degrees of the crank for which it is open
   * @return its pulsation; a duration below 124° or above 196° counts as that
   */
  public static Pulsation pistonPort(double duration) {
    double opens = (held(duration / 2, 62, 98) - 80) / 18;
    return new Pulsation(PISTON_PORT, opens, 0, opens);
  }

  /**
   * The inlet that a disc or the crankshaft opens.
   *
   * @param opens degrees before top dead centre at which it begins to open
   * @param closes degrees after top dead centre at which it is shut
   * @return its pulsation; opening is held to 112 to 150°, closing to 40 to 80°
   */
  public static Pulsation rotaryValve(double opens, double closes) {
    double before = (held(opens, 112, 150) - 131) / 19;
    double after = (held(closes, 40, 80) - 60) / 20;
    return new Pulsation(ROTARY_VALVE, before, after, before, after);
  }

  /** {@return the inlet that reeds open} */
  public static Pulsation reedValve() {
    return new Pulsation(REED_VALVE, 0, 0);
  }

  /** {@return a middle of the three kinds, for an inlet that nobody named} */
  public static Pulsation unknown() {
    return new Pulsation(UNKNOWN, 0, 0);
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
  public record Wave(
      double openShare, double drop, double passed, double pilotShare, double pilotDrop) {}

  /**
   * The pulsation behind a gap.
   *
   * @param gap effective area of the gap by a₀/(V N), more than 0
   * @param port that of the usual inlet port
   * @param delivery delivery ratio η at this speed, more than 0
   * @return the wave
   */
  public Wave at(double gap, double port, double delivery) {
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
  @SuppressWarnings("ArrayRecordComponent") // private, and never compared or handed out
  private record Fit(
      double[] least,
      double[] most,
      double[] bias,
      double[] byGap,
      double[] bySpeed,
      double[] byDelivery,
      double[][] timing,
      double[][] heights) {

    double[] out(double[] offset, double gap, double speed, double delivery) {
      double[] steps = new double[offset.length];
      for (int j = 0; j < steps.length; j++) {
        double z = offset[j] + byGap[j] * gap + bySpeed[j] * speed + byDelivery[j] * delivery;
        steps[j] = z / Math.sqrt(1 + z * z);
      }
      double[] out = new double[OUTPUTS];
      for (int o = 0; o < OUTPUTS; o++) {
        double[] of = heights[o];
        double sum = of[0];
        for (int j = 0; j < steps.length; j++) {
          sum += of[j + 1] * steps[j];
        }
        out[o] = sum;
      }
      return out;
    }

    /** Two lines for the bounds of the delivery, one for each step, one for each output. */
    static Fit read(String kind, int columns) {
      List<double[]> lines = lines("pulsation/" + kind + ".csv");
      int steps = lines.size() - 2 - OUTPUTS;
      double[][] weights = new double[3 + columns][steps];
      for (int j = 0; j < steps; j++) {
        for (int i = 0; i < lines.get(2 + j).length; i++) {
          weights[i][j] = lines.get(2 + j)[i];
        }
      }
      return new Fit(
          lines.get(0),
          lines.get(1),
          weights[0],
          weights[1],
          weights[2],
          weights[3],
          Arrays.copyOfRange(weights, 4, weights.length),
          lines.subList(2 + steps, lines.size()).toArray(double[][]::new));
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
