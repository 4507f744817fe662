package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The reference setting of MODEL.md, every column to the last digit that the table prints. */
class ReferenceTableTest {

  private static final MixtureModel MODEL = MixtureModel.of(ReferenceSetup.setup());

  @ParameterizedTest
  @CsvFileSource(resources = "reference.csv", numLinesToSkip = 1)
  void referenceSetting_givesTheReferenceTable(
      double throttle,
      double lift,
      double rpm,
      double ratio,
      double suction,
      double well,
      double air,
      double main,
      double pilot,
      double lambda,
      String source) {
    MixturePoint point = MODEL.at(ThrottleOpening.ofShare(throttle));

    // Half a unit of the last printed digit; at least 1e-4 of the value in every column.
    assertThat(point.lift().millimetres()).as(source).isCloseTo(lift, within(0.5001e-4));
    assertThat(point.speed().rpm()).as(source).isCloseTo(rpm, within(0.05));
    assertThat(point.pressureRatio()).as(source).isCloseTo(ratio, within(0.5e-6));
    assertThat(point.depression().pascals())
        .as(source)
        .isCloseTo(101_325 * (1 - ratio), within(101_325 * 0.5e-6));
    assertThat(point.needleJetSuction().pascals()).as(source).isCloseTo(suction, within(0.005));
    assertThat(point.wellDepression().pascals()).as(source).isCloseTo(well, within(0.005));
    assertThat(point.airFlow().gramsPerSecond()).as(source).isCloseTo(air, within(0.5e-6));
    assertThat(point.mainFuelFlow().gramsPerSecond()).as(source).isCloseTo(main, within(0.5e-6));
    assertThat(point.pilotFuelFlow().gramsPerSecond()).as(source).isCloseTo(pilot, within(0.5e-6));
    assertThat(point.lambda().value()).as(source).isCloseTo(lambda, within(0.5e-5));
  }
}
