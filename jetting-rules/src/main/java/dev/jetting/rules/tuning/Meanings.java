package dev.jetting.rules.tuning;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Maps;
import com.google.common.collect.Sets;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What each plug colour and each symptom says of the mixture, and how exact a sensor is.
 *
 * <p>{@link #assumed()} is this project's own assumption; a tuner with a wideband sensor beside his
 * plugs replaces it. A plug always has a colour, so the bands of the colours have no gap and do not
 * overlap.
 *
 * @param colours for each colour, leanest first, each beginning where the next ends
 * @param symptoms for each symptom
 * @param kelvinPerLnLambda rise of exhaust temperature by ln λ on the rich side, against a run
 *     known to be good; 50 to 5000 K, which is a tenth to ten times the assumed one
 * @param accuracies standard deviation of ln λ of a reading by the wideband sensor and by the
 *     exhaust thermometer, 0.001 to 1
 * @param proven standard deviation of ln λ of a setting that is known to serve, 0.001 to 1
 */
public record Meanings(
    Map<PlugColour, Meaning> colours,
    Map<Symptom, Meaning> symptoms,
    Coefficient kelvinPerLnLambda,
    Map<Instrument, Coefficient> accuracies,
    Coefficient proven) {

  private static final ImmutableSet<Instrument> SENSORS =
      Sets.immutableEnumSet(Instrument.WIDEBAND, Instrument.EXHAUST_THERMOMETER);

  /** A tenth of the assumed rise, K: below it a unit was mistaken. */
  private static final double LEAST_RISE = 50;

  /** Ten times the assumed rise, K. */
  private static final double MOST_RISE = 5000;

  private static final Meanings ASSUMED =
      new Meanings(
          Map.of(
              PlugColour.WHITE, Meaning.assumed(1.16, Meaning.NO_LIMIT_LEAN, 0.07),
              PlugColour.PALE, Meaning.assumed(1.06, 1.16, 0.07),
              PlugColour.BROWN, Meaning.assumed(0.94, 1.06, 0.07),
              PlugColour.DARK, Meaning.assumed(0.85, 0.94, 0.07),
              PlugColour.BLACK, Meaning.assumed(Meaning.NO_LIMIT_RICH, 0.85, 0.07)),
          ImmutableMap.<Symptom, Meaning>builder()
              .put(Symptom.CLEAN, Meaning.assumed(0.84, 1.08, 0.10))
              .put(Symptom.BOGS, Meaning.assumed(1.05, Meaning.NO_LIMIT_LEAN, 0.15))
              .put(Symptom.FOUR_STROKES, Meaning.assumed(Meaning.NO_LIMIT_RICH, 0.84, 0.08))
              .put(Symptom.HESITATES, Meaning.assumed(1.08, Meaning.NO_LIMIT_LEAN, 0.10))
              .put(Symptom.SURGES, Meaning.assumed(1.12, Meaning.NO_LIMIT_LEAN, 0.08))
              .put(Symptom.HANGS, Meaning.assumed(1.10, Meaning.NO_LIMIT_LEAN, 0.10))
              .put(Symptom.STUMBLES, Meaning.assumed(Meaning.NO_LIMIT_RICH, 0.84, 0.10))
              .put(Symptom.PINGS, Meaning.assumed(1.12, Meaning.NO_LIMIT_LEAN, 0.08))
              .put(Symptom.FADES, Meaning.assumed(1.12, Meaning.NO_LIMIT_LEAN, 0.08))
              .put(Symptom.SEIZES, Meaning.assumed(1.16, Meaning.NO_LIMIT_LEAN, 0.08))
              .put(Symptom.CRISP, Meaning.assumed(0.94, Meaning.NO_LIMIT_LEAN, 0.08))
              .buildOrThrow(),
          Coefficient.assumed(500, "K", "about 50 K hotter for a mixture a tenth leaner"),
          Map.of(
              Instrument.WIDEBAND,
              Coefficient.assumed(0.02, "1", "fresh charge in the exhaust disturbs the sensor"),
              Instrument.EXHAUST_THERMOMETER,
              Coefficient.assumed(0.06, "1", "load and timing move the temperature as well")),
          Coefficient.assumed(0.05, "1", "what serves is a band, not a point"));

  /**
   * Copies the maps.
   *
   * @param colours for each colour, leanest first, each beginning where the next ends
   * @param symptoms for each symptom
   * @param kelvinPerLnLambda rise of exhaust temperature by ln λ on the rich side; 50 to 5000 K
   * @param accuracies standard deviation of ln λ by sensor, 0.001 to 1
   * @param proven standard deviation of ln λ of a setting that is known to serve, 0.001 to 1
   * @throws IllegalArgumentException if a colour, symptom or sensor is left out, the bands of two
   *     colours do not meet, or a number is out of its range or in another unit
   */
  public Meanings {
    colours = Maps.immutableEnumMap(new EnumMap<>(colours));
    symptoms = Maps.immutableEnumMap(new EnumMap<>(symptoms));
    accuracies = Maps.immutableEnumMap(new EnumMap<>(accuracies));
    boolean all =
        colours.size() == PlugColour.values().length && symptoms.size() == Symptom.values().length;
    if (!all) {
      throw InvalidValueException.worded(
          Sentence.of("error.meanings"), Sentence.of("error.meanings.allowed"));
    }
    withoutGap(colours);
    Supplier<Sentence> rise = () -> Sentence.of("error.name.temperature-rise");
    Checks.unit(rise, kelvinPerLnLambda.unit(), "K");
    Checks.that(
        kelvinPerLnLambda.value() >= LEAST_RISE && kelvinPerLnLambda.value() <= MOST_RISE,
        rise,
        kelvinPerLnLambda,
        () ->
            Sentence.of("error.to")
                .with("low", LEAST_RISE)
                .with("high", new Sentence.Amount(MOST_RISE, "K")));
    if (!accuracies.keySet().equals(SENSORS)) {
      throw InvalidValueException.worded(
          Sentence.of("error.accuracies").with("sensors", accuracies.keySet()),
          Sentence.of("error.accuracies.allowed"));
    }
    accuracies.forEach(
        (sensor, accuracy) ->
            inRange(() -> Sentence.of("error.name.accuracy").with("sensor", sensor), accuracy));
    inRange(() -> Sentence.of("error.name.proven-deviation"), proven);
  }

  private static void withoutGap(Map<PlugColour, Meaning> colours) {
    PlugColour[] leanestFirst = PlugColour.values();
    for (int i = 1; i < leanestFirst.length; i++) {
      PlugColour leaner = leanestFirst[i - 1];
      PlugColour richer = leanestFirst[i];
      double from = known(colours.get(leaner)).from();
      double to = known(colours.get(richer)).to();
      if (from != to) {
        throw InvalidValueException.worded(
            Sentence.of("error.colours-apart")
                .with("leaner", named(leaner))
                .with("from", from)
                .with("richer", named(richer))
                .with("to", to),
            Sentence.of("error.colours-apart.allowed").with("from", from));
      }
    }
  }

  private static Sentence named(PlugColour colour) {
    return Sentence.name(colour.name().toLowerCase(Locale.ROOT));
  }

  private static void inRange(Supplier<Sentence> what, Coefficient deviation) {
    Checks.unit(what, deviation.unit(), "1");
    Checks.that(
        deviation.value() >= 0.001 && deviation.value() <= 1,
        what,
        deviation,
        () -> Sentence.of("error.in-ln-lambda").with("low", 0.001).with("high", 1));
  }

  /** {@return the library's own assumed meanings} */
  public static Meanings assumed() {
    return ASSUMED;
  }

  /**
   * Returns these meanings with others of all colours; all else stays.
   *
   * @param meanings for each colour, each beginning where the next ends
   * @return the changed meanings
   * @throws IllegalArgumentException if a colour has none, or does not begin where the next ends
   */
  public Meanings withColours(Map<PlugColour, Meaning> meanings) {
    return new Meanings(meanings, symptoms, kelvinPerLnLambda, accuracies, proven);
  }

  /**
   * Returns these meanings with another one of one colour; all else stays. Another band moves the
   * neighbours too, so it takes {@link #withColours}.
   *
   * @param colour the colour
   * @param meaning what it means, in the band that the colour has
   * @return the changed meanings
   * @throws IllegalArgumentException if the band no longer meets those of its neighbours
   */
  public Meanings withColour(PlugColour colour, Meaning meaning) {
    return new Meanings(
        with(colours, colour, meaning), symptoms, kelvinPerLnLambda, accuracies, proven);
  }

  /**
   * Returns these meanings with another one of one symptom; all else stays.
   *
   * @param symptom the symptom
   * @param meaning what it means
   * @return the changed meanings
   */
  public Meanings withSymptom(Symptom symptom, Meaning meaning) {
    return new Meanings(
        colours, with(symptoms, symptom, meaning), kelvinPerLnLambda, accuracies, proven);
  }

  /**
   * Returns these meanings with another rise of the exhaust temperature; all else stays.
   *
   * @param rise by ln λ on the rich side, 50 to 5000 K
   * @return the changed meanings
   * @throws IllegalArgumentException if it is out of range or in another unit
   */
  public Meanings withKelvinPerLnLambda(Coefficient rise) {
    return new Meanings(colours, symptoms, rise, accuracies, proven);
  }

  /**
   * Returns these meanings with another accuracy of one sensor; all else stays.
   *
   * @param sensor the wideband sensor or the exhaust thermometer
   * @param deviation standard deviation of ln λ, 0.001 to 1
   * @return the changed meanings
   * @throws IllegalArgumentException if it is out of range, or for an instrument that is no sensor
   */
  public Meanings withAccuracy(Instrument sensor, Coefficient deviation) {
    return new Meanings(
        colours, symptoms, kelvinPerLnLambda, with(accuracies, sensor, deviation), proven);
  }

  /**
   * Returns these meanings with another trust in a proven setting; all else stays.
   *
   * @param deviation standard deviation of ln λ, 0.001 to 1
   * @return the changed meanings
   * @throws IllegalArgumentException if it is out of range
   */
  public Meanings withProven(Coefficient deviation) {
    return new Meanings(colours, symptoms, kelvinPerLnLambda, accuracies, deviation);
  }

  private static <K extends Enum<K>, V> Map<K, V> with(Map<K, V> all, K key, V value) {
    Map<K, V> changed = new EnumMap<>(all);
    changed.put(key, value);
    return changed;
  }

  /** Standard deviation of ln λ of a reading by a sensor. */
  double accuracyOf(Instrument sensor) {
    return known(accuracies.get(sensor)).value();
  }

  Meaning of(PlugColour colour) {
    return known(colours.get(colour));
  }

  Meaning of(Symptom symptom) {
    return known(symptoms.get(symptom));
  }

  private static <V> V known(@Nullable V value) {
    if (value == null) {
      throw new AssertionError("checked in the constructor");
    }
    return value;
  }
}
