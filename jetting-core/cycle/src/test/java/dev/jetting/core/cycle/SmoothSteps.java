package dev.jetting.core.cycle;

import java.util.List;
import java.util.Random;

/**
 * A sum of smooth steps: out = c₀ + Σ cⱼ s(bⱼ + wⱼ·x), s(z) = z/√(1 + z²), fitted by the method of
 * Levenberg and Marquardt. One thread, fixed seed: the same numbers on every machine.
 */
final class SmoothSteps {

  private final int inputs;
  private final int outputs;
  private final int steps;
  private final double ridge;
  double[] p;

  SmoothSteps(int inputs, int outputs, int steps, double ridge, long seed) {
    this.inputs = inputs;
    this.outputs = outputs;
    this.steps = steps;
    this.ridge = ridge;
    p = new double[steps * (inputs + 1) + outputs * (steps + 1)];
    Random random = new Random(seed);
    for (int j = 0; j < steps; j++) {
      for (int i = 0; i <= inputs; i++) {
        p[j * (inputs + 1) + i] = random.nextGaussian();
      }
    }
    for (int i = steps * (inputs + 1); i < p.length; i++) {
      p[i] = 0.1 * random.nextGaussian();
    }
  }

  double[] at(double[] x) {
    double[] out = new double[outputs];
    evaluate(x, out, new double[steps], new double[steps]);
    return out;
  }

  private void evaluate(double[] x, double[] out, double[] value, double[] slope) {
    for (int j = 0; j < steps; j++) {
      int at = j * (inputs + 1);
      double z = p[at];
      for (int i = 0; i < inputs; i++) {
        z += p[at + 1 + i] * x[i];
      }
      double root = Math.sqrt(1 + z * z);
      value[j] = z / root;
      slope[j] = 1 / (root * root * root);
    }
    for (int o = 0; o < outputs; o++) {
      int at = steps * (inputs + 1) + o * (steps + 1);
      double sum = p[at];
      for (int j = 0; j < steps; j++) {
        sum += p[at + 1 + j] * value[j];
      }
      out[o] = sum;
    }
  }

  double fit(List<double[]> xs, List<double[]> ys, List<double[]> weights, int iterations) {
    int n = p.length;
    double lambda = 1e-2;
    double[] out = new double[outputs];
    double[] value = new double[steps];
    double[] slope = new double[steps];
    double best = cost(xs, ys, weights);
    for (int it = 0; it < iterations && lambda < 1e12; it++) {
      double[][] h = new double[n][n];
      double[] g = new double[n];
      int[] index = new int[steps * (inputs + 1) + steps + 1];
      double[] row = new double[index.length];
      for (int k = 0; k < xs.size(); k++) {
        double[] x = xs.get(k);
        evaluate(x, out, value, slope);
        for (int o = 0; o < outputs; o++) {
          double weight = weights.get(k)[o];
          if (weight == 0) {
            continue;
          }
          int at = steps * (inputs + 1) + o * (steps + 1);
          int c = 0;
          for (int j = 0; j < steps; j++) {
            double d = weight * p[at + 1 + j] * slope[j];
            index[c] = j * (inputs + 1);
            row[c++] = d;
            for (int i = 0; i < inputs; i++) {
              index[c] = j * (inputs + 1) + 1 + i;
              row[c++] = d * x[i];
            }
          }
          index[c] = at;
          row[c++] = weight;
          for (int j = 0; j < steps; j++) {
            index[c] = at + 1 + j;
            row[c++] = weight * value[j];
          }
          double r = weight * (out[o] - ys.get(k)[o]);
          for (int a = 0; a < c; a++) {
            g[index[a]] += row[a] * r;
            double[] line = h[index[a]];
            double ra = row[a];
            for (int b = 0; b <= a; b++) {
              line[index[b]] += ra * row[b];
            }
          }
        }
      }
      for (int a = 0; a < n; a++) {
        g[a] += ridge * p[a];
        h[a][a] += ridge;
      }
      boolean better = false;
      while (!better && lambda < 1e12) {
        double[] move = solve(h, g, lambda);
        double[] old = p.clone();
        for (int a = 0; a < n; a++) {
          p[a] -= move[a];
        }
        double cost = cost(xs, ys, weights);
        if (cost < best) {
          better = true;
          best = cost;
          lambda = Math.max(lambda / 4, 1e-9);
        } else {
          p = old;
          lambda *= 3;
        }
      }
    }
    return best;
  }

  private double cost(List<double[]> xs, List<double[]> ys, List<double[]> weights) {
    double sum = 0;
    double[] out = new double[outputs];
    double[] value = new double[steps];
    double[] slope = new double[steps];
    for (int k = 0; k < xs.size(); k++) {
      evaluate(xs.get(k), out, value, slope);
      for (int o = 0; o < outputs; o++) {
        double r = weights.get(k)[o] * (out[o] - ys.get(k)[o]);
        sum += r * r;
      }
    }
    for (double v : p) {
      sum += ridge * v * v;
    }
    return sum;
  }

  /** Cholesky; only the lower half of h is read. */
  static double[] solve(double[][] h, double[] g, double lambda) {
    int n = g.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = i == j ? h[i][i] * (1 + lambda) + 1e-12 : h[i][j];
        for (int m = 0; m < j; m++) {
          sum -= l[i][m] * l[j][m];
        }
        l[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / l[j][j];
      }
    }
    double[] x = g.clone();
    for (int i = 0; i < n; i++) {
      for (int m = 0; m < i; m++) {
        x[i] -= l[i][m] * x[m];
      }
      x[i] /= l[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int m = i + 1; m < n; m++) {
        x[i] -= l[m][i] * x[m];
      }
      x[i] /= l[i][i];
    }
    return x;
  }
}
