package dev.jetting.rules;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;

/** The sentences of remedies, made from their data. */
final class RemedyWords {

  private RemedyWords() {}

  static String of(Remedy.Aim aim) {
    String words =
        switch (aim.direction()) {
          case RICHER -> must(aim, "fall");
          case LEANER -> must(aim, "rise");
          case OTHER -> "";
        };
    return words + (words.isEmpty() || aim.words().isEmpty() ? "" : " ") + aim.words();
  }

  private static String must(Remedy.Aim aim, String way) {
    return "λ must "
        + way
        + " by "
        + percent(Math.abs(aim.change()))
        + " at "
        + TradeStyle.throttle(aim.throttle())
        + ".";
  }

  /** What is asked for is never nothing. */
  private static String percent(double share) {
    String whole = Decimals.fixed(share * 100, 0);
    return whole.equals("0") ? "less than 1 %" : whole + " %";
  }

  static String of(Remedy.Change change) {
    return deed(change)
        + (change.toBuy() ? " (to buy)" : "")
        + ": "
        + effect(change)
        + (change.enough() ? "." : ". It helps, but not enough alone.");
  }

  static String deed(Remedy.Change change) {
    return switch (change.part()) {
      case CLIP ->
          "Move the clip "
              + count(change, "groove")
              + (change.direction() == Remedy.Direction.LEANER ? " higher" : " lower")
              + ", to "
              + change.to();
      case SCREW -> "Turn the " + screw(change) + " in place of " + change.from();
      case CUTAWAY -> "Fit a slide with " + change.to() + " in place of " + change.from();
      case PILOT_JET, NEEDLE_JET, NEEDLE_DIAMETER, NEEDLE_TAPER, MAIN_JET ->
          "Fit "
              + change.to()
              + " in place of "
              + change.from()
              + (change.part() == MeteringPart.NEEDLE_DIAMETER
                  ? ""
                  : ", " + count(change, "size") + " " + word(change.direction()));
    };
  }

  private static String screw(Remedy.Change change) {
    boolean air = change.setting().carburettor().pilot().screwKind() == ScrewKind.AIR;
    boolean in = (change.direction() == Remedy.Direction.RICHER) == air;
    return (air ? "air" : "mixture") + " screw " + (in ? "in" : "out") + " to " + change.to();
  }

  private static String count(Remedy.Change change, String unit) {
    return change.steps() == 1 ? "a " + unit : change.steps() + " " + unit + "s";
  }

  private static String word(Remedy.Direction direction) {
    return switch (direction) {
      case RICHER -> "richer";
      case LEANER -> "leaner";
      case OTHER -> "away";
    };
  }

  private static String effect(Remedy.Change change) {
    Remedy.State before = change.effect().before();
    Remedy.State after = change.effect().after();
    boolean overrun = change.effect().throttle().share() == 0 && moves(before, after);
    return "at "
        + TradeStyle.throttle(change.effect().throttle())
        + " λ "
        + fromTo(before.lambda(), after.lambda())
        + " today"
        + (overrun ? ", on the overrun " + fromTo(before.overrun(), after.overrun()) : "")
        + ", and the lean risk of the worst day "
        + fromTo(before.risk(), after.risk());
  }

  private static boolean moves(Remedy.State before, Remedy.State after) {
    return !lambda(before.overrun()).equals(lambda(after.overrun()));
  }

  static String fromTo(Probability before, Probability after) {
    String from = TradeStyle.probability(before);
    String to = TradeStyle.probability(after);
    return from.equals(to) ? "stays " + from : "goes from " + from + " to " + to;
  }

  private static String fromTo(Lambda before, Lambda after) {
    String from = lambda(before);
    String to = lambda(after);
    return from.equals(to) ? "stays " + from : "goes from " + from + " to " + to;
  }

  private static String lambda(Lambda lambda) {
    return Decimals.fixed(lambda.value(), 2);
  }

  static String number(double number) {
    return Double.isFinite(number) ? Decimals.shortest(number) : "that is not finite";
  }
}
