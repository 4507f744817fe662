package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How far the mixture model and the simulation agree on engines that the fit has not seen, and
 * whether the band of jetting-rules covers the rest. The table of CYCLE.md is of {@link #MANY}
 * engines of each kind, {@link #FEW} below that range; a run with {@code -Dgolden.update=true}
 * computes all of them and writes it, which takes minutes; a plain run takes one of each, and holds
 * the written table to its targets.
 */
class AgreementTest {

  private static final String BEGIN = "<!-- agreement: written by AgreementTest -->\n\n";
  private static final String END = "\n<!-- end of the agreement -->";
  private static final String SPREADS = "<!-- spreads: those of jetting-rules -->\n\n";
  private static final String SPREADS_END = "\n<!-- end of the spreads -->";
  private static final int MANY = 16;
  private static final int FEW = 4; // below the range, where a point takes long
  private static final Drawn.Range[] PLAIN = {Drawn.Range.USUAL};
  private static final double HALF_WIDTH = 1.6449; // of a 90 % band, in standard deviations

  /** What the model is given of an engine, and how far it may be off, in per cent. */
  private enum Given {
    KIND_AND_USUAL_INSIDE(
        "kind and timing; the inside is the usual one", Drawn.Range.USUAL, false, 1.5, 4, 8),
    KIND_ALONE("kind and timing", Drawn.Range.USUAL, true, 5, 10, 15),
    DELIVERY_TOO_HIGH(
        "kind and timing, and delivery 10 % too high", Drawn.Range.USUAL, true, 10, 20, 25),
    DELIVERY_TOO_LOW(
        "kind and timing, and delivery 10 % too low", Drawn.Range.USUAL, true, 10, 20, 25),
    NOTHING("not even the kind", Drawn.Range.USUAL, true, 15, 25, 50),
    KIND_SLOW("kind and timing, 1300 to 3000 rpm", Drawn.Range.SLOW, true, 10, 20, 30),
    KIND_SHUT("kind and timing, shut to 1/32", Drawn.Range.SHUT, true, 10, 20, 30);

    private final String words;
    private final Drawn.Range range;
    private final boolean hidden;
    private final double median;
    private final double most;
    private final double worst;

    Given(
        String words, Drawn.Range range, boolean hidden, double median, double most, double worst) {
      this.words = words;
      this.range = range;
      this.hidden = hidden;
      this.median = median;
      this.most = most;
      this.worst = worst;
    }

    private UnaryOperator<Drawn.Trial> of() {
      return switch (this) {
        case KIND_AND_USUAL_INSIDE, KIND_ALONE, KIND_SLOW, KIND_SHUT -> UnaryOperator.identity();
        case DELIVERY_TOO_HIGH -> trial -> trial.withDelivery(1.1);
        case DELIVERY_TOO_LOW -> trial -> trial.withDelivery(0.9);
        case NOTHING -> Drawn.Trial::ofUnknownKind;
      };
    }
  }

  /**
   * One engine at one opening.
   *
   * @param error ln of the modelled λ by that of the cycle
   * @param rest spread of ln λ by what the model leaves out
   * @param above probability of more than the cycle's λ, by the whole band of an untried engine
   */
  private record Point(double error, double rest, double above) {

    boolean withinRest() {
      return Math.abs(error) <= HALF_WIDTH * rest;
    }

    boolean withinBand() {
      return above >= 0.05 && above <= 0.95;
    }
  }

  @Test
  void model_agreesOnEnginesThatTheFitHasNotSeen() throws IOException {
    boolean all = Boolean.getBoolean("golden.update");
    List<String> rows = new ArrayList<>();
    rows.add(
        "| inlet | given | median | 95 % | worst | deviation | in its own band | in the band |");
    rows.add("|---|---|---|---|---|---|---|---|");
    Map<Given, List<String>> table = new EnumMap<>(Given.class);
    for (SlideSignal.Kind kind : SlideSignal.Kind.values()) {
      points(kind, all)
          .forEach(
              (given, points) -> {
                table
                    .computeIfAbsent(given, key -> new ArrayList<>())
                    .add(row(kind, given, points));
                assertThat(points)
                    .as("%s, %s", kind, given)
                    .allMatch(p -> Math.abs(p.error) < given.worst / 100);
                assertThat(share(points, Point::withinBand))
                    .as("%s, %s", kind, given)
                    .isGreaterThanOrEqualTo(0.8);
              });
    }
    table.values().forEach(rows::addAll);
    if (all) {
      Document.write(BEGIN, String.join("\n", rows) + "\n", END);
    }
  }

  /** The table that is there: the targets, and nine tenths of the points in the 90 % band. */
  @Test
  void table_isWithinItsTargets() throws IOException {
    List<List<String>> rows =
        Document.between(BEGIN, END).lines().skip(2).map(AgreementTest::cells).toList();
    assertThat(rows).hasSize(Given.values().length * SlideSignal.Kind.values().length);
    for (List<String> row : rows) {
      Given given =
          Stream.of(Given.values()).filter(g -> g.words.equals(row.get(1))).findAny().orElseThrow();
      assertThat(Double.parseDouble(row.get(2)))
          .as("%s, median", row)
          .isLessThanOrEqualTo(given.median);
      assertThat(Double.parseDouble(row.get(3)))
          .as("%s, 95 %%", row)
          .isLessThanOrEqualTo(given.most);
      assertThat(Double.parseDouble(row.get(4)))
          .as("%s, worst", row)
          .isLessThanOrEqualTo(given.worst);
      assertThat(Double.parseDouble(row.get(7)))
          .as("%s, in the band", row)
          .isGreaterThanOrEqualTo(90);
    }
  }

  private static Map<Given, List<Point>> points(SlideSignal.Kind kind, boolean all) {
    Map<Given, List<Point>> points = new EnumMap<>(Given.class);
    for (Drawn.Range range : all ? Drawn.Range.values() : PLAIN) {
      int engines = all ? (range == Drawn.Range.USUAL ? MANY : FEW) : 1;
      for (int seed = 1; seed <= engines; seed++) {
        add(points, kind, range, seed, true);
      }
    }
    for (int seed = 1; seed <= (all ? MANY : 1); seed++) {
      add(points, kind, Drawn.Range.USUAL, seed, false);
    }
    return points;
  }

  private static void add(
      Map<Given, List<Point>> points,
      SlideSignal.Kind kind,
      Drawn.Range range,
      int seed,
      boolean hidden) {
    Drawn.Trial drawn = Drawn.draw(kind, range, seed, hidden);
    for (double opening : range.openings()) {
      double cycle = Math.log(drawn.cycle(opening).lambda().value());
      for (Given given : Given.values()) {
        if (given.hidden == hidden && given.range == range) {
          points
              .computeIfAbsent(given, key -> new ArrayList<>())
              .add(point(given, drawn, opening, cycle));
        }
      }
    }
  }

  private static Point point(Given given, Drawn.Trial drawn, double opening, double cycle) {
    Spreads spreads = spreads(given == Given.NOTHING);
    Drawn.Trial trial = given.of().apply(drawn);
    double above =
        Calibration.untried(spreads)
            .lnLambda(
                MixtureModel.of(trial.setup()),
                ThrottleOpening.ofShare(opening),
                EngineSpeed.ofRpm(trial.rpm()))
            .above(cycle);
    double modelled = Math.log(trial.modelled(opening).lambda().value());
    return new Point(modelled - cycle, spreads.residual(), above);
  }

  /** Those that CYCLE.md names; a test of jetting-rules holds them to what it assumes. */
  private static Spreads spreads(boolean unknownKind) {
    try {
      List<Double> values =
          Document.between(SPREADS, SPREADS_END)
              .lines()
              .skip(2)
              .flatMap(line -> cells(line).stream())
              .map(Double::valueOf)
              .toList();
      double unknown = unknownKind ? values.get(6) : 0;
      return new Spreads(
          values.get(0),
          values.get(1),
          values.get(2),
          values.get(3),
          Math.hypot(values.get(4), unknown),
          values.get(5));
    } catch (IOException e) {
      throw new UncheckedIOException("CYCLE.md", e);
    }
  }

  private static List<String> cells(String line) {
    return Pattern.compile("\\s*\\|\\s*")
        .splitAsStream(line)
        .filter(cell -> !cell.isEmpty())
        .toList();
  }

  private static String row(SlideSignal.Kind kind, Given given, List<Point> points) {
    double[] errors = points.stream().mapToDouble(p -> Math.abs(p.error)).sorted().toArray();
    double squares = Arrays.stream(errors).map(e -> e * e).average().orElseThrow();
    return Stream.of(
            kind.name().toLowerCase(Locale.ROOT),
            given.words,
            percent(rank(errors, 0.5)),
            percent(rank(errors, 0.95)),
            percent(rank(errors, 1)),
            percent(Math.sqrt(squares)),
            whole(share(points, Point::withinRest)),
            whole(share(points, Point::withinBand)))
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static double share(List<Point> points, Predicate<Point> of) {
    return points.stream().filter(of).count() / (double) points.size();
  }

  private static double rank(double[] rising, double share) {
    return rising[(int) Math.min(rising.length - 1, share * rising.length)];
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f", 100 * value);
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", 100 * value);
  }
}
