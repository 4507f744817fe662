package dev.jetting.rules.kit;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.risk.Riding;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where kits are sold: the air and the fuels that their buyers will meet, and the risk that they
 * accept.
 *
 * @param id its name, unique among the markets of the catalogue
 * @param air the air of an ordinary day
 * @param fuels the fuels that are sold there, premix included; at least one
 * @param riding the coldest and the hottest day, what is ridden, and the accepted risk
 */
public record Market(String id, Air air, List<Fuel> fuels, Riding riding) {

  private static final int MOST_FUELS = 10;

  /**
   * Copies the fuels.
   *
   * @param id its name, unique among the markets of the catalogue
   * @param air the air of an ordinary day
   * @param fuels the fuels that are sold there, premix included; at least one
   * @param riding the coldest and the hottest day, what is ridden, and the accepted risk
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, there is no fuel, or a blended fuel is colder than −40 °C on one of the days
   */
  public Market {
    Checks.id("market", id);
    Objects.requireNonNull(air, "air");
    fuels = List.copyOf(fuels);
    Checks.atMost(
        "fuels",
        () -> Sentence.of("error.name.fuels-of-market").with("id", id),
        fuels.size(),
        MOST_FUELS);
    Objects.requireNonNull(riding, "riding");
    if (fuels.isEmpty()) {
      throw InvalidValueException.worded(
          Sentence.of("error.market-fuel").with("id", id), Sentence.of("error.at-least-one"));
    }
    for (Fuel fuel : fuels) {
      Riding.checkFuel("an ordinary day of market " + id, air, fuel, Setup.ASSUMED_FUEL_WARMER_BY);
      riding.checkFuel(fuel, Setup.ASSUMED_FUEL_WARMER_BY);
    }
  }

  /** {@return a builder of a market, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this market set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.id = id;
    builder.air = air;
    builder.fuels = fuels;
    builder.riding = riding;
    return builder;
  }

  /**
   * Returns this market with another value of one component; all else stays.
   *
   * @param id its name, unique among the markets of the catalogue
   * @return the changed market
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Market withId(String id) {
    Builder builder = toBuilder();
    builder.id = id;
    return builder.build();
  }

  /**
   * Returns this market with another value of one component; all else stays.
   *
   * @param air the air of an ordinary day
   * @return the changed market
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Market withAir(Air air) {
    Builder builder = toBuilder();
    builder.air = air;
    return builder.build();
  }

  /**
   * Returns this market with another value of one component; all else stays.
   *
   * @param fuels the fuels that are sold there, premix included; at least one
   * @return the changed market
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Market withFuels(List<Fuel> fuels) {
    Builder builder = toBuilder();
    builder.fuels = fuels;
    return builder.build();
  }

  /**
   * Returns this market with another value of one component; all else stays.
   *
   * @param riding the coldest and the hottest day, what is ridden, and the accepted risk
   * @return the changed market
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Market withRiding(Riding riding) {
    Builder builder = toBuilder();
    builder.riding = riding;
    return builder.build();
  }

  /** Names each component of a market, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Air air;
    private @Nullable List<Fuel> fuels;
    private @Nullable Riding riding;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value its name, unique among the markets of the catalogue
     * @return this builder
     */
    public Builder id(String value) {
      id = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the air of an ordinary day
     * @return this builder
     */
    public Builder air(Air value) {
      air = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the fuels that are sold there, premix included; at least one
     * @return this builder
     */
    public Builder fuels(List<Fuel> value) {
      fuels = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the coldest and the hottest day, what is ridden, and the accepted risk
     * @return this builder
     */
    public Builder riding(Riding value) {
      riding = value;
      return this;
    }

    /**
     * Builds the market.
     *
     * @return the market
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Market build() {
      return new Market(
          Checks.present("market", "id", id),
          Checks.present("market", "air", air),
          Checks.present("market", "fuels", fuels),
          Checks.present("market", "riding", riding));
    }
  }
}
