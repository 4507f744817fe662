package dev.jetting.core.elementary;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.number.Decimals;
import org.jspecify.annotations.Nullable;

/**
 * A passage with a constant coefficient for a fluid that keeps its density: ṁ = C A √(2 ρ (Δp − ρ g
 * h)). With a head of 0 it is the venturi throat for air, at small depressions (see {@link
 * CompressibleThroat}). With another head it is the jet and nozzle for fuel, whose lip stands above
 * the level of the float bowl. Source: any textbook of internal combustion engines, on the simple
 * carburettor.
 *
 * <p>Not for jets of a real setting, whose coefficient changes with flow and viscosity, and not for
 * slide carburettors: that is {@code dev.jetting.core.mixture}.
 *
 * @param area cross-section, above 0; not null
 * @param coefficient C, discharge or velocity coefficient, above 0 to 1
 * @param fluid density of what flows; not null
 * @param head how far the fluid must be lifted before it flows; not null
 */
public record Passage(Area area, double coefficient, Density fluid, Length head) {

  static final double GRAVITY = 9.80665;

  private static final Length NO_HEAD = Length.ofMillimetres(0);

  /**
   * Checks area and coefficient.
   *
   * @param area cross-section
   * @param coefficient C
   * @param fluid density of what flows
   * @param head how far the fluid must be lifted before it flows
   * @throws IllegalArgumentException if the area is 0 or the coefficient not above 0 and at most 1
   */
  public Passage {
    requireNonNull(area, "area");
    Checks.that(area.squareMillimetres() > 0, "area of a passage", area, "above 0 mm²");
    Checks.that(coefficient > 0 && coefficient <= 1, "coefficient", coefficient, "above 0 up to 1");
    requireNonNull(fluid, "fluid");
    requireNonNull(head, "head");
  }

  /**
   * A round passage that fluid flows through without being lifted.
   *
   * @param diameter of the cross-section; not null
   * @param coefficient C, above 0 to 1
   * @param fluid density of what flows; not null
   * @return the passage
   * @throws IllegalArgumentException if the coefficient is not above 0 and at most 1
   */
  public static Passage of(Diameter diameter, double coefficient, Density fluid) {
    return new Passage(areaOf(diameter), coefficient, fluid, NO_HEAD);
  }

  /**
   * The same passage with another cross-section.
   *
   * @param diameter of the cross-section; not null
   * @return the passage
   */
  public Passage withDiameter(Diameter diameter) {
    return new Passage(areaOf(diameter), coefficient, fluid, head);
  }

  /**
   * The same passage for fluid of another density.
   *
   * @param fluid density of what flows; not null
   * @return the passage
   */
  public Passage withFluid(Density fluid) {
    return new Passage(area, coefficient, fluid, head);
  }

  /**
   * The same passage with another head.
   *
   * @param head how far the fluid must be lifted before it flows; not null
   * @return the passage
   */
  public Passage withHead(Length head) {
    return new Passage(area, coefficient, fluid, head);
  }

  /**
   * The same passage, of the size that lets a flow through.
   *
   * @param flow what shall flow, above 0; not null
   * @param drop pressure difference, above {@link #startingDrop()}; not null
   * @return the passage
   * @throws IllegalArgumentException if nothing flows at such a drop, or the flow is 0
   */
  public Passage sizedFor(MassFlow flow, Pressure drop) {
    double flux = flowing(drop);
    Area sized = Area.ofSquareMillimetres(flow.kilogramsPerSecond() / flux * 1e6);
    return new Passage(sized, coefficient, fluid, head);
  }

  /** {@return the diameter of a round passage of this cross-section} */
  public Diameter diameter() {
    return Diameter.ofMillimetres(Math.sqrt(area.squareMillimetres() * 4 / Math.PI));
  }

  /** {@return the pressure difference ρ g h up to which nothing flows; 0 without a head} */
  public Pressure startingDrop() {
    return Pressure.ofPascals(headPascals());
  }

  /**
   * The flow under a pressure difference.
   *
   * @param drop pressure difference; not null
   * @return ṁ; 0 up to {@link #startingDrop()}
   */
  public MassFlow massFlow(Pressure drop) {
    return MassFlow.ofGramsPerSecond(area.squareMillimetres() * 1e-3 * flux(drop));
  }

