package dev.jetting.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * Reads quantities as riders write them: {@code #118}, {@code 3 from top}, {@code half}, {@code
 * 1-1/2 out}, {@code 68F}, {@code 1:40}; and what {@link TradeStyle} prints. The counterpart of
 * {@link TradeStyle}.
 *
 * <p>A text with two meanings throws a {@link QuantityException} that offers both, in words that
 * this class reads. Upper and lower case, spaces and typographic signs do not matter.
 *
 * <p>For what people type only. Not for stored or sent values: {@code parse} of the quantity reads
 * what {@code toString} prints, and nothing that could be meant otherwise.
 */
public final class RiderInput {

  /** A jet with a bare number is stamped in hundredths of a millimetre between these. */
  private static final double SMALLEST_JET = 20;

  private static final double LARGEST_JET = 500;

  /** A slide with a bare number is stamped in tenths of a millimetre from here on. */
  private static final double SMALLEST_SLIDE = 10;

  private static final double LARGEST_SLIDE = 200;

  /** Parts of petrol that a bare number means; below it may be percent of oil. */
  private static final double RICHEST_PREMIX = 10;

  private static final double LEANEST_PREMIX = 200;

  /** A mixture that an engine can run on lies below; above stands an air-fuel ratio. */
  private static final double LEANEST_LAMBDA = 2;

  private static final double RICHEST_LAMBDA = 0.4;

  private static final Map<String, Double> OPENINGS =
      Map.ofEntries(
          Map.entry("closed", 0.0),
          Map.entry("shut", 0.0),
          Map.entry("idle", 0.0),
          Map.entry("off", 0.0),
          Map.entry("zero", 0.0),
          Map.entry("halfway", 0.5),
          Map.entry("half way", 0.5),
          Map.entry("full", 1.0),
          Map.entry("full bore", 1.0),
          Map.entry("flat out", 1.0),
          Map.entry("pinned", 1.0),
          Map.entry("wfo", 1.0),
          Map.entry("wide open", 1.0),
          Map.entry("wot", 1.0));

  private static final Map<String, Integer> ORDINALS =
      Map.of(
          "first", 1, "second", 2, "third", 3, "fourth", 4, "fifth", 5, "sixth", 6, "seventh", 7);

  private static final Pattern GROOVE =
      Pattern.compile(
          "(?:(\\d{1,2})(?:st|nd|rd|th)?|([a-z]+))(?: groove)?(?:(?: of |/)(\\d{1,2}))?"
              + "(?: ?,? ?(?:counted )?from(?: the)? (top|bottom))?");

  /** What a tank without oil is called. */
  private static final Set<String> NO_OIL =
      Set.of("none", "straight petrol", "straight gas", "petrol only");

  /** Millilitres of oil on a litre of petrol. */
  private static final Pattern DOSE =
      Pattern.compile(
          "(\\d{1,4}(?:\\.\\d{1,3})?) ?ml ?(?:/|per|on|to) ?(?:a |1 ?)?(?:l|lit(?:re|er))");

  /** One in ten. */
  private static final Pattern ODDS = Pattern.compile("(\\d{1,6}) in (\\d{1,6})");

  /** A bare number up to here is thousands of turns, or a slip. */
  private static final double MOST_THOUSANDS = 25;

  private static final String ABOVE_SEA = " ?(?:asl|amsl|above sea level)$";

  /** What riders call a groove. */
  private static final Pattern GROOVE_WORDS =
      Pattern.compile(
          "(?<=(?:st|nd|rd|th) )clip(?= )|\\b(?:clip )?(?:notch|slot|position|pos\\.?)(?= |$)");

  /** What a rider writes behind the turns of a screw, which are always turns out. */
  private static final Pattern OUT =
      Pattern.compile(
          "(?:t|(?:(?:of )?a )?turns?|rev(?:olution)?s?|rotations?)?"
              + "(?: ?(?:out|from(?: gently)? (?:seated|closed|shut)))*");

  private RiderInput() {}

