package dev.jetting.core.typical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.units.Displacement;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Typical engines against the rule they follow and against common practice. */
class TypicalEngineTest {

  /** By hand: 125 cm³ square has a stroke of 54.19 mm; 13.5 m/s need 7474 rpm. */
  @Test
  void peakSpeed_followsTheMeanPistonSpeed() {
    assertThat(engine(125, StateOfTune.STANDARD).peakSpeed().rpm()).isEqualTo(7450);
    double stroke = 2 * StrictMath.cbrt(125e-6 / (2 * Math.PI));
    double metresPerSecond = 2 * stroke * 7450 / 60;
    assertThat(metresPerSecond).isCloseTo(13.5, within(0.05));
  }

  /** Common practice, no source: what such engines turn at full throttle, give or take a fifth. */
  @ParameterizedTest
  @CsvSource({
    "UTILITY, 150, 5000",
    "STANDARD, 125, 7000",
    "STANDARD, 200, 6500",
    "SPORT, 125, 9000",
    "SPORT, 210, 8000",
    "RACE, 125, 11500",
    "RACE, 250, 9500"
  })
  void peakSpeed_isNearCommonPractice(StateOfTune tune, double cubicCentimetres, double rpm) {
    assertThat(engine(cubicCentimetres, tune).peakSpeed().rpm()).isBetween(0.8 * rpm, 1.2 * rpm);
  }

  @Test
  void need_isLeanerTheCoolerTheEngineRuns() {
    TypicalEngine air = engine(125, StateOfTune.STANDARD);
    Lambda full = MixtureNeed.assumedMild().at(ThrottleOpening.FULL);
    assertThat(at(air.withCooling(Cooling.FAN))).isEqualTo(full);
    assertThat(at(air)).isLessThan(full);
    assertThat(at(air.withCooling(Cooling.LIQUID))).isGreaterThan(full);
  }

  private static Lambda at(TypicalEngine engine) {
    return engine.need().at(ThrottleOpening.FULL);
  }

  @ParameterizedTest
  @EnumSource(InductionKind.class)
  void inlet_isOfTheKindAskedFor(InductionKind kind) {
    Engine engine = engine(200, StateOfTune.SPORT).withInduction(kind).engine();
    assertThat(engine.induction().kind()).isEqualTo(kind);
    assertThat(engine.induction().id()).isEqualTo(kind + ", sport");
  }

  @Test
  void inlet_isOpenForLongerTheMoreItIsTuned() {
    assertThat(Stream.of(StateOfTune.values()).map(t -> opens(t, InductionKind.PISTON_PORT)))
        .isSorted();
    assertThat(Stream.of(StateOfTune.values()).map(t -> opens(t, InductionKind.ROTARY_VALVE)))
        .isSorted();
  }

  private static double opens(StateOfTune tune, InductionKind kind) {
    return engine(200, tune).withInduction(kind).engine().induction().opens().value();
  }

  @Test
  void withers_changeOneThing() {
    TypicalEngine engine = engine(125, StateOfTune.UTILITY);
    assertThat(engine.withTune(StateOfTune.RACE)).isEqualTo(engine(125, StateOfTune.RACE));
    assertThat(engine.withDisplacement(Displacement.ofCubicCentimetres(150)))
        .isEqualTo(engine(150, StateOfTune.UTILITY));
  }

  @Test
  void engine_saysWhatItIs() {
    Engine engine = engine(62.5, StateOfTune.SPORT).withCooling(Cooling.LIQUID).engine();
    assertThat(engine.id()).isEqualTo("typical sport engine of 62.5 cm³, liquid-cooled");
    assertThat(engine.induction().id()).isEqualTo("piston port, sport");
  }

  private static TypicalEngine engine(double cubicCentimetres, StateOfTune tune) {
    return TypicalEngine.builder()
        .displacement(Displacement.ofCubicCentimetres(cubicCentimetres))
        .tune(tune)
        .cooling(Cooling.AIR)
        .induction(InductionKind.PISTON_PORT)
        .build();
  }
}
