package dev.jetting.core.fuel;

import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What flows through the jets: a blend, with premix oil or without, or a liquid whose properties
 * are stated outright. Immutable.
 *
 * <p>Oil takes the place of petrol: it is in the density and the viscosity of what flows, and
 * {@link #oilMassFraction()} says how much of the mass is not fuel. The air-fuel ratio is that of
 * the fuel without oil. Oil that a pump feeds past the carburettor is no premix.
 *
 * <p>A writer that must be able to build the fuel again needs {@link #blend()}, {@link #premix()}
 * and {@link #oil()}; where {@code blend()} is empty, density, viscosity and air-fuel ratio take
 * the place of the blend, and do not depend on temperature.
 */
public final class Fuel {

  /** Petrol without ethanol or oil. */
  public static final Fuel PETROL = of(FuelComponent.PETROL);

  /** Petrol with 5 % of ethanol by volume. */
  public static final Fuel E5 = withEthanol(0.95, 0.05);

  /** Petrol with 10 % of ethanol by volume. */
  public static final Fuel E10 = withEthanol(0.9, 0.1);

  /**
   * Petrol with 85 % of ethanol by volume; what is sold as such may hold less, down to about half.
   */
  public static final Fuel E85 = withEthanol(0.15, 0.85);

  private final Liquid liquid;
  private final PremixRatio premix;
  private final @Nullable FuelComponent oil;

  /** Of the fuel without its oil, kg/m³; of what flows if its properties are stated. */
  private final double densityAt15;

  private Fuel(Liquid liquid, PremixRatio premix, @Nullable FuelComponent oil) {
    this.liquid = liquid;
    this.premix = premix;
    this.oil = oil;
    this.densityAt15 = liquid.density(Temperature.ofCelsius(15)).kilogramsPerCubicMetre();
  }

  /**
   * A fuel of one component.
   *
   * @param component the liquid; not null
   * @return the fuel, without oil
   */
  public static Fuel of(FuelComponent component) {
    return of(FuelBlend.byVolume(List.of(new FuelShare(component, 1))));
  }

  /**
   * A fuel of several components.
   *
   * @param blend the components and their shares; not null
   * @return the fuel, without oil
   */
  public static Fuel of(FuelBlend blend) {
    return new Fuel(requireNonNull(blend, "blend"), PremixRatio.NO_OIL, null);
  }

  /**
   * A fuel of stated properties, the same at every temperature. If oil is in what flows, {@link
   * #withPremix} says how much.
   *
   * @param density of what flows, oil included; not null
   * @param viscosity of what flows, oil included; not null
   * @param stoichiometricRatio kg of air that burn a kg of the fuel without its oil completely; not
   *     null
   * @return the fuel, without oil
   */
  public static Fuel ofProperties(
      Density density, DynamicViscosity viscosity, AirFuelRatio stoichiometricRatio) {
    return new Fuel(
        new StatedLiquid(density, viscosity, stoichiometricRatio), PremixRatio.NO_OIL, null);
  }

  private static Fuel withEthanol(double petrol, double ethanol) {
    return of(
        FuelBlend.byVolume(
            List.of(
                new FuelShare(FuelComponent.PETROL, petrol),
                new FuelShare(FuelComponent.ETHANOL, ethanol))));
  }

  /**
   * The same fuel with other premix, of {@link FuelComponent#TWO_STROKE_OIL}.
   *
   * @param premix fuel to oil by volume at 15 °C; not null
   * @return the fuel; density and viscosity stay if they were stated outright
   * @throws IllegalArgumentException if a stated density is less than the oil alone would bring
   */
  public Fuel withPremix(PremixRatio premix) {
    return withPremix(premix, FuelComponent.TWO_STROKE_OIL);
  }

  /**
   * The same fuel with other premix.
   *
   * @param premix fuel to oil by volume at 15 °C; not null
   * @param oil the oil; forgotten if there is none in the premix; not null
   * @return the fuel; density and viscosity stay if they were stated outright, for the oil is in
   *     them
   * @throws IllegalArgumentException if a component of the fuel has the id of the oil, or a stated
   *     density is less than the oil alone would bring
   */
  public Fuel withPremix(PremixRatio premix, FuelComponent oil) {
    requireNonNull(oil, "oil");
    boolean oiled = requireNonNull(premix, "premix").oilShareOfPetrol() > 0;
    Checks.that(
        blend().stream()
            .flatMap(blend -> blend.shares().stream())
            .noneMatch(share -> share.component().id().equals(oil.id())),
        () -> Sentence.of("error.name.oil-id"),
        oil,
        () -> Sentence.of("error.oil-id"));
    Fuel mixed = new Fuel(liquid, premix, oiled ? oil : null);
    Checks.that(
        mixed.oilMassFraction() < 1,
        () -> Sentence.of("error.name.stated-density"),
        Decimals.shortest(densityAt15) + " kg/m³",
        () -> Sentence.of("error.oil-denser").with("premix", premix));
    return mixed;
  }

  private boolean isStated() {
    return liquid instanceof StatedLiquid;
  }

  /** {@return the components and their shares, or empty if the properties were stated outright} */
  public Optional<FuelBlend> blend() {
    return liquid instanceof FuelBlend blend ? Optional.of(blend) : Optional.empty();
  }

  /** {@return fuel to oil by volume at 15 °C} */
  public PremixRatio premix() {
    return premix;
  }

  /** {@return the oil, or empty if there is none in the premix} */
  public Optional<FuelComponent> oil() {
    return Optional.ofNullable(oil);
  }

  /** {@return kg of air that burn a kg of the fuel without its oil} */
  public AirFuelRatio stoichiometricRatio() {
    return liquid.stoichiometricRatio();
  }

  /** {@return the mass of oil in a unit mass of what flows, from 0 to below 1} */
  public double oilMassFraction() {
    if (oil == null) {
      return 0;
    }
    double oilVolume = premix.oilShareOfPetrol();
    double oilMass = oilVolume * oil.density().value();
    return isStated()
        ? oilMass / (densityAt15 * (1 + oilVolume))
        : oilMass / (densityAt15 + oilMass);
  }

  /**
   * The density of what flows through the jets, oil included.
   *
   * @param temperature of the fuel, −40 °C to 80 °C unless its properties were stated outright; not
   *     null
   * @return the density
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public Density density(Temperature temperature) {
    Density fuel = liquid.density(temperature);
    if (oil == null || isStated()) {
      return fuel;
    }
    double oilVolume = premix.oilShareOfPetrol();
    double mass = densityAt15 + oilVolume * oil.density().value();
    double volume =
        densityAt15 / fuel.kilogramsPerCubicMetre()
            + oilVolume * oil.expansion(FuelComponent.celsius(temperature));
    return Density.ofKilogramsPerCubicMetre(mass / volume);
  }

  /**
   * The viscosity of what flows through the jets, oil included by the same rule as the components
   * of a {@link FuelBlend}.
   *
   * @param temperature of the fuel, −40 °C to 80 °C unless its properties were stated outright; not
   *     null
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public DynamicViscosity dynamicViscosity(Temperature temperature) {
    DynamicViscosity fuel = liquid.dynamicViscosity(temperature);
    if (oil == null || isStated()) {
      return fuel;
    }
    double oilVolume = premix.oilShareOfPetrol();
    double kinematic =
        fuel.pascalSeconds() / liquid.density(temperature).kilogramsPerCubicMetre() * 1e6;
    double logarithm =
        (StrictMath.log(kinematic) + oilVolume * oil.logViscosity(temperature.kelvin()))
            / (1 + oilVolume);
    return DynamicViscosity.ofPascalSeconds(
        StrictMath.exp(logarithm) * 1e-6 * density(temperature).kilogramsPerCubicMetre());
  }

  /**
   * Whether density and viscosity are known at a temperature.
   *
   * @param temperature of the fuel; not null
   * @return true from −40 °C to 80 °C, and everywhere if all properties were stated outright
   */
  public boolean isKnownAt(Temperature temperature) {
    return FuelComponent.isKnownAt(temperature) || isStated();
  }

  /**
   * Every number the fuel is worked out from, with its origin, by dotted names such as {@code
   * petrol.density(15 °C)}; of a fuel whose properties were stated outright only those of the oil.
   *
   * @return the numbers of the components and then of the oil
   */
  public Map<String, Coefficient> coefficients() {
    Map<String, Coefficient> all = new LinkedHashMap<>();
    blend()
        .ifPresent(
            blend -> blend.shares().forEach(share -> all.putAll(share.component().coefficients())));
    oil().ifPresent(o -> all.putAll(o.coefficients()));
    return Collections.unmodifiableMap(all);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Fuel that
        && liquid.equals(that.liquid)
        && premix.equals(that.premix)
        && Objects.equals(oil, that.oil);
  }

  @Override
  public int hashCode() {
    return Objects.hash(liquid, premix, oil);
  }

  /** {@return the fuel and its premix, for people} */
  @Override
  public String toString() {
    return liquid + (oil == null ? "" : " with " + premix + " " + oil);
  }
}
