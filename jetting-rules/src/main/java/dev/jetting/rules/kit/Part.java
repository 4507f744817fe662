package dev.jetting.rules.kit;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A part as a seller lists it.
 *
 * <p>Not for the piece on the bench: what was drilled, filed or bent is no longer the part of the
 * catalogue.
 *
 * @param id its name, unique in the catalogue; a needle's is the needle's own
 * @param description a line for people
 * @param series id of the series that it belongs to, which says what it fits
 * @param shape what the mixture model has to know of it
 * @param price what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
 *     four decimals; empty if unknown
 */
public record Part(
    String id, String description, String series, PartShape shape, Optional<BigDecimal> price) {

  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
  private static final int DECIMALS = 4;

  /**
   * Checks the id and the price, which loses the zeros at its end.
   *
   * @param id its name, unique in the catalogue; a needle's is the needle's own
   * @param description a line for people
   * @param series id of the series that it belongs to, which says what it fits
   * @param shape what the mixture model has to know of it
   * @param price what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
   *     four decimals; empty if unknown
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, a needle has another id, or the price is out of range
   */
  public Part {
    Checks.id("part", id);
    Checks.lineOrNothing(
        "description",
        () -> Sentence.of("error.name.description").with("thing", "part " + id),
        description,
        Catalogue.LONGEST_TITLE);
    Checks.id("series", "series of part " + id, series);
    Objects.requireNonNull(shape, "shape");
    if (shape instanceof PartShape.NeedleShape rod && !rod.needle().id().equals(id)) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.id-of-needle").with("id", rod.needle().id()),
          Sentence.of("error.id-of-part").with("id", id));
    }
    String partId = id;
    price = price.map(amount -> checked(partId, amount));
  }

  private static BigDecimal checked(String id, BigDecimal price) {
    BigDecimal plain = price.stripTrailingZeros();
    if (plain.signum() < 0 || plain.compareTo(MOST) > 0 || plain.scale() > DECIMALS) {
      throw InvalidValueException.of(
          Sentence.of("error.name.price-of-part").with("id", id),
          plain,
          Sentence.of("error.price.allowed").with("low", 0).with("high", 1000000).with("count", 4));
    }
    return plain.setScale(Math.max(0, plain.scale()));
  }

  /** {@return a builder of a part, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this part set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.description = description;
    builder.series = series;
    builder.shape = shape;
    builder.price = price;
    return builder;
  }

  /**
   * Returns this part with another value of one component; all else stays.
   *
   * @param id its name, unique in the catalogue; a needle's is the needle's own
   * @return the changed part
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Part withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this part with another value of one component; all else stays.
   *
   * @param description a line for people
   * @return the changed part
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Part withDescription(String description) {
    Builder builder = toBuilder();
    builder.description = description;
    return builder.build();
  }

  /**
   * Returns this part with another value of one component; all else stays.
   *
   * @param series id of the series that it belongs to, which says what it fits
   * @return the changed part
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Part withSeries(String series) {
    Builder builder = toBuilder();
    builder.series = series;
    return builder.build();
  }

  /**
   * Returns this part with another value of one component; all else stays.
   *
   * @param shape what the mixture model has to know of it
   * @return the changed part
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Part withShape(PartShape shape) {
    Builder builder = toBuilder();
    builder.shape = shape;
    return builder.build();
  }

  /**
   * Returns this part with another value of one component; all else stays.
   *
   * @param price what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
   *     four decimals; empty if unknown
   * @return the changed part
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Part withPrice(Optional<BigDecimal> price) {
    Builder builder = toBuilder();
    builder.price = price;
    return builder.build();
  }

  /** Names each component of a part, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable String description;
    private @Nullable String series;
    private @Nullable PartShape shape;
    private Optional<BigDecimal> price = Optional.empty();

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value its name, unique in the catalogue; a needle's is the needle's own
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
     * @param value id of the series that it belongs to, which says what it fits
     * @return this builder
     */
    public Builder series(String value) {
      series = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value what the mixture model has to know of it
     * @return this builder
     */
    public Builder shape(PartShape value) {
      shape = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value what one costs, in the one currency of the catalogue: 0 to 1 000 000, of at most
     *     four decimals; empty if unknown
     * @return this builder
     */
    public Builder price(Optional<BigDecimal> value) {
      price = value;
      return this;
    }

    /**
     * Builds the part.
     *
     * @return the part
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Part build() {
      return new Part(
          Checks.present("part", "id", id),
          Checks.present("part", "description", description),
          Checks.present("part", "series", series),
          Checks.present("part", "shape", shape),
          price);
    }
  }
}
