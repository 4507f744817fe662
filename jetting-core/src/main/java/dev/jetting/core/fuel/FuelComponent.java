package dev.jetting.core.fuel;

import static com.google.common.base.Preconditions.checkState;
import static java.util.Objects.requireNonNull;

import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Density;
import dev.jetting.units.KinematicViscosity;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.number.Decimals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One liquid in a fuel: petrol, ethanol, oil. Each of its numbers names its source. Immutable.
 *
 * <p>The built-in components are typical liquids, not what a given pump sells: an embedder that
 * knows better starts from {@link #toBuilder()}. Not for what flows through the jets: that is a
 * {@link Fuel}.
 */
public final class FuelComponent {

  static final String KG_PER_M3 = "kg/m³";
  static final String PER_KELVIN = "1/K";
  static final String MM2_PER_S = "mm²/s";
  static final String RATIO = "1";

  private static final double REFERENCE_CELSIUS = 15;
  static final double LEAST_CELSIUS = -40;
  static final double GREATEST_CELSIUS = 80;
  private static final Pattern ID = Pattern.compile("[a-z0-9]++(?:-[a-z0-9]++)*+");

  /** Petrol without oxygenates, CH1.87, 745 kg/m³. */
  public static final FuelComponent PETROL =
      builder("petrol")
          .composition(
              ElementalComposition.hydrocarbon(1.87),
              "Heywood, Internal Combustion Engine Fundamentals: typical petrol (from memory)")
          .density(
              Coefficient.assumed(745, KG_PER_M3, "near the middle of 720 to 775 of EN 228:2012"))
          .thermalExpansion(
              Coefficient.assumed(9.5e-4, PER_KELVIN, "usual figure for petrol, 9.5e-4 to 9.6e-4"))
          .viscosity(
              Temperature.ofCelsius(-20),
              Coefficient.assumed(0.9, MM2_PER_S, "middle of the usual 0.8 to 1.0"))
          .viscosity(
              Temperature.ofCelsius(20),
              Coefficient.assumed(0.55, MM2_PER_S, "middle of the usual 0.5 to 0.6"))
          .build();

  /** Ethanol, C₂H₆O. */
  public static final FuelComponent ETHANOL =
      builder("ethanol")
          .composition(new ElementalComposition(2, 6, 1), "molecular formula")
          .density(
              Coefficient.calculated(
                  795.2,
                  KG_PER_M3,
                  "specific gravity 0.796 (US DOE Alternative Fuels Data Center) times water at 60 °F,"
                      + " 999.0 kg/m³"))
          .thermalExpansion(
              Coefficient.assumed(1.09e-3, PER_KELVIN, "handbook figure, from memory"))
          .viscosity(
              Temperature.ofCelsius(-20),
              Coefficient.assumed(3.435, MM2_PER_S, "table figure whose source is not known"))
          .viscosity(
              Temperature.ofCelsius(20),
              Coefficient.assumed(1.5, MM2_PER_S, "table figure whose source is not known"))
          .build();

  /** Methanol, CH₄O. */
  public static final FuelComponent METHANOL =
      builder("methanol")
          .composition(new ElementalComposition(1, 4, 1), "molecular formula")
          .density(Coefficient.assumed(796, KG_PER_M3, "handbook figure, from memory"))
          .thermalExpansion(
              Coefficient.assumed(1.19e-3, PER_KELVIN, "handbook figure, from memory"))
          .viscosity(
              Temperature.ofCelsius(0),
              Coefficient.assumed(0.98, MM2_PER_S, "handbook figure, from memory"))
          .viscosity(
              Temperature.ofCelsius(25),
              Coefficient.assumed(0.69, MM2_PER_S, "handbook figure, from memory"))
          .build();

  /** Oil for premix. */
  public static final FuelComponent TWO_STROKE_OIL =
      builder("two-stroke-oil")
          .composition(
              ElementalComposition.hydrocarbon(1.9),
              "assumed, near other mineral oils; the model does not count oil as fuel")
          .density(Coefficient.assumed(880, KG_PER_M3, "usual for two-stroke oil"))
          .thermalExpansion(Coefficient.assumed(7e-4, PER_KELVIN, "usual for mineral oil"))
          .viscosity(
              Temperature.ofCelsius(-20),
              Coefficient.calculated(
                  4540, MM2_PER_S, "ASTM D341 law through the points at 40 °C and 100 °C"))
          .viscosity(
              Temperature.ofCelsius(20),
              Coefficient.calculated(
                  169, MM2_PER_S, "ASTM D341 law through the points at 40 °C and 100 °C"))
          .viscosity(
              Temperature.ofCelsius(40),
              Coefficient.assumed(60, MM2_PER_S, "usual for two-stroke oil"))
          .viscosity(
              Temperature.ofCelsius(100),
              Coefficient.assumed(9, MM2_PER_S, "usual for two-stroke oil"))
          .build();

  private final String id;
  private final @Nullable ElementalComposition composition;
  private final Coefficient stoichiometricRatio;
  private final Coefficient density;
  private final Coefficient thermalExpansion;
  private final ViscosityCurve viscosity;

  private FuelComponent(
      String id,
      @Nullable ElementalComposition composition,
      Coefficient stoichiometricRatio,
      Coefficient density,
      Coefficient thermalExpansion,
      ViscosityCurve viscosity) {
    this.id = id;
    this.composition = composition;
    this.stoichiometricRatio = stoichiometricRatio;
    this.density = density;
    this.thermalExpansion = thermalExpansion;
    this.viscosity = viscosity;
  }

  /**
   * Starts a component.
   *
   * @param id plain words in lower case joined by hyphens, such as {@code race-petrol}; not null
   * @return a builder with everything else still to say
   * @throws IllegalArgumentException if the id has another form
   */
  public static Builder builder(String id) {
    return new Builder(Objects.requireNonNull(id, "id"));
  }

  /** {@return a builder that starts with everything of this component} */
  public Builder toBuilder() {
    Builder builder = new Builder(id);
    builder.composition = composition;
    builder.stoichiometricRatio = stoichiometricRatio;
    builder.density = density;
    builder.thermalExpansion = thermalExpansion;
    builder.viscosity.addAll(viscosity.points());
    return builder;
  }

  /** {@return the id, unique within a fuel} */
  public String id() {
    return id;
  }

  /** {@return the atoms, or empty where only the air-fuel ratio is known} */
  public Optional<ElementalComposition> composition() {
    return Optional.ofNullable(composition);
  }

  /** {@return kg of air that burn a kg completely, unit {@code 1}} */
  public Coefficient stoichiometricRatio() {
    return stoichiometricRatio;
  }

  /** {@return the density at 15 °C, kg/m³} */
  public Coefficient density() {
    return density;
  }

  /** {@return the growth in volume for a kelvin, over the volume at 15 °C, 1/K} */
  public Coefficient thermalExpansion() {
    return thermalExpansion;
  }

  /** {@return the points of the viscosity curve, coldest first} */
  public List<ViscosityPoint> viscosityPoints() {
    return viscosity.points();
  }

  /** {@return every number with its origin, by a dotted name that starts with the id} */
  public Map<String, Coefficient> coefficients() {
    Map<String, Coefficient> all = new LinkedHashMap<>();
    all.put(id + ".stoichiometric-ratio", stoichiometricRatio);
    all.put(id + ".density(15 °C)", density);
    all.put(id + ".thermal-expansion", thermalExpansion);
    for (ViscosityPoint point : viscosity.points()) {
      String celsius = Decimals.shortest(point.temperature().celsius());
      all.put(id + ".kinematic-viscosity(" + celsius + " °C)", point.viscosity());
    }
    return Collections.unmodifiableMap(all);
  }

  /**
   * The density at a temperature: ρ₁₅/(1 + α (t − 15 °C)).
   *
   * @param temperature −40 °C to 80 °C; not null
   * @return the density
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public Density density(Temperature temperature) {
    return Density.ofKilogramsPerCubicMetre(density.value() / expansion(celsius(temperature)));
  }

  /**
   * The kinematic viscosity at a temperature: ln ν linear in 1/T between the points, and on in the
   * same way beyond them.
   *
   * @param temperature −40 °C to 80 °C; not null
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public KinematicViscosity kinematicViscosity(Temperature temperature) {
    celsius(temperature);
    return KinematicViscosity.ofSquareMillimetresPerSecond(
        StrictMath.exp(logViscosity(temperature.kelvin())));
  }

  /** Volume over the volume at 15 °C, by a temperature that {@link #celsius} has checked. */
  double expansion(double celsius) {
    return 1 + thermalExpansion.value() * (celsius - REFERENCE_CELSIUS);
  }

  /** ln of ν in mm²/s, by a temperature that {@link #celsius} has checked. */
  double logViscosity(double kelvin) {
    return viscosity.logAt(kelvin);
  }

  /** A temperature at which the numbers of components hold, in °C. */
  static double celsius(Temperature temperature) {
    return Checks.within(
        () -> Sentence.of("error.name.fuel-temperature"),
        temperature.celsius(),
        LEAST_CELSIUS,
        GREATEST_CELSIUS);
  }

  static boolean isKnownAt(Temperature temperature) {
    return temperature.celsius() >= LEAST_CELSIUS && temperature.celsius() <= GREATEST_CELSIUS;
  }

  static double valueOf(String quantity, Coefficient coefficient, String unit) {
    requireNonNull(coefficient, quantity);
    Checks.that(
        coefficient.unit().equals(unit),
        () -> Sentence.name(quantity),
        coefficient,
        () -> Sentence.of("error.value-in").with("unit", unit));
    return coefficient.value();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FuelComponent that
        && id.equals(that.id)
        && Objects.equals(composition, that.composition)
        && stoichiometricRatio.equals(that.stoichiometricRatio)
        && density.equals(that.density)
        && thermalExpansion.equals(that.thermalExpansion)
        && viscosityPoints().equals(that.viscosityPoints());
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, density.value(), thermalExpansion.value());
  }

  /** {@return the id} */
  @Override
  public String toString() {
    return id;
  }

  /** Collects what a component is made of. Not thread-safe. */
  public static final class Builder {

    private String id;
    private @Nullable ElementalComposition composition;
    private @Nullable Coefficient stoichiometricRatio;
    private @Nullable Coefficient density;
    private @Nullable Coefficient thermalExpansion;
    private final List<ViscosityPoint> viscosity = new ArrayList<>();

    private Builder(String id) {
      this.id = checkedId(id);
    }

    /**
     * Gives another id.
     *
     * @param id plain words in lower case joined by hyphens; not null
     * @return this builder
     * @throws IllegalArgumentException if the id has another form
     */
    public Builder id(String id) {
      this.id = checkedId(id);
      return this;
    }

    /**
     * States the atoms, from which the air-fuel ratio is worked out.
     *
     * @param composition the atoms; not null
     * @param source where the composition comes from; not null
     * @return this builder
     */
    public Builder composition(ElementalComposition composition, String source) {
      this.composition = requireNonNull(composition, "composition");
      this.stoichiometricRatio =
          Coefficient.calculated(
              composition.stoichiometricRatio().value(),
              RATIO,
              "complete combustion of " + composition + "; " + requireNonNull(source, "source"));
      return this;
    }

    /**
     * States the air-fuel ratio itself, where the atoms are not known.
     *
     * @param ratio kg of air for a kg, unit {@code 1}, within the range of {@link AirFuelRatio};
     *     not null
     * @return this builder
     * @throws IllegalArgumentException if the unit or the value is not allowed
     */
    public Builder stoichiometricRatio(Coefficient ratio) {
      AirFuelRatio.of(valueOf("stoichiometric ratio", ratio, RATIO));
      this.composition = null;
      this.stoichiometricRatio = ratio;
      return this;
    }

    /**
     * States the density.
     *
     * @param density at 15 °C in {@code kg/m³}, 500 to 1500; not null
     * @return this builder
     * @throws IllegalArgumentException if the unit or the value is not allowed
     */
    public Builder density(Coefficient density) {
      double value = valueOf("density at 15 °C", density, KG_PER_M3);
      Checks.within(() -> Sentence.of("error.name.density-at-15"), value, 500, 1500);
      this.density = density;
      return this;
    }

    /**
     * States how the volume grows with temperature.
     *
     * @param expansion share of the volume at 15 °C for a kelvin, in {@code 1/K}, 0 to 0.003; not
     *     null
     * @return this builder
     * @throws IllegalArgumentException if the unit or the value is not allowed
     */
    public Builder thermalExpansion(Coefficient expansion) {
      double value = valueOf("thermal expansion", expansion, PER_KELVIN);
      Checks.within(() -> Sentence.of("error.name.expansion"), value, 0, 0.003);
      this.thermalExpansion = expansion;
      return this;
    }

    /**
     * Adds a point to the viscosity curve, which needs two or more.
     *
     * @param temperature where it holds; not null
     * @param viscosity kinematic viscosity in {@code mm²/s}, 0.1 to 1 000 000; not null
     * @return this builder
     * @throws IllegalArgumentException if the unit or the value is not allowed
     */
    public Builder viscosity(Temperature temperature, Coefficient viscosity) {
      this.viscosity.add(new ViscosityPoint(temperature, viscosity));
      return this;
    }

    /**
     * Forgets the points of the viscosity curve, to put others in their place.
     *
     * @return this builder
     */
    public Builder clearViscosity() {
      viscosity.clear();
      return this;
    }

    /**
     * Makes the component.
     *
     * @return the component
     * @throws IllegalStateException if air-fuel ratio, density or thermal expansion was not stated
     * @throws IllegalArgumentException if there are fewer than two viscosity points, two at one
     *     temperature, or one that is thicker than another at a lower temperature
     */
    public FuelComponent build() {
      return new FuelComponent(
          id,
          composition,
          stated("composition or stoichiometric ratio", stoichiometricRatio),
          stated("density", density),
          stated("thermal expansion", thermalExpansion),
          new ViscosityCurve(viscosity));
    }

    private Coefficient stated(String quantity, @Nullable Coefficient coefficient) {
      checkState(coefficient != null, "fuel component %s: %s not stated", id, quantity);
      return requireNonNull(coefficient);
    }

    private static String checkedId(String id) {
      Checks.that(
          ID.matcher(id).matches(),
          () -> Sentence.of("error.name.component-id"),
          '"' + id + '"',
          () -> Sentence.of("error.component-id"));
      return id;
    }
  }
}
