package dev.jetting.core.typical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.ScrewKind;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MachineValueTest {

  private static final Setup SETUP =
      TypicalMachine.setup(TypicalMachine.engine(123, StateOfTune.STANDARD), 24, ScrewKind.MIXTURE);

  @ParameterizedTest
  @EnumSource(MachineValue.class)
  void change_isReadBack_andLeavesEveryOtherValue(MachineValue value) {
    double other = value.in(SETUP).orElseThrow() * 1.05 + 0.001;
    Setup changed = value.change(SETUP, other);
    for (MachineValue each : MachineValue.values()) {
      double before = each.in(SETUP).orElseThrow();
      double expected = each == value ? other : before;
      assertThat(each.in(changed).orElseThrow())
          .as("%s after %s", each, value)
          .isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
    }
  }

  @ParameterizedTest
  @EnumSource(MachineValue.class)
  void change_toTheSameNumber_isTheSameSetup(MachineValue value) {
    assertThat(value.change(SETUP, value.in(SETUP).orElseThrow())).isEqualTo(SETUP);
  }

  @ParameterizedTest
  @EnumSource(MachineValue.class)
  void error_isAssumedAndSaysWhy(MachineValue value) {
    assertThat(value.error().value()).isPositive();
    assertThat(value.error().origin()).isEqualTo(Coefficient.Origin.ASSUMED);
    assertThat(value.error().unit()).isEqualTo(value.errorIsShare() ? "1" : value.unit());
    assertThat(value.measuring()).endsWith(".");
  }

  @Test
  void names_areDifferent() {
    assertThat(Arrays.stream(MachineValue.values()).map(MachineValue::toString))
        .doesNotHaveDuplicates();
  }

  @Test
  void filterArea_ofAnOpenMouth_isNone() {
    Setup open = SETUP.withSetting(SETUP.setting().withIntake(Intake.openMouth()));
    assertThat(MachineValue.FILTER_AREA.in(open)).isEmpty();
    assertThatThrownBy(() -> MachineValue.FILTER_AREA.change(open, 400))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("effective area of the filter 400 mm²: this machine has none");
  }

  @Test
  void ethanol_isKnownOfPetrolWithIt_andKeepsTheOil() {
    Setup more = MachineValue.ETHANOL.change(SETUP, 0.1);
    assertThat(more.fuel()).isEqualTo(Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50)));
    assertThat(MachineValue.ETHANOL.change(SETUP, 0).fuel())
        .isEqualTo(Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(50)));
  }

  @Test
  void peakSpeed_stretchesTheDeliveryCurveWithIt() {
    Setup faster = MachineValue.PEAK_SPEED.change(SETUP, 9000);
    assertThat(faster.engine().deliveryRatioAt(faster.engine().loadLine().peak()))
        .isEqualTo(SETUP.engine().deliveryRatioAt(SETUP.engine().loadLine().peak()));
  }

  @Test
  void change_outOfRange_isRefused() {
    assertThatThrownBy(() -> MachineValue.BLOWBACK.change(SETUP, 0.9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("blowback")
        .hasMessageContaining("0 to 0.5");
  }
}