  /**
   * Reads a main jet that is stamped with its bore.
   *
   * @param text such as {@code 118}, {@code #118}, {@code main 118} or {@code 1.18 mm}
   * @return the bore
   * @throws QuantityException if it cannot be read, or could be meant in two ways
   */
  public static JetBore mainJet(String text) {
    return jet(
        "main jet",
        List.of("#118", "main 118", "1.18 mm"),
        text,
        RiderText.of(text).without("main", "mj").withoutLast("main jet", "main"));
  }

  /**
   * Reads a pilot jet that is stamped with its bore.
   *
   * @param text such as {@code 42}, {@code #42}, {@code pilot 42} or {@code 0.42 mm}
   * @return the bore
   * @throws QuantityException if it cannot be read, or could be meant in two ways
   */
  public static JetBore pilotJet(String text) {
    return jet(
        "pilot jet",
        List.of("#42", "pilot 42", "0.42 mm"),
        text,
        RiderText.of(text)
            .without("pilot", "idle", "slow", "pj")
            .withoutLast("pilot jet", "idle jet", "slow jet", "pilot", "idle", "slow"));
  }

  private static JetBore jet(String name, List<String> sample, String text, RiderText written) {
    NumberText number =
        written
            .without("jet")
            .withoutLast("jet")
            .without("#", "no.", "nr.", "no", "nr", "size")
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    switch (number.rest()) {
      case "mm" -> {
        return JetBore.ofMillimetres(value);
      }
      case "hundredths", "1/100 mm" -> {
        return JetBore.ofHundredths(value);
      }
      case "" -> {
        if (value >= SMALLEST_JET && value <= LARGEST_JET) {
          return JetBore.ofHundredths(value);
        }
        throw QuantityException.ambiguous(name, text, sizes(value));
      }
      case "cm³/min", "cm3/min", "cc/min", "ml/min" ->
          throw QuantityException.unreadableSuchAs(
              Sentence.of("error.name.by-flow").with("what", Sentence.name(name)), text, sample);
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    }
  }

  /**
   * In millimetres as it stands, in hundredths, and in thousandths, where a jet could be so big.
   */
  private static List<String> sizes(double value) {
    return DoubleStream.of(value, value / 100, value / 1000)
        .filter(mm -> mm >= SMALLEST_JET / 200 && mm <= LARGEST_JET / 100)
        .mapToObj(mm -> Text.number(Math.rint(mm * 1e6) / 1e6) + " mm")
        .toList();
  }

  /**
   * Reads a jet that is stamped with its flow.
   *
   * @param text such as {@code 118 cc/min}, {@code main 118 cm³/min} or {@code pilot 22.5 ml/min}
   * @return the flow
   * @throws QuantityException if it cannot be read or has no unit
   */
  public static JetFlow jetFlow(String text) {
    RiderText written = RiderText.of(text).without("main", "pilot").without("jet").without("#");
    return read("jet flow", List.of("118 cc/min"), text, () -> JetFlow.parse(written.spaced()));
  }

