package dev.jetting.units;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a quantity type says once about itself: its name, range and units. It checks, reads and
 * prints canonical numbers; the type wraps them.
 */
record Kind(String name, Range range, List<Unit> units, boolean readsFractions) {

  static Kind of(String name, Range range, Unit canonical, Unit... others) {
    return new Kind(
        name, range, Stream.concat(Stream.of(canonical), Stream.of(others)).toList(), false);
  }

  Kind readingFractions() {
    return new Kind(name, range, units, true);
  }

  Unit canonicalUnit() {
    return units.get(0);
  }

  /** Returns the canonical number, without minus zero. */
  double check(double canonical) {
    if (!range.contains(canonical)) {
      throw outOfRange(canonical, canonicalUnit());
    }
    return canonical + 0.0;
  }

  /** Returns the canonical number of a number in some unit. */
  double check(double given, Unit unit) {
    double canonical = unit.toCanonical(given);
    if (!range.contains(canonical)) {
      throw outOfRange(given, unit);
    }
    return canonical + 0.0;
  }

  /** Returns the canonical number of a text such as {@code 1013.25 hPa}. */
  double parse(String text) {
    return parse(Objects.requireNonNull(text, "text"), text);
  }

  /** Reads the first text, a respelling of the second. Errors quote the second. */
  double parse(String respelled, String text) {
    NumberText number = NumberText.at(respelled, readsFractions);
    if (number != null) {
      for (Unit unit : units) {
        if (unit.symbols().contains(number.rest())) {
          if (Double.isInfinite(number.value())) {
            // Nobody wrote "Infinity": quote what was.
            throw QuantityException.refused(named(), text, range.describeIn(unit));
          }
          return check(number.value(), unit);
        }
      }
    }
    throw QuantityException.unreadable(named(), text, forms());
  }

  String format(double canonical) {
    return Text.withUnit(Text.number(canonical), canonicalUnit().symbol());
  }

  private QuantityException outOfRange(double value, Unit unit) {
    return QuantityException.outOfRange(named(), value, unit.symbol(), range.describeIn(unit));
  }

  private Sentence named() {
    return Sentence.name(name);
  }

  private Sentence forms() {
    List<String> symbols = units.stream().flatMap(unit -> unit.symbols().stream()).toList();
    List<String> named = symbols.stream().filter(symbol -> !symbol.isEmpty()).toList();
    if (readsFractions) {
      return form(
              named,
              symbols,
              "error.fraction",
              "error.fraction.with",
              "error.fraction.alone-or-with")
          .with("samples", List.of("1.75", "3/4", "1 3/4", "1¾"));
    }
    return form(
        named, symbols, "error.decimal", "error.decimal.with", "error.decimal.alone-or-with");
  }

  private static Sentence form(
      List<String> named, List<String> symbols, String alone, String with, String aloneOrWith) {
    return named.isEmpty()
        ? Sentence.of(alone)
        : Sentence.of(symbols.contains("") ? aloneOrWith : with).with("units", named);
  }
}
