package dev.jetting.core.cycle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Engines spread evenly over the groups of the mixture model, and the pulsation behind gaps of many
 * sizes in each.
 *
 * <p>The inside of the crankcase that the mixture model is not given is that of the bench engine,
 * by displacement. Areas of ports go with the speed group.
 */
final class SignalSamples {

  static final double SWEPT = 123e-6;
  static final double LEAST_PULL = -16_000;
  static final double MOST_PULL = 30_000;
  static final double LEAST_GAP = -3.6;
  static final double MOST_GAP = 3.7;
  static final double LEAST_SPEED = 1.2;
  static final double MOST_SPEED = 4.0;
  static final int GAPS = 9;

  private static final int[] BASES = {2, 3, 5, 7};

  private SignalSamples() {}

  /** Angles before and after top dead centre at which the inlet opens and shuts. */
  record Sample(
      double speed, double opens, double closes, double pull, double gap, SlideSignal signal) {

    String line() {
      return String.join(
          ",",
          List.of(
                  speed,
                  opens,
                  closes,
                  pull,
                  gap,
                  signal.air(),
                  signal.back(),
                  signal.drop(),
                  signal.rootDrop(),
                  signal.rise(),
                  signal.rootRise())
              .stream()
              .map(v -> String.format(Locale.ROOT, "%.8g", v))
              .toList());
    }
  }

  static double halton(int index, int base) {
    double f = 1;
    double sum = 0;
    for (int i = index; i > 0; i /= base) {
      f /= base;
      sum += f * (i % base);
    }
    return sum;
  }

  private static double between(double from, double to, double share) {
    return from + (to - from) * share;
  }

  /** The usual inside of an engine: what the mixture model is not given. */
  static SlideSignal.Group group(
      SlideSignal.Kind kind, double speed, double opens, double closes, double gap, double pull) {
    double port = Math.exp(speed);
    double inlet =
        switch (kind) {
          case PISTON -> 1;
          case ROTARY -> 460.0 / 520;
          case REED -> 560.0 / 520;
        };
    return new SlideSignal.Group(
        Math.exp(gap),
        kind,
        port * inlet,
        opens,
        closes,
        20,
        4000 / 101_325.0,
        port * 500 / 520,
        120,
        pull / 101_325,
        1.4,
        0.25,
        70e-3 * 450e-6 / SWEPT);
  }

  static List<Sample> engine(SlideSignal.Kind kind, int index, int offset) {
    int at = index + offset;
    double speed = between(LEAST_SPEED, MOST_SPEED, halton(at, BASES[0]));
    double pull =
        index % 11 == 4
            ? LEAST_PULL
            : index % 11 == 9 ? MOST_PULL : between(LEAST_PULL, MOST_PULL, halton(at, BASES[1]));
    double opens =
        switch (kind) {
          case PISTON -> between(62, 98, halton(at, BASES[2]));
          case ROTARY -> between(112, 150, halton(at, BASES[2]));
          default -> 0;
        };
    double closes =
        switch (kind) {
          case PISTON -> opens;
          case ROTARY -> between(40, 80, halton(at, BASES[3]));
          default -> 0;
        };
    return IntStream.rangeClosed(0, GAPS)
        .mapToObj(
            i -> {
              double gap =
                  i == GAPS
                      ? MOST_GAP
                      : between(LEAST_GAP, MOST_GAP, (i + halton(at * 7 + i * 13, 11)) / GAPS);
              return new Sample(
                  speed,
                  opens,
                  closes,
                  pull,
                  gap,
                  SlideSignal.of(group(kind, speed, opens, closes, gap, pull)));
            })
        .toList();
  }

  public static void main(String[] args) throws IOException {
    int count = Integer.parseInt(args[1]);
    int offset = Integer.parseInt(args[2]);
    for (SlideSignal.Kind kind : SlideSignal.Kind.values()) {
      long t = System.nanoTime();
      List<String> lines =
          IntStream.rangeClosed(1, count)
              .parallel()
              .mapToObj(i -> engine(kind, i, offset))
              .flatMap(List::stream)
              .map(Sample::line)
              .collect(Collectors.toList());
      Files.write(Path.of(args[0] + kind + ".csv"), lines);
      System.out.println(kind + " " + (System.nanoTime() - t) / 1e9);
    }
  }
}
