package dev.jetting.core.fuel;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.KinematicViscosity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Components in stated shares, by volume at 15 °C (as fuel is sold: E10 is 10 % of the volume) or
 * by mass. Immutable; the order in which shares are given does not matter.
 *
 * <p>Volumes add: the small change of volume on mixing is left out, for petrol and ethanol less
 * than half a per cent. The logarithm of kinematic viscosity adds by volume (Arrhenius 1887), which
 * is a rule of thumb for liquids as unlike as petrol and oil.
 *
 * <p>Not for premix oil: that is {@link Fuel#withPremix}.
 */
public final class FuelBlend implements Liquid {

  private static final int MOST_SHARES = 20;

  /** What the shares of a blend are shares of. */
  public enum Basis {
    /** Of the volume at 15 °C, each component measured on its own. */
    VOLUME,
    /** Of the mass. */
    MASS
  }

  private static final double SUM_TOLERANCE = 1e-9;

  private final Basis basis;
  private final List<FuelShare> shares;

  private FuelBlend(Basis basis, Collection<FuelShare> shares) {
    this.basis = basis;
    Checks.atMost(
        "shares", () -> Sentence.of("error.name.shares-of-a-fuel"), shares.size(), MOST_SHARES);
    this.shares =
        shares.stream().sorted(Comparator.comparing(share -> share.component().id())).toList();
    Checks.that(
        !this.shares.isEmpty(),
        () -> Sentence.of("error.name.shares-count"),
        0,
        () -> Sentence.of("error.or-more").with("low", 1));
    for (int i = 1; i < this.shares.size(); i++) {
      String id = this.shares.get(i).component().id();
      Checks.that(
          !id.equals(this.shares.get(i - 1).component().id()),
          () -> Sentence.of("error.name.second-share"),
          id,
          () -> Sentence.of("error.component-once"));
    }
    double sum = this.shares.stream().mapToDouble(FuelShare::share).reduce(0, Double::sum);
    Checks.that(
        Math.abs(sum - 1) <= SUM_TOLERANCE,
        () -> Sentence.of("error.name.sum-of-shares"),
        sum,
        () -> Sentence.plain("1"));
  }

  /**
   * A blend by volume at 15 °C.
   *
   * @param shares each component once, together 1; not null
   * @return the blend
   * @throws IllegalArgumentException if the shares do not sum to 1, or a component comes twice
   */
  public static FuelBlend byVolume(Collection<FuelShare> shares) {
    return new FuelBlend(Basis.VOLUME, shares);
  }

  /**
   * A blend by mass.
   *
   * @param shares each component once, together 1; not null
   * @return the blend
   * @throws IllegalArgumentException if the shares do not sum to 1, or a component comes twice
   */
  public static FuelBlend byMass(Collection<FuelShare> shares) {
    return new FuelBlend(Basis.MASS, shares);
  }

  /** {@return what the shares are shares of} */
  public Basis basis() {
    return basis;
  }

  /** {@return the shares as they were given, ordered by the id of the component} */
  public List<FuelShare> shares() {
    return shares;
  }

  /**
   * The density at a temperature.
   *
   * @param temperature −40 °C to 80 °C; not null
   * @return mass over the summed volumes of the components
   * @throws IllegalArgumentException if the temperature is out of range
   */
  @Override
  public Density density(Temperature temperature) {
    double celsius = FuelComponent.celsius(temperature);
    double mass = 0;
    double volume = 0;
    for (FuelShare share : shares) {
      mass += volume(share) * share.component().density().value();
      volume += volume(share) * share.component().expansion(celsius);
    }
    return Density.ofKilogramsPerCubicMetre(mass / volume);
  }

  /**
   * The kinematic viscosity at a temperature.
   *
   * @param temperature −40 °C to 80 °C; not null
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public KinematicViscosity kinematicViscosity(Temperature temperature) {
    FuelComponent.celsius(temperature);
    double logarithm = 0;
    double volume = 0;
    for (FuelShare share : shares) {
      logarithm += volume(share) * share.component().logViscosity(temperature.kelvin());
      volume += volume(share);
    }
    return KinematicViscosity.ofSquareMillimetresPerSecond(StrictMath.exp(logarithm / volume));
  }

  /**
   * The dynamic viscosity at a temperature.
   *
   * @param temperature −40 °C to 80 °C; not null
   * @return kinematic viscosity times density
   * @throws IllegalArgumentException if the temperature is out of range
   */
  @Override
  public DynamicViscosity dynamicViscosity(Temperature temperature) {
    double kinematic = kinematicViscosity(temperature).squareMillimetresPerSecond() * 1e-6;
    return DynamicViscosity.ofPascalSeconds(
        kinematic * density(temperature).kilogramsPerCubicMetre());
  }

  /**
   * The air that burns the blend completely: that of the components, by mass.
   *
   * @return kg of air for a kg of the blend
   */
  @Override
  public AirFuelRatio stoichiometricRatio() {
    double air = 0;
    double mass = 0;
    for (FuelShare share : shares) {
      double part = volume(share) * share.component().density().value();
      air += part * share.component().stoichiometricRatio().value();
      mass += part;
    }
    return AirFuelRatio.of(air / mass);
  }

  /** Volume at 15 °C on a scale of the blend's own. */
  private double volume(FuelShare share) {
    return basis == Basis.VOLUME
        ? share.share()
        : share.share() / share.component().density().value();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FuelBlend that && basis == that.basis && shares.equals(that.shares);
  }

  @Override
  public int hashCode() {
    return Objects.hash(basis.name(), shares);
  }

  /**
   * {@return the name it is sold by, such as {@code E10} or {@code petrol}, if it is of the
   * built-in components; otherwise the shares, such as {@code 0.1 ethanol + 0.9 race-petrol by
   * volume}}
   */
  @Override
  public String toString() {
    if (shares.size() == 1) {
      return shares.get(0).component().id();
    }
    int percent = (int) Math.rint(100 * shares.get(0).share());
    boolean sold =
        shares.size() == 2
            && basis == Basis.VOLUME
            && shares.get(0).component().equals(FuelComponent.ETHANOL)
            && shares.get(1).component().equals(FuelComponent.PETROL)
            && shares.get(0).share() == percent / 100.0;
    return sold ? "E" + percent : inShares();
  }

  private String inShares() {
    return shares.stream().map(FuelShare::toString).collect(joining(" + "))
        + (basis == Basis.VOLUME ? " by volume" : " by mass");
  }
}
