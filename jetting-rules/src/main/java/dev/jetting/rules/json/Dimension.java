package dev.jetting.rules.json;

import dev.jetting.rules.Measure;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.Quantity;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The quantities that measures are numbers of: how a threshold is read, and how one is shown. */
@SuppressWarnings("ImmutableEnumChecker") // its functions have no state
enum Dimension {
  JET_BORE(JetBore.class, "mm", 2, JetBore::millimetres),
  DIAMETER(Diameter.class, "mm", 3, Diameter::millimetres),
  LENGTH(Length.class, "mm", 2, Length::millimetres),
  CUTAWAY(Cutaway.class, "mm", 2, Cutaway::millimetres),
  AREA(Area.class, "mm²", 2, Area::squareMillimetres),
  TURNS(ScrewTurns.class, "turns", 2, ScrewTurns::turns),
  DISPLACEMENT(Displacement.class, "cm³", 0, Displacement::cubicCentimetres),
  SPEED(EngineSpeed.class, "rpm", 0, EngineSpeed::rpm),
  LAMBDA(Lambda.class, "1", 2, Lambda::value),
  AIR_FUEL_RATIO(AirFuelRatio.class, "1", 2, AirFuelRatio::value),
  RISK(Probability.class, Measure.LEAN_RISK, 3, Probability::value),
  PRESSURE(Pressure.class, "Pa", 0, Pressure::pascals),
  TEMPERATURE(Temperature.class, "K", 1, Temperature::kelvin),
  HUMIDITY(RelativeHumidity.class, Measure.SHARE, 2, RelativeHumidity::share),
  DENSITY(Density.class, "kg/m³", 3, Density::kilogramsPerCubicMetre),
  VISCOSITY(DynamicViscosity.class, "mPa·s", 3, DynamicViscosity::millipascalSeconds),
  OIL(PremixRatio.class, Measure.SHARE, 3, PremixRatio::oilShareOfPetrol),
  MASS_FLOW(MassFlow.class, "g/s", 3, MassFlow::gramsPerSecond),
  GROOVES("error.name.grooves", "groove", 0, false),
  COUNT("error.name.count", "1", 0, false),
  SHARE("error.name.share", Measure.SHARE, 3, true),
  RATIO("error.name.ratio", "1", 3, true);

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,15}(\\.[0-9]{1,15})?");
  private static final Pattern PERCENT = Pattern.compile(" ?%$");

  private final @Nullable Class<?> type;
  private final Sentence allowed;
  private final String unit;
  private final int decimals;
  private final ToDoubleFunction<String> reader;

  <Q extends Quantity<Q>> Dimension(
      Class<Q> type, String unit, int decimals, ToDoubleFunction<Q> number) {
    this.type = type;
    this.allowed = Quantities.allowed(type);
    this.unit = unit;
    this.decimals = decimals;
    this.reader = text -> number.applyAsDouble(Quantities.parse(type, text));
  }

  Dimension(String quantity, String unit, int decimals, boolean percents) {
    Sentence form =
        percents
            ? Sentence.of("error.decimal.alone-or-with").with("units", "%")
            : Sentence.of("error.a-number");
    this.type = null;
    this.allowed =
        Sentence.of("error.quantity-form").with("what", Sentence.of(quantity)).with("form", form);
    this.unit = unit;
    this.decimals = decimals;
    this.reader = text -> bare(Sentence.of(quantity), text, form, percents);
  }

  private static double bare(Sentence quantity, String text, Sentence form, boolean percents) {
    boolean percent = percents && text.endsWith("%");
    String number = percent ? PERCENT.matcher(text).replaceFirst("") : text;
    if (!NUMBER.matcher(number).matches()) {
      throw InvalidValueException.worded(
          Sentence.of("error.unreadable")
              .with("what", Sentence.value(quantity, Quote.quoted(text))),
          form);
    }
    return Double.parseDouble(number) / (percent ? 100 : 1);
  }

  /** The type of the quantity; empty for a plain number. */
  Optional<Class<?>> type() {
    return Optional.ofNullable(type);
  }

  /** The quantity and how it is written, for people. */
  Sentence allowed() {
    return allowed;
  }

  String unit() {
    return unit;
  }

  /**
   * The number that a text states.
   *
   * @throws IllegalArgumentException if it states none of this dimension
   */
  double read(String text) {
    return reader.applyAsDouble(text);
  }

  /** Whether a text states a number of this dimension. */
  boolean reads(String text) {
    try {
      return Double.isFinite(read(text));
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  Measure measure(double number) {
    return new Measure(number, unit);
  }

  /** The number as a message shows it. */
  String shown(double number) {
    return value(number).text();
  }

  /** The number as a value of a message. */
  Argument value(double number) {
    return switch (this) {
      case RISK, SHARE, HUMIDITY, OIL -> Argument.fixed(number * 100, "%", 1);
      case TEMPERATURE -> Argument.fixed(number - 273.15, "°C", decimals);
      default -> Argument.fixed(number, unit, decimals);
    };
  }

  /** Why numbers of two dimensions cannot be held against each other; empty if they can. */
  Optional<Sentence> differsFrom(Dimension other) {
    boolean alike = this == other || (unit.equals(other.unit) && !unit.equals("1"));
    boolean bare = unit.equals("1") || this == RISK;
    return alike
        ? Optional.empty()
        : Optional.of(bare ? allowed : Sentence.of("error.measure-in").with("unit", unit));
  }
}
