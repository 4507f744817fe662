package dev.jetting.core.fuel;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.OneLine;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.RiderInput;
import dev.jetting.units.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads fuels as riders write them: {@code E5}, {@code E10 1:40}, {@code petrol, premix 50}.
 *
 * <p>For what people type only, as {@link RiderInput} is. Not for fuels of other components or of
 * stated properties.
 */
public final class FuelInput {

  private static final Pattern FUEL =
      Pattern.compile(
          "(?:e ?(\\d{1,3})|petrol|gasoline)(?:(?=[ ,/+(@])[,/+]? ?(?:\\+ |/ |with |at |@ ?)?\\(?([^)]*)\\)?)?");

  /** What stands on a pump and says nothing of its ethanol. */
  private static final String PUMP =
      "(?:super(?: plus)?|premium|regular|unleaded|pump(?: gas)?|gas"
          + "|(?:9[158]|100)(?: ?(?:ron|octane))?)";

  private static final Pattern PUMP_ALONE = Pattern.compile(PUMP + "(?: " + PUMP + ")*");

  private static final Pattern PUMP_FIRST = Pattern.compile("^" + PUMP + " (?=e ?\\d)");

  private FuelInput() {}

  /**
   * Reads a fuel.
   *
   * @param text {@code petrol} or {@code E} and the percentage of ethanol by volume, and the premix
   *     behind it, if there is any; such as {@code E5}, {@code e10 40:1} or {@code petrol with no
   *     oil}
   * @return the fuel; without oil where no premix is named
   * @throws IllegalArgumentException if it cannot be read, or is the name of a pump, as {@code
   *     super}; the message shows a sample or offers readings
   */
  public static Fuel read(String text) {
    String tidy =
        Objects.requireNonNull(text, "text")
            .replace('\u00a0', ' ')
            .toLowerCase(Locale.ROOT)
            .strip()
            .replaceAll("\\s+", " ");
    if (PUMP_ALONE.matcher(tidy).matches()) {
      throw ambiguous(text);
    }
    Matcher fuel = FUEL.matcher(PUMP_FIRST.matcher(tidy).replaceFirst(""));
    if (!fuel.matches()) {
      throw unreadable(text);
    }
    int percent = fuel.group(1) == null ? 0 : Integer.parseInt(fuel.group(1));
    if (percent > 100) {
      throw unreadable(text);
    }
    PremixRatio premix =
        fuel.group(2) == null || fuel.group(2).isEmpty()
            ? PremixRatio.NO_OIL
            : RiderInput.premix(fuel.group(2));
    return withEthanol(percent).withPremix(premix);
  }

  /** Either may come from a pump of that name, and they differ in what they need. */
  private static IllegalArgumentException ambiguous(String text) {
    return InvalidValueException.saying(
        Sentence.of("error.ambiguous")
            .with("what", Sentence.value(Sentence.of("error.name.fuel"), OneLine.quoted(text)))
            .with("readings", Sentence.or(List.of("E5", "E10"))));
  }

  private static IllegalArgumentException unreadable(String text) {
    return InvalidValueException.saying(
        Sentence.of("error.such-as")
            .with(
                "problem",
                Sentence.of("error.unreadable")
                    .with(
                        "what",
                        Sentence.value(Sentence.of("error.name.fuel"), OneLine.quoted(text))))
            .with("sample", Sentence.oneOf(List.of("E5", "E10 1:40", "petrol, premix 50"))));
  }

  private static Fuel withEthanol(int percent) {
    return switch (percent) {
      case 0 -> Fuel.PETROL;
      case 100 -> Fuel.of(FuelComponent.ETHANOL);
      default ->
          Fuel.of(
              FuelBlend.byVolume(
                  List.of(
                      new FuelShare(FuelComponent.PETROL, (100 - percent) / 100.0),
                      new FuelShare(FuelComponent.ETHANOL, percent / 100.0))));
    };
  }
}
