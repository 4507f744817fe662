package dev.jetting.core.cycle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.awt.BasicStroke;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler.LegendPosition;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Draws λ by the mixture model over λ by the cycle: version 3 from what CYCLE.md said of it,
 * version 4 from its table now. One picture for each kind of inlet. Speeds differ by the shape of
 * the point, versions by the line, so no colour is needed.
 */
final class CycleFigure {

  private static final Map<String, Marker> SPEEDS =
      Map.of(
          "3000",
          SeriesMarkers.CIRCLE,
          "5000",
          SeriesMarkers.SQUARE,
          "7000",
          SeriesMarkers.TRIANGLE_UP);

  private static final BasicStroke WHOLE = new BasicStroke(1.6f);
  private static final BasicStroke DASHED =
      new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0);

  private CycleFigure() {}

  /** A line of a table: what the model has by what the cycle has, over the throttle. */
  record Line(String inlet, String rpm, List<Double> openings, List<Double> ratios) {}

  /** The lines that CYCLE.md had of mixture model 3. */
  static List<Line> ofVersionThree() throws IOException {
    Map<String, Line> lines = new LinkedHashMap<>();
    try (InputStream in = CycleFigure.class.getResourceAsStream("mixture-model-3.csv")) {
      for (String row : new String(in.readAllBytes(), UTF_8).lines().skip(1).toList()) {
        List<String> cells = Pattern.compile(",").splitAsStream(row).toList();
        Line line =
            lines.computeIfAbsent(
                cells.get(0) + cells.get(1),
                key -> new Line(cells.get(0), cells.get(1), new ArrayList<>(), new ArrayList<>()));
        line.openings.add(Double.parseDouble(cells.get(2)));
        line.ratios.add(Double.parseDouble(cells.get(4)) / Double.parseDouble(cells.get(3)));
      }
    }
    return List.copyOf(lines.values());
  }

  /** Writes {@code inlet-<kind>.svg} beside CYCLE.md for each kind of inlet. */
  static void draw(List<Line> now) throws IOException {
    List<Line> before = ofVersionThree();
    for (String inlet : now.stream().map(Line::inlet).distinct().toList()) {
      XYChart chart =
          new XYChartBuilder()
              .width(640)
              .height(420)
              .title(inlet)
              .xAxisTitle("throttle opening by lift")
              .yAxisTitle("λ of the model by λ of the cycle")
              .build();
      chart.getStyler().setLegendPosition(LegendPosition.OutsideE);
      chart.getStyler().setChartBackgroundColor(Color.WHITE);
      chart.getStyler().setYAxisMin(0.4).setYAxisMax(2.0).setXAxisMin(0.0).setXAxisMax(1.0);
      chart.getStyler().setYAxisDecimalPattern("0.0");
      before.forEach(line -> add(chart, inlet, line, "version 3", DASHED, Color.GRAY));
      now.forEach(line -> add(chart, inlet, line, "version 4", WHOLE, Color.BLACK));
      VectorGraphicsEncoder.saveVectorGraphic(
          chart, "inlet-" + inlet.replace(' ', '-') + ".svg", VectorGraphicsFormat.SVG);
    }
  }

  private static void add(
      XYChart chart, String inlet, Line line, String version, BasicStroke stroke, Color colour) {
    if (line.inlet.equals(inlet)) {
      XYSeries series =
          chart.addSeries(version + ", " + line.rpm + " rpm", line.openings, line.ratios);
      series.setMarker(SPEEDS.get(line.rpm));
      series.setLineStyle(stroke);
      series.setLineColor(colour);
      series.setMarkerColor(colour);
    }
  }
}
