package dev.jetting.rules.json;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * Quantities of one kind in one unit, in JSON.
 *
 * @param unit the unit of all
 * @param values the numbers, in the order of the openings
 */
record Column(String unit, List<Double> values) {

  static <P> Column of(List<P> points, String unit, ToDoubleFunction<P> number) {
    return new Column(unit, numbers(points, number));
  }

  static <P> List<Double> numbers(List<P> points, ToDoubleFunction<P> number) {
    return points.stream().mapToDouble(number).boxed().toList();
  }

  /** Reads one of them, which is in the unit that it is written in and in no other. */
  <Q> Q at(int i, String allowed, DoubleFunction<Q> read) {
    if (!unit.equals(allowed)) {
      throw InvalidValueException.worded(
          Sentence.of("error.unit-of-column").with("unit", Quote.quoted(unit)),
          Sentence.plain(Quote.quoted(allowed)));
    }
    return read.apply(values.get(i));
  }
}
