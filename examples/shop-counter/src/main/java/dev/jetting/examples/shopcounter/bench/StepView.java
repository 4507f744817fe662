package dev.jetting.examples.shopcounter.bench;

import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Fault;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the rider does next, as the page and the API show it.
 *
 * @param kind what kind of step it is
 * @param title what to do, in a few words
 * @param why why, or what it does
 * @param howTo how to do it, in order
 * @param checks what to look at and tick off
 * @param at the opening of a test, for people; empty where there is none
 */
public record StepView(
    Kind kind, String title, String why, List<String> howTo, List<CheckLine> checks, String at) {

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

    static CheckLine of(Check check) {
      return new CheckLine(check.name().toLowerCase(Locale.ROOT), check.text());
    }
  }

  /**
   * Words a step.
   *
   * @param step the library's step
   * @return what the page shows
   */
  public static StepView of(NextStep step) {
    if (step instanceof NextStep.TickOff first) {
      return checks(
          Kind.CHECK,
          "Look at these before the first ride",
          "Tick off what is right. Jets come after.",
          first.checks());
    }
    if (step instanceof NextStep.Ride ride) {
      return ride(ride);
    }
    if (step instanceof NextStep.CheckReading again) {
      return test(
          Kind.READ_AGAIN,
          "Take this reading again: " + again.observation().text(),
          "It does not fit what is known of this engine, so it does not count yet. Change no part.",
          again.test());
    }
    if (step instanceof NextStep.LookForFault look) {
      return fault(look);
    }
    if (step instanceof NextStep.MakeRicher richer) {
      return change(
          Kind.STOP_AND_CHANGE,
          "Stop. Make it richer: " + richer.change().what(),
          hurt(richer.sign().observation()),
          richer.change());
    }
    if (step instanceof NextStep.Change change) {
      return change(
          Kind.CHANGE,
          "Change one thing: " + change.change().what(),
          change.because().map(sign -> capital(sign.observation().text()) + ". ").orElse(""),
          change.change());
    }
    return end(step);
  }

  private static String hurt(Observation seen) {
    return capital(seen.text())
        + ": the engine is being hurt there. Do not ride before you have changed it. ";
  }

  private static StepView end(NextStep step) {
    if (step instanceof NextStep.Confirmed confirmed) {
      return said(
          Kind.CONFIRMED,
          "This setting is confirmed",
          "Everything that was read agrees. The highest lean risk of any day is "
              + TradeStyle.probability(confirmed.left().risk())
              + ". Write its card, and try it on the coldest morning before you trust it.");
    }
    if (step instanceof NextStep.LeftRich rich) {
      return said(
          Kind.LEFT_RICH,
          "Safe, but too rich",
          capital(
                  rich.signs().stream()
                      .map(sign -> sign.observation().text())
                      .collect(Collectors.joining(", ")))
              + ". No part at hand makes it leaner there and stays safe.");
    }
    if (step instanceof NextStep.Reserved uphill && uphill.faults().isEmpty()) {
      return said(
          Kind.RESERVED,
          "Not confirmed: perhaps too lean on a climb",
          "On the level road it is accepted. On climbs the lean risk is up to "
              + TradeStyle.probability(uphill.left().risk(), uphill.left().accepted())
              + ", and no part at hand is richer. Change down before the engine labours, and read a"
              + " plug or a sensor on a climb before you trust it.");
    }
    if (step instanceof NextStep.Refused refused) {
      return new StepView(
          Kind.PARKED,
          "Do not ride this: a rule finds a danger",
          "No reading answers it. Settle it first, and begin a session on what you have then.",
          refused.dangers().stream()
              .flatMap(found -> Stream.of(found.finding().text(), found.finding().remedy().text()))
              .toList(),
          List.of(),
          "");
    }
    if (step instanceof NextStep.Reserved reserved) {
      List<Check> checks = reserved.faults().stream().map(Fault::settledBy).distinct().toList();
      return checks(
          Kind.RESERVED,
          "Not confirmed: a fault may be left",
          "The readings speak for "
              + String.join(", or ", reserved.faults().stream().map(Fault::text).toList())
              + ". The lean risk that is left is "
              + TradeStyle.probability(reserved.left().risk())
              + ", more than accepted. Do not ride it hard until this is settled. If you mend"
              + " something, begin a new session.",
          checks);
    }
    return step instanceof NextStep.NotToBeRidden parked
        ? parked(parked)
        : said(Kind.PARKED, "Do not ride this", "The library ends the session here.");
  }

  private static StepView parked(NextStep.NotToBeRidden parked) {
    List<String> buy = parked.buy();
    String richer =
        "It is too lean, and no part at hand makes it rich enough. "
            + (buy.isEmpty()
                ? "The plan names what to get."
                : "Get " + String.join(", ", buy) + " first.");
    if (parked.faults().isEmpty()) {
      return said(Kind.PARKED, "Do not ride this", richer);
    }
    return checks(
        Kind.PARKED,
        "Do not ride this",
        "Richer parts did not end it. Before you buy one, look for "
            + String.join(", or ", parked.faults().stream().map(Fault::text).toList())
            + ". "
            + richer,
        parked.faults().stream().map(Fault::settledBy).distinct().toList());
  }

  private static StepView said(Kind kind, String title, String why) {
    return new StepView(kind, title, why, List.of(), List.of(), "");
  }

  private static StepView checks(Kind kind, String title, String why, List<Check> checks) {
    return new StepView(
        kind, title, why, List.of(), checks.stream().map(CheckLine::of).toList(), "");
  }

  private static StepView fault(NextStep.LookForFault look) {
    List<String> faults = look.faults().stream().map(Fault::text).toList();
    return checks(
        Kind.STOP_AND_LOOK,
        "Stop. Look for a fault",
        capital(look.observation().text())
            + " does not fit what is known of this engine. It may be "
            + String.join(", or ", faults)
            + ". Do not ride it, and change no jet. If you mend something, begin a new session.",
        look.faults().stream().map(Fault::settledBy).distinct().toList());
  }

  private static StepView ride(NextStep.Ride ride) {
    NextTest test = ride.test();
    String where =
        switch (test.kind()) {
          case IDLE -> "the idle";
          case RUN_DOWN -> "the overrun";
          default -> opening(test.throttle());
        };
    return test(
        Kind.RIDE,
        "Test " + where,
        (ride.confirming() ? "Once more, to confirm the setting. " : "")
            + "The lean risk there is "
            + TradeStyle.probability(test.risk())
            + " as it stands.",
        test);
  }

  private static String opening(ThrottleOpening throttle) {
    String where = TradeStyle.throttle(throttle);
    return where.endsWith("throttle") ? where : where + " throttle";
  }

  private static StepView test(Kind kind, String title, String why, NextTest test) {
    return new StepView(
        kind,
        title,
        why,
        test.howTo(),
        List.of(),
        TradeStyle.throttle(test.throttle()).replace(" throttle", ""));
  }

  private static StepView change(Kind kind, String title, String first, NextChange change) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "The highest lean risk today goes from "
            + TradeStyle.probability(change.before().worst().leanRisk())
            + " to "
            + TradeStyle.probability(change.after().worst().leanRisk())
            + ".");
    steps.add("One change, then read again.");
    return new StepView(kind, title, first + change.reason().text(), steps, List.of(), "");
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

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
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
