package dev.jetting.core.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FuelInputTest {

  @ParameterizedTest
  @ValueSource(strings = {"E5", "e5", "E 5", " E5 "})
  void fuel_withoutPremix_isRead(String text) {
    assertThat(FuelInput.read(text)).isEqualTo(Fuel.E5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "E10 1:40",
        "E10 40:1",
        "E10 premix 40",
        "E10, 40",
        "e10 with 2.5 %",
        "E10 at 40",
        "E10/40:1",
        "E10+40:1",
        "E10 + 40:1",
        "E10 (1:40)",
        "E10 @ 40:1",
        "95 E10 1:40",
        "Super E10 1:40"
      })
  void fuel_withPremix_isRead(String text) {
    assertThat(FuelInput.read(text)).isEqualTo(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(40)));
  }

  @Test
  void petrolAndEthanol_areEndsOfTheScale() {
    assertThat(FuelInput.read("petrol")).isEqualTo(Fuel.PETROL).isEqualTo(FuelInput.read("E0"));
    assertThat(FuelInput.read("petrol with no oil")).isEqualTo(Fuel.PETROL);
    assertThat(FuelInput.read("E85")).isEqualTo(Fuel.E85);
    assertThat(FuelInput.read("E100")).isEqualTo(Fuel.of(FuelComponent.ETHANOL));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "diesel", "E101", "5", "E5x"})
  void otherText_isRefusedWithASample(String text) {
    assertThatThrownBy(() -> FuelInput.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("write it such as E5, E10 1:40");
  }

  /** The name of a pump does not say how much ethanol it gives. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "super",
        "Super Plus",
        "premium",
        "95",
        "98 RON",
        "unleaded 95",
        "pump gas",
        "gas"
      })
  void nameOfAPump_isAskedFor(String text) {
    assertThatThrownBy(() -> FuelInput.read(text))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("fuel \"" + text + "\" is ambiguous: did you mean E5 or E10?");
  }

  @Test
  void premix_thatIsAmbiguous_isAskedFor() {
    assertThatThrownBy(() -> FuelInput.read("E5 2"))
        .isInstanceOf(QuantityException.class)
        .hasMessageContaining("did you mean 2 % or 2:1?");
  }
}
