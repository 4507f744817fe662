package dev.jetting.rules.tuning;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What to do next in a session: plain data. {@link SessionText} makes sentences from it.
 *
 * <p>More kinds may come. A program that does not know a kind does not go on riding.
 */
public sealed interface NextStep {

  /**
   * Checks to do before the first test, or as soon as they are missed, and to tick off with {@link
   * TuningSession#checking}.
   *
   * @param checks those not yet done
   */
  record TickOff(List<Check> checks) implements NextStep {

    /**
     * Copies the list.
     *
     * @param checks those not yet done
     */
    public TickOff {
      checks = List.copyOf(checks);
    }
  }

  /**
   * A test to ride.
   *
   * @param test which, and how
   * @param confirming whether it is to confirm a setting with which the session could end
   */
  record Ride(NextTest test, boolean confirming) implements NextStep {

    /**
     * Checks for null.
     *
     * @param test which, and how
     * @param confirming whether it is to confirm a setting with which the session could end
     */
    public Ride {
      Objects.requireNonNull(test, "test");
    }
  }

  /**
   * A reading to take again before any part is touched: it is far from all that is known, or two of
   * it contradict each other. Until then it does not count.
   *
   * @param observation the reading
   * @param test how to take it again
   */
  record CheckReading(Observation observation, NextTest test) implements NextStep {

    /**
     * Checks for nulls.
     *
     * @param observation the reading
     * @param test how to take it again
     */
    public CheckReading {
      Objects.requireNonNull(observation, "observation");
      Objects.requireNonNull(test, "test");
    }
  }

  /**
   * A fault to look for before any part is touched and before anything is ridden. Where none is
   * found, {@link TuningSession#checking} records what was looked at. An engine on which one was
   * mended is another engine and begins another session.
   *
   * @param observation what asks for it; the last one where all together do
   * @param why why it asks for it
   * @param faults what may be behind it, and which check settles each; at least one
   */
  record LookForFault(Observation observation, Why why, List<Fault> faults) implements NextStep {

    /** Why a fault is looked for. */
    public enum Why {
      /** The reading does not fit what else was read, or contradicts itself. */
      MISFIT,
      /** Harm came back at an opening that had been made richer for it. */
      CAME_BACK,
      /** The idle shows something that no jet is the first cause of. */
      IDLE,
      /** All that was read looks more like a fault than like a setting. */
      TOGETHER,
      /**
       * The engine was hurt, and that opening is richer now: before the next ride, find out why.
       */
      HARM,
      /** Parts that act there were changed twice, and it is as it was. */
      NO_DIFFERENCE,
      /** Idle, half and full throttle are all rich, or all lean. */
      WHOLE_RANGE
    }

    /**
     * Copies the list.
     *
     * @param observation what asks for it; the last one where all together do
     * @param why why it asks for it
     * @param faults what may be behind it, and which check settles each
     */
    public LookForFault {
      Objects.requireNonNull(observation, "observation");
      Objects.requireNonNull(why, "why");
      faults = List.copyOf(faults);
    }
  }

  /**
   * Stop: an engine was lean. Nothing is ridden until this change, and those that follow it, have
   * made that opening richer.
   *
   * @param sign what was observed
   * @param change what makes it richer there
   */
  record MakeRicher(Sign sign, NextChange change) implements NextStep {

    /**
     * Checks for nulls.
     *
     * @param sign what was observed
     * @param change what makes it richer there
     */
    public MakeRicher {
      Objects.requireNonNull(sign, "sign");
      Objects.requireNonNull(change, "change");
    }
  }

  /**
   * A part to change.
   *
   * @param change which, and what it does
   * @param because the sign that asks for it; empty where the readings as a whole do
   */
  record Change(NextChange change, Optional<Sign> because) implements NextStep {

    /**
     * Checks for nulls.
     *
     * @param change which, and what it does
     * @param because the sign that asks for it
     */
    public Change {
      Objects.requireNonNull(change, "change");
      Objects.requireNonNull(because, "because");
    }
  }

  /**
   * An end: full throttle was read on this very setting, everything that was read agrees, no part
   * at hand is worth changing, and the lean risk that is left is accepted.
   *
   * @param left the lean risk that is left, within what is accepted
   */
  record Confirmed(RiskLeft left) implements NextStep {

    /**
     * Checks the risk.
     *
     * @param left the lean risk that is left, within what is accepted
     * @throws IllegalArgumentException if it is more than is accepted
     */
    public Confirmed {
      left.checkAccepted("a confirmed setting");
    }
  }

  /**
   * An end: safe by all that was read, but too rich somewhere, and no part at hand makes it leaner
   * there safely.
   *
   * @param signs where it is too rich, the latest sign at each opening; at least one
   * @param left the lean risk that is left, within what is accepted
   */
  record LeftRich(List<Sign> signs, RiskLeft left) implements NextStep {

