package dev.jetting.rules.tuning;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a session says to a rider, piece by piece: sentences that a workshop says aloud. */
final class Words {

  private Words() {}

  /** Words that have one key for each constant of an enum. */
  static Message of(String area, Enum<?> constant) {
    return Message.of(area + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  static Message opening(ThrottleOpening throttle) {
    return throttle.equals(ThrottleOpening.CLOSED)
        ? Message.of("session.idle")
        : Message.plain("{throttle}").with("throttle", Argument.throttle(throttle));
  }

  static List<Message> howTo(NextTest test) {
    Stream<String> steps =
        switch (test.kind()) {
          case IDLE -> idle(test.instrument());
          case STEADY ->
              Stream.of(
                  "test.steady.begin",
                  "test.clutch",
                  "test.steady.hold",
                  "test.steady.clutch",
                  "test.one-change");
          case PLUG_CHOP ->
              Stream.of(
                  "test.chop.begin",
                  "test.clutch",
                  "test.chop.hold",
                  "test.chop.cut",
                  "test.chop.read",
                  "test.one-change");
          case ROLL_ON ->
              Stream.of(
                  "test.warm",
                  "test.clutch",
                  "test.roll-on.open",
                  "test.roll-on.read",
                  "test.one-change");
          case RUN_DOWN ->
              Stream.of(
                  "test.warm",
                  "test.clutch",
                  "test.run-down.shut",
                  "test.run-down.read",
                  "test.one-change");
        };
    return Stream.concat(Stream.of(what(test)), steps.map(Message::of)).toList();
  }

  private static Stream<String> idle(Instrument instrument) {
    Stream<String> read =
        instrument == Instrument.FEEL ? Stream.of() : Stream.of("test.idle.instrument");
    return Stream.of(
            Stream.of("test.idle.warm"),
            read,
            Stream.of("test.idle.screw", "test.idle.blip", "test.idle.air"))
        .flatMap(keys -> keys);
  }

  private static Message what(NextTest test) {
    Message what =
        switch (test.kind()) {
          case RUN_DOWN -> Message.of("test.run-down");
          case IDLE -> Message.of("test.idle");
          case STEADY, PLUG_CHOP, ROLL_ON ->
              Message.of("test.held").with("throttle", Argument.throttle(test.throttle()));
        };
    return what.with("speed", Argument.speed(test.speed()));
  }

  static Message correction(Correction correction) {
    boolean none =
        Math.abs(correction.percent()) <= correction.spread()
            || Decimals.fixed(correction.percent(), 0).matches("-?0");
    String how = none ? ".none" : correction.percent() < 0 ? ".less" : ".more";
    Message words =
        Message.of("correction." + correction.source().name().toLowerCase(Locale.ROOT) + how)
            .with("spread", percent(correction.spread()));
    return none ? words : words.with("percent", percent(Math.abs(correction.percent())));
  }

  static Argument percent(double percent) {
    return Argument.exact(Double.parseDouble(Decimals.fixed(percent, 0)), "%");
  }

  /** What was observed, as the rider would say it. */
  static Message observed(Observation observation) {
    Evidence evidence = observation.evidence();
    if (evidence instanceof Evidence.Idle idle) {
      return of("seen.idle", idle.answer());
    }
    if (evidence instanceof Evidence.Overrun overrun) {
      return of("seen.run-down", overrun.runDown());
    }
    boolean saysIdle =
        observation.throttle().equals(ThrottleOpening.CLOSED)
            && evidence.equals(new Evidence.Felt(Symptom.HANGS));
    return saysIdle ? of("seen", Symptom.HANGS) : at(observation.throttle(), seen(evidence));
  }

  private static Message at(ThrottleOpening throttle, Argument what) {
    return throttle.equals(ThrottleOpening.CLOSED)
        ? Message.of("session.at.idle").with("what", what)
        : Message.of("session.at").with("what", what).with("throttle", Argument.throttle(throttle));
  }

  private static Argument seen(Evidence evidence) {
    if (evidence instanceof Evidence.Wideband wideband) {
      return Argument.lambda(wideband.lambda());
    }
    if (evidence instanceof Evidence.Colour plug) {
      return Argument.words(of("seen.plug", plug.colour()));
    }
    if (evidence instanceof Evidence.Felt felt) {
      return Argument.words(of("seen", felt.symptom()));
    }
    if (evidence instanceof Evidence.ExhaustTemperature exhaust) {
      double hotter = exhaust.hotter().kelvin();
      return Argument.words(
          Message.of(hotter < 0 ? "seen.exhaust.cooler" : "seen.exhaust.hotter")
              .with("difference", Argument.name(Decimals.fixed(Math.abs(hotter), 0))));
    }
    return Argument.word("seen.proven");
  }
}
