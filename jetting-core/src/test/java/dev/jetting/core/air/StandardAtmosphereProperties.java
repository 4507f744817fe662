package dev.jetting.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.Altitude;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class StandardAtmosphereProperties {

  @Property
  void everything_fallsWithHeight(
      @ForAll @DoubleRange(min = -4_900, max = 10_900) double metres,
      @ForAll @DoubleRange(min = 1, max = 100) double higher) {
    Altitude below = Altitude.ofMetres(metres);
    Altitude above = Altitude.ofMetres(metres + higher);

    assertThat(StandardAtmosphere.pressure(above)).isLessThan(StandardAtmosphere.pressure(below));
    assertThat(StandardAtmosphere.density(above)).isLessThan(StandardAtmosphere.density(below));
    assertThat(StandardAtmosphere.temperature(above))
        .isLessThan(StandardAtmosphere.temperature(below));
  }

  @Property
  void pressureAltitude_isTheInverseOfPressure(
      @ForAll @DoubleRange(min = -4_900, max = 10_900) double metres) {
    assertThat(
            StandardAtmosphere.pressureAltitude(
                    StandardAtmosphere.pressure(Altitude.ofMetres(metres)))
                .metres())
        .isCloseTo(metres, within(1e-6));
  }

  @Property
  void density_followsFromPressureAndTemperature(
      @ForAll @DoubleRange(min = -4_900, max = 10_900) double metres) {
    Altitude altitude = Altitude.ofMetres(metres);
    double density =
        StandardAtmosphere.pressure(altitude).pascals()
            / (287.05287 * StandardAtmosphere.temperature(altitude).kelvin());

    assertThat(StandardAtmosphere.density(altitude).kilogramsPerCubicMetre())
        .isCloseTo(density, within(1e-12));
  }
}
