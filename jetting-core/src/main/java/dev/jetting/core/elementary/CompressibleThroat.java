package dev.jetting.core.elementary;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.IsentropicFlow;
import dev.jetting.units.Area;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Air in the throat of a fixed venturi, with its change of density, up to the speed of sound. The
 * equations are p₂ = p₁ (1 − (c₂/C_v)²/(2 c_p T₁))^3.5 and ρ₂ = ρ₁ (p₂/p₁)^(1/1.4). The figures are
 * the round ones of the textbooks, c_p 1005 J/(kg K) and R 287 J/(kg K). Source: Mathur and Sharma,
 * Internal Combustion Engine, 8th ed. 2010, chapter 11.
 *
 * <p>Not for slide carburettors, nor for moist air: that is {@code dev.jetting.core.mixture}.
 *
 * @param pressure p₁ of the air at rest, above 0; not null
 * @param temperature T₁ of the air at rest; not null
 * @param velocity c₂ in the throat, m/s; above 0 to {@link #greatestVelocity}
 * @param velocityCoefficient C_v, real over loss-free velocity, above 0 to 1
 */
public record CompressibleThroat(
    Pressure pressure, Temperature temperature, double velocity, double velocityCoefficient) {

  private static final double GAMMA = IsentropicFlow.GAMMA_AIR;
  private static final double HEAT_CAPACITY = 1005;
  private static final double GAS_CONSTANT = 287;
  private static final double EXPONENT = GAMMA / (GAMMA - 1);

  /**
   * The throat at a velocity.
   *
   * @param pressure of the air at rest
   * @param temperature of the air at rest
   * @param velocity in the throat, m/s
   * @param velocityCoefficient C_v
   * @throws IllegalArgumentException if pressure, velocity or coefficient is out of range
   */
  public CompressibleThroat {
    requireNonNull(pressure, "pressure");
    Checks.that(pressure.pascals() > 0, "pressure of the air at rest", pressure, "above 0 Pa");
    double greatest = greatestVelocity(temperature, velocityCoefficient);
    Checks.that(
        velocity > 0 && velocity <= greatest,
        "velocity in the throat in m/s",
        velocity,
        "above 0 up to the choked one, see greatestVelocity");
  }

  /**
   * The throat at a depression.
   *
   * @param pressure of the air at rest, above 0; not null
   * @param temperature of the air at rest; not null
   * @param depression p₁ − p₂, above 0, up to 0.4717 of p₁, where the throat chokes; not null
   * @param velocityCoefficient C_v, above 0 to 1
   * @return the throat
   * @throws IllegalArgumentException if depression or coefficient is out of range
   */
  public static CompressibleThroat atDepression(
      Pressure pressure, Temperature temperature, Pressure depression, double velocityCoefficient) {
    double greatest = greatestVelocity(temperature, velocityCoefficient);
    double ratio = ratio(pressure, depression);
    double ideal =
        Math.sqrt(
            2 * HEAT_CAPACITY * temperature.kelvin() * (1 - StrictMath.pow(ratio, 1 / EXPONENT)));
    // The two ways to the choked velocity may part in the last digit.
    double velocity = Math.min(velocityCoefficient * ideal, greatest);
    return new CompressibleThroat(pressure, temperature, velocity, velocityCoefficient);
  }

  /**
   * The throat at a flow of air.
   *
   * @param pressure of the air at rest, above 0; not null
   * @param temperature of the air at rest; not null
   * @param diameter of the throat; not null
   * @param flow above 0, up to the choked flow; not null
   * @param velocityCoefficient C_v, above 0 to 1
   * @return the throat, below the speed of sound
   * @throws IllegalArgumentException if flow or coefficient is out of range
   */
  public static CompressibleThroat atFlow(
      Pressure pressure,
      Temperature temperature,
      Diameter diameter,
      MassFlow flow,
      double velocityCoefficient) {
    double greatest = greatestVelocity(temperature, velocityCoefficient);
    MassFlow choked =
        new CompressibleThroat(pressure, temperature, greatest, velocityCoefficient)
            .massFlow(diameter);
    Checks.that(
        flow.gramsPerSecond() > 0 && flow.compareTo(choked) <= 0,
        "flow of air",
        flow,
        "above 0 up to the choked flow");
    if (flow.equals(choked)) {
      return new CompressibleThroat(pressure, temperature, greatest, velocityCoefficient);
    }
    double area = Passage.areaOf(diameter).squareMillimetres() * 1e-6;
    double wanted = flow.kilogramsPerSecond() / area;
    double velocity =
        new BrentSolver(1e-14, 1e-12, 0)
            .solve(
                200,
                v -> flux(pressure, temperature, v, velocityCoefficient) - wanted,
                0,
                greatest);
    return new CompressibleThroat(pressure, temperature, velocity, velocityCoefficient);
  }

  /**
   * The velocity in the throat when it runs at the speed of sound.
   *
   * @param temperature of the air at rest; not null
   * @param velocityCoefficient C_v, above 0 to 1
   * @return m/s
   * @throws IllegalArgumentException if the coefficient is out of range
   */
  public static double greatestVelocity(Temperature temperature, double velocityCoefficient) {
    // (c/C_v)²/(2 c_p T₁) is 1/6 at the critical ratio for γ = 1.4.
    double share = (GAMMA - 1) / (GAMMA + 1);
    Checks.that(
        velocityCoefficient > 0 && velocityCoefficient <= 1,
        "velocity coefficient",
        velocityCoefficient,
        "above 0 up to 1");
    return velocityCoefficient * Math.sqrt(2 * HEAT_CAPACITY * temperature.kelvin() * share);
  }

  /**
   * The flow at a depression over what the incompressible formula {@link Passage} gives: Ψ(r)/√(2
   * (1 − r)), r = p₂/p₁.
   *
   * @param pressure of the air at rest, above 0; not null
   * @param depression p₁ − p₂, above 0, up to 0.4717 of p₁; not null
   * @return the ratio, above 0 and below 1
   * @throws IllegalArgumentException if the depression is out of range
   */
  public static double compressibleToIncompressible(Pressure pressure, Pressure depression) {
    double ratio = ratio(pressure, depression);
    return IsentropicFlow.psi(ratio, GAMMA) / Math.sqrt(2 * (1 - ratio));
  }

  /** {@return p₁ − p₂} */
  public Pressure depression() {
    return Pressure.ofPascals(pressure.pascals() * (1 - pressureRatio()));
  }

  /** {@return p₂/p₁} */
  public double pressureRatio() {
    return StrictMath.pow(cooling(temperature, velocity, velocityCoefficient), EXPONENT);
  }

  /** {@return ρ₂ of the air in the throat} */
  public Density density() {
    return Density.ofKilogramsPerCubicMetre(
        flux(pressure, temperature, velocity, velocityCoefficient) / velocity);
  }

  /**
   * The flow through a throat of some size.
   *
   * @param diameter of the throat; not null
   * @return ρ₂ c₂ A
   */
  public MassFlow massFlow(Diameter diameter) {
    double area = Passage.areaOf(diameter).squareMillimetres();
    return MassFlow.ofGramsPerSecond(
        area * 1e-3 * flux(pressure, temperature, velocity, velocityCoefficient));
  }

  /**
   * The size of the throat for a flow: the inverse of {@link #massFlow}.
   *
   * @param flow of air, above 0; not null
   * @return the diameter of the throat
   * @throws IllegalArgumentException if there is no flow
   */
  public Diameter diameter(MassFlow flow) {
    double flux = flux(pressure, temperature, velocity, velocityCoefficient);
    Area area = Area.ofSquareMillimetres(flow.kilogramsPerSecond() / flux * 1e6);
    return Diameter.ofMillimetres(Math.sqrt(area.squareMillimetres() * 4 / Math.PI));
  }

  private static double ratio(Pressure pressure, Pressure depression) {
    double p = pressure.pascals();
    double greatest = p * (1 - IsentropicFlow.criticalRatio(GAMMA));
    Checks.that(
        depression.pascals() > 0 && depression.pascals() <= greatest,
        "depression",
        depression,
        "above 0 up to 0.4717 of the pressure at rest, where the throat chokes");
    return 1 - depression.pascals() / p;
  }

  /** T₂/T₁ of loss-free flow. */
  private static double cooling(Temperature temperature, double velocity, double coefficient) {
    double ideal = velocity / coefficient;
    return 1 - ideal * ideal / (2 * HEAT_CAPACITY * temperature.kelvin());
  }

  /** ρ₂ c₂, kg/(m² s). */
  private static double flux(
      Pressure pressure, Temperature temperature, double velocity, double coefficient) {
    double atRest = pressure.pascals() / (GAS_CONSTANT * temperature.kelvin());
    double cooling = cooling(temperature, velocity, coefficient);
    return atRest * StrictMath.pow(cooling, 1 / (GAMMA - 1)) * velocity;
  }

  /** {@return state at rest and velocity, for people} */
  @Override
  public String toString() {
    return "air at rest of "
        + pressure
        + ", "
        + temperature
        + "; in the throat "
        + Decimals.shortest(velocity)
        + " m/s, velocity coefficient "
        + Decimals.shortest(velocityCoefficient);
  }
}
