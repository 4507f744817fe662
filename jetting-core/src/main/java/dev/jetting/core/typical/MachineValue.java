package dev.jetting.core.typical;

import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.number.Decimals;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A value of a machine that few riders know, so a typical machine assumes it. It has its place in a
 * setup, how far a guess may be off, and how to measure it.
 *
 * <p>Not for what every rider knows and a tuner changes: jets, needle jet, clip, screw, slide.
 */
@SuppressWarnings("ImmutableEnumChecker") // records of immutable parts
public enum MachineValue {
  /** Speed at full throttle on the road. */
  PEAK_SPEED(
      "peak speed",
      "rpm",
      relative(0.12, "engines of one displacement and tune differ as much"),
      "Read a tachometer at full throttle in top gear on level ground.",
      Lenses.PEAK_SPEED),
  /** Speed at closed throttle. */
  IDLE_SPEED(
      "idle speed",
      "rpm",
      relative(0.15, "set by ear"),
      "Read a tachometer on the warm engine.",
      Lenses.IDLE_SPEED),
  /** Delivery ratio at the speed of full throttle. */
  DELIVERY_AT_PEAK(
      "delivery ratio at peak speed",
      "1",
      relative(0.12, "ports and exhausts differ as much"),
      "A flow meter on the intake, or the fuel used in a minute of full throttle, times λ.",
      Lenses.DELIVERY_AT_PEAK),
  /** Delivery ratio at idle speed, throttle open. */
  DELIVERY_AT_IDLE(
      "delivery ratio at idle speed",
      "1",
      relative(0.15, "ports and exhausts differ as much"),
      "A flow meter on the intake.",
      Lenses.DELIVERY_AT_IDLE),
  /** What opens the inlet, where nobody stated it. */
  INLET_KIND(
      "kind of the inlet",
      "1",
      absolute(1, "1", "from a reed valve at −1 to a piston port at 1"),
      "Look: a carburettor on the cylinder's wall, on the crankcase, or before petals.",
      Lenses.INLET_KIND),
  /** When the inlet opens. Nothing to a reed, which opens by itself. */
  INLET_OPENS(
      "opening of the inlet",
      "°",
      absolute(6, "°", "a port higher or lower by a millimetre"),
      "Turn the crankshaft by a degree disc: degrees before top dead centre.",
      Lenses.INLET_OPENS),
  /** When the inlet shuts; with a piston port as late as it opens early. */
  INLET_CLOSES(
      "closing of the inlet",
      "°",
      absolute(6, "°", "an edge of the disc off by some degrees"),
      "Turn the crankshaft by a degree disc: degrees after top dead centre.",
      Lenses.INLET_CLOSES),
  /** Lift of the closed slide on its stop. */
  IDLE_LIFT(
      "idle lift",
      "mm",
      relative(0.1, "the stop is set by ear until the engine idles, which leaves little choice"),
      "Push drill shanks under the closed slide on the engine side.",
      Lenses.IDLE_LIFT),
  /** Length over which needle and needle jet face each other. */
  NEEDLE_JET_LENGTH(
      "length of the needle jet's bore",
      "mm",
      relative(0.25, "makers differ as much"),
      "Depth of the narrow bore, by calliper or a stepped wire.",
      Lenses.NEEDLE_JET_LENGTH),
  /** Height of the needle jet's mouth over the fuel. */
  NEEDLE_JET_HEAD(
      "height of the needle jet's mouth over the fuel",
      "mm",
      relative(0.25, "makers differ as much"),
      "A clear hose on the drain, held beside the carburettor, shows the fuel; calliper to the"
          + " mouth.",
      Lenses.NEEDLE_JET_HEAD),
  /** Area that a turn of the pilot screw opens. */
  AREA_PER_TURN(
      "area of the pilot screw a turn",
      "mm²",
      relative(0.25, "cones of screws differ as much"),
      "Time a syringe of petrol under a fixed head at 1 and at 2 turns, against a jet of known"
          + " bore.",
      Lenses.AREA_PER_TURN),
  /** Fixed area of the pilot circuit: the air bleed, or with an air screw the outlet. */
  FIXED_AREA(
      "fixed passage of the pilot circuit",
      "mm²",
      relative(0.25, "makers differ as much"),
      "The thickest drill shank that goes in, by hand.",
      Lenses.FIXED_AREA),
  /** Area of the progression hole. */
  PROGRESSION_HOLE(
      "area of the progression hole",
      "mm²",
      relative(0.3, "makers differ as much"),
      "The thickest drill shank that goes in, by hand; add up where there are several.",
      Lenses.PROGRESSION_HOLE),
  /** Lift above idle at which the progression hole is fully uncovered. */
  UNCOVERED_AT(
      "lift that uncovers the progression hole",
      "mm",
      relative(0.3, "makers differ as much"),
      "Raise the slide on drill shanks until the hole shows in full; take the idle lift off.",
      Lenses.UNCOVERED_AT),
  /** Height of the pilot outlet over the fuel. */
  PILOT_HEAD(
      "height of the pilot outlet over the fuel",
      "mm",
      absolute(2, "mm", "the level in the chamber differs as much"),
      "As for the needle jet's mouth, to the pilot outlet.",
      Lenses.PILOT_HEAD),
  /** Diameter of the needle above its tapers. */
  NEEDLE_CYLINDER(
      "diameter of the needle",
      "mm",
      absolute(0.015, "mm", "needles for one needle jet are sold over some hundredths"),
      "Micrometer on the straight part.",
      Lenses.NEEDLE_CYLINDER),
  /** Where the first taper of the needle starts. */
  TAPER_START(
      "start of the needle's taper",
      "mm",
      relative(0.2, "needles differ as much"),
      "Hang the needle in the slide, clip in the top groove, slide shut; calliper from the needle"
          + " jet's bore to where a micrometer first reads less.",
      Lenses.TAPER_START),
  /** Loss of diameter by length of the first taper. */
  TAPER_RATE(
      "rate of the needle's taper",
      "mm/mm",
      relative(0.15, "needles differ as much"),
      "Micrometer at two places 10 mm apart; the difference by 10.",
      Lenses.TAPER_RATE),
  /** Distance between two grooves of the needle. */
  GROOVE_PITCH(
      "distance between the needle's grooves",
      "mm",
      relative(0.15, "needles differ as much"),
      "Calliper over all grooves, by their number less one.",
      Lenses.GROOVE_PITCH),
  /** Effective area of the filter. */
  FILTER_AREA(
      "effective area of the filter",
      "mm²",
      relative(0.5, "from a paper in a narrow box to an oiled sponge"),
      "A water column between box and carburettor at full throttle; the drop and the air give the"
          + " area.",
      Lenses.FILTER_AREA),
  /** Share of ethanol in the fuel, by volume. */
  ETHANOL(
      "share of ethanol in the fuel",
      "1",
      absolute(0.03, "1", "pumps sell up to twice as much"),
      "Shake petrol with a little water in a measuring glass: the water grows by the ethanol.",
      Lenses.ETHANOL),
  /** Oil by petrol in the premix. */
  OIL_SHARE(
      "oil by petrol",
      "1",
      absolute(0.005, "1", "mixed by eye"),
      "Mix it anew by measuring glass.",
      Lenses.OIL_SHARE),
  /** By how much the fuel in the float chamber is warmer than the air. */
  FUEL_WARMTH(
      "fuel warmer than the air by",
      "K",
      absolute(10, "K", "an engine warms its float chamber on a long climb"),
      "A thermometer with a thin wire in the overflow of the float chamber, after ten minutes.",
      Lenses.FUEL_WARMTH),
  /** Relative humidity of the air. */
  HUMIDITY(
      "relative humidity",
      "1",
      absolute(0.25, "1", "from a dry to a wet day"),
      "A hygrometer, or the weather service.",
      Lenses.HUMIDITY);

