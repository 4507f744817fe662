package dev.jetting.core.mixture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The fuel in the float chamber, warmer than the air or as warm. */
class FuelTemperatureTest {

  private static final ThrottleOpening EIGHTH = ThrottleOpening.ofEighths(1);
  private static final Setup PUMP_FUEL =
      ReferenceSetup.setup().withFuel(Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(50)));

  @Test
  void warmedFuel_isRicherInTheRing_andAtMostOnePerCentLeanerAtFullThrottle() {
    Setup warmed = warmer(PUMP_FUEL, 25);

    assertThat(change(warmed, EIGHTH)).isBetween(0.90, 0.95);
    assertThat(change(warmed, ThrottleOpening.FULL)).isBetween(1.0, 1.01);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-10, 5, 15, 35})
  void fuelAsWarmAsTheAir_isTheLeanerAssumption_uptoHalfThrottle(double celsius) {
    Setup day = PUMP_FUEL.withAir(ReferenceSetup.air(273.15 + celsius));

    for (ThrottleOpening throttle : MixtureModel.evenOpenings(17).subList(0, 9)) {
      assertThat(lambda(day, throttle)).isGreaterThan(lambda(warmer(day, 25), throttle));
    }
  }

  @Test
  void otherDay_keepsHowMuchWarmerTheFuelIs() {
    Setup cold = warmer(PUMP_FUEL, 20).withAir(ReferenceSetup.air(263.15));

    assertThat(cold.fuelTemperature().celsius()).isEqualTo(10);
    assertThat(cold.fuelDensity()).isEqualTo(cold.fuel().density(cold.fuelTemperature()));
    assertThat(PUMP_FUEL.fuelTemperature()).isEqualTo(PUMP_FUEL.air().temperature());
  }

  @ParameterizedTest
  @CsvSource({"-21, -21 K", "80.5, 80.5 K"})
  void fuelFarFromTheAir_isRefused(double kelvin, String shown) {
    assertThatThrownBy(() -> warmer(PUMP_FUEL, kelvin))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("fuel warmer than the air by " + shown + ": allowed -20 K to 80 K");
  }

  @ParameterizedTest
  @CsvSource({"15, 0", "15, 25", "-10, 0", "-10, 25", "35, 0", "35, 25"})
  void weatherTable_isThatOfTheModel(double celsius, double warmerBy) throws IOException {
    Setup day = warmer(PUMP_FUEL.withAir(ReferenceSetup.air(273.15 + celsius)), warmerBy);
    String row =
        Stream.of(1 / 64.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1.0)
            .map(share -> Decimals.fixed(lambda(day, ThrottleOpening.ofShare(share)), 3))
            .collect(
                Collectors.joining(
                    " | ",
                    "| "
                        + Decimals.fixed(celsius, 0)
                        + " °C | "
                        + Decimals.fixed(celsius + warmerBy, 0)
                        + " °C | ",
                    " |"));

    assertThat(Files.readString(Path.of("MODEL.md"), UTF_8).replace('−', '-')).contains(row);
  }

  private static Setup warmer(Setup setup, double kelvin) {
    return setup.withFuelWarmerBy(TemperatureDifference.ofKelvin(kelvin));
  }

  private static double change(Setup to, ThrottleOpening throttle) {
    return lambda(to, throttle) / lambda(PUMP_FUEL, throttle);
  }

  private static double lambda(Setup setup, ThrottleOpening throttle) {
    return MixtureModel.of(setup).at(throttle).lambda().value();
  }
}
