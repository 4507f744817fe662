package dev.jetting.rules.kit;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Provenance;

/**
 * A recommendation whose parts could be put together.
 *
 * @param place its place in the kit, from 0
 * @param pilotUncertainty standard uncertainty of the pilot jet's bore beyond its tolerance, mm
 * @param mainUncertainty the same of the main jet
 */
record Fitted(
    int place,
    Family family,
    Machine machine,
    Setting setting,
    Provenance provenance,
    double pilotUncertainty,
    double mainUncertainty) {

  /** On an ordinary day of a market, with a fuel of it. */
  Setup setup(Market market, Fuel fuel) {
    return Setup.builder()
        .engine(machine.engine())
        .setting(setting)
        .air(market.air())
        .fuel(fuel)
        .build();
  }
}
