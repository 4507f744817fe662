package dev.jetting.core.air;

import static java.util.Objects.requireNonNull;

import dev.jetting.units.Power;
import dev.jetting.units.number.Decimals;
import java.util.Objects;

/**
 * The factor that carries power measured in some air to the standard air of a test code, for a
 * spark-ignition engine without a supercharger at full throttle. Immutable.
 *
 * <p>Both codes take the dry air's pressure, that is less the water vapour. Not for the mixture: an
 * engine that is jetted wrongly for its air loses more than these factors give back.
 */
public final class PowerCorrection {

  /** A test code. */
  public enum Code {
    /**
     * SAE J1349: standard air 99 kPa dry and 25 °C, mechanical efficiency taken as 85 %: factor =
     * 1.18 (990 hPa/p) √(T/298.15 K) − 0.18.
     */
    SAE_J1349,
    /** ISO 1585: standard air 99 kPa dry and 298 K: α = (99 kPa/p)^1.2 (T/298 K)^0.6. */
    ISO_1585
  }

  private final Code code;
  private final double factor;
  private final boolean withinCode;

  private PowerCorrection(Code code, double factor, boolean withinCode) {
    this.code = code;
    this.factor = factor;
    this.withinCode = withinCode;
  }

  /**
   * The correction by SAE J1349.
   *
   * @param air the air the power was measured in; not null
   * @return the correction
   */
  public static PowerCorrection saeJ1349(Air air) {
    double dryHectopascals = dryPascals(air) / 100;
    double t = air.temperature().celsius();
    double factor =
        1.18 * (990 / dryHectopascals) * Math.sqrt(air.temperature().kelvin() / 298.15) - 0.18;
    boolean within = dryHectopascals >= 900 && dryHectopascals <= 1050 && t >= 15 && t <= 35;
    return new PowerCorrection(Code.SAE_J1349, factor, within);
  }

  /**
   * The correction by ISO 1585, its factor α for spark ignition.
   *
   * @param air the air the power was measured in; not null
   * @return the correction
   */
  public static PowerCorrection iso1585(Air air) {
    double factor =
        StrictMath.pow(99_000 / dryPascals(air), 1.2)
            * StrictMath.pow(air.temperature().kelvin() / 298, 0.6);
    return new PowerCorrection(Code.ISO_1585, factor, factor >= 0.93 && factor <= 1.07);
  }

  private static double dryPascals(Air air) {
    return air.pressure().pascals() * (1 - air.vapourMoleFraction());
  }

  /** {@return the test code} */
  public Code code() {
    return code;
  }

  /** {@return corrected over measured power, above 0} */
  public double factor() {
    return factor;
  }

  /**
   * Whether the test code accepts a test in such air: for SAE J1349 900 hPa to 1050 hPa dry and 15
   * °C to 35 °C, for ISO 1585 a factor of 0.93 to 1.07. These limits are from memory, not read.
   *
   * @return whether the test counts by the code
   */
  public boolean withinCode() {
    return withinCode;
  }

  /**
   * What a measured power would be in standard air.
   *
   * @param measured power as measured; not null
   * @return the corrected power
   */
  public Power apply(Power measured) {
    return Power.ofKilowatts(requireNonNull(measured, "measured").kilowatts() * factor);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PowerCorrection that
        && code == that.code
        && factor == that.factor
        && withinCode == that.withinCode;
  }

  @Override
  public int hashCode() {
    return Objects.hash(code.name(), factor, withinCode);
  }

  /** {@return code and factor, for people} */
  @Override
  public String toString() {
    return code + " " + Decimals.fixed(factor, 4) + (withinCode ? "" : " (outside the code)");
  }
}
