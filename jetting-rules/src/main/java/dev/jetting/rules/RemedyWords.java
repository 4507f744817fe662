package dev.jetting.rules;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.number.Decimals;
import java.util.List;

/** The sentences of remedies, made from their data. */
final class RemedyWords {

  private RemedyWords() {}

  static Message of(Remedy.Aim aim) {
    return switch (aim.direction()) {
      case RICHER -> must("remedy.aim.richer", aim);
      case LEANER -> must("remedy.aim.leaner", aim);
      case OTHER -> aim.words();
    };
  }

  private static Message must(String key, Remedy.Aim aim) {
    Message must =
        Message.of(key)
            .with("change", Argument.change(Math.abs(aim.change())))
            .with("throttle", Argument.throttle(aim.throttle()));
    return Message.joined(List.of(must, aim.words()));
  }

  static Message of(Remedy.Change change) {
    Message does =
        Message.of(change.toBuy() ? "remedy.change.buy" : "remedy.change")
            .with("deed", Argument.words(deed(change)))
            .with("effect", Argument.words(effect(change)));
    return withCondition(
        change,
        change.enough() ? does : Message.joined(List.of(does, Message.of("remedy.not-enough"))));
  }

  /** Nobody may read a change towards lean without the condition on which it is made. */
  static Message withCondition(Remedy.Change change, Message words) {
    return change.direction() == Remedy.Direction.LEANER
        ? Message.joined(List.of(words, Message.of("plan.step.leaner")))
        : words;
  }

  static Message deed(Remedy.Change change) {
    Message deed =
        switch (change.part()) {
          case CLIP ->
              Message.of(
                      change.direction() == Remedy.Direction.LEANER
                          ? "deed.clip.higher"
                          : "deed.clip.lower")
                  .with("grooves", count("grooves", change));
          case SCREW -> Message.of(screw(change));
          case CUTAWAY -> Message.of("deed.cutaway");
          case NEEDLE_DIAMETER -> Message.of("deed.needle");
          case PILOT_JET, NEEDLE_JET, NEEDLE_TAPER, MAIN_JET ->
              Message.of(jet(change.direction())).with("sizes", count("sizes", change));
        };
    Message to = deed.with("to", change.to());
    return change.part() == MeteringPart.CLIP ? to : to.with("from", change.from());
  }

  private static String screw(Remedy.Change change) {
    boolean air = change.setting().carburettor().pilot().screwKind() == ScrewKind.AIR;
    boolean in = (change.direction() == Remedy.Direction.RICHER) == air;
    return air
        ? (in ? "deed.screw.air.in" : "deed.screw.air.out")
        : (in ? "deed.screw.mixture.in" : "deed.screw.mixture.out");
  }

  private static Argument count(String key, Remedy.Change change) {
    return Argument.words(Message.of(key).with(Message.COUNT, Argument.count(change.steps())));
  }

  private static String jet(Remedy.Direction direction) {
    return switch (direction) {
      case RICHER -> "deed.jet.richer";
      case LEANER -> "deed.jet.leaner";
      case OTHER -> "deed.jet.other";
    };
  }

  private static Message effect(Remedy.Change change) {
    Remedy.State before = change.effect().before();
    Remedy.State after = change.effect().after();
    boolean overrun = change.effect().throttle().share() == 0 && moves(before, after);
    Message effect =
        Message.of(overrun ? "effect.overrun" : "effect")
            .with("throttle", Argument.throttle(change.effect().throttle()))
            .with("lambda", fromTo(before.lambda(), after.lambda()))
            .with("risk", fromTo(before.risk(), after.risk()));
    return overrun ? effect.with("overrun", fromTo(before.overrun(), after.overrun())) : effect;
  }

  private static boolean moves(Remedy.State before, Remedy.State after) {
    return !Argument.lambdaNumber(before.overrun())
        .text()
        .equals(Argument.lambdaNumber(after.overrun()).text());
  }

  static Argument fromTo(Probability before, Probability after) {
    return fromTo(Argument.risk(before), Argument.risk(after));
  }

  private static Argument fromTo(Lambda before, Lambda after) {
    return fromTo(Argument.lambdaNumber(before), Argument.lambdaNumber(after));
  }

  /** What is printed alike stays, in every language. */
  private static Argument fromTo(Argument from, Argument to) {
    return Argument.words(
        from.text().equals(to.text())
            ? Message.of("stays").with("from", from)
            : Message.of("moves").with("from", from).with("to", to));
  }

  static String number(double number) {
    return Double.isFinite(number) ? Decimals.shortest(number) : "that is not finite";
  }
}
