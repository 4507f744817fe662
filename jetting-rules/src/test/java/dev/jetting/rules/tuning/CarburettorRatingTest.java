package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.tuning.CarburettorRating.Cruise;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.MassFlow;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarburettorRatingTest {

  private static final Cruise CRUISE =
      new Cruise(EngineSpeed.ofRpm(5000), MassFlow.ofGramsPerSecond(9), 70);

  @Test
  void of_biggerBore_losesLessPowerAndTellsItsJetsLess() {
    List<CarburettorRating> ratings = new ArrayList<>();
    for (double bore : new double[] {24, 27, 30, 34, 39}) {
      ratings.add(CarburettorRating.of(setup(bore), CRUISE));
    }
    for (int i = 1; i < ratings.size(); i++) {
      assertThat(ratings.get(i).powerLost()).isLessThan(ratings.get(i - 1).powerLost());
      assertThat(ratings.get(i).lowSignal()).isLessThan(ratings.get(i - 1).lowSignal());
      assertThat(ratings.get(i).cruiseThrottle()).isLessThan(ratings.get(i - 1).cruiseThrottle());
    }
  }

  /**
   * A tuned engine of the 200 class made about 37 hp through 27 mm while others made 26 to 27 with
   * 34 to 39 mm (common practice, no source): so 27 mm cannot cost it much. By prediction.
   */
  @Test
  void of_twentySevenOnATunedEngine_costsLessThanAFifth() {
    assertThat(CarburettorRating.of(setup(27), CRUISE).powerLost()).isBetween(0.05, 0.20);
    assertThat(CarburettorRating.of(setup(39), CRUISE).powerLost()).isLessThan(0.06);
  }

  /** Consumption from the model's own fuel flow by hand: litres an hour by kilometres an hour. */
  @Test
  void of_cruise_meetsTheLoadAndCountsItsFuel() {
    Setup setup = setup(30);
    CarburettorRating rating = CarburettorRating.of(setup, CRUISE);
    MixturePoint point = MixtureModel.of(setup).at(rating.cruiseThrottle(), CRUISE.speed());
    assertThat(point.airFlow().gramsPerSecond()).isCloseTo(9, within(1e-6));
    double grams = point.mainFuelFlow().gramsPerSecond() + point.pilotFuelFlow().gramsPerSecond();
    double density = setup.fuelDensity().kilogramsPerCubicMetre();
    double litresAnHour = grams * 3600 / density;
    assertThat(rating.cruiseConsumption().litresPer100Kilometres())
        .isCloseTo(litresAnHour * 100 / 70, within(1e-6));
  }

  @Test
  void of_loadBeyondFullThrottle_isRefused() {
    Cruise tooMuch = new Cruise(EngineSpeed.ofRpm(3000), MassFlow.ofGramsPerSecond(40), 70);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CarburettorRating.of(setup(24), tooMuch))
        .withMessageContaining("40 g/s")
        .withMessageContaining("full throttle");
  }

  private static Setup setup(double bore) {
    Carburettor base = ALL_ROUND.carburettor();
    Carburettor carburettor =
        Carburettor.builder()
            .id("slide carburettor")
            .bore(Diameter.ofMillimetres(bore))
            .needleJetLength(base.needleJetLength())
            .needleJetHead(base.needleJetHead())
            .pilot(base.pilot())
            .floatValve(base.floatValve())
            .flow(base.flow())
            .build();
    Setting setting =
        Setting.builder()
            .carburettor(carburettor)
            .intake(ALL_ROUND.intake())
            .pilotJet(ALL_ROUND.pilotJet())
            .screw(ALL_ROUND.screw())
            .cutaway(ALL_ROUND.cutaway())
            .idleLift(ALL_ROUND.idleLift())
            .needleJet(ALL_ROUND.needleJet())
            .needle(ALL_ROUND.needle())
            .clip(ALL_ROUND.clip())
            .mainJet(ALL_ROUND.mainJet())
            .floats(ALL_ROUND.floats())
            .build();
    return Setup.builder()
        .engine(TwoHundred.tuned(200))
        .setting(setting)
        .air(TwoHundred.DAY)
        .fuel(TwoHundred.FUEL)
        .build();
  }
}
