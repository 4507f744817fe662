package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.units.JetCalibration.ConstantCoefficient;
import dev.jetting.units.JetCalibration.DischargeLaw;
import dev.jetting.units.JetCalibration.ShortOrifice;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class JetCalibrationProperties {

  @Provide
  Arbitrary<JetCalibration> calibrations() {
    Arbitrary<DischargeLaw> laws =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(0.3, 1).map(ConstantCoefficient::new),
            Arbitraries.doubles().between(2, 10).map(ShortOrifice::new));
    return Combinators.combine(
            Arbitraries.doubles().between(50, 2000), laws, Arbitraries.doubles().between(0, 0.2))
        .as(
            (head, law, uncertainty) ->
                new JetCalibration(
                    Length.ofMillimetres(head),
                    JetCalibrationTest.WATER.liquid(),
                    law,
                    uncertainty));
  }

  @Provide
  Arbitrary<JetBore> bores() {
    return Arbitraries.doubles().between(0.1, 2).ofScale(3).map(JetBore::ofMillimetres);
  }

  @Property
  void boreOf_invertsFlowOf(
      @ForAll("calibrations") JetCalibration calibration, @ForAll("bores") JetBore bore) {
    JetFlow flow = calibration.flowOf(bore).value();

    assertThat(calibration.boreOf(flow).value().millimetres())
        .isCloseTo(bore.millimetres(), within(1e-12));
  }

  @Property
  void flowOf_risesWithTheBore(
      @ForAll("calibrations") JetCalibration calibration,
      @ForAll("bores") JetBore a,
      @ForAll("bores") JetBore b) {
    assertThat(calibration.flowOf(a).value().compareTo(calibration.flowOf(b).value()))
        .isEqualTo(a.compareTo(b));
  }

  @Property
  void flowOf_boundsLieOneUncertaintyAway(
      @ForAll("calibrations") JetCalibration calibration, @ForAll("bores") JetBore bore) {
    Uncertain<JetFlow> flow = calibration.flowOf(bore);
    double number = flow.value().cubicCentimetresPerMinute();

    assertThat(flow.upper().cubicCentimetresPerMinute() / number - 1)
        .isCloseTo(calibration.relativeUncertainty(), within(1e-12));
    assertThat(1 - flow.lower().cubicCentimetresPerMinute() / number)
        .isCloseTo(calibration.relativeUncertainty(), within(1e-12));
  }
}