  /**
   * Reads the cutaway of a slide.
   *
   * @param text such as {@code 35}, {@code cutaway 35}, {@code 3.5 mm} or {@code 3.5mm}
   * @return the cutaway
   * @throws QuantityException if it cannot be read, or could be meant in two ways, as {@code 4}
   */
  public static Cutaway cutaway(String text) {
    String name = "cutaway";
    List<String> sample = List.of("35", "cutaway 35", "3.5 mm");
    NumberText number =
        RiderText.of(text)
            .without("cutaway", "slide")
            .withoutLast("cutaway", "slide")
            .without("#")
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    return switch (number.rest()) {
      case "mm" -> Cutaway.ofMillimetres(value);
      case "tenths", "1/10 mm" -> Cutaway.ofTenths(value);
      case "" -> {
        if (value == 0 || (value >= SMALLEST_SLIDE && value <= LARGEST_SLIDE)) {
          yield Cutaway.ofTenths(value);
        }
        throw QuantityException.ambiguous(
            name, text, List.of(Text.number(value) + " mm", Text.number(value) + " tenths"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a clip position that says how many grooves the needle has.
   *
   * @param text such as {@code clip 2 of 5 from top} or {@code 4th groove of 5 from the bottom}
   * @return the position
   * @throws QuantityException if it cannot be read, or could be meant in two ways
   */
  public static ClipPosition clip(String text) {
    return clip(text, Optional.empty());
  }

  /**
   * Reads a clip position on a needle whose grooves are known.
   *
   * @param text such as {@code 3 from top}, {@code needle 3rd groove from top}, {@code second from
   *     the bottom}, {@code middle}, {@code top} or {@code 2 of 5 from top}
   * @param grooves how many grooves the needle has, from 1 to 50
   * @return the position
   * @throws QuantityException if it cannot be read, could be meant in two ways, or counts another
   *     number of grooves
   */
  public static ClipPosition clip(String text, int grooves) {
    return clip(text, Optional.of(grooves));
  }

  private static ClipPosition clip(String text, Optional<Integer> known) {
    String name = "clip position";
    List<String> sample = List.of("3 from top", "3rd groove from top", "2 of 5 from top");
    String said =
        new RiderText(GROOVE_WORDS.matcher(RiderText.of(text).text()).replaceAll("groove"))
            .without("needle")
            .without("clip")
            .without("in", "at")
            .without("groove", "the")
            .without("#")
            .withoutLast("groove")
            .text();
    if (known.isPresent()) {
      int grooves = known.get();
      switch (said) {
        case "top", "leanest" -> {
          return ClipPosition.fromTop(1, grooves);
        }
        case "bottom", "richest" -> {
          return ClipPosition.fromBottom(1, grooves);
        }
        // The lowest groove hangs the needle highest.
        case "lowest", "highest" ->
            throw QuantityException.ambiguous(name, text, List.of("top", "bottom"));
        case "middle", "centre", "center" -> {
          if (grooves % 2 == 0) {
            throw QuantityException.ambiguous(
                name, text, List.of((grooves / 2) + " from top", (grooves / 2 + 1) + " from top"));
          }
          return ClipPosition.fromTop((grooves + 1) / 2, grooves);
        }
        default -> {
          // a groove by its number
        }
      }
    }
    Matcher matcher = GROOVE.matcher(said);
    Optional<Integer> groove =
        matcher.matches()
            ? Optional.ofNullable(
                matcher.group(1) == null
                    ? ORDINALS.get(matcher.group(2))
                    : Integer.valueOf(matcher.group(1)))
            : Optional.empty();
    if (groove.isEmpty()) {
      throw QuantityException.unreadableSuchAs(name, text, sample);
    }
    Optional<Integer> stated = Optional.ofNullable(matcher.group(3)).map(Integer::valueOf);
    int grooves =
        stated
            .or(() -> known)
            .orElseThrow(
                () ->
                    QuantityException.unreadableSuchAs(
                        Sentence.of("error.name.clip.no-grooves")
                            .with("what", Sentence.of("error.name.clip-position")),
                        text,
                        List.of("2 of 5 from top")));
    if (known.isPresent() && grooves != known.get()) {
      throw QuantityException.refused(
          name, text, Sentence.of("error.groove-of-needle").with("count", known.get()));
    }
    return counted(name, text, groove.get(), grooves, matcher.group(4));
  }

  private static ClipPosition counted(
      String name, String text, int groove, int grooves, @Nullable String end) {
    if (end == null) {
      ClipPosition fromTop = ClipPosition.fromTop(groove, grooves);
      if (fromTop.equals(ClipPosition.fromBottom(groove, grooves))) {
        return fromTop;
      }
      throw QuantityException.ambiguous(
          name,
          text,
          List.of(fromTop.toString(), ClipPosition.fromBottom(groove, grooves).toString()));
    }
    return end.equals("top")
        ? ClipPosition.fromTop(groove, grooves)
        : ClipPosition.fromBottom(groove, grooves);
  }

  /**
   * Reads how far a screw is out.
   *
   * @param text such as {@code 1-1/2 out}, {@code 1½ turns}, {@code 1.5} or {@code air screw 1 3/4
   *     turns out}
   * @return the turns
   * @throws QuantityException if it cannot be read or counts turns in
   */
  public static ScrewTurns turns(String text) {
    String name = "screw turns";
    List<String> sample = List.of("1-1/2 out", "1½ turns", "1.5");
    NumberText number =
        RiderText.of(text)
            .without("mixture", "fuel", "air", "idle", "pilot")
            .without("screw")
            .inDigits()
            .number(true)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    if (OUT.matcher(number.rest()).matches()) {
      return ScrewTurns.of(number.value());
    }
    throw switch (number.rest()) {
      case "in", "turn in", "turns in" ->
          QuantityException.refused(name, text, Sentence.of("error.turns-out"));
      default -> QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a throttle opening.
   *
   * @param text such as {@code half}, {@code WOT}, {@code 3/8 throttle}, {@code 40 %} or {@code
   *     closed throttle}
   * @return the opening
   * @throws QuantityException if it cannot be read, or could be meant in two ways, as {@code 50}
   */
  public static ThrottleOpening throttle(String text) {
    String name = "throttle opening";
    List<String> sample = List.of("half", "3/8", "40 %", "WOT", "closed");
    RiderText named = RiderText.of(text).withoutLast("throttle", "opening");
    RiderText written = named.withoutLast("open");
    Double share = OPENINGS.getOrDefault(named.text(), OPENINGS.get(written.text()));
    if (share != null) {
      return ThrottleOpening.ofShare(share);
    }
    NumberText number =
        written
            .inDigits()
            .number(true)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    Optional<NumberText> other = new RiderText(number.rest()).without("to", "-").number(true);
    if (value < 1 && other.filter(end -> end.rest().isEmpty() && end.value() <= 1).isPresent()) {
      throw QuantityException.ambiguous(
          name,
          text,
          List.of(
              TradeStyle.throttle(ThrottleOpening.ofShare(value)),
              TradeStyle.throttle(ThrottleOpening.ofShare(other.get().value()))));
    }
    switch (number.rest()) {
      case "%", "percent", "per cent" -> {
        return ThrottleOpening.ofPercent(value);
      }
      case "" -> {
        if (value < 1) {
          return ThrottleOpening.ofShare(value);
        }
        if (value == 1) {
          throw QuantityException.ambiguous(name, text, List.of("full", "1 %"));
        }
        throw QuantityException.ambiguous(name, text, List.of(Text.number(value) + " %"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    }
  }

  /**
   * Reads a temperature.
   *
   * @param text such as {@code 20 C}, {@code 68F}, {@code -5 °C} or {@code 20 degrees Celsius}
   * @return the temperature
   * @throws QuantityException if it cannot be read, or has no unit
   */
  public static Temperature temperature(String text) {
    String name = "temperature";
    List<String> sample = List.of("20 °C", "20 C", "68F");
    NumberText number =
        RiderText.of(text)
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    String unit = number.rest().replaceAll("deg(?:rees?|\\.)?|°", "").strip();
    return switch (unit) {
      case "c", "oc", "celsius", "centigrade" -> Temperature.ofCelsius(number.value());
      case "f", "of", "fahrenheit" -> Temperature.ofFahrenheit(number.value());
      case "k", "kelvin" -> Temperature.ofKelvin(number.value());
      case "" -> {
        String value = Text.number(number.value());
        throw QuantityException.ambiguous(name, text, List.of(value + " °C", value + " °F"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a premix ratio.
   *
   * @param text such as {@code 40}, {@code 1:40}, {@code 40:1}, {@code premix 40}, {@code 2.5 %} or
   *     {@code no oil}
   * @return the ratio
   * @throws QuantityException if it cannot be read, or could be meant in two ways, as {@code 2}
   */
  public static PremixRatio premix(String text) {
    String name = "premix ratio";
    List<String> sample = List.of("40", "40:1", "1:40", "2.5 %", "no oil");
    String written =
        RiderText.of(text)
            .without("premix", "mix")
            .withoutLast("premix", "mix")
            .text()
            .replaceFirst("^1 in (?=\\d)", "1:")
            .replaceFirst("^([\\d.]+) ?(?:to|:|/|-) ?([\\d.]+)$", "$1:$2")
            .replaceFirst(" ?per ?cent$", " %");
    if (NO_OIL.contains(written)) {
      return PremixRatio.NO_OIL;
    }
    Matcher dose = DOSE.matcher(written);
    if (dose.matches()) {
      return PremixRatio.ofOilPercent(Double.parseDouble(dose.group(1)) / 10);
    }
    Optional<NumberText> bare =
        RiderText.of(written).number(false).filter(number -> number.rest().isEmpty());
    if (bare.isEmpty()) {
      return read(name, sample, text, () -> PremixRatio.parse(written));
    }
    double value = bare.get().value();
    if (value >= RICHEST_PREMIX && value <= LEANEST_PREMIX) {
      return PremixRatio.ofPetrolToOil(value);
    }
    if (value == 0) {
      return PremixRatio.NO_OIL;
    }
    String number = Text.number(value);
    throw QuantityException.ambiguous(
        name,
        text,
        value < RICHEST_PREMIX ? List.of(number + " %", number + ":1") : List.of(number + ":1"));
  }

  /**
   * Reads an altitude.
   *
   * @param text such as {@code 900 m} or {@code 3000ft}
   * @return the altitude
   * @throws QuantityException if it cannot be read, or has no unit
   */
  public static Altitude altitude(String text) {
    String name = "altitude";
    List<String> sample = List.of("900 m", "3000 ft");
    RiderText written = new RiderText(RiderText.of(text).text().replaceFirst(ABOVE_SEA, ""));
    if (written.text().equals("sea level")) {
      return Altitude.ofMetres(0);
    }
    refuseThousands(name, text, written, List.of("m", "ft"));
    NumberText number =
        written
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    return switch (number.rest()) {
      case "m", "metre", "metres", "meter", "meters", "mtr" -> Altitude.ofMetres(number.value());
      case "km" -> Altitude.ofMetres(shifted(number.value(), 3));
      case "ft", "feet", "'" -> Altitude.ofFeet(number.value());
      case "" -> {
        String value = Text.number(number.value());
        throw QuantityException.ambiguous(name, text, List.of(value + " m", value + " ft"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /** A point or comma may be one of thousands: 1.500 m is one and a half for some. */
  private static void refuseThousands(
      String name, String text, RiderText written, List<String> units) {
    List<NumberText> readings = written.asThousandsOrNot();
    if (!readings.isEmpty()) {
      String unit = readings.get(0).rest().isEmpty() ? units.get(0) : readings.get(0).rest();
      if (units.contains(unit)) {
        throw QuantityException.ambiguous(
            name,
            text,
            readings.stream().map(number -> Text.number(number.value()) + " " + unit).toList());
      }
    }
  }

  /**
   * Reads a diameter, such as the bore of a carburettor, a needle jet or a needle.
   *
   * @param text such as {@code 24}, {@code 24 mm} or {@code 2.155mm}
   * @return the diameter
   * @throws QuantityException if it cannot be read, or is a bare number above 80, as {@code 215}
   */
  public static Diameter diameter(String text) {
    String name = "diameter";
    List<String> sample = List.of("24 mm", "2.155 mm");
    NumberText number =
        RiderText.of(text)
            .without("needle jet", "carburettor", "carburetor", "carb", "bore", "diameter")
            .without("ø", "⌀")
            .withoutLast("carburettor", "carburetor", "carb", "needle jet")
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    return switch (number.rest()) {
      case "mm" -> Diameter.ofMillimetres(value);
      case "" -> {
        if (value <= 80) {
          yield Diameter.ofMillimetres(value);
        }
        throw QuantityException.ambiguous(
            name, text, List.of(Text.number(value / 100) + " mm", Text.number(value) + " mm"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a displacement.
   *
   * @param text such as {@code 123}, {@code 123 cc}, {@code 123ccm} or {@code 123 cm³}
   * @return the displacement
   * @throws QuantityException if it cannot be read
   */
  public static Displacement displacement(String text) {
    String name = "displacement";
    List<String> sample = List.of("123 cc", "123 cm³");
    NumberText number =
        RiderText.of(text)
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    return switch (number.rest()) {
      case "", "cc", "ccs", "c.c.", "ccm", "cm³", "cm3", "ml" ->
          Displacement.ofCubicCentimetres(number.value());
      case "l", "litre", "litres", "liter", "liters" ->
          Displacement.ofCubicCentimetres(shifted(number.value(), 3));
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads an engine speed.
   *
   * @param text such as {@code 7500}, {@code 7500 rpm} or {@code 7500/min}
   * @return the speed
   * @throws QuantityException if it cannot be read
   */
  public static EngineSpeed engineSpeed(String text) {
    String name = "engine speed";
    List<String> sample = List.of("7500 rpm", "7500");
    RiderText written = RiderText.of(text);
    refuseThousands(name, text, written, List.of("rpm"));
    NumberText number =
        written
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    return switch (number.rest()) {
      case "" -> {
        if (number.value() > 0 && number.value() <= MOST_THOUSANDS) {
          throw QuantityException.ambiguous(
              name, text, List.of(Text.number(number.value()) + "k rpm"));
        }
        yield EngineSpeed.ofRpm(number.value());
      }
      case "rpm", "revs", "r/min", "u/min", "1/min", "/min" -> EngineSpeed.ofRpm(number.value());
      case "k", "k rpm", "krpm" -> EngineSpeed.ofRpm(shifted(number.value(), 3));
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a float level.
   *
   * @param text such as {@code 19.5}, {@code 19.5mm} or {@code float level 19.5 mm}
   * @return the level
   * @throws QuantityException if it cannot be read
   */
  public static FloatLevel floatLevel(String text) {
    String name = "float level";
    List<String> sample = List.of("19.5 mm", "19.5");
    NumberText number =
        RiderText.of(text)
            .without("float", "floats")
            .without("level", "height")
            .without("at")
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    return switch (number.rest()) {
      case "", "mm" -> FloatLevel.ofMillimetres(number.value());
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /**
   * Reads a λ.
   *
   * @param text such as {@code 0.88}, {@code λ 0.88} or {@code lambda .88}
   * @return the λ
   * @throws QuantityException if it cannot be read, or no engine runs on it and it may be an
   *     air-fuel ratio, as {@code 13.2}
   */
  public static Lambda lambda(String text) {
    String name = "lambda";
    List<String> sample = List.of("0.88", "λ 0.88");
    NumberText number =
        RiderText.of(text)
            .without("λ", "lambda")
            .without("=")
            .number(false)
            .filter(n -> n.rest().isEmpty() || n.rest().equals(":1"))
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    if (number.rest().isEmpty() && value >= RICHEST_LAMBDA && value <= LEANEST_LAMBDA) {
      return Lambda.of(value);
    }
    if (value > LEANEST_LAMBDA) {
      throw QuantityException.refused(
          name,
          text,
          Sentence.of("error.air-fuel-hint")
              .with("low", RICHEST_LAMBDA)
              .with("high", LEANEST_LAMBDA)
              .with("ratio", new Sentence.Amount(value, ":1")));
    }
    throw QuantityException.refused(
        name,
        text,
        Sentence.of("error.to").with("low", RICHEST_LAMBDA).with("high", LEANEST_LAMBDA));
  }

  /**
   * Reads an air-fuel ratio.
   *
   * @param text such as {@code 12.9}, {@code 12.9:1} or {@code AFR 12.9}
   * @return the ratio
   * @throws QuantityException if it cannot be read, or may be a λ, as {@code 0.88}
   */
  public static AirFuelRatio airFuelRatio(String text) {
    String name = "air-fuel ratio";
    List<String> sample = List.of("12.9", "12.9:1");
    NumberText number =
        RiderText.of(text)
            .without("afr", "air-fuel ratio")
            .number(false)
            .filter(n -> n.rest().isEmpty() || n.rest().equals(":1"))
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    if (number.rest().isEmpty() && number.value() <= LEANEST_LAMBDA) {
      throw QuantityException.refused(
          name,
          text,
          Sentence.of("error.lambda-hint")
              .with("low", LEANEST_LAMBDA)
              .with("value", number.value()));
    }
    return AirFuelRatio.of(number.value());
  }

  /**
   * Reads a relative humidity.
   *
   * @param text such as {@code 45 %} or {@code 45%}
   * @return the humidity
   * @throws QuantityException if it cannot be read, or has no percent sign
   */
  public static RelativeHumidity humidity(String text) {
    return RelativeHumidity.ofPercent(percent("relative humidity", List.of("45 %"), text));
  }

  /**
   * Reads a probability.
   *
   * @param text such as {@code 10 %}, {@code 10%} or {@code 1 in 10}
   * @return the probability
   * @throws QuantityException if it cannot be read, or has no percent sign
   */
  public static Probability probability(String text) {
    Matcher odds = ODDS.matcher(RiderText.of(text).inDigits().text());
    if (odds.matches()) {
      return Probability.of(Double.parseDouble(odds.group(1)) / Double.parseDouble(odds.group(2)));
    }
    return Probability.ofPercent(percent("probability", List.of("10 %"), text));
  }

  private static double percent(String name, List<String> sample, String text) {
    NumberText number =
        RiderText.of(text)
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    return switch (number.rest()) {
      case "%", "percent", "per cent" -> number.value();
      case "" -> throw QuantityException.ambiguous(name, text, percents(number.value()));
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  private static List<String> percents(double value) {
    return value > 0 && value <= 1
        ? List.of(Text.number(value) + " %", Text.number(Math.rint(value * 1e6) / 1e4) + " %")
        : List.of(Text.number(value) + " %");
  }

  /**
   * Reads an air pressure.
   *
   * @param text such as {@code 1013 hPa}, {@code 1013mbar} or {@code 29.92 inHg}
   * @return the pressure
   * @throws QuantityException if it cannot be read, or has no unit
   */
  public static Pressure pressure(String text) {
    String name = "pressure";
    List<String> sample = List.of("1013 hPa", "29.92 inHg");
    NumberText number =
        RiderText.of(text)
            .number(false)
            .orElseThrow(() -> QuantityException.unreadableSuchAs(name, text, sample));
    double value = number.value();
    return switch (number.rest()) {
      case "hpa", "mbar", "mb" -> Pressure.ofHectopascals(value);
      case "bar" -> Pressure.ofHectopascals(shifted(value, 3));
      case "pa" -> Pressure.ofPascals(value);
      case "inhg", "in hg", "in", "\"" -> Pressure.ofInchesOfMercury(value);
      case "mmhg", "mm hg" -> Pressure.ofMillimetresOfMercury(value);
      case "kpa" -> Pressure.ofHectopascals(shifted(value, 1));
      case "" -> {
        String shown = Text.number(value);
        throw QuantityException.ambiguous(
            name, text, List.of(shown + " hPa", shown + " mmHg", shown + " inHg"));
      }
      default -> throw QuantityException.unreadableSuchAs(name, text, sample);
    };
  }

  /** With the decimal point further right, without an error of rounding. */
  private static double shifted(double value, int places) {
    return Double.isFinite(value)
        ? new BigDecimal(Text.number(value)).movePointRight(places).doubleValue()
        : value;
  }

  private static <Q> Q read(String name, List<String> sample, String text, Supplier<Q> reader) {
    try {
      return reader.get();
    } catch (QuantityException e) {
      if (e.unit().isEmpty()) {
        throw QuantityException.unreadableSuchAs(name, text, sample);
      }
      throw e;
    }
  }
}
