package dev.jetting.core.typical;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.Pressure;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Trends that any two-stroke follows, whatever the numbers of the scaling rules. */
class TypicalMachineProperties {

  @Property(tries = 200)
  void moreDisplacement_drawsMoreFuelAtFullThrottle(
      @ForAll @DoubleRange(min = 40, max = 400) double cubicCentimetres,
      @ForAll @DoubleRange(min = 1.05, max = 1.6) double bigger,
      @ForAll StateOfTune tune) {
    assertThat(fuel(TypicalMachine.engine(cubicCentimetres * bigger, tune)))
        .isGreaterThan(fuel(TypicalMachine.engine(cubicCentimetres, tune)));
  }

  @Property(tries = 200)
  void moreDisplacement_neverTurnsFaster(
      @ForAll @DoubleRange(min = 20, max = 500) double cubicCentimetres,
      @ForAll @DoubleRange(min = 1, max = 3) double bigger,
      @ForAll StateOfTune tune) {
    assertThat(TypicalMachine.engine(cubicCentimetres * bigger, tune).peakSpeed())
        .isLessThanOrEqualTo(TypicalMachine.engine(cubicCentimetres, tune).peakSpeed());
  }

  @Property(tries = 200)
  void higherTune_turnsFasterDrawsMoreAirAndNeedsNoLeanerMixture(
      @ForAll @DoubleRange(min = 40, max = 400) double cubicCentimetres,
      @ForAll StateOfTune from,
      @ForAll StateOfTune to) {
    Assume.that(from.compareTo(to) < 0);
    TypicalEngine lower = TypicalMachine.engine(cubicCentimetres, from);
    TypicalEngine higher = lower.withTune(to);
    assertThat(higher.peakSpeed()).isGreaterThan(lower.peakSpeed());
    assertThat(full(higher).airFlow()).isGreaterThan(full(lower).airFlow());
    assertThat(higher.need().at(ThrottleOpening.FULL))
        .isLessThanOrEqualTo(lower.need().at(ThrottleOpening.FULL));
  }

  /** The slide is set until the engine idles: the depression behind it is much the same. */
  @Property(tries = 200)
  void idleLift_leavesMuchTheSameDepressionAtIdle(
      @ForAll @DoubleRange(min = 50, max = 350) double cubicCentimetres,
      @ForAll @DoubleRange(min = 0.85, max = 1.15) double size,
      @ForAll StateOfTune tune,
      @ForAll ScrewKind kind) {
    Setup setup =
        TypicalMachine.setup(
            TypicalMachine.engine(cubicCentimetres, tune), size * bore(cubicCentimetres), kind);
    assertThat(MixtureModel.of(setup).at(ThrottleOpening.CLOSED).depression())
        .isBetween(Pressure.ofHectopascals(125), Pressure.ofHectopascals(170));
  }

  /** A carburettor in proportion to the engine runs on jets in proportion to it. */
  @Property(tries = 200)
  void scaledCarburettor_onScaledJets_runs(
      @ForAll @DoubleRange(min = 50, max = 350) double cubicCentimetres,
      @ForAll StateOfTune tune,
      @ForAll ScrewKind kind) {
    Setup setup =
        TypicalMachine.setup(
            TypicalMachine.engine(cubicCentimetres, tune), bore(cubicCentimetres), kind);
    MixtureModel model = MixtureModel.of(setup);
    for (ThrottleOpening opening : WrongGuess.openings()) {
      assertThat(model.at(opening).lambda().value()).as("%s", opening).isBetween(0.4, 1.5);
    }
  }

  private static double fuel(TypicalEngine engine) {
    MixturePoint point = full(engine);
    return point.mainFuelFlow().gramsPerSecond() + point.pilotFuelFlow().gramsPerSecond();
  }

  private static MixturePoint full(TypicalEngine engine) {
    return MixtureModel.of(TypicalMachine.setup(engine, 30, ScrewKind.MIXTURE))
        .at(ThrottleOpening.FULL);
  }

  private static double bore(double cubicCentimetres) {
    return 30 * StrictMath.cbrt(cubicCentimetres / 200);
  }
}
