package dev.jetting.core.mixture;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * The mixture at one throttle opening and engine speed, with what leads to it. Flows are means over
 * the cycle.
 *
 * @param throttle throttle opening by lift
 * @param speed engine speed
 * @param lift lift of the slide
 * @param chargeShare air by what the engine would draw with nothing before its inlet, 0 to 2; a
 *     little above 1 where the slide hinders what is blown back
 * @param depression height of the wave behind the slide: ambient pressure less the pressure there
 * @param needleJetSuction height of the wave at the needle jet's mouth
 * @param wellDepression height of the wave in the pilot well
 * @param openShare share of the turn for which the wave at the needle jet stands, 0 to 1
 * @param airFlow moist air
 * @param mainFuelFlow fuel and oil through main jet and needle jet
 * @param pilotFuelFlow fuel and oil through the pilot jet
 * @param lambda the mixture; {@link #LEANEST} where no fuel to speak of flows
 */
public record MixturePoint(
    ThrottleOpening throttle,
    EngineSpeed speed,
    Length lift,
    double chargeShare,
    Pressure depression,
    Pressure needleJetSuction,
    Pressure wellDepression,
    double openShare,
    MassFlow airFlow,
    MassFlow mainFuelFlow,
    MassFlow pilotFuelFlow,
    Lambda lambda) {

  /**
   * Checks the share of the charge.
   *
   * @param throttle throttle opening by lift
   * @param speed engine speed
   * @param lift lift of the slide
   * @param chargeShare air by what the engine would draw with nothing before its inlet, 0 to 2
   * @param depression height of the wave behind the slide: ambient pressure less the pressure there
   * @param needleJetSuction height of the wave at the needle jet's mouth
   * @param wellDepression height of the wave in the pilot well
   * @param openShare share of the turn for which the wave at the needle jet stands, 0 to 1
   * @param airFlow moist air
   * @param mainFuelFlow fuel and oil through main jet and needle jet
   * @param pilotFuelFlow fuel and oil through the pilot jet
   * @param lambda the mixture
   * @throws IllegalArgumentException if a share is out of range
   */
  public MixturePoint {
    Objects.requireNonNull(throttle, "throttle");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(lift, "lift");
    chargeShare = Checks.within("share of the charge", chargeShare, 0, 2);
    Objects.requireNonNull(depression, "depression");
    Objects.requireNonNull(needleJetSuction, "needleJetSuction");
    Objects.requireNonNull(wellDepression, "wellDepression");
    openShare = Checks.within("open share", openShare, 0, 1);
    Objects.requireNonNull(airFlow, "airFlow");
    Objects.requireNonNull(mainFuelFlow, "mainFuelFlow");
    Objects.requireNonNull(pilotFuelFlow, "pilotFuelFlow");
    Objects.requireNonNull(lambda, "lambda");
  }

  /**
   * The value for this and any leaner mixture, no fuel at all included: λ 100, far beyond what
   * burns.
   */
  public static final Lambda LEANEST = Lambda.of(100);

  /** {@return mean suction at the needle jet's mouth over a turn} */
  public Pressure meanNeedleJetSuction() {
    return Pressure.ofPascals(openShare * needleJetSuction.pascals());
  }

  /**
   * Share of the fuel that comes through the pilot jet.
   *
   * @return 0 to 1; 0 where no fuel flows
   */
  public double pilotFuelShare() {
    return share(pilotFuelFlow);
  }

  /**
   * Share of the fuel that comes through main jet and needle jet.
   *
   * @return 0 to 1; 0 where no fuel flows
   */
  public double mainFuelShare() {
    return share(mainFuelFlow);
  }

  private double share(MassFlow part) {
    double total = mainFuelFlow.kilogramsPerSecond() + pilotFuelFlow.kilogramsPerSecond();
    return total == 0 ? 0 : part.kilogramsPerSecond() / total;
  }
}
