package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.Sentence;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
        "description",
        () -> Sentence.of("error.name.description").with("thing", "series " + id),
        description,
        Catalogue.LONGEST_TITLE);
    boolean jets = kind == SeriesKind.PILOT_JET || kind == SeriesKind.MAIN_JET;
    if (bench.isPresent() && !jets) {
      throw InvalidValueException.worded(
          Sentence.of("error.bench-of-series").with("id", id).with("kind", kind),
          Sentence.of("error.for-jets"));
    }
  }

  /** {@return a builder of a series, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this series set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.description = description;
    builder.kind = kind;
    builder.bench = bench;
    return builder;
  }

  /**
   * Returns this series with another value of one component; all else stays.
   *
   * @param id its name, unique among the series of the catalogue
   * @return the changed series
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartSeries withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this series with another value of one component; all else stays.
   *
   * @param description a line for people
   * @return the changed series
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartSeries withDescription(String description) {
    Builder builder = toBuilder();
    builder.description = description;
    return builder.build();
  }

  /**
   * Returns this series with another value of one component; all else stays.
   *
   * @param kind what its parts are for
   * @return the changed series
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartSeries withKind(SeriesKind kind) {
    Builder builder = toBuilder();
    builder.kind = kind;
    return builder.build();
  }

  /**
   * Returns this series with another value of one component; all else stays.
   *
   * @param bench the bench on which its jets are numbered by flow; empty where they are numbered by
   *     bore, and for all parts but jets
   * @return the changed series
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public PartSeries withBench(Optional<JetCalibration> bench) {
    Builder builder = toBuilder();
    builder.bench = bench;
    return builder.build();
  }

  /** Names each component of a series, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable String description;
    private @Nullable SeriesKind kind;
    private Optional<JetCalibration> bench = Optional.empty();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value its name, unique among the series of the catalogue
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
     * @param value what its parts are for
     * @return this builder
     */
    public Builder kind(SeriesKind value) {
      kind = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value the bench on which its jets are numbered by flow; empty where they are numbered
     *     by bore, and for all parts but jets
     * @return this builder
     */
    public Builder bench(Optional<JetCalibration> value) {
      bench = value;
      return this;
    }

    /**
     * Builds the series.
     *
     * @return the series
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public PartSeries build() {
      return new PartSeries(
          Checks.present("series", "id", id),
          Checks.present("series", "description", description),
          Checks.present("series", "kind", kind),
          bench);
    }
  }
}
