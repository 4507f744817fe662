package dev.jetting.examples.shopcounter.bench;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the rider does next, as the page and the API show it.
 *
 * @param kind what kind of step it is
 * @param title what to do, in a few words
 * @param why why, or what it does
 * @param howTo how to do it, in order
 * @param checks what to look at and tick off
 * @param at the opening of a test, by its name in a form; empty where there is none
 * @param where the same, for people
 */
public record StepView(
    Kind kind,
    String title,
    String why,
    List<String> howTo,
    List<CheckLine> checks,
    String at,
    String where) {

  /** What kind of step it is. */
  public enum Kind {
    /** Things to look at and tick off. */
    CHECK,
    /** A test to ride. */
    RIDE,
    /** A reading to take again. */
    READ_AGAIN,
    /** A part to change. */
    CHANGE,
    /** The engine was lean: nothing is ridden until this part is changed. */
    STOP_AND_CHANGE,
    /** A fault to look for before anything is ridden. */
    STOP_AND_LOOK,
    /** The session ends: not to be ridden. */
    PARKED,
    /** The session ends: safe, but too rich somewhere. */
    LEFT_RICH,
    /** The session ends with a reservation: a fault that was not found may be there. */
    RESERVED,
    /** The session ends: the setting is confirmed. */
    CONFIRMED
  }

  /**
   * Something to look at.
   *
   * @param key its name in a form
   * @param text what is right there, for people
   */
  public record CheckLine(String key, String text) {

    static CheckLine of(Check check, Words words) {
      return new CheckLine(check.name().toLowerCase(Locale.ROOT), words.say(check.message()));
    }
  }

  /**
   * Words the next step of a session.
   *
   * @param session the session so far
   * @param tuner who leads it
   * @param words the language
   * @return what the page shows
   */
  public static StepView of(TuningSession session, Tuner tuner, Words words) {
    return new StepWords(words, session, tuner).step(tuner.next(session));
  }

  /** An opening's name in a form, the same in every language. */
  static String key(ThrottleOpening opening) {
    return TradeStyle.throttle(opening).replace(" throttle", "");
  }

  /**
   * The change that a step asks for.
   *
   * @param step the library's step
   * @return the change; empty where the step asks for none
   */
  public static Optional<NextChange> changeOf(NextStep step) {
    if (step instanceof NextStep.MakeRicher richer) {
      return Optional.of(richer.change());
    }
    return step instanceof NextStep.Change change ? Optional.of(change.change()) : Optional.empty();
  }

  /** {@return whether a part is to be changed now} */
  public boolean asksForAChange() {
    return kind == Kind.CHANGE || kind == Kind.STOP_AND_CHANGE;
  }

  /** {@return its name in style sheets} */
  public String style() {
    return switch (kind) {
      case STOP_AND_CHANGE, STOP_AND_LOOK, RESERVED, PARKED -> "stop";
      case CONFIRMED -> "go";
      default -> "step-now";
    };
  }
}
