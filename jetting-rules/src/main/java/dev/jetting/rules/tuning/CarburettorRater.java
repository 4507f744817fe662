package dev.jetting.rules.tuning;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.rules.tuning.CarburettorRating.Cruise;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FuelConsumption;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Works out a {@link CarburettorRating}. */
final class CarburettorRater {

  private CarburettorRater() {}

  static CarburettorRating rate(Setup setup, Cruise cruise) {
    Engine engine = setup.engine();
    MixtureModel model = MixtureModel.of(setup);
    Carburettor carburettor = setup.setting().carburettor();
    EngineSpeed low = EngineSpeed.ofRpm(engine.loadLine().peak().rpm() / 3);
    Pressure signal = model.at(ThrottleOpening.ofEighths(2), low).meanNeedleJetSuction();
    double density = setup.fuelDensity().kilogramsPerCubicMetre();
    double millimetres = carburettor.needleJetHead().millimetres() + setup.setting().fuelLowerBy();
    double head = density * 9.80665 * millimetres * 1e-3;
    ThrottleOpening throttle = throttleFor(model, cruise);
    MixturePoint cruising = model.at(throttle, cruise.speed());
    double fuel =
        cruising.mainFuelFlow().kilogramsPerSecond()
            + cruising.pilotFuelFlow().kilogramsPerSecond();
    double litresAnHour = fuel / density * 3.6e6;
    return new CarburettorRating(
        carburettor,
        Math.max(0, 1 - model.at(ThrottleOpening.FULL).chargeShare()),
        head <= 0 ? Double.MAX_VALUE : signal.pascals() / head,
        throttle,
        FuelConsumption.ofLitresPer100Kilometres(litresAnHour / cruise.kilometresPerHour() * 100));
  }

  private static ThrottleOpening throttleFor(MixtureModel model, Cruise cruise) {
    double wanted = cruise.airFlow().gramsPerSecond();
    double shut = passed(model, 0, cruise) - wanted;
    double open = passed(model, 1, cruise) - wanted;
    if (open < 0) {
      throw new IllegalArgumentException(
          "air for the cruising load "
              + cruise.airFlow()
              + ": allowed at most what full throttle passes at "
              + cruise.speed());
    }
    if (shut >= 0) {
      return ThrottleOpening.CLOSED;
    }
    return ThrottleOpening.ofShare(
        new BrentSolver(1e-10, 1e-10)
            .solve(200, share -> passed(model, share, cruise) - wanted, 0, 1));
  }

  private static double passed(MixtureModel model, double share, Cruise cruise) {
    return model.at(ThrottleOpening.ofShare(share), cruise.speed()).airFlow().gramsPerSecond();
  }
}
