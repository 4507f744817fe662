package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
  private static final int MOST_MACHINES = 50;

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
        "description",
        () -> Sentence.of("error.name.description").with("thing", "kit " + id),
        description,
        Catalogue.LONGEST_TITLE);
    Checks.id("family", "family of kit " + id, family);
    parts = List.copyOf(parts);
    Checks.atMost(
        "parts",
        () -> Sentence.of("error.name.parts-of-kit").with("id", id),
        parts.size(),
        MOST_PARTS);
    Checks.atMost(
        "recommendations",
        () -> Sentence.of("error.name.recommendations-of-kit").with("id", id),
        recommendations.size(),
        MOST_MACHINES);
    Checks.ids("parts", i -> "part " + (i + 1) + " of kit " + id, parts);
    Checks.id("market", "market of kit " + id, market);
    recommendations = List.copyOf(recommendations);
    if (recommendations.isEmpty()) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.recommendations-of-kit").with("id", id),
          Sentence.of("error.at-least-one-machine"));
    }
  }

  /** {@return a builder of a kit, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this kit set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.description = description;
    builder.family = family;
    builder.parts = parts;
    builder.market = market;
    builder.recommendations = recommendations;
    return builder;
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param id its name
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param description a line for people
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withDescription(String description) {
    Builder builder = toBuilder();
    builder.description = description;
    return builder.build();
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param family id of the family of its carburettor
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withFamily(String family) {
    Builder builder = toBuilder();
    builder.family = family;
    return builder.build();
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param parts ids of the parts in the box; each one counts once
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withParts(List<String> parts) {
    Builder builder = toBuilder();
    builder.parts = parts;
    return builder.build();
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param market id of the market in which it is sold
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withMarket(String market) {
    Builder builder = toBuilder();
    builder.market = market;
    return builder.build();
  }

  /**
   * Returns this kit with another value of one component; all else stays.
   *
   * @param recommendations how to set it, machine by machine; at least one
   * @return the changed kit
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Kit withRecommendations(List<Recommendation> recommendations) {
    Builder builder = toBuilder();
    builder.recommendations = recommendations;
    return builder.build();
  }

  /** Names each component of a kit, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable String description;
    private @Nullable String family;
    private @Nullable List<String> parts;
    private @Nullable String market;
    private @Nullable List<Recommendation> recommendations;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value its name
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
     * @param value id of the family of its carburettor
     * @return this builder
     */
    public Builder family(String value) {
      family = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value ids of the parts in the box; each one counts once
     * @return this builder
     */
    public Builder parts(List<String> value) {
      parts = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value id of the market in which it is sold
     * @return this builder
     */
    public Builder market(String value) {
      market = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how to set it, machine by machine; at least one
     * @return this builder
     */
    public Builder recommendations(List<Recommendation> value) {
      recommendations = value;
      return this;
    }

    /**
     * Builds the kit.
     *
     * @return the kit
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Kit build() {
      return new Kit(
          Checks.present("kit", "id", id),
          Checks.present("kit", "description", description),
          Checks.present("kit", "family", family),
          Checks.present("kit", "parts", parts),
          Checks.present("kit", "market", market),
          Checks.present("kit", "recommendations", recommendations));
    }
  }
}
