package dev.jetting.rules;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Objects;

/**
 * What to do about a finding.
 *
 * <p>A rule that knows only where the mixture is wrong gives an {@link Aim}. The adviser of a
 * report replaces each aim by a {@link Change} of one part, or by an {@link Advice} where no single
 * part helps. A rule that no jet can satisfy gives an advice itself.
 *
 * <p>Programs read the components; {@link #text()} is made from them for people.
 */
public sealed interface Remedy {

  /** {@return one or two sentences for people, made from the components} */
  Message message();

  /** {@return one or two sentences for people, in English} */
  default String text() {
    return message().text();
  }

  /** Which way a remedy moves the mixture. */
  enum Direction {
    /** More fuel by air. */
    RICHER,
    /** Less fuel by air. */
    LEANER,
    /** Neither alone: richer at one opening, leaner at another, or no matter of the mixture. */
    OTHER
  }

  /** Where the part of a change comes from. */
  enum Source {
    /** It is at hand, or nothing but a position is set. */
    AT_HAND,
    /** It is to be bought. */
    TO_BUY
  }

  /** What a change does about its finding. */
  enum Relief {
    /** The finding is gone after this change alone. */
    WHOLE,
    /** It helps, but the finding stays. */
    PARTIAL
  }

  /**
   * Where the mixture has to go, before a part is chosen.
   *
   * @param direction which way
   * @param throttle the opening where it matters most
   * @param change by how much λ must change there, as a share: −0.1 for a fall by 10 %; 0 where the
   *     direction is {@link Direction#OTHER}
   * @param words what the rule adds; may be empty
   */
  record Aim(Direction direction, ThrottleOpening throttle, double change, Message words)
      implements Remedy {

    private static final Message NO_WORDS = Message.plain("");

    /**
     * Checks that change and direction agree.
     *
     * @param direction which way
     * @param throttle the opening where it matters most
     * @param change by how much λ must change there, as a share
     * @param words what the rule adds; may be empty
     * @throws IllegalArgumentException if the change is not above −1, or richer raises λ, or leaner
     *     lowers it, or another direction changes it
     */
    public Aim {
      Objects.requireNonNull(direction, "direction");
      Objects.requireNonNull(throttle, "throttle");
      Objects.requireNonNull(words, "words");
      if (!words.arguments().isEmpty()) {
        PlainLine.checkLength("words of an aim", words.text());
      }
      boolean agrees =
          switch (direction) {
            case RICHER -> change > -1 && change <= 0;
            case LEANER -> change >= 0 && Double.isFinite(change);
            case OTHER -> change == 0;
          };
      if (!agrees) {
        throw new IllegalArgumentException(
            "change of λ "
                + RemedyWords.number(change)
                + " of an aim "
                + direction
                + ": allowed above -1 to 0 for RICHER, 0 or more for LEANER, 0 for OTHER");
      }
      change += 0.0; // −0.0 becomes 0.0
    }

    /**
     * An aim towards rich.
     *
     * @param throttle the opening where it matters most
     * @param lnLambda by how much ln λ must fall there, 0 or more
     * @return the aim
     */
    public static Aim richer(ThrottleOpening throttle, double lnLambda) {
      return new Aim(
          Direction.RICHER, throttle, StrictMath.expm1(-Math.max(0, lnLambda)), NO_WORDS);
    }

    /**
     * An aim towards lean.
     *
     * @param throttle the opening where it matters most
     * @param lnLambda by how much ln λ must rise there, 0 or more
     * @return the aim
     */
    public static Aim leaner(ThrottleOpening throttle, double lnLambda) {
      return new Aim(Direction.LEANER, throttle, StrictMath.expm1(Math.max(0, lnLambda)), NO_WORDS);
    }

    /**
     * An aim that no single direction serves.
     *
     * @param throttle the opening where it matters most
     * @param words what has to change
     * @return the aim
     */
    public static Aim other(ThrottleOpening throttle, String words) {
      return other(throttle, Message.plain(words));
    }

    /**
     * An aim that no single direction serves.
     *
     * @param throttle the opening where it matters most
     * @param words what has to change
     * @return the aim
     */
    public static Aim other(ThrottleOpening throttle, Message words) {
      return new Aim(Direction.OTHER, throttle, 0, words);
    }

    /**
     * This aim with words of the rule.
     *
     * @param more what the rule adds
     * @return the changed aim
     */
    public Aim saying(String more) {
      return saying(Message.plain(more));
    }

    /**
     * This aim with words of the rule.
     *
     * @param more what the rule adds
     * @return the changed aim
     */
    public Aim saying(Message more) {
      return new Aim(direction, throttle, change, more);
    }

    @Override
    public Message message() {
      return RemedyWords.of(this);
    }
  }

