package dev.jetting.rules.json;

import dev.jetting.rules.kit.KitValidation;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Map;
import java.util.Objects;

/**
 * What is said of kits as JSON, one to a document or one to a line.
 *
 * <p>Fields have the names of the components of {@link KitValidation} and the records below it;
 * {@code schemaVersion} is always {@code 1}. Quantities are written as {@link ReportJson} writes
 * them.
 *
 * <p>Limits: 8 000 000 characters, nested 32 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class KitValidationJson {

  private static final Codec<KitValidation> CODEC =
      new Codec<>(
          KitValidation.class,
          JettingModule.ofReader(),
          Map.of("schemaVersion", String.valueOf(KitValidation.SCHEMA_VERSION)),
          new DocumentLimits(8_000_000, 32));

  private KitValidationJson() {}

  /**
   * Reads a result.
   *
   * @param json the document; not null
   * @return the result
   * @throws JsonInputException if the document is no result of this version
   */
  public static KitValidation read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a result.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the result
   * @throws JsonInputException if the document is no result of this version
   * @throws IOException if the reader fails
   */
  public static KitValidation read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a result.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the result
   * @throws JsonInputException if the document is no result of this version
   * @throws IOException if the stream fails
   */
  public static KitValidation read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a result.
   *
   * @param validation the result; not null
   * @return the document, lines ended by {@code \n}; the same for equal results, and read back to
   *     an equal one if its texts are within the limits
   */
  public static String write(KitValidation validation) {
    return CODEC.write(Objects.requireNonNull(validation, "validation"));
  }

  /**
   * Writes a result on one line.
   *
   * @param validation the result; not null
   * @return the document without any line break, not even at its end
   */
  public static String writeLine(KitValidation validation) {
    return CODEC.writeLine(Objects.requireNonNull(validation, "validation"));
  }
}