  /** So often a guess is halved until a setup may have it. */
  private static final int MOST_TRIES = 8;

  private final String text;
  private final String unit;
  private final Plausible error;
  private final String measuring;
  private final Lens lens;

  MachineValue(String text, String unit, Plausible error, String measuring, Lens lens) {
    this.text = text;
    this.unit = unit;
    this.error = error;
    this.measuring = measuring;
    this.lens = lens;
  }

  /** How far a guess may be off: a share of the value, or a number in its unit. */
  private record Plausible(Coefficient size, boolean isShare) {}

  private static Plausible relative(double share, String why) {
    return new Plausible(Coefficient.assumed(share, "1", why + "; not measured"), true);
  }

  private static Plausible absolute(double size, String unit, String why) {
    return new Plausible(Coefficient.assumed(size, unit, why + "; not measured"), false);
  }

  /** {@return the unit in which the value is given, {@code "1"} for a plain number} */
  public String unit() {
    return unit;
  }

  /** {@return how a workshop measures it, in a sentence} */
  public String measuring() {
    return measuring;
  }

  /** {@return whether {@link #error()} is a share of the value rather than in its unit} */
  public boolean errorIsShare() {
    return error.isShare;
  }

  /** {@return the standard deviation of a guess: a share of the value, or in its unit} */
  public Coefficient error() {
    return error.size;
  }

  /**
   * The value in a setup.
   *
   * @param setup the setup
   * @return the value in {@link #unit()}; empty where the setup has none, such as the filter of an
   *     open mouth
   */
  public OptionalDouble in(Setup setup) {
    return lens.read(setup);
  }

  /**
   * A setup with another value.
   *
   * @param setup the setup; it has this value
   * @param value the other value in {@link #unit()}
   * @return the changed setup
   * @throws IllegalArgumentException if the setup has no such value, or the other is out of range
   */
  public Setup change(Setup setup, double value) {
    if (in(setup).isEmpty()) {
      throw new IllegalArgumentException(
          text
              + " "
              + Decimals.shortest(value)
              + (unit.equals("1") ? "" : " " + unit)
              + ": this machine has none");
    }
    return lens.write(setup, value);
  }

  /**
   * A setup in which a guess of this value was off.
   *
   * @param setup the setup; it has this value
   * @param deviations by how many standard deviations, below zero for a smaller value
   * @return the changed setup, with the value held where it keeps its meaning and, at the end of
   *     what a setup may be, less far off
   */
  Optional<Setup> off(Setup setup, double deviations) {
    OptionalDouble value = in(setup);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      double z = StrictMath.scalb(deviations, -tries) * error.size.value();
      double other =
          error.isShare ? value.getAsDouble() * StrictMath.exp(z) : value.getAsDouble() + z;
      try {
        return Optional.of(lens.write(setup, lens.held(setup, other)));
      } catch (IllegalArgumentException e) {
        // No machine has it: half as far off.
      }
    }
    return Optional.of(setup);
  }

  /** {@return the value in plain words} */
  @Override
  public String toString() {
    return text;
  }
}
