package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.mixture.ErrorSource;

/**
 * How far an engine that nobody has measured may differ from the model: standard deviations, of ln
 * (true by modelled flow) for the four sources and of ln λ for the residual.
 *
 * @param pilot of the pilot circuit, 0 to 1
 * @param needle of the ring between needle and needle jet, 0 to 1
 * @param main of the main jet, 0 to 1
 * @param air of the air by its signal, 0 to 1
 * @param residual of what is left, 0 to 1
 * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to 10
 */
public record Spreads(
    double pilot, double needle, double main, double air, double residual, double residualLength) {

  /**
   * Checks the numbers.
   *
   * @param pilot of the pilot circuit, 0 to 1
   * @param needle of the ring between needle and needle jet, 0 to 1
   * @param main of the main jet, 0 to 1
   * @param air of the air by its signal, 0 to 1
   * @param residual of what is left, 0 to 1
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0.01 to
   *     10
   * @throws IllegalArgumentException if one is out of range
   */
  public Spreads {
    pilot = Checks.within("spread of the pilot circuit", pilot, 0, 1);
    needle = Checks.within("spread of the needle's ring", needle, 0, 1);
    main = Checks.within("spread of the main jet", main, 0, 1);
    air = Checks.within("spread of the air by its signal", air, 0, 1);
    residual = Checks.within("residual spread", residual, 0, 1);
    residualLength = Checks.within("length of the residual", residualLength, 0.01, 10);
  }

  /**
   * The spread of a source.
   *
   * @param source the source
   * @return its standard deviation
   */
  public double of(ErrorSource source) {
    return switch (source) {
      case PILOT -> pilot;
      case NEEDLE -> needle;
      case MAIN -> main;
      case AIR -> air;
    };
  }
}
