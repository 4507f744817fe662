package dev.jetting.units;

import dev.jetting.units.number.Decimals;
import java.util.HexFormat;

/** Pieces of text that printing, parsing and messages share. */
final class Text {
  private static final int LONGEST_QUOTE = 60;

  private Text() {}

  static String number(double value) {
    return Double.isFinite(value) ? Decimals.shortest(value) : Double.toString(value);
  }

  static String withUnit(String number, String symbol) {
    boolean attached = symbol.isEmpty() || symbol.startsWith(":");
    return attached ? number + symbol : number + " " + symbol;
  }

  /** Text from outside, safe to show on one line: shortened, control characters escaped. */
  static String quote(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .limit(LONGEST_QUOTE)
        .forEach(
            c -> {
              if (Character.isISOControl(c)) {
                quoted.append("\\u").append(HexFormat.of().toHexDigits((char) c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    if (text.codePointCount(0, text.length()) > LONGEST_QUOTE) {
      quoted.append('…');
    }
    return quoted.append('"').toString();
  }
}
