package dev.jetting.rules.json;

import dev.jetting.rules.SheetImpact;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * What a change of the rules does to a sheet, as JSON. The impacts of {@link
 * dev.jetting.rules.RulebookImpact} on a stream of sheets stand one to a line:
 *
 * <pre>{@code
 * impact.over(lines, SheetJson::read).map(SheetImpactJson::writeLine).forEach(out::println);
 * }</pre>
 *
 * <p>The schema is {@link JsonSchemas#sheetImpact()}.
 *
 * <p>Limits: 8 000 000 characters, nested 32 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class SheetImpactJson {

  private static final Codec<ImpactForm> CODEC =
      new Codec<>(
          ImpactForm.class,
          JettingModule.ofReader(),
          ImpactForm.HEADER,
          new DocumentLimits(8_000_000, 32));

  private SheetImpactJson() {}

  /**
   * Reads what new rules do to one sheet.
   *
   * @param json the document; not null
   * @return the impact
   * @throws JsonInputException if the document is another one
   */
  public static SheetImpact read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json")).impact();
  }

  /**
   * Reads what new rules do to one sheet.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the impact
   * @throws JsonInputException if the document is another one
   * @throws IOException if the reader fails
   */
  public static SheetImpact read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads what new rules do to one sheet.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the impact
   * @throws JsonInputException if the document is another one
   * @throws IOException if the stream fails
   */
  public static SheetImpact read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Writes what new rules do to one sheet.
   *
   * @param impact the impact; not null
   * @return the document, lines ended by {@code \n}; the same for equal ones, and read back to an
   *     equal one
   */
  public static String write(SheetImpact impact) {
    return CODEC.write(ImpactForm.of(impact));
  }

  /**
   * Writes what new rules do to one sheet on one line.
   *
   * @param impact the impact; not null
   * @return the document without any line break, not even at its end
   */
  public static String writeLine(SheetImpact impact) {
    return CODEC.writeLine(ImpactForm.of(impact));
  }
}