  /**
   * A change of one part.
   *
   * @param part the part; {@link MeteringPart#NEEDLE_DIAMETER} means the needle as a whole
   * @param direction which way it moves the mixture where it matters
   * @param from the part there is
   * @param to the part to fit, or the position to set
   * @param steps over how many sizes, grooves or quarter turns, 1 or more
   * @param source whether the part is at hand
   * @param effect what it does
   * @param relief whether the finding is gone after this change alone
   * @param setting the setting after the change
   */
  record Change(
      MeteringPart part,
      Direction direction,
      Argument from,
      Argument to,
      int steps,
      Source source,
      Effect effect,
      Relief relief,
      Setting setting)
      implements Remedy {

    /**
     * Checks the number of steps.
     *
     * @param part the part
     * @param direction which way it moves the mixture where it matters
     * @param from the part there is
     * @param to the part to fit, or the position to set
     * @param steps over how many sizes, grooves or quarter turns, 1 or more
     * @param source whether the part is at hand
     * @param effect what it does
     * @param relief whether the finding is gone after this change alone
     * @param setting the setting after the change
     * @throws IllegalArgumentException if there is less than one step
     */
    public Change {
      Objects.requireNonNull(part, "part");
      Objects.requireNonNull(direction, "direction");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(effect, "effect");
      Objects.requireNonNull(relief, "relief");
      Objects.requireNonNull(setting, "setting");
      if (steps < 1) {
        throw new IllegalArgumentException("steps of a change " + steps + ": allowed 1 or more");
      }
    }

    /** {@return whether the part is not at hand} */
    public boolean toBuy() {
      return source == Source.TO_BUY;
    }

    /** {@return whether the finding is gone after this change alone} */
    public boolean enough() {
      return relief == Relief.WHOLE;
    }

    /**
     * {@return what is done, without its effect: "Fit main 118 in place of main 96"} Without the
     * condition of a change towards lean, too: show {@link #stepMessage()} to people.
     */
    public String deed() {
      return deedMessage().text();
    }

    /** {@return {@link #deed()} for any language} */
    public Message deedMessage() {
      return RemedyWords.deed(this);
    }

    /**
     * {@return what is done, and what it does to the highest lean risk over the throttle range; a
     * change towards lean with its condition} For a step of a plan, as all reports print it.
     */
    public Message stepMessage() {
      return PlanWords.step(this);
    }

    /**
     * {@return what is done, and what it does at the opening where the finding matters most; a
     * change towards lean with its condition} For the remedy of one finding.
     */
    @Override
    public Message message() {
      return RemedyWords.of(this);
    }
  }

  /**
   * What a change does, at the opening where it matters most and over the throttle range.
   *
   * @param throttle that opening
   * @param before how it is
   * @param after how it becomes
   */
  record Effect(ThrottleOpening throttle, State before, State after) {

    /**
     * Checks for nulls.
     *
     * @param throttle that opening
     * @param before how it is
     * @param after how it becomes
     */
    public Effect {
      Objects.requireNonNull(throttle, "throttle");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }
  }

  /**
   * How a setting stands.
   *
   * @param lambda λ at the opening, in the air of the day
   * @param risk the lean risk at the opening, climbs included, on the day when it is highest
   * @param highestRisk the highest lean risk at any opening on any day, climbs included
   * @param overrun λ on the overrun, on the day when it is leanest
   */
  record State(Lambda lambda, Probability risk, Probability highestRisk, Lambda overrun) {

    /**
     * Checks for nulls.
     *
     * @param lambda λ at the opening, in the air of the day
     * @param risk the lean risk at the opening, climbs included, on the day when it is highest
     * @param highestRisk the highest lean risk at any opening on any day, climbs included
     * @param overrun λ on the overrun, on the day when it is leanest
     */
    public State {
      Objects.requireNonNull(lambda, "lambda");
      Objects.requireNonNull(risk, "risk");
      Objects.requireNonNull(highestRisk, "highestRisk");
      Objects.requireNonNull(overrun, "overrun");
    }
  }

  /**
   * Something that is no change of a metering part: the fuel, the filter, the floats, a check.
   *
   * @param message what to do, in whole sentences
   */
  record Advice(Message message) implements Remedy {

    /**
     * Checks for null.
     *
     * @param message what to do, in whole sentences
     */
    public Advice {
      Objects.requireNonNull(message, "message");
    }

    /**
     * Creates an advice that is the same in every language.
     *
     * @param text what to do, in whole sentences
     */
    public Advice(String text) {
      this(Message.plain(text));
    }
  }
}
