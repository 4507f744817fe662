package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import java.util.List;

/**
 * What a seller puts into one box, and the setting that he recommends for each machine. Everything
 * is named by its id in a {@link Catalogue}. {@link KitValidator} checks that the catalogue has the
 * id, so a kit with a wrong id is a kit with a finding.
 *
 * @param id its name
 * @param description a line for people
 * @param family id of the family of its carburettor
 * @param parts ids of the parts in the box; each one counts once
 * @param market id of the market in which it is sold
 * @param recommendations how to set it, machine by machine; at least one
 */
public record Kit(
    String id,
    String description,
    String family,
    List<String> parts,
    String market,
    List<Recommendation> recommendations) {

  private static final int MOST_PARTS = 500;
  private static final int MOST_MACHINES = 100;

  /**
   * Copies the lists.
   *
   * @param id its name
   * @param description a line for people
   * @param family id of the family of its carburettor
   * @param parts ids of the parts in the box; each one counts once
   * @param market id of the market in which it is sold
   * @param recommendations how to set it, machine by machine; at least one
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters or nothing is recommended
   */
  public Kit {
    Checks.id("kit", id);
    Checks.lineOrNothing(
        "description", "description of kit " + id, description, Catalogue.LONGEST_TITLE);
    Checks.id("family", "family of kit " + id, family);
    parts = List.copyOf(parts);
    Checks.atMost("parts", "parts of kit " + id, parts.size(), MOST_PARTS);
    Checks.atMost(
        "recommendations", "recommendations of kit " + id, recommendations.size(), MOST_MACHINES);
    for (int i = 0; i < parts.size(); i++) {
      Checks.id("parts[" + i + "]", "part " + (i + 1) + " of kit " + id, parts.get(i));
    }
    Checks.id("market", "market of kit " + id, market);
    recommendations = List.copyOf(recommendations);
    if (recommendations.isEmpty()) {
      throw new IllegalArgumentException(
          "recommendations of kit " + id + ": allowed at least one machine");
    }
  }
}
