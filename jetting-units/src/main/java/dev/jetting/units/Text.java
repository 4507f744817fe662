package dev.jetting.units;

import dev.jetting.units.number.Decimals;

/** Pieces of text that printing, parsing and messages share. */
final class Text {
  private Text() {}

  static String number(double value) {
    return Double.isFinite(value) ? Decimals.shortest(value) : Double.toString(value);
  }

  static String withUnit(String number, String symbol) {
    boolean attached = symbol.isEmpty() || symbol.startsWith(":");
    return attached ? number + symbol : number + " " + symbol;
  }
}
