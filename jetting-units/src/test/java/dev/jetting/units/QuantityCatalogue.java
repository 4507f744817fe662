package dev.jetting.units;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Every quantity, described once. A new quantity gets all laws by a line in {@link #ALL}. */
final class QuantityCatalogue {
  static final List<Described<?>> ALL =
      List.of(
          fromTo(
              Altitude.class, Altitude::ofMetres, Altitude::metres, Altitude::parse, -5000, 80_000),
          aboveUpTo(
              AirFuelRatio.class,
              AirFuelRatio::of,
              AirFuelRatio::value,
              AirFuelRatio::parse,
              0,
              1e8),
          fromTo(
              Area.class, Area::ofSquareMillimetres, Area::squareMillimetres, Area::parse, 0, 1e6),
          counted(ClipPosition.class, clipPositions(), ClipPosition::parse),
          fromTo(
              Cutaway.class, Cutaway::ofMillimetres, Cutaway::millimetres, Cutaway::parse, 0, 50),
          aboveUpTo(
              Density.class,
              Density::ofKilogramsPerCubicMetre,
              Density::kilogramsPerCubicMetre,
              Density::parse,
              0,
              25_000),
          aboveUpTo(
              Diameter.class,
              Diameter::ofMillimetres,
              Diameter::millimetres,
              Diameter::parse,
              0,
              1000),
          aboveUpTo(
              Displacement.class,
              Displacement::ofCubicCentimetres,
              Displacement::cubicCentimetres,
              Displacement::parse,
              0,
              1e5),
          aboveUpTo(
              DynamicViscosity.class,
              DynamicViscosity::ofPascalSeconds,
              DynamicViscosity::pascalSeconds,
              DynamicViscosity::parse,
              0,
              1000),
          fromTo(
              EngineSpeed.class, EngineSpeed::ofRpm, EngineSpeed::rpm, EngineSpeed::parse, 0, 1e5),
          fromTo(
              FloatLevel.class,
              FloatLevel::ofMillimetres,
              FloatLevel::millimetres,
              FloatLevel::parse,
              0,
              200),
          fromTo(
              FuelConsumption.class,
              FuelConsumption::ofLitresPer100Kilometres,
              FuelConsumption::litresPer100Kilometres,
              FuelConsumption::parse,
              0.01,
              10_000),
          aboveUpTo(
              JetBore.class, JetBore::ofMillimetres, JetBore::millimetres, JetBore::parse, 0, 10),
          aboveUpTo(
              JetFlow.class,
              JetFlow::ofCubicCentimetresPerMinute,
              JetFlow::cubicCentimetresPerMinute,
              JetFlow::parse,
              0,
              10_000),
          aboveUpTo(
              KinematicViscosity.class,
              KinematicViscosity::ofSquareMillimetresPerSecond,
              KinematicViscosity::squareMillimetresPerSecond,
              KinematicViscosity::parse,
              0,
              1e6),
          aboveUpTo(Lambda.class, Lambda::of, Lambda::value, Lambda::parse, 0, 1e6),
          fromTo(Length.class, Length::ofMillimetres, Length::millimetres, Length::parse, 0, 1e5),
          fromTo(
              MassFlow.class,
              MassFlow::ofGramsPerSecond,
              MassFlow::gramsPerSecond,
              MassFlow::parse,
              0,
              1e6),
          fromTo(Power.class, Power::ofKilowatts, Power::kilowatts, Power::parse, 0, 1e6),
          fromTo(
                  PremixRatio.class,
                  PremixRatio::ofPetrolToOil,
                  PremixRatio::petrolToOil,
                  PremixRatio::parse,
                  1,
                  10_000)
              .orderedFromHighToLow()
              .alsoWith(PremixRatio.NO_OIL),
          fromTo(Pressure.class, Pressure::ofPascals, Pressure::pascals, Pressure::parse, 0, 1e8),
          fromTo(Probability.class, Probability::of, Probability::value, Probability::parse, 0, 1),
          fromTo(
              RelativeHumidity.class,
              RelativeHumidity::ofShare,
              RelativeHumidity::share,
              RelativeHumidity::parse,
              0,
              1),
          fromTo(ScrewTurns.class, ScrewTurns::of, ScrewTurns::turns, ScrewTurns::parse, 0, 50),
          aboveUpTo(
              Temperature.class,
              Temperature::ofKelvin,
              Temperature::kelvin,
              Temperature::parse,
              0,
              5000),
          fromTo(
              TemperatureDifference.class,
              TemperatureDifference::ofKelvin,
              TemperatureDifference::kelvin,
              TemperatureDifference::parse,
              -5000,
              5000),
          fromTo(
              ThrottleOpening.class,
              ThrottleOpening::ofShare,
              ThrottleOpening::share,
              ThrottleOpening::parse,
              0,
              1),
          fromTo(
              VolumeFlow.class,
              VolumeFlow::ofLitresPerHour,
              VolumeFlow::litresPerHour,
              VolumeFlow::parse,
              0,
              1e9));

  private QuantityCatalogue() {}

  /** A scalar whose range includes both ends. */
  static <Q extends Quantity<Q>> Described<Q> fromTo(
      Class<Q> type,
      DoubleFunction<Q> of,
      ToDoubleFunction<Q> number,
      Function<String, Q> parse,
      double low,
      double high) {
    return scalar(type, of, parse, new Numbers<>(of, number, low, low, high, 1));
  }

  /** A scalar whose range excludes its low end, which is zero. */
  static <Q extends Quantity<Q>> Described<Q> aboveUpTo(
      Class<Q> type,
      DoubleFunction<Q> of,
      ToDoubleFunction<Q> number,
      Function<String, Q> parse,
      double low,
      double high) {
    return scalar(type, of, parse, new Numbers<>(of, number, low, Math.nextUp(low), high, 1));
  }

  private static <Q extends Quantity<Q>> Described<Q> scalar(
      Class<Q> type, DoubleFunction<Q> of, Function<String, Q> parse, Numbers<Q> numbers) {
    return new Described<>(type, numbers.arbitrary().map(of::apply), parse, List.of(numbers));
  }

  /** A quantity that is not one double. */
  static <Q extends Quantity<Q>> Described<Q> counted(
      Class<Q> type, Arbitrary<Q> values, Function<String, Q> parse) {
    return new Described<>(type, values, parse, List.of());
  }

  private static Arbitrary<ClipPosition> clipPositions() {
    return Combinators.combine(Arbitraries.integers().between(1, 50), Arbitraries.of(true, false))
        .flatAs(
            (grooves, top) ->
                Arbitraries.integers()
                    .between(1, grooves)
                    .map(
                        groove ->
                            top
                                ? ClipPosition.fromTop(groove, grooves)
                                : ClipPosition.fromBottom(groove, grooves)));
  }

  /**
   * What the laws need to know of a quantity.
   *
   * @param numbers the numbers it is made of; empty if it is not one double
   */
  record Described<Q extends Quantity<Q>>(
      Class<Q> type, Arbitrary<Q> values, Function<String, Q> parse, List<Numbers<Q>> numbers) {

    Described<Q> orderedFromHighToLow() {
      return new Described<>(
          type, values, parse, numbers.stream().map(Numbers::orderedFromHighToLow).toList());
    }

    Described<Q> alsoWith(Q value) {
      return new Described<>(
          type, Arbitraries.oneOf(values, Arbitraries.just(value)), parse, numbers);
    }

    @Override
    public String toString() {
      return type.getSimpleName();
    }
  }

  /**
   * The canonical numbers of a quantity.
   *
   * @param lowEnd the low end of the range, included or not
   * @param lowest the lowest number allowed
   * @param highest the highest number allowed
   * @param order 1 if more is a greater number, -1 if it is a smaller one
   */
  record Numbers<Q extends Quantity<Q>>(
      DoubleFunction<Q> of,
      ToDoubleFunction<Q> number,
      double lowEnd,
      double lowest,
      double highest,
      int order) {

    Numbers<Q> orderedFromHighToLow() {
      return new Numbers<>(of, number, lowEnd, lowest, highest, -1);
    }

    /** Ends and their neighbours, doubles of every magnitude, and decimals as people write them. */
    Arbitrary<Double> arbitrary() {
      List<Double> ends = List.of(lowest, Math.nextUp(lowest), Math.nextDown(highest), highest);
      Arbitrary<Double> everyMagnitude =
          Arbitraries.longs()
              .between(
                  Double.doubleToLongBits(Math.max(lowest, 0.0)), Double.doubleToLongBits(highest))
              .map(Double::longBitsToDouble);
      Arbitrary<Double> decimals =
          Arbitraries.doubles().between(lowEnd, highest).ofScale(3).filter(this::allows);
      List<Arbitrary<Double>> all =
          new ArrayList<>(List.of(Arbitraries.of(ends), everyMagnitude, decimals));
      if (lowest < 0) {
        all.add(everyMagnitude.map(x -> -x).filter(this::allows));
      }
      return Arbitraries.oneOf(all);
    }

    private boolean allows(double number) {
      return number >= lowest && number <= highest;
    }

    List<Double> refused() {
      List<Double> refused =
          new ArrayList<>(
              List.of(
                  Double.NaN,
                  Double.NEGATIVE_INFINITY,
                  Double.POSITIVE_INFINITY,
                  -Double.MAX_VALUE,
                  Double.MAX_VALUE,
                  Math.nextDown(lowest),
                  Math.nextUp(highest)));
      if (lowEnd < lowest) {
        refused.add(lowEnd);
        refused.add(-lowEnd);
      }
      return refused;
    }

    boolean allowsZero() {
      return allows(0);
    }
  }
}
