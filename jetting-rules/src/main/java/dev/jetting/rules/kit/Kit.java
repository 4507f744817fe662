package dev.jetting.rules.kit;

import java.util.List;
import java.util.Objects;

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

  /**
   * Copies the lists.
   *
   * @param id its name
   * @param description a line for people
   * @param family id of the family of its carburettor
   * @param parts ids of the parts in the box; each one counts once
   * @param market id of the market in which it is sold
   * @param recommendations how to set it, machine by machine; at least one
   * @throws IllegalArgumentException if an id is blank or nothing is recommended
   */
  public Kit {
    Ids.check("kit", id);
    Objects.requireNonNull(description, "description");
    Ids.check("family of kit " + id, family);
    parts = List.copyOf(parts);
    Ids.check("market of kit " + id, market);
    recommendations = List.copyOf(recommendations);
    if (recommendations.isEmpty()) {
      throw new IllegalArgumentException(
          "recommendations of kit " + id + ": allowed at least one machine");
    }
  }
}
