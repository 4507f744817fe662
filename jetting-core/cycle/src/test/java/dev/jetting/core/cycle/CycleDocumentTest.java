package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The table of CYCLE.md, which a run with {@code -Dgolden.update=true} writes anew. A plain run
 * computes its middle speed only: the rest takes a minute.
 */
class CycleDocumentTest {

  private static final Path DOCUMENT = Path.of("CYCLE.md");
  private static final String BEGIN = "<!-- table: written by CycleDocumentTest -->\n\n";
  private static final String END = "\n<!-- end of the table -->";
  private static final int[] SPEEDS = {3000, 5000, 7000};
  private static final int CHECKED = 5000;

  private static final Map<String, Inlet> KINDS = new LinkedHashMap<>();
  private static final Map<String, Double> OPENINGS = new LinkedHashMap<>();

  static {
    KINDS.put("piston port", Bench.PISTON_PORT);
    KINDS.put("rotary valve", Bench.ROTARY);
    KINDS.put("reed", Bench.REED);
    OPENINGS.put("1/16", 0.0625);
    OPENINGS.put("1/8", 0.125);
    OPENINGS.put("1/4", 0.25);
    OPENINGS.put("1/2", 0.5);
    OPENINGS.put("full", 1.0);
  }

  @Test
  void table_isTheSimulations() throws IOException {
    String text = Files.readString(DOCUMENT);
    int begin = text.indexOf(BEGIN) + BEGIN.length();
    int end = text.indexOf(END);
    if (Boolean.getBoolean("golden.update")) {
      String table = String.join("\n", rows(SPEEDS)) + "\n";
      Files.writeString(DOCUMENT, text.substring(0, begin) + table + text.substring(end));
      return;
    }
    assertThat(text.substring(begin, end).lines()).containsAll(rows(CHECKED));
  }

  private static List<String> rows(int... speeds) {
    List<String> rows = new ArrayList<>();
    rows.add("| inlet | rpm | delivery ratio | " + String.join(" | ", OPENINGS.keySet()) + " |");
    rows.add("|---|---|---|" + "---|".repeat(OPENINGS.size()));
    KINDS.forEach(
        (kind, inlet) -> {
          for (int rpm : speeds) {
            rows.add(row(kind, inlet, EngineSpeed.ofRpm(rpm)));
          }
        });
    return rows;
  }

  /** The fast model is given the delivery ratio that the cycle has at full throttle. */
  private static String row(String kind, Inlet inlet, EngineSpeed speed) {
    CrankcaseCycle cycle = CrankcaseCycle.of(Bench.setup(), Bench.crankcase(inlet));
    double delivery = cycle.at(ThrottleOpening.FULL, speed).deliveryRatio();
    MixtureModel fast =
        MixtureModel.of(
            Bench.setup(
                RpmCurve.of(RpmCurve.Point.of(speed.rpm(), delivery)), Induction.assumedMild()));
    StringBuilder row =
        new StringBuilder(
            "| " + kind + " | " + Math.round(speed.rpm()) + " | " + twoDigits(delivery) + " |");
    OPENINGS.values().stream()
        .map(ThrottleOpening::ofShare)
        .forEach(
            throttle ->
                row.append(' ')
                    .append(twoDigits(cycle.at(throttle, speed).lambda().value()))
                    .append(" (")
                    .append(twoDigits(fast.at(throttle, speed).lambda().value()))
                    .append(") |"));
    return row.toString();
  }

  private static String twoDigits(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
