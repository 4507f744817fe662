package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How far the mixture model and the simulation agree on engines that the fit has not seen. The
 * table of CYCLE.md is of {@link #MANY} engines of each kind; a run with {@code
 * -Dgolden.update=true} computes all of them and writes it, which takes minutes; a plain run takes
 * one of each.
 */
class AgreementTest {

  private static final Path DOCUMENT = Path.of("CYCLE.md");
  private static final String BEGIN = "<!-- agreement: written by AgreementTest -->\n\n";
  private static final String END = "\n<!-- end of the agreement -->";
  private static final int MANY = 16;

  /**
   * What the model is given of an engine, and how far it may be off: half of the time, and ever.
   */
  private enum Given {
    KIND_AND_USUAL_INSIDE("kind and timing; the inside is the usual one", 0.015, 0.08),
    KIND_ALONE("kind and timing", 0.05, 0.15),
    NOTHING("not even the kind", 0.15, 0.5);

    private final String words;
    private final double median;
    private final double worst;

    Given(String words, double median, double worst) {
      this.words = words;
      this.median = median;
      this.worst = worst;
    }
  }

  @Test
  void model_agreesOnEnginesThatTheFitHasNotSeen() throws IOException {
    boolean all = Boolean.getBoolean("golden.update");
    List<String> rows = new ArrayList<>();
    rows.add("| inlet | given | median | 95 % | worst | deviation |");
    rows.add("|---|---|---|---|---|---|");
    for (Given given : Given.values()) {
      for (SlideSignal.Kind kind : SlideSignal.Kind.values()) {
        double[] errors = errors(kind, given, all ? MANY : 1);
        rows.add(row(kind, given, errors));
        assertThat(share(errors, 0.5))
            .as("%s, %s, median", kind, given)
            .isLessThan(all ? given.median : given.worst);
        assertThat(share(errors, 1)).as("%s, %s, worst", kind, given).isLessThan(given.worst);
      }
    }
    if (all) {
      String text = Files.readString(DOCUMENT);
      int begin = text.indexOf(BEGIN) + BEGIN.length();
      Files.writeString(
          DOCUMENT,
          text.substring(0, begin)
              + String.join("\n", rows)
              + "\n"
              + text.substring(text.indexOf(END)));
    }
  }

  /** |Δ ln λ|, rising. */
  private static double[] errors(SlideSignal.Kind kind, Given given, int engines) {
    DoubleStream.Builder errors = DoubleStream.builder();
    for (int seed = 1; seed <= engines; seed++) {
      Drawn.Trial drawn = Drawn.draw(kind, seed, given != Given.KIND_AND_USUAL_INSIDE);
      Drawn.Trial trial = given == Given.NOTHING ? drawn.ofUnknownKind() : drawn;
      Arrays.stream(Drawn.OPENINGS).map(o -> Math.abs(trial.error(o))).forEach(errors::add);
    }
    return errors.build().sorted().toArray();
  }

  private static String row(SlideSignal.Kind kind, Given given, double[] errors) {
    double squares = Arrays.stream(errors).map(e -> e * e).average().orElseThrow();
    return Stream.of(
            kind.name().toLowerCase(Locale.ROOT),
            given.words,
            percent(share(errors, 0.5)),
            percent(share(errors, 0.95)),
            percent(share(errors, 1)),
            percent(Math.sqrt(squares)))
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static double share(double[] rising, double share) {
    return rising[(int) Math.min(rising.length - 1, share * rising.length)];
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f", 100 * value);
  }
}
