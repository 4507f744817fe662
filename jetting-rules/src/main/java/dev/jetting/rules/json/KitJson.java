package dev.jetting.rules.json;

import dev.jetting.rules.kit.Kit;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * Kits as JSON, one to a document or one to a line.
 *
 * <p>A kit is an object with {@code format} (always {@code "jetting kit"}), {@code schemaVersion}
 * (always {@code 1}), {@code id}, {@code description}, {@code family}, {@code parts}, {@code
 * market} and {@code recommendations}; below these, fields have the names of the components of
 * {@link dev.jetting.rules.kit.Recommendation}, in the forms of {@link SheetJson}.
 *
 * <p>Limits: 1 000 000 characters, nested 16 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class KitJson {

  private static final Codec<Kit> CODEC =
      new Codec<>(
          Kit.class, JettingModule.ofReader(), KitForm.HEADER, new DocumentLimits(1_000_000, 16));

  private KitJson() {}

  /**
   * Reads a kit.
   *
   * @param json the document; not null
   * @return the kit
   * @throws JsonInputException if the document is no kit
   */
  public static Kit read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a kit.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the kit
   * @throws JsonInputException if the document is no kit
   * @throws IOException if the reader fails
   */
  public static Kit read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a kit.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the kit
   * @throws JsonInputException if the document is no kit
   * @throws IOException if the stream fails
   */
  public static Kit read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a kit, with quantities as texts.
   *
   * @param kit the kit; not null
   * @return the document, lines ended by {@code \n}; the same for equal kits, and read back to an
   *     equal one if its ids and texts are within the limits
   */
  public static String write(Kit kit) {
    return CODEC.write(Objects.requireNonNull(kit, "kit"));
  }

  /**
   * Writes a kit on one line.
   *
   * @param kit the kit; not null
   * @return the document without any line break, not even at its end
   */
  public static String writeLine(Kit kit) {
    return CODEC.writeLine(Objects.requireNonNull(kit, "kit"));
  }
}
