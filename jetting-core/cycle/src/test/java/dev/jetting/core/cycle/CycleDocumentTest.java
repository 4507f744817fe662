package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.flow.Pulsation;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The table of CYCLE.md, which a run with {@code -Dgolden.update=true} writes anew. A plain run
 * computes its middle speed only: the rest takes a minute.
 */
class CycleDocumentTest {

  private static final String BEGIN = "<!-- table: written by CycleDocumentTest -->\n\n";
  private static final String END = "\n<!-- end of the table -->";
  private static final int[] SPEEDS = {3000, 5000, 7000};
  private static final int CHECKED = 5000;

  private static final Map<String, Kind> KINDS = new LinkedHashMap<>();
  private static final Map<String, Double> OPENINGS = new LinkedHashMap<>();

  static {
    KINDS.put("piston port", new Kind(SlideSignal.Kind.PISTON, Bench.PISTON_PORT, 75, 75));
    KINDS.put("rotary valve", new Kind(SlideSignal.Kind.ROTARY, Bench.ROTARY, 130, 60));
    KINDS.put("reed", new Kind(SlideSignal.Kind.REED, Bench.REED, 75, 75));
    OPENINGS.put("1/16", 0.0625);
    OPENINGS.put("1/8", 0.125);
    OPENINGS.put("1/4", 0.25);
    OPENINGS.put("1/2", 0.5);
    OPENINGS.put("full", 1.0);
  }

  private record Kind(SlideSignal.Kind kind, Inlet inlet, double opens, double closes) {

    /** What the engine of the bench draws with nothing before its inlet. */
    double delivery(EngineSpeed speed) {
      double lnPort = Math.log(Pulsation.PORT_AT_PEAK * Bench.PEAK / speed.rpm());
      return SlideSignal.of(SignalSamples.group(kind, lnPort, opens, closes, 3.7, 0)).air();
    }
  }

  @Test
  void table_isTheSimulations() throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      String table = String.join("\n", rows(SPEEDS)) + "\n";
      Document.write(BEGIN, table, END);
      CycleFigure.draw(lines(table));
      return;
    }
    assertThat(Document.between(BEGIN, END).lines()).containsAll(rows(CHECKED));
  }

  /** Every number of the figure is one of the table. */
  private static List<CycleFigure.Line> lines(String table) {
    List<CycleFigure.Line> lines = new ArrayList<>();
    for (String row : table.lines().skip(2).toList()) {
      List<String> cells = cells(row, "[| ]*\\|[| ]*");
      List<Double> ratios = new ArrayList<>();
      for (String cell : cells.subList(3, cells.size())) {
        List<String> both = cells(cell, "[ ()]+");
        ratios.add(Double.parseDouble(both.get(1)) / Double.parseDouble(both.get(0)));
      }
      lines.add(
          new CycleFigure.Line(cells.get(0), cells.get(1), List.copyOf(OPENINGS.values()), ratios));
    }
    return lines;
  }

  private static List<String> cells(String row, String between) {
    return Pattern.compile(between).splitAsStream(row).filter(cell -> !cell.isBlank()).toList();
  }

  /** Of mixture model 3 it was off by a third and more somewhere, of each kind of inlet. */
  @Test
  void figure_hasTheLinesOfVersionThree() throws IOException {
    assertThat(CycleFigure.ofVersionThree())
        .hasSize(9)
        .allSatisfy(
            line -> assertThat(line.ratios()).hasSize(5).anyMatch(r -> r < 0.8 || r > 1.25));
  }

  private static List<String> rows(int... speeds) {
    List<String> rows = new ArrayList<>();
    rows.add("| inlet | rpm | delivery ratio | " + String.join(" | ", OPENINGS.keySet()) + " |");
    rows.add("|---|---|---|" + "---|".repeat(OPENINGS.size()));
    KINDS.forEach(
        (name, kind) -> {
          for (int rpm : speeds) {
            rows.add(row(name, kind, EngineSpeed.ofRpm(rpm)));
          }
        });
    return rows;
  }

  /** The model is given the delivery ratio, and the kind of the inlet with its timing. */
  private static String row(String name, Kind kind, EngineSpeed speed) {
    CrankcaseCycle cycle = CrankcaseCycle.of(Bench.setup(), Bench.crankcase(kind.inlet));
    double delivery = kind.delivery(speed);
    MixtureModel model =
        MixtureModel.of(
            Bench.setup(
                RpmCurve.of(RpmCurve.Point.of(speed.rpm(), delivery)),
                Bench.induction(kind.kind, kind.opens, kind.closes)));
    StringBuilder row =
        new StringBuilder(
            "| " + name + " | " + Math.round(speed.rpm()) + " | " + twoDigits(delivery) + " |");
    OPENINGS.values().stream()
        .map(ThrottleOpening::ofShare)
        .forEach(
            throttle ->
                row.append(' ')
                    .append(twoDigits(cycle.at(throttle, speed).lambda().value()))
                    .append(" (")
                    .append(twoDigits(model.at(throttle, speed).lambda().value()))
                    .append(") |"));
    return row.toString();
  }

  private static String twoDigits(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
