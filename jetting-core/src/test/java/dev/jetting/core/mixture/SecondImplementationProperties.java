package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** The model against the same equations written a second time and solved another way. */
@Domain(SetupArbitraries.class)
class SecondImplementationProperties {

  @Property(tries = 300)
  void model_givesWhatTheSecondImplementationGives(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    MixturePoint point = MixtureModel.of(setup).at(throttle, speed);
    SecondImplementation second = new SecondImplementation(setup, throttle.share(), speed.rpm());

    double ambient = setup.air().pressure().pascals();
    same("depression", point.depression().pascals(), ambient * second.drop);
    same("charge", point.chargeShare(), second.charge);
    same("air", point.airFlow().kilogramsPerSecond(), second.air);
    same("suction", point.needleJetSuction().pascals(), second.suction);
    same("well", point.wellDepression().pascals(), second.well);
    same("main fuel", point.mainFuelFlow().kilogramsPerSecond(), second.main);
    same("pilot fuel", point.pilotFuelFlow().kilogramsPerSecond(), second.pilot);
    same("lambda", point.lambda().value(), second.lambda);
  }

  /**
   * To 1e-9 of the value; below a nanogram a second or a nanopascal there is nothing to compare.
   */
  private static void same(String what, double actual, double expected) {
    assertThat(Math.abs(actual - expected))
        .as("%s: %s and %s", what, actual, expected)
        .isLessThanOrEqualTo(1e-9 * Math.abs(expected) + 1e-12);
  }
}
