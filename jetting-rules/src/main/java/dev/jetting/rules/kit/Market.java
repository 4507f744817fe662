package dev.jetting.rules.kit;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.risk.Riding;
import java.util.List;
import java.util.Objects;

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

  private static final int MOST_FUELS = 20;

  /**
   * Copies the fuels.
   *
   * @param id its name, unique among the markets of the catalogue
   * @param air the air of an ordinary day
   * @param fuels the fuels that are sold there, premix included; at least one
   * @param riding the coldest and the hottest day, what is ridden, and the accepted risk
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters, there is no fuel, or one of them is not known in the air of one of the days:
   *     colder than −40 °C, and the fuel a blend
   */
  public Market {
    Checks.id("market", id);
    Objects.requireNonNull(air, "air");
    fuels = List.copyOf(fuels);
    Checks.atMost("fuels", "fuels of market " + id, fuels.size(), MOST_FUELS);
    Objects.requireNonNull(riding, "riding");
    if (fuels.isEmpty()) {
      throw new IllegalArgumentException("market " + id + " without fuel: allowed at least one");
    }
    for (Fuel fuel : fuels) {
      Riding.checkFuel("an ordinary day of market " + id, air, fuel, Setup.ASSUMED_FUEL_WARMER_BY);
      riding.checkFuel(fuel, Setup.ASSUMED_FUEL_WARMER_BY);
    }
  }
}
