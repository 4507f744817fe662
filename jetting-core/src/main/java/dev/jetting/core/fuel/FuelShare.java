package dev.jetting.core.fuel;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;

/**
 * How much of a blend one component is. Whether by volume or by mass, the {@link FuelBlend} says.
 *
 * @param component the liquid; not null
 * @param share above 0, at most 1
 */
public record FuelShare(FuelComponent component, double share) {

  /**
   * Checks the share.
   *
   * @param component the liquid
   * @param share of the blend
   * @throws IllegalArgumentException if the share is out of range
   */
  public FuelShare {
    requireNonNull(component, "component");
    Checks.that(
        share > 0 && share <= 1,
        () -> Sentence.of("error.name.share-of").with("id", component),
        share,
        () -> Sentence.of("error.above-up-to").with("low", 0).with("high", 1));
  }

  /** {@return the share and the component, such as {@code 0.1 ethanol}} */
  @Override
  public String toString() {
    return Decimals.shortest(share) + " " + component;
  }
}
