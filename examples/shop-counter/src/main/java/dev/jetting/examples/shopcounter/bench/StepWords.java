package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Fault;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.RiskLeft;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import java.util.List;
import java.util.stream.Stream;

/** The library's step in one language. */
record StepWords(Words words, TuningSession session, Tuner tuner) {

  StepView step(NextStep step) {
    if (step instanceof NextStep.TickOff first) {
      return checks(StepView.Kind.CHECK, "step.check", message("step.check.why"), first.checks());
    }
    if (step instanceof NextStep.Ride ride) {
      return ride(ride);
    }
    if (step instanceof NextStep.CheckReading again) {
      Message title = message("step.again", "seen", again.observation().message());
      return test(StepView.Kind.READ_AGAIN, title, message("step.again.why"), again.test());
    }
    if (step instanceof NextStep.LookForFault look) {
      return fault(look);
    }
    if (step instanceof NextStep.MakeRicher richer) {
      return change(
          StepView.Kind.STOP_AND_CHANGE,
          message("step.richer", "part", richer.change().to()),
          message("step.richer.why", "seen", seen(richer.sign().observation())),
          richer.change());
    }
    if (step instanceof NextStep.Change change) {
      return change(
          StepView.Kind.CHANGE,
          message("step.change", "part", change.change().to()),
          change
              .because()
              .map(sign -> message("step.change.seen", "seen", seen(sign.observation())))
              .orElse(Message.plain("")),
          change.change());
    }
    return end(step);
  }

  private StepView end(NextStep step) {
    if (step instanceof NextStep.Confirmed confirmed) {
      return said(
          StepView.Kind.CONFIRMED,
          "step.confirmed",
          message("step.confirmed.why", "risk", Argument.risk(confirmed.left().risk())));
    }
    if (step instanceof NextStep.LeftRich rich) {
      List<Argument> signs =
          rich.signs().stream().map(sign -> Argument.words(sign.observation().message())).toList();
      Message all = Message.plain("{signs}").with("signs", Argument.items(signs));
      return said(
          StepView.Kind.LEFT_RICH,
          "step.left-rich",
          message("step.left-rich.why", "seen", capital(all)));
    }
    if (step instanceof NextStep.Refused refused) {
      return refused(refused);
    }
    if (step instanceof NextStep.Reserved reserved) {
      return reserved(reserved);
    }
    if (step instanceof NextStep.FaultLeft left) {
      return checks(
          StepView.Kind.PARKED,
          "step.fault-left",
          message(
              "step.fault-left.why",
              "seen",
              seen(left.observation()),
              "faults",
              any(left.faults())),
          settling(left.faults()));
    }
    if (step instanceof NextStep.Unread unread) {
      return said(
          StepView.Kind.PARKED,
          "step.unread",
          message("step.unread.why", "seen", capital(unread.observation().message())));
    }
    return step instanceof NextStep.NotToBeRidden parked
        ? parked(parked)
        : said(StepView.Kind.PARKED, "step.parked", message("step.ended"));
  }

  private StepView refused(NextStep.Refused refused) {
    List<String> dangers =
        refused.dangers().stream()
            .flatMap(
                found -> Stream.of(found.finding().words(), found.finding().remedy().message()))
            .map(words::say)
            .toList();
    return new StepView(
        StepView.Kind.PARKED,
        words.say("step.refused"),
        words.say("step.refused.why"),
        dangers,
        List.of(),
        "",
        "");
  }

  private StepView reserved(NextStep.Reserved reserved) {
    RiskLeft left = reserved.left();
    if (reserved.faults().isEmpty()) {
      return said(
          StepView.Kind.RESERVED,
          "step.uphill",
          message("step.uphill.why", "risk", Argument.risk(left.risk(), left.accepted())));
    }
    return checks(
        StepView.Kind.RESERVED,
        "step.reserved",
        message(
            "step.reserved.why",
            "faults",
            any(reserved.faults()),
            "risk",
            Argument.risk(left.risk())),
        settling(reserved.faults()));
  }

  private StepView parked(NextStep.NotToBeRidden parked) {
    Message get =
        parked.parts().isEmpty()
            ? message("step.parked.plan")
            : message("step.parked.buy", "parts", Argument.items(parked.parts()));
    Message why = Words.sentences(message("step.parked.why"), get);
    if (parked.faults().isEmpty()) {
      return said(StepView.Kind.PARKED, "step.parked", why);
    }
    Message first = message("step.parked.fault", "faults", any(parked.faults()));
    return checks(
        StepView.Kind.PARKED,
        "step.parked",
        Words.sentences(first, why),
        settling(parked.faults()));
  }

  private StepView fault(NextStep.LookForFault look) {
    return checks(
        StepView.Kind.STOP_AND_LOOK,
        "step.fault",
        message("step.fault.why", "seen", seen(look.observation()), "faults", any(look.faults())),
        settling(look.faults()));
  }

  private static List<Check> settling(List<Fault> faults) {
    return faults.stream().map(Fault::settledBy).distinct().toList();
  }

  private static Message any(List<Fault> faults) {
    return Words.joined("step.or", faults.stream().map(Fault::message).toList());
  }

  private StepView ride(NextStep.Ride ride) {
    NextTest test = ride.test();
    Message title =
        switch (test.kind()) {
          case IDLE -> message("step.test.idle");
          case RUN_DOWN -> message("step.test.overrun");
          default -> message("step.test", "throttle", Argument.throttle(test.throttle()));
        };
    Message again = ride.confirming() ? message("step.test.confirming") : Message.plain("");
    Message risk = message("step.test.risk", "risk", Argument.risk(test.risk()));
    return test(StepView.Kind.RIDE, title, Words.sentences(again, risk), test);
  }

  private StepView test(StepView.Kind kind, Message title, Message why, NextTest test) {
    return new StepView(
        kind,
        words.say(title),
        words.say(why),
        test.steps().stream().map(words::say).toList(),
        List.of(),
        StepView.key(test.throttle()),
        words.say(Argument.opening(test.throttle())));
  }

  /** The highest of any day, climbs included. */
  private static Argument risk(AssessedSetting assessed) {
    return Argument.risk(assessed.worst().leanRisk(), assessed.sheet().riding().acceptedRisk());
  }

  private AssessedSetting with(Setting setting) {
    SetupSheet now = session.now();
    return AssessedSetting.of(
        now.withSetup(now.setup().withSetting(setting)),
        tuner.riskModel(),
        tuner.calibration(session));
  }

  private StepView change(StepView.Kind kind, Message title, Message first, NextChange change) {
    Message risk =
        message(
            "step.change.risk",
            "risk",
            risk(tuner.assess(session)),
            "riskAfter",
            risk(with(change.setting())));
    return new StepView(
        kind,
        words.say(title),
        words.say(Words.sentences(first, change.reason().message())),
        List.of(words.say(risk), words.say("step.change.one")),
        List.of(),
        "",
        "");
  }

  private StepView said(StepView.Kind kind, String title, Message why) {
    return checks(kind, title, why, List.of());
  }

  private StepView checks(StepView.Kind kind, String title, Message why, List<Check> checks) {
    List<StepView.CheckLine> lines =
        checks.stream().map(check -> StepView.CheckLine.of(check, words)).toList();
    return new StepView(kind, words.say(title), words.say(why), List.of(), lines, "", "");
  }

  private Argument seen(Observation observation) {
    return capital(observation.message());
  }

  private Argument capital(Message message) {
    return words.capital(message);
  }

  private static Message message(String key, Object... values) {
    return Words.message(key, values);
  }
}