    /**
     * Copies the list, and checks the risk.
     *
     * @param signs where it is too rich, the latest sign at each opening; at least one
     * @param left the lean risk that is left, within what is accepted
     * @throws IllegalArgumentException if it is more than is accepted, or there is no sign
     */
    public LeftRich {
      signs = List.copyOf(signs);
      if (signs.isEmpty()) {
        throw new IllegalArgumentException("end left rich: allowed with at least one sign of it");
      }
      left.checkAccepted("a setting left rich");
    }
  }

  /**
   * An end with a reservation, because no part at hand is rich enough for all of it. The setting is
   * accepted on the level road if the engine is sound. A fault that was looked for and not found
   * may still be there, or a climb may be too lean. With it the lean risk is more than is accepted.
   *
   * @param left the lean risk that is left, more than is accepted
   * @param faults what may be behind it, the most likely first; each names the check that settles
   *     it; empty where it is left on climbs alone
   */
  record Reserved(RiskLeft left, List<Fault> faults) implements NextStep {

    /**
     * Copies the list.
     *
     * @param left the lean risk that is left, more than is accepted
     * @param faults what may be behind it, the most likely first; empty for climbs alone
     * @throws IllegalArgumentException if the risk is accepted
     */
    public Reserved {
      faults = List.copyOf(faults);
      if (left.isAccepted()) {
        throw new IllegalArgumentException(
            "end with a reservation: allowed where more than is accepted is left, not " + left);
      }
    }
  }

  /**
   * An end: a fault was looked for and not found, and what asked for it is still there. Not to be
   * ridden until it is found; an engine on which it was mended begins another session.
   *
   * @param observation what is still there
   * @param faults what may be behind it, and which check settles each
   */
  record FaultLeft(Observation observation, List<Fault> faults) implements NextStep {

    /**
     * Copies the list.
     *
     * @param observation what is still there
     * @param faults what may be behind it, and which check settles each
     */
    public FaultLeft {
      Objects.requireNonNull(observation, "observation");
      faults = List.copyOf(faults);
    }
  }

  /**
   * An end: a test was answered again and again by what says too little of the mixture, such as a
   * crisp engine at full throttle. Not to be ridden until it is read; another observation there
   * goes on with the session.
   *
   * @param observation the last answer
   */
  record Unread(Observation observation) implements NextStep {

    /**
     * Checks for null.
     *
     * @param observation the last answer
     */
    public Unread {
      Objects.requireNonNull(observation, "observation");
    }
  }

  /**
   * An end: too lean, and no part at hand makes it richer there.
   *
   * @param sign what was observed; empty where it is too lean by the model
   * @param worst where it is too lean by the model; empty on the overrun, and where a sign says it
   * @param faults what may be behind it, where richer parts did not end it; empty otherwise
   * @param parts parts to get
   */
  record NotToBeRidden(
      Optional<Sign> sign,
      Optional<ThrottleOpening> worst,
      List<Fault> faults,
      List<Argument> parts)
      implements NextStep {

    /**
     * Copies the lists.
     *
     * @param sign what was observed; empty where it is too lean by the model
     * @param worst where it is too lean by the model
     * @param faults what may be behind it, where richer parts did not end it; empty otherwise
     * @param parts parts to get
     */
    public NotToBeRidden {
      Objects.requireNonNull(sign, "sign");
      Objects.requireNonNull(worst, "worst");
      faults = List.copyOf(faults);
      parts = List.copyOf(parts);
    }

    /** {@return the parts to get, in trade style} */
    public List<String> buy() {
      return parts.stream().map(Argument::text).toList();
    }
  }

  /**
   * An end: a rule finds a danger in the setting that no reading answers, such as jets that were
   * taken over to a changed engine, and no part at hand settles it. Not to be ridden until what it
   * names is settled; then begin a session on the other sheet.
   *
   * @param dangers the findings, the most dangerous first; at least one
   */
  record Refused(List<RankedFinding> dangers) implements NextStep {

    /**
     * Copies the list.
     *
     * @param dangers the findings, the most dangerous first
     * @throws IllegalArgumentException if there is none
     */
    public Refused {
      dangers = List.copyOf(dangers);
      if (dangers.isEmpty()) {
        throw new IllegalArgumentException(
            "end by dangers that a rulebook finds: allowed at least one danger");
      }
    }
  }

  /** {@return whether the session ends here} */
  default boolean isEnd() {
    return this instanceof Confirmed
        || this instanceof LeftRich
        || this instanceof Reserved
        || this instanceof Refused
        || this instanceof FaultLeft
        || this instanceof Unread
        || this instanceof NotToBeRidden;
  }
}
