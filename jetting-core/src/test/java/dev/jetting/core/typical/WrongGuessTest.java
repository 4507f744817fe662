package dev.jetting.core.typical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Intake;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WrongGuessTest {

  private static final Setup SETUP =
      TypicalMachine.setup(TypicalMachine.engine(123, StateOfTune.STANDARD), 24, ScrewKind.MIXTURE);

  /** A port that is open for longer blows back more at the speed of the load line: richer. */
  @Test
  void longerOpenInlet_isRicherBelowItsPeak() {
    assertThat(at(MachineValue.INLET_OPENS, ThrottleOpening.ofEighths(2))).isNegative();
  }

  /** From the pilot alone, λ at closed throttle is one over its flow. */
  @Test
  void wrongGuesses_haveTheSignsOfPhysics() {
    assertThat(at(MachineValue.AREA_PER_TURN, ThrottleOpening.CLOSED)).isNegative();
    assertThat(at(MachineValue.FIXED_AREA, ThrottleOpening.CLOSED)).isPositive();
    assertThat(at(MachineValue.IDLE_LIFT, ThrottleOpening.CLOSED)).isPositive();
    assertThat(at(MachineValue.NEEDLE_JET_HEAD, ThrottleOpening.ofEighths(1))).isPositive();
    assertThat(at(MachineValue.TAPER_START, ThrottleOpening.ofEighths(2))).isPositive();
    assertThat(at(MachineValue.TAPER_RATE, ThrottleOpening.ofEighths(4))).isNegative();
    assertThat(at(MachineValue.FILTER_AREA, ThrottleOpening.FULL)).isPositive();
    assertThat(at(MachineValue.ETHANOL, ThrottleOpening.FULL)).isPositive();
    assertThat(at(MachineValue.OIL_SHARE, ThrottleOpening.FULL)).isPositive();
  }

  @Test
  void wrongGuesses_comeWithTheMostImportantFirst() {
    List<WrongGuess> guesses = WrongGuess.of(SETUP, EnumSet.allOf(MachineValue.class));
    // All but the kind of the inlet, which is known here.
    assertThat(guesses).hasSize(MachineValue.values().length - 1);
    assertThat(guesses).isSortedAccordingTo((a, b) -> Double.compare(b.most(), a.most()));
    assertThat(guesses.get(0).most()).isGreaterThan(0.05);
  }

  @Test
  void valueThatTheMachineDoesNotHave_isPassedOver() {
    Setup open = SETUP.withSetting(SETUP.setting().withIntake(Intake.openMouth()));
    assertThat(WrongGuess.of(open, Set.of(MachineValue.FILTER_AREA))).isEmpty();
  }

  @Test
  void changeAt_anotherOpening_isRefused() {
    WrongGuess guess = WrongGuess.of(SETUP, Set.of(MachineValue.INLET_OPENS)).get(0);
    assertThatThrownBy(() -> guess.changeAt(ThrottleOpening.ofEighths(3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.375");
  }

  /** A tenth more delivery than this is more than any engine has. */
  @Test
  void guessAtTheEndOfWhatAnEngineMayHave_isLessFarOff() {
    double most = 1.99 / SETUP.engine().deliveryRatioAt(SETUP.engine().loadLine().peak());
    RpmCurve factor =
        new RpmCurve(
            SETUP.engine().exhaust().deliveryFactor().points().stream()
                .map(p -> new RpmCurve.Point(p.speed(), p.value() * most))
                .toList());
    Exhaust exhaust = SETUP.engine().exhaust();
    Setup full = SETUP.withEngine(SETUP.engine().withExhaust(new Exhaust(exhaust.id(), factor)));

    assertThat(WrongGuess.of(full, Set.of(MachineValue.DELIVERY_AT_PEAK)).get(0).most())
        .isPositive();
  }

  private static double at(MachineValue value, ThrottleOpening opening) {
    return WrongGuess.of(SETUP, Set.of(value)).get(0).changeAt(opening);
  }
}
