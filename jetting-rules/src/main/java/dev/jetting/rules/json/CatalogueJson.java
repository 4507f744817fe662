package dev.jetting.rules.json;

import dev.jetting.rules.kit.Catalogue;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * Catalogues as JSON.
 *
 * <p>A catalogue is an object with {@code format} (always {@code "jetting catalogue"}), {@code
 * schemaVersion} (always {@code 1}), {@code title}, {@code families}, {@code series}, {@code parts}
 * and, optionally, {@code machines} and {@code markets}; below these, fields have the names of the
 * components of the records that they make, in the forms of {@link SheetJson}. A part has {@code
 * id}, {@code description}, {@code series}, optionally {@code price} (a number), and one of {@code
 * bore}, {@code flow}, {@code needleJet}, {@code needle} (without an id of its own), {@code
 * cutaway}, {@code screw} and {@code floatValve}. A series of jets numbered by flow has a {@code
 * bench} with {@code head}, {@code liquid}, {@code relativeUncertainty} and either {@code
 * dischargeCoefficient} or {@code lengthToDiameter}.
 *
 * <p>Limits: 8 000 000 characters, nested 32 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class CatalogueJson {

  private static final Codec<Catalogue> CODEC =
      new Codec<>(
          Catalogue.class,
          JettingModule.ofReader(),
          CatalogueForm.HEADER,
          new DocumentLimits(8_000_000, 32));

  private CatalogueJson() {}

  /**
   * Reads a catalogue.
   *
   * @param json the document; not null
   * @return the catalogue
   * @throws JsonInputException if the document is no catalogue
   */
  public static Catalogue read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a catalogue.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the catalogue
   * @throws JsonInputException if the document is no catalogue
   * @throws IOException if the reader fails
   */
  public static Catalogue read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a catalogue.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the catalogue
   * @throws JsonInputException if the document is no catalogue
   * @throws IOException if the stream fails
   */
  public static Catalogue read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a catalogue in full, with quantities as texts.
   *
   * @param catalogue the catalogue; not null
   * @return the document, lines ended by {@code \n}; the same for equal catalogues, and read back
   *     to an equal one if its ids and texts are within the limits
   */
  public static String write(Catalogue catalogue) {
    return CODEC.write(Objects.requireNonNull(catalogue, "catalogue"));
  }
}
