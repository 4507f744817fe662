package dev.jetting.units;

/**
 * Fuel used over a distance. More is thirstier, in whatever unit it is given: more miles per gallon
 * is less consumption.
 *
 * <p>Kept in litres on 100 km, from 0.01 to 10000.
 *
 * <p>Not fuel used in a time, which is a {@link VolumeFlow} or a {@link MassFlow}. The mile is
 * 1.609344 km, the imperial gallon 4.54609 L and the US gallon 3.785411784 L, all exactly.
 */
public final class FuelConsumption extends Scalar<FuelConsumption> {
  private static final Unit MILE_PER_IMPERIAL_GALLON =
      Unit.of("mpg (imperial)", "mpg imp").times("454.609").over("1.609344").inverted();
  private static final Unit MILE_PER_US_GALLON =
      Unit.of("mpg (US)", "mpg US").times("378.5411784").over("1.609344").inverted();
  private static final Kind KIND =
      Kind.of(
          "fuel consumption",
          Range.fromTo(0.01, 10_000),
          Unit.of("L/100 km", "l/100 km", "L/100km", "l/100km"),
          MILE_PER_IMPERIAL_GALLON,
          MILE_PER_US_GALLON);

  private FuelConsumption(double litres) {
    super(litres);
  }

  /**
   * Creates a fuel consumption from litres on 100 km.
   *
   * @param litres litres on 100 km, from 0.01 to 10000
   * @return the fuel consumption
   * @throws QuantityException if {@code litres} is not finite or out of range
   */
  public static FuelConsumption ofLitresPer100Kilometres(double litres) {
    return new FuelConsumption(KIND.check(litres));
  }

  /**
   * Creates a fuel consumption from miles per imperial gallon.
   *
   * @param miles miles per imperial gallon, from about 0.02825 to about 28248
   * @return the fuel consumption
   * @throws QuantityException if {@code miles} is not finite or out of range
   */
  public static FuelConsumption ofMilesPerImperialGallon(double miles) {
    return new FuelConsumption(KIND.check(miles, MILE_PER_IMPERIAL_GALLON));
  }

  /**
   * Creates a fuel consumption from miles per US gallon.
   *
   * @param miles miles per US gallon, from about 0.02352 to about 23521
   * @return the fuel consumption
   * @throws QuantityException if {@code miles} is not finite or out of range
   */
  public static FuelConsumption ofMilesPerUsGallon(double miles) {
    return new FuelConsumption(KIND.check(miles, MILE_PER_US_GALLON));
  }

  /**
   * Reads a fuel consumption: litres on 100 km or miles per a stated gallon.
   *
   * @param text such as {@code 5.2 L/100 km}, {@code 54.3 mpg (imperial)}, {@code 45.2 mpg (US)},
   *     {@code 54.3 mpg imp} or {@code 45.2 mpg US}; {@code mpg} alone is refused, because it does
   *     not say whose gallon
   * @return the fuel consumption
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static FuelConsumption parse(String text) {
    return new FuelConsumption(KIND.parse(text));
  }

  /**
   * Returns this fuel consumption in litres on 100 km.
   *
   * @return litres on 100 km
   */
  public double litresPer100Kilometres() {
    return canonical;
  }

  /**
   * Returns this fuel consumption in miles per imperial gallon.
   *
   * @return miles per imperial gallon
   */
  public double milesPerImperialGallon() {
    return MILE_PER_IMPERIAL_GALLON.fromCanonical(canonical);
  }

  /**
   * Returns this fuel consumption in miles per US gallon.
   *
   * @return miles per US gallon
   */
  public double milesPerUsGallon() {
    return MILE_PER_US_GALLON.fromCanonical(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
