package dev.jetting.core.cycle;

import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/**
 * What the cycle comes to at one throttle opening and speed, as means over a turn.
 *
 * @param throttle throttle opening by lift
 * @param speed engine speed
 * @param deliveryRatio air drawn a turn by what the displacement would hold at ambient density
 * @param air mean mass flow of moist air past the slide, what is blown back taken off
 * @param blownBack mean mass flow of air backwards past the slide
 * @param delivered mean mass flow through the transfer ports; {@code air} again, once the state
 *     repeats
 * @param meanDrop mean depression behind the slide, counted where it is one
 * @param rootMeanDrop square of the mean of the square root of that depression: what drives a fuel
 *     without inertia, where {@code meanDrop} drives one of endless inertia
 * @param mainFuel mean mass flow of fuel through the main jet
 * @param pilotFuel mean mass flow of fuel through the pilot jet
 * @param lambda λ of the mixture; 100 also represents anything leaner
 * @param cycles turns until the state repeated
 * @param closure relative difference between the state at the beginning and the end of the last
 *     turn; above a millionth it has not become periodic
 * @param trace the last turn, each two degrees
 */
public record CyclePoint(
    ThrottleOpening throttle,
    EngineSpeed speed,
    double deliveryRatio,
    MassFlow air,
    MassFlow blownBack,
    MassFlow delivered,
    Pressure meanDrop,
    Pressure rootMeanDrop,
    MassFlow mainFuel,
    MassFlow pilotFuel,
    Lambda lambda,
    int cycles,
    double closure,
    List<Sample> trace) {

  /**
   * Copies the trace.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed
   * @param deliveryRatio air drawn a turn by what the displacement would hold at ambient density
   * @param air mean mass flow of moist air past the slide, what is blown back taken off
   * @param blownBack mean mass flow of air backwards past the slide
   * @param delivered mean mass flow through the transfer ports
   * @param meanDrop mean depression behind the slide, counted where it is one
   * @param rootMeanDrop square of the mean of the square root of that depression
   * @param mainFuel mean mass flow of fuel through the main jet
   * @param pilotFuel mean mass flow of fuel through the pilot jet
   * @param lambda λ of the mixture
   * @param cycles turns until the state repeated
   * @param closure relative difference between the state at the two ends of the last turn
   * @param trace the last turn, each two degrees
   */
  public CyclePoint {
    trace = List.copyOf(trace);
  }

  /**
   * The state at one crank angle.
   *
   * @param degrees crank angle after top dead centre, 0 to 360
   * @param behindSlide absolute pressure behind the slide
   * @param crankcase absolute pressure in the crankcase
   * @param gramsOfAirPerSecond air past the slide in g/s; below zero backwards
   * @param gramsOfFuelPerSecond fuel through the main jet in g/s
   */
  public record Sample(
      double degrees,
      Pressure behindSlide,
      Pressure crankcase,
      double gramsOfAirPerSecond,
      double gramsOfFuelPerSecond) {}
}
