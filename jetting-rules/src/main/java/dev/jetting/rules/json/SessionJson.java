package dev.jetting.rules.json;

import dev.jetting.rules.Rulebook;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.Objects;
import java.util.Optional;

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
 * <p>With {@code tuner} stands what the advice rested on: instruments, limits, spreads, steps and
 * meanings, and the edition of the rulebook. A program elsewhere resumes with {@link
 * #readTuner(String, Rulebook)} and gives the same advice. {@code read} gives the session alone and
 * does not look into {@code tuner}, so what is wrong there costs nobody the session.
 *
 * <p>Limits: 4 000 000 characters, nested 64 deep; names of 200, texts of 10 000, numbers of 100
 * and ids of 60 characters.
 */
public final class SessionJson {

  private static final DocumentLimits LIMITS = new DocumentLimits(4_000_000, 64);

  private static final Codec<TuningSession> CODEC =
      new Codec<>(TuningSession.class, JettingModule.ofReader(), SessionForm.HEADER, LIMITS);

  /** With the tuner. */
  private static final Codec<SessionForm> WITH_TUNER =
      new Codec<>(SessionForm.class, JettingModule.ofTuners(), SessionForm.HEADER, LIMITS);

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

  /**
   * Writes a tuning session with what the advice on it rests on.
   *
   * @param session the session; not null
   * @param tuner the tuner that leads it; not null
   * @return the document, lines ended by {@code \n}; {@link #read(String)} reads the session alone
   * @throws IllegalArgumentException if the limits are of a class of the caller's own
   */
  public static String write(TuningSession session, Tuner tuner) {
    Objects.requireNonNull(session, "session");
    return WITH_TUNER.write(SessionForm.of(session, Optional.of(TunerForm.of(tuner))));
  }

  /**
   * Reads the tuner that led a session.
   *
   * @param json the document; not null
   * @param rulebook the rules that it led by, which are not in the document; not null
   * @return the tuner, which gives the same advice; empty if the document is of the session alone
   * @throws JsonInputException if the document is no tuning session, or its tuner is malformed or
   *     has a number out of range
   * @throws IllegalArgumentException if the session was led by another rulebook or edition
   */
  public static Optional<Tuner> readTuner(String json, Rulebook rulebook) {
    Objects.requireNonNull(rulebook, "rulebook");
    return WITH_TUNER
        .read(Objects.requireNonNull(json, "json"))
        .tuner()
        .map(form -> form.tuner(rulebook));
  }
}
