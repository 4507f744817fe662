package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.parts.Coefficient;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Reads and writes the limits of rules, as a shop replaces them: {@code
 * rulebook.withLimits(LimitsJson.read(text))}.
 *
 * <pre>{@code
 * {
 *   "format": "jetting rule limits",
 *   "schemaVersion": 1,
 *   "limits": {
 *     "float valve capacity by full-throttle flow": {
 *       "value": 1.5,
 *       "unit": "1",
 *       "origin": "assumed",
 *       "note": "our hoses are long"
 *     }
 *   }
 * }
 * }</pre>
 *
 * <p>The schema is {@link JsonSchemas#ruleLimits()}. Which names there are, the rulebook knows.
 */
public final class LimitsJson {

  private static final Codec<LimitsForm> CODEC =
      new Codec<>(
          LimitsForm.class,
          JettingModule.ofReader(),
          LimitsForm.HEADER,
          new DocumentLimits(100_000, 8));

  private LimitsJson() {}

  /**
   * Reads limits.
   *
   * @param json the document; not null
   * @return the numbers by the name of the limit
   * @throws JsonInputException if the document is another one
   */
  public static Map<String, Coefficient> read(String json) {
    return ImmutableMap.copyOf(CODEC.read(Objects.requireNonNull(json, "json")).limits());
  }

  /**
   * Reads limits.
   *
   * @param json the document, which is read to its end or the limit and not closed; not null
   * @return the numbers by the name of the limit
   * @throws JsonInputException if the document is another one
   * @throws IOException if the reader fails
   */
  public static Map<String, Coefficient> read(Reader json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Reads limits.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; not
   *     null
   * @return the numbers by the name of the limit
   * @throws JsonInputException if the document is another one
   * @throws IOException if the stream fails
   */
  public static Map<String, Coefficient> read(InputStream json) throws IOException {
    return read(CODEC.text(Objects.requireNonNull(json, "json")));
  }

  /**
   * Writes limits.
   *
   * @param limits the numbers by the name of the limit, such as {@code rulebook.assumptions()}
   * @return the document, by name, lines ended by {@code \n}
   */
  public static String write(Map<String, Coefficient> limits) {
    Objects.requireNonNull(limits, "limits");
    return CODEC.write(
        new LimitsForm(LimitsForm.FORMAT, LimitsForm.VERSION, new TreeMap<>(limits)));
  }
}
