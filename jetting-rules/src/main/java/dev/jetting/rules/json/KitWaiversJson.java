package dev.jetting.rules.json;

import dev.jetting.rules.kit.KitWaiver;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.List;
import java.util.Objects;

/**
 * Waivers of kits as a JSON document, as a shop keeps them beside its kits. {@code measured} and
 * {@code band} are those of the finding that was accepted.
 *
 * <p>The schema is {@link JsonSchemas#kitWaivers()}.
 *
 * <p>Limits: 1 000 000 characters, nested 12 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class KitWaiversJson {

  private static final Codec<KitWaiversForm> CODEC =
      new Codec<>(
          KitWaiversForm.class,
          JettingModule.ofReader(),
          KitWaiversForm.HEADER,
          new DocumentLimits(1_000_000, 12));

  private KitWaiversJson() {}

  /**
   * Reads waivers of kits.
   *
   * @param json the document; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   */
  public static List<KitWaiver> read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json")).waivers();
  }

  /**
   * Reads waivers of kits.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   * @throws IOException if the reader fails
   */
  public static List<KitWaiver> read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads waivers of kits.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the waivers
   * @throws JsonInputException if the document is another one
   * @throws IOException if the stream fails
   */
  public static List<KitWaiver> read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Writes waivers of kits.
   *
   * @param waivers the waivers; not null
   * @return the document, lines ended by {@code \n}; the same for equal ones, and read back to an
   *     equal one
   */
  public static String write(List<KitWaiver> waivers) {
    return CODEC.write(KitWaiversForm.of(Objects.requireNonNull(waivers, "waivers")));
  }
}
