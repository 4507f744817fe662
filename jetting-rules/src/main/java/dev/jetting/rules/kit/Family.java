package dev.jetting.rules.kit;

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

  /**
   * Copies the list.
   *
   * @param id its name, unique among the families of the catalogue
   * @param description a line for people
   * @param carburettor the carburettor with the screw and the float valve that it comes with
   * @param takes ids of the part series that it takes, each once
   * @throws IllegalArgumentException if the id is blank or a series is there twice
   */
  public Family {
    Ids.check("family", id);
    Objects.requireNonNull(description, "description");
    Objects.requireNonNull(carburettor, "carburettor");
    takes = List.copyOf(takes);
    for (int i = 0; i < takes.size(); i++) {
      if (takes.indexOf(takes.get(i)) < i) {
        throw new IllegalArgumentException(
            "series " + takes.get(i) + " of family " + id + " twice: allowed once");
      }
    }
  }
}
