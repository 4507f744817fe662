package dev.jetting.core.typical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.ScrewKind;
import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MachineValueTest {

  private static final Setup SETUP =
      TypicalMachine.setup(TypicalMachine.engine(123, StateOfTune.STANDARD), 24, ScrewKind.MIXTURE);

  private static final Setup UNKNOWN_INLET =
      SETUP.withEngine(SETUP.engine().withInduction(Induction.unknown("not looked at")));

  @ParameterizedTest
  @EnumSource(value = MachineValue.class, names = "INLET_KIND", mode = EnumSource.Mode.EXCLUDE)
  void change_isReadBack_andLeavesEveryOtherValue(MachineValue value) {
    double other = value.in(SETUP).orElseThrow() * 1.05 + 0.001;
    Setup changed = value.change(SETUP, other);
    for (MachineValue each : EnumSet.complementOf(EnumSet.of(MachineValue.INLET_KIND))) {
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
    Setup setup = value == MachineValue.INLET_KIND ? UNKNOWN_INLET : SETUP;
    assertThat(value.change(setup, value.in(setup).orElseThrow())).isEqualTo(setup);
  }

  /** Half a spread from the middle and more is one of the two kinds at the ends. */
  @ParameterizedTest
  @CsvSource({
    "-1, REED_VALVE",
    "-0.6, REED_VALVE",
    "0.4, UNKNOWN",
    "0.6, PISTON_PORT",
    "1, PISTON_PORT"
  })
  void inletKind_runsFromReedToPistonPort(double between, InductionKind kind) {
    assertThat(MachineValue.INLET_KIND.change(UNKNOWN_INLET, between).engine().induction().kind())
        .isEqualTo(kind);
    assertThat(MachineValue.INLET_KIND.in(SETUP)).isEmpty();
    assertThat(MachineValue.INLET_OPENS.in(UNKNOWN_INLET)).isEmpty();
    assertThat(MachineValue.INLET_CLOSES.in(UNKNOWN_INLET)).isEmpty();
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
    assertThatThrownBy(() -> MachineValue.INLET_CLOSES.change(SETUP, 130))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("closing of induction")
        .hasMessageContaining("20 to 120");
  }
}
