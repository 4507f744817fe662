package dev.jetting.core.cycle;

import dev.jetting.core.flow.IsentropicFlow;
import java.util.Arrays;

/**
 * The pulsation behind a gap by the equations of the cycle in plain numbers, without fuel: ten
 * times as fast as {@link CrankcaseCycle}, for the thousands of engines that the model's fit is
 * made from. Pressures by ambient, temperatures by ambient, volumes and masses by the displacement,
 * flows by the crank angle.
 *
 * @param air net air a turn by what the displacement would hold at ambient density
 * @param back air blown back, by the same
 * @param drop mean of the depression by ambient pressure, a stream backwards counted as none
 * @param rootDrop mean of its square root
 * @param rise mean of the pressure above ambient
 * @param rootRise mean of its square root
 */
record SlideSignal(
    double air, double back, double drop, double rootDrop, double rise, double rootRise) {

  /** Ψ²/(2 drop) by powers of the drop, to 5e-9 up to the critical drop. */
  private static final double[] PSI = {
    0.9999999981362813, -1.0714280829575358, -2.093881910114105e-05, 0.014915671030001246,
    0.00860441449623063, 0.018992331324979097, -0.01743059364503968, 0.027127551973449637
  };

  private static final double GAMMA = IsentropicFlow.GAMMA_AIR;
  private static final double CRITICAL = 1 - IsentropicFlow.criticalRatio(GAMMA);
  private static final double SMOOTHING = 5 / 101_325.0;
  private static final double TOLERANCE = 1e-8;
  private static final double CLOSED = 3e-6;
  private static final int MOST_TURNS = 400;
  private static final double LEAST = 1e-3;

  /** What is constant over the turn; effective areas by a₀/(V N) with a₀ = √(R T₀). */
  record Group(
      double gap,
      Kind kind,
      double inlet,
      double opens,
      double closes,
      double ramp,
      double reedFull,
      double transfer,
      double transferDuration,
      double pull,
      double primaryCompression,
      double crankByRod,
      double tract) {}

  enum Kind {
    PISTON,
    ROTARY,
    REED
  }

  static SlideSignal of(Group group) {
    return new Run(group).result();
  }

  private static double psi(double drop, double smooth) {
    double d = Math.min(drop, CRITICAL);
    double p = PSI[7];
    for (int i = 6; i >= 0; i--) {
      p = p * d + PSI[i];
    }
    return Math.sqrt(2 * d * p * (drop / Math.sqrt(drop * drop + smooth * smooth)));
  }

  private static final class Run {
    private static final int STATE = 4;
    private static final int ALL = 10;
    private static final double[] C = {0, 0.2, 0.3, 0.8, 8.0 / 9, 1, 1};
    private static final double[][] A = {
      {},
      {1.0 / 5},
      {3.0 / 40, 9.0 / 40},
      {44.0 / 45, -56.0 / 15, 32.0 / 9},
      {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
      {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
      {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
    };
    private static final double[] E = {
      71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
    };

    private final Group g;
    private final double crevice;
    private final double inletOpensWay;
    private final double transferOpensWay;
    private final double[][] k = new double[7][ALL];
    private final double[] stage = new double[ALL];
    private double step = 0.01;

    Run(Group group) {
      g = group;
      crevice = 1 / (g.primaryCompression - 1);
      inletOpensWay = way(Math.toRadians(g.closes));
      transferOpensWay = way(Math.PI - Math.toRadians(g.transferDuration / 2));
    }

    double way(double angle) {
      double sin = StrictMath.sin(angle);
      double l = g.crankByRod;
      return (1 - StrictMath.cos(angle) + (1 - Math.sqrt(1 - l * l * sin * sin)) / l) / 2;
    }

    SlideSignal result() {
      double[] y = new double[ALL];
      y[0] = 1;
      y[1] = g.tract;
      y[2] = 1;
      y[3] = crevice + 1;
      double[] stops = stops();
      double[] previousStep = null;
      double[] previousEnd = null;
      double closure = 1;
      double[] end = y;
      for (int turns = 0; closure > CLOSED && turns < MOST_TURNS; turns++) {
        end = turn(y, stops);
        double[] move = new double[STATE];
        closure = 0;
        for (int i = 0; i < STATE; i++) {
          move[i] = end[i] - y[i];
          closure = Math.max(closure, Math.abs(move[i]));
        }
        double[] next = end.clone();
        if (previousStep != null && turns > 4) {
          double dot = 0;
          double square = 0;
          for (int i = 0; i < STATE; i++) {
            double d = move[i] - previousStep[i];
            dot += d * move[i];
            square += d * d;
          }
          double theta = square == 0 ? 0 : Math.max(-60, Math.min(0.9, dot / square));
          for (int i = 0; i < STATE; i++) {
            next[i] = end[i] - theta * (end[i] - previousEnd[i]);
          }
        }
        previousStep = move;
        previousEnd = end;
        y = next;
      }
      return new SlideSignal(end[4], end[5], end[6], end[7], end[8], end[9]);
    }

    private double[] stops() {
      double transfer = Math.toRadians(g.transferDuration / 2);
      double[] all = {
        0,
        Math.PI - transfer,
        Math.PI + transfer,
        2 * Math.PI,
        g.kind == Kind.REED ? 0 : 2 * Math.PI - Math.toRadians(g.opens),
        g.kind == Kind.ROTARY ? 2 * Math.PI - Math.toRadians(g.opens - g.ramp) : 0,
        g.kind == Kind.ROTARY ? Math.toRadians(g.closes - g.ramp) : 0,
        g.kind == Kind.REED ? 0 : Math.toRadians(g.closes)
      };
      return Arrays.stream(all).sorted().distinct().toArray();
    }

    private double[] turn(double[] from, double[] stops) {
      double[] y = from.clone();
      for (int i = STATE; i < ALL; i++) {
        y[i] = 0;
      }
      for (int s = 1; s < stops.length; s++) {
        double a = stops[s - 1];
        rates(a, y, k[0]);
        while (a < stops[s]) {
          double h = Math.min(step, stops[s] - a);
          boolean last = h >= stops[s] - a;
          for (int j = 1; j < 7; j++) {
            for (int i = 0; i < ALL; i++) {
              double sum = 0;
              for (int m = 0; m < j; m++) {
                sum += A[j][m] * k[m][i];
              }
              stage[i] = y[i] + h * sum;
            }
            rates(a + C[j] * h, stage, k[j]);
          }
          double error = 0;
          for (int i = 0; i < STATE; i++) {
            double e = 0;
            for (int m = 0; m < 7; m++) {
              e += E[m] * k[m][i];
            }
            error = Math.max(error, Math.abs(h * e) / (TOLERANCE * (1 + Math.abs(y[i]))));
          }
          double factor = Math.max(0.2, Math.min(5, 0.9 * Math.pow(error + 1e-10, -0.2)));
          if (error <= 1) {
            a = last ? stops[s] : a + h;
            System.arraycopy(stage, 0, y, 0, ALL);
            System.arraycopy(k[6], 0, k[0], 0, ALL);
            if (!last || factor < 1) {
              step = h * factor;
            }
          } else {
            step = h * factor;
          }
        }
      }
      return y;
    }

    private void rates(double angle, double[] y, double[] rates) {
      double sin = Math.sin(angle);
      double cos = Math.cos(angle);
      double l = g.crankByRod;
      double root = Math.sqrt(1 - l * l * sin * sin);
      double way = (1 - cos + (1 - root) / l) / 2;
      double wayByAngle = sin * (1 + l * cos / root) / 2;
      double volume = crevice + 1 - way;
      double p1 = Math.max(y[0], LEAST);
      double t1 = p1 * g.tract / Math.max(y[1], LEAST);
      double p2 = Math.max(y[2], LEAST);
      double t2 = p2 * volume / Math.max(y[3], LEAST);

      double past = flow(g.gap, 1, 1, p1, t1);
      double entering = flow(g.inlet * inletShare(angle, way, p1 - p2), p1, t1, p2, t2);
      double transfer = Math.max(0, (way - transferOpensWay) / (1 - transferOpensWay));
      double delivered = transfer == 0 ? 0 : flow(g.transfer * transfer, p2, t2, 1 - g.pull, 1);
      double pastHeat = past * (past >= 0 ? 1 : t1);
      double enteringHeat = entering * (entering >= 0 ? t1 : t2);
      rates[0] = GAMMA * (pastHeat - enteringHeat) / g.tract;
      rates[1] = past - entering;
      rates[2] = GAMMA * (enteringHeat - delivered * t2 + p2 * wayByAngle) / volume;
      rates[3] = entering - delivered;
      double drop = 1 - p1;
      double turn = 1 / (2 * Math.PI);
      rates[4] = past;
      rates[5] = Math.max(-past, 0);
      rates[6] = Math.max(drop, 0) * turn;
      rates[7] = Math.sqrt(Math.max(drop, 0)) * turn;
      rates[8] = Math.max(-drop, 0) * turn;
      rates[9] = Math.sqrt(Math.max(-drop, 0)) * turn;
    }

    private double inletShare(double angle, double way, double drop) {
      return switch (g.kind) {
        case PISTON -> Math.max(0, 1 - way / inletOpensWay);
        case ROTARY -> {
          double degrees = Math.toDegrees(angle > Math.PI ? angle - 2 * Math.PI : angle);
          double inside = Math.min(degrees + g.opens, g.closes - degrees);
          yield Math.min(Math.max(inside / g.ramp, 0), 1);
        }
        case REED -> Math.min(Math.max(drop / g.reedFull, 0), 1);
      };
    }

    /** By the crank angle. */
    private static double flow(double area, double pa, double ta, double pb, double tb) {
      if (area == 0) {
        return 0;
      }
      return pa >= pb ? oneWay(area, pa, ta, pb) : -oneWay(area, pb, tb, pa);
    }

    private static double oneWay(double area, double from, double warm, double to) {
      double drop = 1 - to / from;
      return area / (2 * Math.PI) * from / Math.sqrt(warm) * psi(drop, SMOOTHING / from);
    }
  }
}
