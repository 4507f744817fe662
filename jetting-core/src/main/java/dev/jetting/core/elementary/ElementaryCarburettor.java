package dev.jetting.core.elementary;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * The simple carburettor of the textbooks: air through a venturi and fuel through a jet under one
 * and the same depression, both of constant density. Without a lip the air-fuel ratio does not
 * depend on the depression: (C_a A_a/(C_f A_f)) √(ρ_a/ρ_f). A lip starts the fuel late and leans
 * the low flows.
 *
 * <p>Not for slide carburettors, which open with the throttle and meter with a needle and a pilot:
 * that is {@code dev.jetting.core.mixture}. At depressions of more than a few kPa size the throat
 * with {@link CompressibleThroat}, and the jet with a {@link Passage} of its own.
 *
 * @param air the venturi throat, without a head; not null
 * @param fuel the jet, its head the height of the nozzle lip above the fuel level; not null
 */
public record ElementaryCarburettor(Passage air, Passage fuel) {

  /**
   * Checks that air needs no lifting.
   *
   * @param air the venturi throat
   * @param fuel the jet and its lip
   * @throws IllegalArgumentException if the air passage has a head
   */
  public ElementaryCarburettor {
    requireNonNull(fuel, "fuel");
    Checks.that(air.head().millimetres() == 0, "head of the air", air.head(), "0 mm");
  }

  /**
   * The air that flows.
   *
   * @param depression below the air outside; not null
   * @return the flow of air
   */
  public MassFlow airFlow(Pressure depression) {
    return air.massFlow(depression);
  }

  /**
   * The fuel that flows.
   *
   * @param depression below the air outside; not null
   * @return the flow of fuel; 0 up to {@link #startingDepression()}
   */
  public MassFlow fuelFlow(Pressure depression) {
    return fuel.massFlow(depression);
  }

  /**
   * The air-fuel ratio at a depression, with the lip as it is.
   *
   * @param depression below the air outside, above {@link #startingDepression()}; not null
   * @return air over fuel by mass
   * @throws IllegalArgumentException if no fuel flows at such a depression, or so little that the
   *     ratio is out of the range of {@link AirFuelRatio}
   */
  public AirFuelRatio airFuelRatio(Pressure depression) {
    fuel.flowing(depression);
    return AirFuelRatio.of(
        airFlow(depression).kilogramsPerSecond() / fuelFlow(depression).kilogramsPerSecond());
  }

  /** {@return the air-fuel ratio with the lip left out, which a strong depression tends to} */
  public AirFuelRatio airFuelRatioWithoutLip() {
    return AirFuelRatio.of(ratioWithoutLip());
  }

  /** {@return the depression at which fuel starts to flow; 0 without a lip} */
  public Pressure startingDepression() {
    return fuel.startingDrop();
  }

  /**
   * The velocity of loss-free air at which fuel starts to flow: √(2 g h ρ_f/ρ_a).
   *
   * @return m/s; 0 without a lip
   */
  public double startingAirVelocity() {
    return air.velocity(startingDepression()) / air.coefficient();
  }

  /**
   * The same carburettor with the jet that makes an air-fuel ratio.
   *
   * @param ratio wanted; not null
   * @param depression at which it shall hold, above {@link #startingDepression()}; not null
   * @return the carburettor
   * @throws IllegalArgumentException if no fuel flows at such a depression
   */
  public ElementaryCarburettor withJetFor(AirFuelRatio ratio, Pressure depression) {
    MassFlow wanted =
        MassFlow.ofGramsPerSecond(airFlow(depression).gramsPerSecond() / ratio.value());
    return new ElementaryCarburettor(air, fuel.sizedFor(wanted, depression));
  }

  /**
   * The same carburettor with the throat that makes an air-fuel ratio.
   *
   * @param ratio wanted; not null
   * @param depression at which it shall hold, above {@link #startingDepression()}; not null
   * @return the carburettor
   * @throws IllegalArgumentException if no fuel flows at such a depression
   */
  public ElementaryCarburettor withThroatFor(AirFuelRatio ratio, Pressure depression) {
    fuel.flowing(depression);
    MassFlow wanted =
        MassFlow.ofGramsPerSecond(fuelFlow(depression).gramsPerSecond() * ratio.value());
    return new ElementaryCarburettor(air.sizedFor(wanted, depression), fuel);
  }

