package dev.jetting.rules.kit;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Provenance;

/**
 * A recommendation whose parts could be put together.
 *
 * @param place its place in the kit, from 0
 */
record Fitted(int place, Family family, Machine machine, Setting setting, Provenance provenance) {

  /** On an ordinary day of a market, with a fuel of it. */
  Setup setup(Market market, Fuel fuel) {
    return new Setup(machine.engine(), setting, market.air(), fuel);
  }
}
