package dev.jetting.examples.quickstart;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Colours the words that already say how bad something is. Any kind of colour vision distinguishes
 * vermilion from sky blue (palette of Okabe and Ito, from memory), and both from bold.
 */
final class Colour {

  private static final Pattern WORD = Pattern.compile("\\b(DANGER|LEAN|WARNING|RICH)\\b");

  private static final String VERMILION = "\u001b[1;38;5;202m";
  private static final String SKY_BLUE = "\u001b[38;5;74m";
  private static final String BOLD = "\u001b[1m";
  private static final String OFF = "\u001b[0m";

  private static final Map<String, String> BY_WORD =
      Map.of("DANGER", VERMILION, "LEAN", VERMILION, "WARNING", BOLD, "RICH", SKY_BLUE);

  private Colour() {}

  static String of(String text) {
    return WORD.matcher(text)
        .replaceAll(word -> BY_WORD.getOrDefault(word.group(), "") + word.group() + OFF);
  }
}
