package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/**
 * Nothing throws and nothing is infinite or no number, whatever valid setup is asked about: screw
 * seated, jets of a hair, needle filling the jet or out of it, cutaway 0, wide open at no speed.
 */
@Domain(SetupArbitraries.Extreme.class)
class ExtremeSetupsProperties {

  @Property
  void everyAnswer_isFinite(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    MixtureModel model = MixtureModel.of(setup);

    // The quantities themselves refuse what is not finite.
    MixturePoint point = model.at(throttle, speed);
    assertThat(point.chargeShare()).isBetween(0.0, 2.0);
    assertThat(point.lambda()).isLessThanOrEqualTo(MixturePoint.LEANEST);
    assertThat(point.wellDepression()).isLessThan(setup.air().pressure());
    assertThat(point.mainFuelShare()).isBetween(0.0, 1.0);
    assertThat(point.pilotFuelShare()).isBetween(0.0, 1.0);
    assertThat(model.effects(throttle, speed, CustomarySteps.assumed()))
        .allSatisfy(
            effect -> {
              assertThat(effect.richer()).isFinite();
              assertThat(effect.leaner()).isFinite();
              assertThat(effect.authority()).isBetween(0.0, 1.0);
            });
    Sensitivities slopes = model.sensitivities(throttle, speed);
    for (ErrorSource source : ErrorSource.values()) {
      assertThat(slopes.to(source)).as("%s", source).isFinite();
    }
    assertThat(model.overrun().fuelShareOfOpen()).isNotNegative().isFinite();
  }
}
