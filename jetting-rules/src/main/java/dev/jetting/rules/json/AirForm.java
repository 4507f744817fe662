package dev.jetting.rules.json;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.AirFormula;
import dev.jetting.units.Altitude;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Optional;

/**
 * Air in JSON: by barometer or by altitude; by CIPM-2007 unless it names another formula.
 *
 * @param pressure pressure that a barometer on the spot shows, not reduced to the sea; or the
 *     altitude
 * @param altitude height above the sea, from which the pressure follows by the standard atmosphere;
 *     or the pressure
 * @param temperature temperature in the shade
 * @param humidity relative humidity
 * @param formula the formula for its density
 */
record AirForm(
    Optional<Pressure> pressure,
    Optional<Altitude> altitude,
    Temperature temperature,
    RelativeHumidity humidity,
    Optional<AirFormula> formula) {

  AirForm {
    if (pressure.isPresent() == altitude.isPresent()) {
      throw InvalidValueException.worded(
          Sentence.of(pressure.isPresent() ? "error.name.air.both" : "error.name.air.none"),
          Sentence.of("error.one-of-two").with("one", "pressure").with("other", "altitude"));
    }
  }

  static AirForm of(Air air) {
    return new AirForm(
        Optional.of(air.pressure()),
        Optional.empty(),
        air.temperature(),
        air.humidity(),
        Optional.of(air.formula()));
  }

  Air air() {
    Air air =
        altitude
            .map(height -> Air.at(height, temperature, humidity))
            .orElseGet(() -> Air.of(pressure.orElseThrow(), temperature, humidity));
    return air.withFormula(formula.orElse(AirFormula.CIPM_2007));
  }
}
