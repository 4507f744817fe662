package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * How far the fast cycle and the simulation agree on engines that the fit has not seen. The table
 * of CYCLE.md is of {@link #MANY} engines of each kind; a run with {@code -Dgolden.update=true}
 * computes all of them and writes it, which takes minutes; a plain run takes a few of them.
 */
class AgreementTest {

  private static final Path DOCUMENT = Path.of("CYCLE.md");
  private static final String BEGIN = "<!-- agreement: written by AgreementTest -->\n\n";
  private static final String END = "\n<!-- end of the agreement -->";
  private static final int MANY = 16;
  private static final int FEW = 1;

  @Test
  void fastCycle_agreesOnEnginesThatTheFitHasNotSeen() throws IOException {
    boolean all = Boolean.getBoolean("golden.update");
    List<String> rows = new ArrayList<>();
    rows.add("| inlet | inside of the engine | median | 95 % | worst |");
    rows.add("|---|---|---|---|---|");
    for (boolean hidden : new boolean[] {false, true}) {
      for (SlideSignal.Kind kind : SlideSignal.Kind.values()) {
        double[] errors = errors(kind, hidden, all ? MANY : FEW);
        rows.add(row(kind, hidden, errors));
        assertThat(share(errors, 0.5))
            .as("%s median", kind)
            .isLessThan(hidden || !all ? 0.05 : 0.015);
        assertThat(share(errors, 1)).as("%s worst", kind).isLessThan(hidden ? 0.15 : 0.08);
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
  private static double[] errors(SlideSignal.Kind kind, boolean hidden, int engines) {
    DoubleStream.Builder errors = DoubleStream.builder();
    for (int seed = 1; seed <= engines; seed++) {
      Drawn.Trial trial = Drawn.draw(kind, seed, hidden);
      Arrays.stream(Drawn.OPENINGS).map(o -> Math.abs(trial.error(o))).forEach(errors::add);
    }
    return errors.build().sorted().toArray();
  }

  private static String row(SlideSignal.Kind kind, boolean hidden, double[] errors) {
    return "| "
        + kind.name().toLowerCase(Locale.ROOT)
        + " | "
        + (hidden ? "drawn" : "usual")
        + " | "
        + percent(share(errors, 0.5))
        + " | "
        + percent(share(errors, 0.95))
        + " | "
        + percent(share(errors, 1))
        + " |";
  }

  private static double share(double[] rising, double share) {
    return rising[(int) Math.min(rising.length - 1, share * rising.length)];
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f", 100 * value);
  }
}