  /**
   * The depression at which the lip makes an air-fuel ratio: the inverse of {@link #airFuelRatio}.
   *
   * @param ratio wanted, leaner than {@link #airFuelRatioWithoutLip()}; not null
   * @return the depression
   * @throws IllegalArgumentException if there is no lip, or the ratio is no leaner than without it
   */
  public Pressure depressionFor(AirFuelRatio ratio) {
    double lean = ratio.value() / ratioWithoutLip();
    double start = startingDepression().pascals();
    Checks.that(start > 0, "height of the lip", fuel.head(), "above 0 mm");
    Checks.that(lean > 1, "air-fuel ratio", ratio, "leaner than without the lip");
    return Pressure.ofPascals(start * lean * lean / (lean * lean - 1));
  }

  /**
   * The same carburettor in other air, such as that of another altitude.
   *
   * @param density of the air there; not null
   * @return the carburettor
   */
  public ElementaryCarburettor inAir(Density density) {
    return new ElementaryCarburettor(air.withFluid(density), fuel);
  }

  /**
   * What an air-fuel ratio becomes in other air, without a lip: it goes with the root of the
   * density.
   *
   * @param ratio in the air of reference; not null
   * @param reference density of the air of reference; not null
   * @param there density of the other air; not null
   * @return the air-fuel ratio in the other air
   */
  public static AirFuelRatio inOtherAir(AirFuelRatio ratio, Density reference, Density there) {
    return AirFuelRatio.of(
        ratio.value()
            * Math.sqrt(there.kilogramsPerCubicMetre() / reference.kilogramsPerCubicMetre()));
  }

  /**
   * The diameter of the throat over that of the jet, for an air-fuel ratio without a lip.
   *
   * @param ratio wanted; not null
   * @param airCoefficient of the throat, above 0 to 1
   * @param air density of the air; not null
   * @param fuelCoefficient of the jet, above 0 to 1
   * @param fuel density of the fuel; not null
   * @return throat diameter over jet diameter
   * @throws IllegalArgumentException if a coefficient is not above 0 and at most 1
   */
  public static double throatToJet(
      AirFuelRatio ratio,
      double airCoefficient,
      Density air,
      double fuelCoefficient,
      Density fuel) {
    Diameter same = Diameter.ofMillimetres(1);
    Passage throat = Passage.of(same, airCoefficient, air);
    Passage jet = Passage.of(same, fuelCoefficient, fuel);
    return Math.sqrt(ratio.value() / new ElementaryCarburettor(throat, jet).ratioWithoutLip());
  }

  private double ratioWithoutLip() {
    return air.coefficient()
        * air.area().squareMillimetres()
        / (fuel.coefficient() * fuel.area().squareMillimetres())
        * Math.sqrt(air.fluid().kilogramsPerCubicMetre() / fuel.fluid().kilogramsPerCubicMetre());
  }

  /** {@return a builder of a carburettor, nothing of it set} */
  public static Builder builder() {
    return new Builder();
  }

  /** {@return a builder with all of this carburettor set} */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.air = air;
    builder.fuel = fuel;
    return builder;
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param air the venturi throat, without a head; not null
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ElementaryCarburettor withAir(Passage air) {
    Builder builder = toBuilder();
    builder.air = air;
    return builder.build();
  }

  /**
   * Returns this carburettor with another value of one component; all else stays.
   *
   * @param fuel the jet, its head the height of the nozzle lip above the fuel level; not null
   * @return the changed carburettor
   * @throws IllegalArgumentException if it does not fit the rest
   */
  public ElementaryCarburettor withFuel(Passage fuel) {
    Builder builder = toBuilder();
    builder.fuel = fuel;
    return builder.build();
  }

  /** Names each component of a carburettor, so that none takes the place of another. */
  public static final class Builder {
    private @Nullable Passage air;
    private @Nullable Passage fuel;

    private Builder() {}

    /**
     * Sets one component.
     *
     * @param value the venturi throat, without a head; not null
     * @return this builder
     */
    public Builder air(Passage value) {
      air = value;
      return this;
    }

    /**
     * Sets one component.
     *
     * @param value the jet, its head the height of the nozzle lip above the fuel level; not null
     * @return this builder
     */
    public Builder fuel(Passage value) {
      fuel = value;
      return this;
    }

    /**
     * Builds the carburettor.
     *
     * @return the carburettor
     * @throws IllegalArgumentException if a component is not set, or out of its range
     */
    public ElementaryCarburettor build() {
      return new ElementaryCarburettor(
          Checks.present("carburettor", "air", air), Checks.present("carburettor", "fuel", fuel));
    }
  }
}