  /**
   * The pressure difference that makes a flow: the inverse of {@link #massFlow}.
   *
   * @param flow what flows; not null
   * @return the pressure difference, {@link #startingDrop()} or more
   */
  public Pressure drop(MassFlow flow) {
    double flux = flow.kilogramsPerSecond() / (coefficient * area.squareMillimetres() * 1e-6);
    return Pressure.ofPascals(flux * flux / (2 * fluid.kilogramsPerCubicMetre()) + headPascals());
  }

  /**
   * The velocity under a pressure difference: C √(2 (Δp − ρ g h)/ρ).
   *
   * @param drop pressure difference; not null
   * @return m/s; 0 up to {@link #startingDrop()}
   */
  public double velocity(Pressure drop) {
    return flux(drop) / fluid.kilogramsPerCubicMetre();
  }

  /**
   * The pressure difference that makes a velocity: the inverse of {@link #velocity}.
   *
   * @param metresPerSecond 0 to 400
   * @return the pressure difference, {@link #startingDrop()} or more
   * @throws IllegalArgumentException if the velocity is out of range
   */
  public Pressure dropAtVelocity(double metresPerSecond) {
    double ideal = Checks.within("velocity in m/s", metresPerSecond, 0, 400) / coefficient;
    return Pressure.ofPascals(fluid.kilogramsPerCubicMetre() * ideal * ideal / 2 + headPascals());
  }

  /** Like {@link #flux}, but refuses a drop at which nothing flows. */
  double flowing(Pressure drop) {
    double flux = flux(drop);
    Checks.that(flux > 0, "pressure drop", drop, "above that at which flow starts");
    return flux;
  }

  /** C √(2 ρ (Δp − ρ g h)), kg/(m² s). */
  private double flux(Pressure drop) {
    double driving = Math.max(0, drop.pascals() - headPascals());
    return coefficient * Math.sqrt(2 * fluid.kilogramsPerCubicMetre() * driving);
  }

  private double headPascals() {
    return fluid.kilogramsPerCubicMetre() * GRAVITY * head.millimetres() * 1e-3;
  }

  static Area areaOf(Diameter diameter) {
    double d = diameter.millimetres();
    return Area.ofSquareMillimetres(Math.PI / 4 * d * d);
  }

  /** {@return area, coefficient, density and head, for people} */
  @Override
  public String toString() {
    return "passage of "
        + area
        + ", coefficient "
        + Decimals.shortest(coefficient)
        + ", fluid "
        + fluid
        + ", head "
        + head;
  }

  /** {@return a builder of a passage, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this passage set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.area = area;
    builder.coefficient = coefficient;
    builder.fluid = fluid;
    builder.head = head;
    return builder;
  }

  /**
   * Returns this passage with another value of one component; all else stays.
   *
   * @param area cross-section, above 0; not null
   * @return the changed passage
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Passage withArea(Area area) {
    Builder builder = toBuilder();
    builder.area = area;
    return builder.build();
  }

  /**
   * Returns this passage with another value of one component; all else stays.
   *
   * @param coefficient C, discharge or velocity coefficient, above 0 to 1
   * @return the changed passage
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public Passage withCoefficient(double coefficient) {
    Builder builder = toBuilder();
    builder.coefficient = coefficient;
    return builder.build();
  }

  /** Names each component of a passage, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Area area;
    private @Nullable Double coefficient;
    private @Nullable Density fluid;
    private @Nullable Length head;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value cross-section, above 0; not null
     * @return this builder
     */
    public Builder area(Area value) {
      area = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value C, discharge or velocity coefficient, above 0 to 1
     * @return this builder
     */
    public Builder coefficient(double value) {
      coefficient = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value density of what flows; not null
     * @return this builder
     */
    public Builder fluid(Density value) {
      fluid = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value how far the fluid must be lifted before it flows; not null
     * @return this builder
     */
    public Builder head(Length value) {
      head = value;
      return this;
    }

    /**
     * Builds the passage.
     *
     * @return the passage
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public Passage build() {
      return new Passage(
          Checks.present("passage", "area", area),
          Checks.present("passage", "coefficient", coefficient),
          Checks.present("passage", "fluid", fluid),
          Checks.present("passage", "head", head));
    }
  }
}
