package dev.jetting.rules.json;

import dev.jetting.rules.Waiver;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.List;
import java.util.Objects;

/**
 * Waivers of findings as a JSON document, as a shop keeps them beside its sheets. {@code accepted}
 * has engine, carburettor, measured value and throttle band of the finding that a waiver was made
 * from.
 *
 * <pre>{@code
 * List<Waiver> waivers = WaiversJson.read(text);
 * Report report = rulebook.evaluate(setting, waivers, today);
 * }</pre>
 *
 * <p>The schema is {@link JsonSchemas#waivers()}.
 *
 * <p>Limits: 1 000 000 characters, nested 12 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class WaiversJson {

  private static final Codec<WaiversForm> CODEC =
      new Codec<>(
          WaiversForm.class,
          JettingModule.ofReader(),
          WaiversForm.HEADER,
          new DocumentLimits(1_000_000, 12));

  private WaiversJson() {}

  /**
   * Reads waivers of findings.
   *
   * @param json the document; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   */
  public static List<Waiver> read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json")).waivers();
  }

  /**
   * Reads waivers of findings.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   * @throws IOException if the reader fails
   */
  public static List<Waiver> read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads waivers of findings.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   * @throws IOException if the stream fails
   */
  public static List<Waiver> read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Writes waivers of findings.
   *
   * @param waivers the waivers; not null
   * @return the document, lines ended by {@code \n}; the same for equal ones, and read back to an
   *     equal one
   */
  public static String write(List<Waiver> waivers) {
    return CODEC.write(WaiversForm.of(Objects.requireNonNull(waivers, "waivers")));
  }
}
