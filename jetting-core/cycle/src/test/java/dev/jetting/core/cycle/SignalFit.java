package dev.jetting.core.cycle;

import com.google.common.base.Splitter;
import dev.jetting.core.flow.IsentropicFlow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Fits the sums of smooth steps that stand in for the cycle in the mixture model, and writes them
 * as the resources of jetting-core. Its samples are made by {@link SignalSamples}.
 */
final class SignalFit {

  /** Share of the suction at the needle jet that a stream backwards makes, as the cycle assumes. */
  static final double BACK = 0.5;

  static final double KNEE = 2;
  static final int STEPS = 28;

  private SignalFit() {}

  /** The groups of the fit, about −1 to 1 each. */
  static double[] scaled(String kind, double gap, double[] at) {
    double g = (gap - 0.05) / 3.65;
    return switch (kind) {
      case "piston-port" -> new double[] {g, at[0], at[1], at[2]};
      case "rotary-valve" -> new double[] {g, at[0], at[1], at[2], at[3]};
      default -> new double[] {g, at[0], at[1]};
    };
  }

  record Data(List<double[]> xs, List<double[]> ys, List<double[]> weights, List<double[]> ends) {}

  static Data read(String folder, String kind) throws IOException {
    Data data =
        new Data(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    switch (kind) {
      case "piston-port" -> add(data, folder + "PISTON.csv", kind, 62, 98, 62, 98);
      case "rotary-valve" -> add(data, folder + "ROTARY.csv", kind, 112, 150, 40, 80);
      case "reed-valve" -> add(data, folder + "REED.csv", kind, 0, 0, 0, 0);
      default -> { // unknown: the usual timings of all three
        add(data, folder + "PISTON.csv", kind, 70, 88, 70, 88);
        add(data, folder + "ROTARY.csv", kind, 120, 144, 48, 74);
        add(data, folder + "REED.csv", kind, 0, 0, 0, 0);
      }
    }
    return data;
  }

  private static void add(
      Data data, String file, String kind, double o1, double o2, double c1, double c2)
      throws IOException {
    List<double[]> rows =
        Files.readAllLines(Path.of(file)).stream()
            .map(l -> Arrays.stream(l.split(",")).mapToDouble(Double::parseDouble).toArray())
            .toList();
    double delivery = 0;
    for (int i = rows.size() - 1; i >= 0; i--) {
      double[] r = rows.get(i);
      if (r[1] < o1 || r[1] > o2 || r[2] < c1 || r[2] > c2) {
        continue;
      }
      double speed = (r[0] - 2.6) / 1.4;
      double[] timing =
          switch (kind) {
            case "piston-port" -> new double[] {(r[1] - 80) / 18, 0};
            case "rotary-valve" -> new double[] {(r[1] - 131) / 19, (r[2] - 60) / 20};
            default -> new double[2];
          };
      if (r[4] > 3.69) {
        delivery = r[5];
        data.ends.add(new double[] {speed, timing[0], timing[1], r[3], delivery});
      }
      double root = r[8] + Math.sqrt(BACK) * Math.max(r[10], 0);
      double mean = r[7] + BACK * Math.max(r[9], 0);
      double h = mean * mean / (root * root);
      double phi = root * root / mean;
      double g = Math.exp(r[4]);
      double net = r[5] / (g * phi * IsentropicFlow.psiOfDrop(h, 1.4));
      if (delivery < 0.3 || net < 0.1) {
        continue;
      }
      data.xs.add(
          scaled(kind, r[4], new double[] {speed, (delivery - 0.7) / 0.4, timing[0], timing[1]}));
      data.ys.add(
          new double[] {
            Math.log(h) + 2 * Math.log(1 + g / KNEE), Math.log(phi), net, r[8] / root, r[7] / mean
          });
      data.weights.add(new double[] {0.5, 0.6, 2.5 / net, 1, 1});
    }
  }

  /** Least and most delivery of the samples: c0 + c1 speed + c2 speed² + c3 opens + c4 closes. */
  static double[] bound(Data data, double pull) {
    List<double[]> rows = data.ends.stream().filter(e -> Math.abs(e[3] - pull) < 1).toList();
    double[][] h = new double[5][5];
    double[] g = new double[5];
    for (double[] e : rows) {
      double[] f = {1, e[0], e[0] * e[0], e[1], e[2]};
      for (int a = 0; a < 5; a++) {
        g[a] += f[a] * e[4];
        for (int b = 0; b < 5; b++) {
          h[a][b] += f[a] * f[b];
        }
        h[a][a] += 1e-6;
      }
    }
    return SmoothSteps.solve(h, g, 0);
  }

  public static void main(String[] args) throws IOException {
    int iterations = Integer.parseInt(args[1]);
    for (String kind : Splitter.on(',').split(args[0])) {
      long t = System.nanoTime();
      Data train = read(args[2] + "train-", kind);
      Data test = read(args[2] + "test-", kind);
      SmoothSteps net = new SmoothSteps(train.xs.get(0).length, 5, STEPS, 1e-6, 1);
      double cost = net.fit(train.xs, train.ys, train.weights, iterations);
      System.out.printf(
          "%s params %d train %d rms %.5f  %.1f s%n",
          kind,
          net.p.length,
          train.xs.size(),
          Math.sqrt(cost / train.xs.size() / 5),
          (System.nanoTime() - t) / 1e9);
      for (int o = 0; o < 5; o++) {
        int out = o;
        double[] e =
            IntStream.range(0, test.xs.size())
                .mapToDouble(
                    i ->
                        Math.abs(net.at(test.xs.get(i))[out] - test.ys.get(i)[out])
                            * test.weights.get(i)[out]
                            / (out < 3 ? new double[] {0.5, 0.6, 2.5}[out] : 1))
                .sorted()
                .toArray();
        System.out.printf(
            "   out %d median %.4f 95%% %.4f 99%% %.4f worst %.4f%n",
            o,
            e[e.length / 2],
            e[(int) (e.length * 0.95)],
            e[(int) (e.length * 0.99)],
            e[e.length - 1]);
      }
      List<String> lines = new ArrayList<>();
      lines.add(line(bound(train, SignalSamples.LEAST_PULL)));
      lines.add(line(bound(train, SignalSamples.MOST_PULL)));
      int inputs = train.xs.get(0).length;
      for (int j = 0; j < STEPS; j++) {
        lines.add(line(Arrays.copyOfRange(net.p, j * (inputs + 1), (j + 1) * (inputs + 1))));
      }
      for (int o = 0; o < 5; o++) {
        int at = STEPS * (inputs + 1) + o * (STEPS + 1);
        lines.add(line(Arrays.copyOfRange(net.p, at, at + STEPS + 1)));
      }
      Files.write(Path.of(args[3] + kind + ".csv"), lines);
    }
  }

  private static String line(double[] values) {
    return Arrays.stream(values)
        .mapToObj(v -> String.format(Locale.ROOT, "%.9g", v))
        .collect(Collectors.joining(","));
  }
}
