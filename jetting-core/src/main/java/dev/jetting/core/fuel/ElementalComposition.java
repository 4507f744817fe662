package dev.jetting.core.fuel;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;

/**
 * What a fuel is made of, as numbers of atoms. Only their ratios matter to the air need, so petrol,
 * which has no molecule of its own, is written for one carbon atom: C 1, H 1.87.
 *
 * <p>Not for fuels with nitrogen or sulphur in amounts that count, such as nitromethane.
 *
 * @param carbon atoms of carbon, 0 to 1000
 * @param hydrogen atoms of hydrogen, 0 to 1000
 * @param oxygen atoms of oxygen, 0 to 1000; fewer than would burn the rest
 */
public record ElementalComposition(double carbon, double hydrogen, double oxygen) {

  private static final double CARBON_MASS = 12.011;
  private static final double HYDROGEN_MASS = 1.008;
  private static final double OXYGEN_MASS = 15.999;

  /** Molecules of nitrogen, argon and the rest in the air for one of oxygen; Heywood ch. 3. */
  private static final double NITROGEN_PER_OXYGEN = 3.773;

  /** Molar mass of that rest, g/mol; Heywood ch. 3. */
  private static final double NITROGEN_MASS = 28.16;

  private static final double AIR_PER_MOLE_OF_OXYGEN =
      2 * OXYGEN_MASS + NITROGEN_PER_OXYGEN * NITROGEN_MASS;

  /**
   * Checks the numbers of atoms.
   *
   * @param carbon atoms of carbon
   * @param hydrogen atoms of hydrogen
   * @param oxygen atoms of oxygen
   * @throws IllegalArgumentException if one is out of range, or nothing is left to burn
   */
  public ElementalComposition {
    carbon = atoms("carbon", carbon);
    hydrogen = atoms("hydrogen", hydrogen);
    oxygen = atoms("oxygen", oxygen);
    double need = oxygenNeed(carbon, hydrogen, oxygen);
    Checks.that(
        need > 0,
        () -> Sentence.of("error.name.oxygen"),
        need,
        () -> Sentence.of("error.above").with("low", 0));
  }

  /**
   * A hydrocarbon.
   *
   * @param hydrogenToCarbon atoms of hydrogen for one of carbon, 0 to 1000
   * @return the composition for one atom of carbon
   * @throws IllegalArgumentException if the ratio is out of range
   */
  public static ElementalComposition hydrocarbon(double hydrogenToCarbon) {
    return new ElementalComposition(1, hydrogenToCarbon, 0);
  }

  /**
   * A composition from shares of the mass, as an elemental analysis gives them; only their ratios
   * count.
   *
   * @param carbon mass of carbon, 0 or above
   * @param hydrogen mass of hydrogen, 0 or above
   * @param oxygen mass of oxygen, 0 or above
   * @return the composition
   * @throws IllegalArgumentException if a mass is negative or not finite, or nothing is left to
   *     burn
   */
  public static ElementalComposition ofMasses(double carbon, double hydrogen, double oxygen) {
    return new ElementalComposition(
        carbon / CARBON_MASS, hydrogen / HYDROGEN_MASS, oxygen / OXYGEN_MASS);
  }

  /** {@return mass of one formula unit, g/mol} */
  public double molarMass() {
    return carbon * CARBON_MASS + hydrogen * HYDROGEN_MASS + oxygen * OXYGEN_MASS;
  }

  /** {@return molecules of oxygen that burn one formula unit to CO₂ and H₂O, above 0} */
  public double oxygenMolecules() {
    return oxygenNeed(carbon, hydrogen, oxygen);
  }

  /**
   * The air that burns the fuel completely: 138.25 g of air for a mole of oxygen, times {@link
   * #oxygenMolecules}, over {@link #molarMass}. Source: Heywood, Internal Combustion Engine
   * Fundamentals, eq. 3.6 (from memory), 34.56 (4 + y)/(12.011 + 1.008 y) for CHy, here for
   * oxygenates too.
   *
   * @return kg of air for a kg of fuel
   */
  public AirFuelRatio stoichiometricRatio() {
    return AirFuelRatio.of(AIR_PER_MOLE_OF_OXYGEN * oxygenMolecules() / molarMass());
  }

  private static double atoms(String element, double number) {
    return Checks.within(
        () -> Sentence.of("error.name.atoms").with("element", element), number, 0, 1000);
  }

  private static double oxygenNeed(double carbon, double hydrogen, double oxygen) {
    return carbon + hydrogen / 4 - oxygen / 2;
  }

  /** {@return the atoms, such as {@code C1 H1.87}} */
  @Override
  public String toString() {
    return "C"
        + Decimals.shortest(carbon)
        + " H"
        + Decimals.shortest(hydrogen)
        + (oxygen == 0 ? "" : " O" + Decimals.shortest(oxygen));
  }
}
