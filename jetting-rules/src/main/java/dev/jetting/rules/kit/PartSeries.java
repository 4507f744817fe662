package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.JetCalibration;
import java.util.Optional;

/**
 * Parts that are made to one pattern, thread and length, so that each of them fits wherever one of
 * them does. A part that looks like the others and fits other carburettors is of another series.
 *
 * @param id its name, unique among the series of the catalogue
 * @param description a line for people
 * @param kind what its parts are for
 * @param bench the bench on which its jets are numbered by flow; empty where they are numbered by
 *     bore, and for all parts but jets
 */
public record PartSeries(
    String id, String description, SeriesKind kind, Optional<JetCalibration> bench) {

  /**
   * Checks the id and the bench.
   *
   * @param id its name, unique among the series of the catalogue
   * @param description a line for people
   * @param kind what its parts are for
   * @param bench the bench on which its jets are numbered by flow; empty where they are numbered by
   *     bore, and for all parts but jets
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, or parts that are no jets have a bench
   */
  public PartSeries {
    Checks.id("series", id);
    Checks.lineOrNothing(
        "description", "description of series " + id, description, Catalogue.LONGEST_TITLE);
    boolean jets = kind == SeriesKind.PILOT_JET || kind == SeriesKind.MAIN_JET;
    if (bench.isPresent() && !jets) {
      throw new IllegalArgumentException(
          "bench of series " + id + " of kind " + kind + ": allowed for jets only");
    }
  }
}
