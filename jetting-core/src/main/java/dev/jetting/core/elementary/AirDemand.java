package dev.jetting.core.elementary;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Density;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.MassFlow;

/**
 * The mean flow of air that an engine of known filling draws. Not for what a pulsating inlet does
 * to a carburettor: that is {@code dev.jetting.core.mixture}.
 */
public final class AirDemand {

  private AirDemand() {}

  /**
   * The flow of air into an engine that fills once in every revolution.
   *
   * @param displacement of all cylinders; not null
   * @param speed of the crankshaft; not null
   * @param filling volume of air drawn in over displacement, 0 to 2
   * @param air density of the air that the filling counts in; not null
   * @return ρ V η N
   * @throws IllegalArgumentException if the filling is out of range
   */
  public static MassFlow twoStroke(
      Displacement displacement, EngineSpeed speed, double filling, Density air) {
    return flow(displacement, speed, filling, air, 1);
  }

  /**
   * The flow of air into an engine that fills once in two revolutions.
   *
   * @param displacement of all cylinders; not null
   * @param speed of the crankshaft; not null
   * @param filling volume of air drawn in over displacement, 0 to 2
   * @param air density of the air that the filling counts in; not null
   * @return ρ V η N/2
   * @throws IllegalArgumentException if the filling is out of range
   */
  public static MassFlow fourStroke(
      Displacement displacement, EngineSpeed speed, double filling, Density air) {
    return flow(displacement, speed, filling, air, 2);
  }

  private static MassFlow flow(
      Displacement displacement, EngineSpeed speed, double filling, Density air, int revolutions) {
    double fillingsPerSecond = speed.rpm() / 60 / revolutions;
    double litres = displacement.cubicCentimetres() * 1e-3;
    return MassFlow.ofGramsPerSecond(
        air.kilogramsPerCubicMetre()
            * litres
            * Checks.within("filling", filling, 0, 2)
            * fillingsPerSecond);
  }
}
