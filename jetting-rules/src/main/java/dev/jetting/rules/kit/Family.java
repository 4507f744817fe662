package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Carburettor;
import java.util.List;
import java.util.Objects;

/**
 * A family of carburettors: bodies that are alike to the mixture model and take the same parts.
 *
 * <p>Nothing is taken to fit unless it is of a series that the family takes. Families interchange
 * parts where they take the same series.
 *
 * @param id its name, unique among the families of the catalogue
 * @param description a line for people
 * @param carburettor the carburettor with the screw and the float valve that it comes with
 * @param takes ids of the part series that it takes, each once
 */
public record Family(String id, String description, Carburettor carburettor, List<String> takes) {

  private static final int MOST_SERIES = 200;

  /**
   * Copies the list.
   *
   * @param id its name, unique among the families of the catalogue
   * @param description a line for people
   * @param carburettor the carburettor with the screw and the float valve that it comes with
   * @param takes ids of the part series that it takes, each once
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters or a series is there twice
   */
  public Family {
    Checks.id("family", id);
    Checks.lineOrNothing(
        "description", "description of family " + id, description, Catalogue.LONGEST_TITLE);
    Objects.requireNonNull(carburettor, "carburettor");
    takes = List.copyOf(takes);
    Checks.atMost("takes", "series of family " + id, takes.size(), MOST_SERIES);
    for (int i = 0; i < takes.size(); i++) {
      Checks.id("takes[" + i + "]", "series " + (i + 1) + " of family " + id, takes.get(i));
      if (takes.indexOf(takes.get(i)) < i) {
        throw new IllegalArgumentException(
            "series " + takes.get(i) + " of family " + id + " twice: allowed once");
      }
    }
  }
}
