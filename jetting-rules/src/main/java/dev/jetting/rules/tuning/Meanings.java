package dev.jetting.rules.tuning;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import dev.jetting.core.parts.Coefficient;
import java.util.EnumMap;
import java.util.Map;

/**
 * What each plug colour and each symptom says of the mixture.
 *
 * <p>{@link #assumed()} is this project's own assumption; a tuner with a wideband sensor beside his
 * plugs replaces it.
 *
 * @param colours for each colour, leanest first, each beginning where the next ends
 * @param symptoms for each symptom
 * @param kelvinPerLnLambda rise of exhaust temperature by ln λ on the rich side, against a run
 *     known to be good; more than zero
 */
public record Meanings(
    Map<PlugColour, Meaning> colours,
    Map<Symptom, Meaning> symptoms,
    Coefficient kelvinPerLnLambda) {

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
          Coefficient.assumed(500, "K", "about 50 K hotter for a mixture a tenth leaner"));

  /**
   * Copies the maps.
   *
   * @param colours for each colour, leanest first, each beginning where the next ends
   * @param symptoms for each symptom
   * @param kelvinPerLnLambda rise of exhaust temperature by ln λ on the rich side; more than zero
   * @throws IllegalArgumentException if a colour or symptom has no meaning, or the rise is not
   *     above zero
   */
  public Meanings {
    colours = Maps.immutableEnumMap(new EnumMap<>(colours));
    symptoms = Maps.immutableEnumMap(new EnumMap<>(symptoms));
    boolean all =
        colours.size() == PlugColour.values().length && symptoms.size() == Symptom.values().length;
    if (!all || kelvinPerLnLambda.value() <= 0) {
      throw new IllegalArgumentException(
          "meanings of readings: allowed one for each colour and each symptom, and a rise of exhaust"
              + " temperature above 0 K");
    }
  }

  /** {@return the library's own assumed meanings} */
  public static Meanings assumed() {
    return ASSUMED;
  }

  Meaning of(PlugColour colour) {
    return known(colours.get(colour));
  }

  Meaning of(Symptom symptom) {
    return known(symptoms.get(symptom));
  }

  private static Meaning known(@org.jspecify.annotations.Nullable Meaning meaning) {
    if (meaning == null) {
      throw new AssertionError("checked in the constructor");
    }
    return meaning;
  }
}
