package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Conversions between units of one quantity that are a power of ten apart, and those that are not.
 */
class ConversionProperties {

  /** Large units beside small ones: 1 large is 10^places small. */
  record DecimalPair<Q>(
      DoubleFunction<Q> large,
      ToDoubleFunction<Q> inLarge,
      DoubleFunction<Q> small,
      ToDoubleFunction<Q> inSmall,
      int places) {}

  /** A unit and its way back. */
  record There<Q>(DoubleFunction<Q> of, ToDoubleFunction<Q> back) {}

  private static final List<DecimalPair<?>> DECIMAL_PAIRS =
      List.of(
          new DecimalPair<>(
              JetBore::ofMillimetres,
              JetBore::millimetres,
              JetBore::ofHundredths,
              JetBore::hundredths,
              2),
          new DecimalPair<>(
              Cutaway::ofMillimetres, Cutaway::millimetres, Cutaway::ofTenths, Cutaway::tenths, 1),
          new DecimalPair<>(
              ThrottleOpening::ofShare,
              ThrottleOpening::share,
              ThrottleOpening::ofPercent,
              ThrottleOpening::percent,
              2),
          new DecimalPair<>(
              RelativeHumidity::ofShare,
              RelativeHumidity::share,
              RelativeHumidity::ofPercent,
              RelativeHumidity::percent,
              2),
          new DecimalPair<>(
              Probability::of, Probability::value, Probability::ofPercent, Probability::percent, 2),
          new DecimalPair<>(
              Pressure::ofHectopascals,
              Pressure::hectopascals,
              Pressure::ofPascals,
              Pressure::pascals,
              2),
          new DecimalPair<>(
              Pressure::ofMillibars,
              Pressure::millibars,
              Pressure::ofPascals,
              Pressure::pascals,
              2),
          new DecimalPair<>(
              DynamicViscosity::ofPascalSeconds,
              DynamicViscosity::pascalSeconds,
              DynamicViscosity::ofMillipascalSeconds,
              DynamicViscosity::millipascalSeconds,
              3),
          new DecimalPair<>(
              MassFlow::ofKilogramsPerSecond,
              MassFlow::kilogramsPerSecond,
              MassFlow::ofGramsPerSecond,
              MassFlow::gramsPerSecond,
              3));

  private static final List<There<?>> UNITS =
      List.of(
          new There<>(Pressure::ofInchesOfMercury, Pressure::inchesOfMercury),
          new There<>(Pressure::ofMillimetresOfMercury, Pressure::millimetresOfMercury),
          new There<>(Altitude::ofFeet, Altitude::feet),
          new There<>(MassFlow::ofKilogramsPerHour, MassFlow::kilogramsPerHour),
          new There<>(
              VolumeFlow::ofCubicCentimetresPerMinute, VolumeFlow::cubicCentimetresPerMinute),
          new There<>(
              TemperatureDifference::ofFahrenheitDegrees, TemperatureDifference::fahrenheitDegrees),
          new There<>(
              FuelConsumption::ofMilesPerImperialGallon, FuelConsumption::milesPerImperialGallon),
          new There<>(FuelConsumption::ofMilesPerUsGallon, FuelConsumption::milesPerUsGallon),
          new There<>(Power::ofMetricHorsepower, Power::metricHorsepower),
          new There<>(Power::ofMechanicalHorsepower, Power::mechanicalHorsepower),
          new There<>(PremixRatio::ofOilPercent, PremixRatio::oilPercent));

  @Provide
  Arbitrary<DecimalPair<?>> decimalPairs() {
    return Arbitraries.of(DECIMAL_PAIRS);
  }

  @Provide
  Arbitrary<There<?>> units() {
    return Arbitraries.of(UNITS);
  }

  /** Decimals of up to fifteen digits above 1e-6 and up to 1, which all of the pairs allow. */
  @Provide
  Arbitrary<BigDecimal> decimals() {
    return Combinators.combine(
            Arbitraries.longs().between(1, 999_999_999_999_999L),
            Arbitraries.integers().between(0, 20))
        .as(BigDecimal::valueOf)
        .filter(d -> d.compareTo(BigDecimal.ONE) <= 0 && d.doubleValue() > 1e-6);
  }

  @Property
  <Q> void decimalUnits_giveTheEqualValue(
      @ForAll("decimalPairs") DecimalPair<Q> pair, @ForAll("decimals") BigDecimal decimal) {
    double inSmall = decimal.movePointRight(pair.places()).doubleValue();

    Q large = pair.large().apply(decimal.doubleValue());
    Q small = pair.small().apply(inSmall);

    assertThat(large).isEqualTo(small);
    assertThat(pair.inSmall().applyAsDouble(large)).isEqualTo(inSmall);
    assertThat(pair.inLarge().applyAsDouble(small)).isEqualTo(decimal.doubleValue());
  }

  @Property
  void celsius_comesBackAsWritten(@ForAll("decimals") BigDecimal decimal) {
    double celsius = decimal.setScale(9, RoundingMode.DOWN).doubleValue();

    assertThat(Temperature.ofCelsius(celsius).celsius()).isEqualTo(celsius);
  }

  /** Two roundings, of 2^-53 each way, and one more each for numbers too long to be decimals. */
  @Property
  <Q> void units_comeBackWithinFourRoundings(
      @ForAll("units") There<Q> unit, @ForAll("any") double x) {
    assertThat(unit.back().applyAsDouble(unit.of().apply(x))).isCloseTo(x, within(4 * Math.ulp(x)));
  }

  @Provide
  Arbitrary<Double> any() {
    return Arbitraries.longs()
        .between(Double.doubleToLongBits(0.1), Double.doubleToLongBits(100))
        .map(Double::longBitsToDouble);
  }
}
