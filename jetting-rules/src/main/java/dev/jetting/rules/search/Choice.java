package dev.jetting.rules.search;

import dev.jetting.core.checks.Checks;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A part that can be chosen.
 *
 * @param part the part
 * @param source whether it is there already
 * @param price what it costs to get, zero or more, in the one currency of all prices; empty if
 *     unknown
 * @param uncertainty standard uncertainty of a jet's bore beyond the tolerance of its kind, mm,
 *     zero or more, as of one that is numbered by its flow; 0 for all other parts
 * @param <P> the kind of part
 */
public record Choice<P>(P part, Source source, Optional<BigDecimal> price, double uncertainty) {

  /** Where a part comes from. */
  public enum Source {
    /** It is there already and costs nothing. */
    OWNED,
    /** It is to be bought. */
    TO_BUY
  }

  /**
   * Checks the numbers.
   *
   * @param part the part
   * @param source whether it is there already
   * @param price what it costs to get, zero or more; empty if unknown
   * @param uncertainty standard uncertainty of a jet's bore beyond the tolerance of its kind, mm
   * @throws IllegalArgumentException if the price is below zero, or the uncertainty is below zero
   *     or more than 9 mm
   */
  public Choice {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(source, "source");
    if (price.isPresent() && price.get().signum() < 0) {
      throw new IllegalArgumentException(
          "price " + price.get().toPlainString() + " of " + part + ": allowed 0 or more");
    }
    if (!(uncertainty >= 0 && uncertainty <= 9)) {
      throw new IllegalArgumentException(
          "uncertainty " + uncertainty + " mm of " + part + ": allowed 0 to 9 mm");
    }
  }

  /** {@return whether it is there already and costs nothing} */
  public boolean owned() {
    return source == Source.OWNED;
  }

  /**
   * A part that is there already.
   *
   * @param part the part
   * @param <P> the kind of part
   * @return the choice
   */
  public static <P> Choice<P> ofOwned(P part) {
    return new Choice<>(part, Source.OWNED, Optional.empty(), 0);
  }

  /**
   * A part to get, at an unknown price.
   *
   * @param part the part
   * @param <P> the kind of part
   * @return the choice
   */
  public static <P> Choice<P> toBuy(P part) {
    return new Choice<>(part, Source.TO_BUY, Optional.empty(), 0);
  }

  /**
   * A part to buy.
   *
   * @param part the part
   * @param price what it costs, zero or more
   * @param <P> the kind of part
   * @return the choice
   * @throws IllegalArgumentException if the price is below zero
   */
  public static <P> Choice<P> toBuy(P part, BigDecimal price) {
    return new Choice<>(part, Source.TO_BUY, Optional.of(price), 0);
  }

  /**
   * Begins a choice.
   *
   * @param <P> the kind of part
   * @return a builder of a choice, to buy at an unknown price, its part not set
   */
  public static <P> Builder<P> builder() {
    return new Builder<>();
  }

  /** {@return a builder with all of this choice set} */
  public Builder<P> toBuilder() {
    Builder<P> builder = new Builder<>();
    builder.part = part;
    builder.source = source;
    builder.price = price;
    builder.uncertainty = uncertainty;
    return builder;
  }

  /**
   * Returns this choice with another value of one component; all else stays.
   *
   * @param part the part
   * @return the changed choice
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Choice<P> withPart(P part) {
    Builder<P> builder = toBuilder();
    builder.part = part;
    return builder.build();
  }

  /**
   * Returns this choice with another value of one component; all else stays.
   *
   * @param source whether it is there already
   * @return the changed choice
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Choice<P> withSource(Source source) {
    Builder<P> builder = toBuilder();
    builder.source = source;
    return builder.build();
  }

  /**
   * Returns this choice with another value of one component; all else stays.
   *
   * @param price what it costs to get, zero or more, in the one currency of all prices; empty if
   *     unknown
   * @return the changed choice
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Choice<P> withPrice(Optional<BigDecimal> price) {
    Builder<P> builder = toBuilder();
    builder.price = price;
    return builder.build();
  }

  /**
   * Returns this choice with another value of one component; all else stays.
   *
   * @param uncertainty standard uncertainty of a jet's bore beyond the tolerance of its kind, mm,
   *     zero or more, as of one that is numbered by its flow; 0 for all other parts
   * @return the changed choice
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Choice<P> withUncertainty(double uncertainty) {
    Builder<P> builder = toBuilder();
    builder.uncertainty = uncertainty;
    return builder.build();
  }

  /**
   * Names each component of a choice, so that none takes the place of another.
   *
   * @param <P> the kind of part
   */
  public static final class Builder<P> {
    private @Nullable P part;
    private Source source = Source.TO_BUY;
    private Optional<BigDecimal> price = Optional.empty();
    private double uncertainty = 0;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the part
     * @return this builder
     */
    public Builder<P> part(P value) {
      part = value;
      return this;
    }

    /**
     * Sets one component; to buy unless set.
     *
     * @param value whether it is there already
     * @return this builder
     */
    public Builder<P> source(Source value) {
      source = value;
      return this;
    }

    /**
     * Sets one component; empty unless set.
     *
     * @param value what it costs to get, zero or more, in the one currency of all prices; empty if
     *     unknown
     * @return this builder
     */
    public Builder<P> price(Optional<BigDecimal> value) {
      price = value;
      return this;
    }

    /**
     * Sets one component; 0 unless set.
     *
     * @param value standard uncertainty of a jet's bore beyond the tolerance of its kind, mm, zero
     *     or more, as of one that is numbered by its flow; 0 for all other parts
     * @return this builder
     */
    public Builder<P> uncertainty(double value) {
      uncertainty = value;
      return this;
    }

    /**
     * Builds the choice.
     *
     * @return the choice
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Choice<P> build() {
      return new Choice<>(Checks.present("choice", "part", part), source, price, uncertainty);
    }
  }
}
