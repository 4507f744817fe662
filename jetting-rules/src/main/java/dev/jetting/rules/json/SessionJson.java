package dev.jetting.rules.json;

import dev.jetting.rules.tuning.TuningSession;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;

/**
 * Tuning sessions as JSON, so that one program can go on where another stopped.
 *
 * <p>A session is an object with {@code format} (always {@code "jetting tuning session"}), {@code
 * schemaVersion} (always {@code 1}), the {@code sheet} it began with, as {@link SheetJson} writes
 * it, the {@code checks} done before the first test, and {@code steps}. Each step has its {@code
 * setup} ({@code engine}, {@code setting}, {@code air}, {@code fuel}), its {@code observations} and
 * the {@code checks} done because of them. An observation has {@code throttle}, {@code speed} and
 * the {@code evidence}: one of {@code wideband} (a λ), {@code colour}, {@code symptom}, {@code
 * exhaustTemperature} (with {@code hotter} and {@code good}), {@code overrun} and {@code proven}
 * ({@code true}).
 *
 * <p>Limits: 4 000 000 characters, nested 64 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class SessionJson {

  private static final Codec<TuningSession> CODEC =
      new Codec<>(
          TuningSession.class,
          JettingModule.ofReader(),
          SessionForm.HEADER,
          new DocumentLimits(4_000_000, 64));

  private SessionJson() {}

  /**
   * Reads a tuning session.
   *
   * @param json the document; not null
   * @return the session
   * @throws JsonInputException if the document is no tuning session
   */
  public static TuningSession read(String json) {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a tuning session.
   *
   * @param json the document, which is read to its end or the limit and not closed; a byte order
   *     mark is skipped; not null
   * @return the session
   * @throws JsonInputException if the document is no tuning session
   * @throws IOException if the reader fails
   */
  public static TuningSession read(Reader json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Reads a tuning session.
   *
   * @param json the document in UTF-8, which is read to its end or the limit and not closed; a byte
   *     order mark is skipped; not null
   * @return the session
   * @throws JsonInputException if the document is no tuning session
   * @throws IOException if the stream fails
   */
  public static TuningSession read(InputStream json) throws IOException {
    return CODEC.read(Objects.requireNonNull(json, "json"));
  }

  /**
   * Writes a tuning session in full, with quantities as texts.
   *
   * @param session the session; not null
   * @return the document, lines ended by {@code \n}; the same for equal sessions, and read back to
   *     an equal one if its ids and texts are within the limits
   */
  public static String write(TuningSession session) {
    return CODEC.write(Objects.requireNonNull(session, "session"));
  }
}
