package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
        "description",
        () -> Sentence.of("error.name.description").with("thing", "family " + id),
        description,
        Catalogue.LONGEST_TITLE);
    Objects.requireNonNull(carburettor, "carburettor");
    takes = List.copyOf(takes);
    Checks.atMost(
        "takes",
        () -> Sentence.of("error.name.series-of-family").with("id", id),
        takes.size(),
        MOST_SERIES);
    Checks.ids("takes", i -> "series " + (i + 1) + " of family " + id, takes);
    for (int i = 0; i < takes.size(); i++) {
      if (takes.indexOf(takes.get(i)) < i) {
        throw InvalidValueException.worded(
            Sentence.of("error.series-twice").with("series", takes.get(i)).with("id", id),
            Sentence.of("error.once"));
      }
    }
  }

  /** {@return a builder of a family, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this family set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.description = description;
    builder.carburettor = carburettor;
    builder.takes = takes;
    return builder;
  }

  /**
   * Returns this family with another value of one component; all else stays.
   *
   * @param id its name, unique among the families of the catalogue
   * @return the changed family
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Family withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this family with another value of one component; all else stays.
   *
   * @param description a line for people
   * @return the changed family
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Family withDescription(String description) {
    Builder builder = toBuilder();
    builder.description = description;
    return builder.build();
  }

  /**
   * Returns this family with another value of one component; all else stays.
   *
   * @param carburettor the carburettor with the screw and the float valve that it comes with
   * @return the changed family
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Family withCarburettor(Carburettor carburettor) {
    Builder builder = toBuilder();
    builder.carburettor = carburettor;
    return builder.build();
  }

  /**
   * Returns this family with another value of one component; all else stays.
   *
   * @param takes ids of the part series that it takes, each once
   * @return the changed family
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Family withTakes(List<String> takes) {
    Builder builder = toBuilder();
    builder.takes = takes;
    return builder.build();
  }

  /** Names each component of a family, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable String description;
    private @Nullable Carburettor carburettor;
    private @Nullable List<String> takes;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value its name, unique among the families of the catalogue
     * @return this builder
     */
    public Builder id(String value) {
      id = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value a line for people
     * @return this builder
     */
    public Builder description(String value) {
      description = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the carburettor with the screw and the float valve that it comes with
     * @return this builder
     */
    public Builder carburettor(Carburettor value) {
      carburettor = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value ids of the part series that it takes, each once
     * @return this builder
     */
    public Builder takes(List<String> value) {
      takes = value;
      return this;
    }

    /**
     * Builds the family.
     *
     * @return the family
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Family build() {
      return new Family(
          Checks.present("family", "id", id),
          Checks.present("family", "description", description),
          Checks.present("family", "carburettor", carburettor),
          Checks.present("family", "takes", takes));
    }
  }
}
