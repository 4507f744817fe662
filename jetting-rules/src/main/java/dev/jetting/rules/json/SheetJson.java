package dev.jetting.rules.json;

import dev.jetting.rules.SetupSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * Setup sheets as JSON.
 *
 * <p>A sheet is an object with {@code format} (always {@code "jetting setup sheet"}), {@code
 * schemaVersion} (always {@code 1}), {@code title}, {@code engine}, {@code setting} (the
 * carburettor with everything in it), {@code air}, {@code fuel}, {@code riding} and {@code parts}
 * (the parts at hand); below these, fields have the names of the components of the records that
 * they make. Every field must be there, once, except those that are optional here. None may be
 * null.
 *
 * <ul>
 *   <li>A quantity is a text with its unit, such as {@code "2.49 mm"}, {@code "1.5 turns"} or
 *       {@code "2 of 5 from top"}, in any form that its type parses; one without a unit may be a
 *       number, such as λ {@code 0.9}, or a text, such as a throttle opening {@code "1/8"}; and any
 *       may be an object such as {@code {"value": 2.49, "unit": "mm"}}.
 *   <li>Enumerated values are written in lower case with hyphens: {@code "mixture"}, {@code
 *       "cipm-2007"}.
 *   <li>{@code air} has {@code pressure} or {@code altitude}, {@code temperature}, {@code humidity}
 *       and optionally {@code formula}, which is {@code "cipm-2007"} unless given.
 *   <li>{@code fuel} has {@code premix} (such as {@code "50:1"} or {@code "no oil"}), optionally
 *       {@code oil}, which is {@link dev.jetting.core.fuel.FuelComponent#TWO_STROKE_OIL} unless
 *       given, and {@code blend}; or, in place of the blend, {@code density}, {@code
 *       dynamicViscosity} (both of what flows, its oil included) and {@code stoichiometricRatio}
 *       (of the fuel without its oil); or it is the name of a blend without oil. A {@code blend}
 *       has {@code basis} and {@code shares}, each of a {@code component} and its {@code share}; a
 *       component has {@code id}, {@code composition} or {@code stoichiometricRatio}, {@code
 *       density}, {@code thermalExpansion} and {@code viscosity}.
 *   <li>{@code fuelWarmerBy}, how much warmer than the air the fuel in the float chamber is, is
 *       optional: {@code "0 K"} unless given.
 *   <li>{@code deliveryRatio}, {@code deliveryFactor}, {@code need} and {@code profile} are objects
 *       with {@code points}, or the bare array of them.
 *   <li>{@code riding} has {@code acceptedRisk}, {@code profile}, {@code coldest}, {@code hottest}
 *       and optionally {@code speeds}, such as {@code {"uphillLoad": 1.5}}, which is {@link
 *       dev.jetting.rules.risk.RiddenSpeeds#assumed()} unless given.
 *   <li>{@code parts} is optional, and so is each list in it.
 *   <li>{@code provenance} is optional, and so is each thing in it: what is left out was then as
 *       the sheet says it is now. It has {@code engine}, or any of {@code exhaust}, {@code
 *       cylinder} and {@code induction}; {@code setting}, or any of {@code carburettor}, {@code
 *       intake} and {@code mainJet}.
 *   <li>{@code typical} is optional: an array of the values of the machine that are typical and
 *       were not measured, such as {@code "peak-speed"}, each once. An assessment is wider for
 *       them.
 *   <li>An {@code intake} has {@code id} and {@code effectiveArea}, or {@code id} and {@code
 *       openMouth} {@code true}.
 *   <li>Names may represent the library's own values: {@code flow} {@code "assumed"}; {@code
 *       induction} {@code "mild"}, {@code "tuned"}; {@code need} {@code "very mild"}, {@code
 *       "mild"}, {@code "tuned"}; {@code intake} {@code "open mouth"}; fuels and blends {@code
 *       "petrol"}, {@code "E5"}, {@code "E10"}, {@code "E85"}; components and oil {@code "petrol"},
 *       {@code "ethanol"}, {@code "methanol"}, {@code "two-stroke-oil"}; a riding {@code profile}
 *       {@code "assumed road"}. They are read, never written, so that a written sheet shows its
 *       numbers.
 * </ul>
 *
 * <p>Limits: 1 000 000 characters, nested 32 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class SheetJson {

  private static final Codec<SetupSheet> CODEC =
      new Codec<>(
          SetupSheet.class,
          JettingModule.ofReader(),
          SheetForm.HEADER,
          new DocumentLimits(1_000_000, 32));

  private SheetJson() {}

  /**
   * Reads a setup sheet.
   *
   * @param json the document; not null
   * @return the sheet
   * @throws JsonInputException if the document is no setup sheet
   */
  public static SetupSheet read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a setup sheet.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the sheet
   * @throws JsonInputException if the document is no setup sheet
   * @throws IOException if the reader fails
   */
  public static SetupSheet read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a setup sheet.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the sheet
   * @throws JsonInputException if the document is no setup sheet
   * @throws IOException if the stream fails
   */
  public static SetupSheet read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a setup sheet in full, with quantities as texts.
   *
   * @param sheet the sheet; not null
   * @return the document, lines ended by {@code \n}; the same for equal sheets, and read back to an
   *     equal one if its ids and texts are within the limits
   */
  public static String write(SetupSheet sheet) {
    return CODEC.write(Objects.requireNonNull(sheet, "sheet"));
  }
}
