package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tuning session as plain text for people: where it stands, what the readings say of the engine,
 * what to be wary of, and what to do next. Lines end in {@code \n} and are as long as they come;
 * the same bytes whatever the machine's locale. It is English unless the caller names another
 * wording. Characters that would steer a terminal are replaced.
 *
 * <p>Not for programs: they read {@link NextStep}. Never a promise of safety.
 */
public final class SessionText {

  private static final Message ON_OVERRUN = Message.of("session.parked.overrun");

  private final StringBuilder text = new StringBuilder();

  private final Wording wording;

  private SessionText(Wording wording) {
    this.wording = Objects.requireNonNull(wording, "wording");
  }

  /**
   * Renders a session.
   *
   * @param session the session so far
   * @param tuner who leads it
   * @return its text
   */
  public static String of(TuningSession session, Tuner tuner) {
    return of(session, tuner, Wording.english());
  }

  /**
   * Renders a session in the words of a language.
   *
   * @param session the session so far
   * @param tuner who leads it
   * @param wording the words
   * @return its text
   */
  public static String of(TuningSession session, Tuner tuner, Wording wording) {
    SessionText page = new SessionText(wording);
    Findings findings = new Findings(tuner, session);
    Calibration calibration = findings.calibration();
    page.stands(session.now(), AssessedSetting.of(session.now(), tuner.riskModel(), calibration));
    page.proof(findings);
    if (!calibration.readings().isEmpty()) {
      page.engine(session.now(), session.now().riskModel(tuner.riskModel()).untried(), calibration);
    }
    page.crisp(session);
    page.next(session, tuner.next(session));
    return page.text.toString();
  }

  private void stands(SetupSheet now, AssessedSetting assessed) {
    line(now.title());
    line(Message.of("session.setting").with("parts", Argument.items(parts(now.setup().setting()))));
    Probability accepted = now.riding().acceptedRisk();
    WorstSpot worst = assessed.worst();
    line(
        at(Message.of("session.worst"), worst, accepted).with("accepted", Argument.risk(accepted)));
    if (worst.day() != WorstSpot.Day.TODAY) {
      WorstSpot today = WorstSpot.of(WorstSpot.Day.TODAY, assessed.profile());
      line(at(Message.of("session.today"), today, accepted));
    }
  }

  private void proof(Findings findings) {
    int observations = findings.known().readings().size();
    if (findings.isProofDoubted()) {
      line(Message.of("session.proof.doubted"));
    } else if (observations > 0) {
      Message counted =
          Message.of("observations").with(Message.COUNT, Argument.count(observations));
      line(Message.of("session.proof.counts").with("observations", Argument.words(counted)));
    }
  }

  private static Message at(Message message, WorstSpot worst, Probability accepted) {
    return message
        .with("risk", Argument.risk(worst.leanRisk(), accepted))
        .with("throttle", Argument.throttle(worst.throttle()))
        .with("speed", Argument.speed(worst.speed()));
  }

  /** How the engine differs from what was expected of it, where a rider can hold the throttle. */
  private void engine(SetupSheet now, Calibration untried, Calibration read) {
    heading(Message.of("session.engine"));
    MixtureModel model = MixtureModel.of(now.setup());
    for (ThrottleOpening held : Held.OPENINGS) {
      double leaner =
          read.on(model).expected(held).value() / untried.on(model).expected(held).value() - 1;
      double spread =
          read.lnLambda(model, held, now.setup().engine().loadLine().at(held)).deviation();
      boolean none = Decimals.fixed(100 * Math.abs(leaner), 0).equals("0");
      String how = none ? "expected" : leaner > 0 ? "leaner" : "richer";
      Message differs =
          Message.of("session.engine." + how)
              .with("opening", capital(Words.opening(held)))
              .with("spread", Words.percent(100 * spread));
      item(none ? differs : differs.with("by", Words.percent(100 * Math.abs(leaner))));
    }
  }

  /** Words at the start of a sentence. */
  private Argument capital(Message message) {
    String words = wording.text(message);
    return Argument.name(Character.toUpperCase(words.charAt(0)) + words.substring(1));
  }

  private void crisp(TuningSession session) {
    Optional<Observation> crisp =
        session.steps().stream()
            .flatMap(step -> step.observations().stream())
            .filter(seen -> seen.evidence().equals(new Evidence.Felt(Symptom.CRISP)))
            .findFirst();
    if (crisp.isPresent()) {
      ThrottleOpening throttle = crisp.get().throttle();
      heading(Message.of("session.wary"));
      item(
          throttle.equals(ThrottleOpening.CLOSED)
              ? Message.of("session.crisp.idle")
              : Message.of("session.crisp").with("throttle", Argument.throttle(throttle)));
    }
  }

  private void next(TuningSession session, NextStep step) {
    if (step instanceof NextStep.TickOff first) {
      heading(Message.of("session.tick-off"));
      first.checks().forEach(check -> item(check.message()));
    } else if (step instanceof NextStep.Ride ride) {
      ride(session, ride);
    } else if (step instanceof NextStep.CheckReading again) {
      heading(observed("session.again", again.observation()));
      items("session.again.not-yet", "session.again.once-more");
      again.test().steps().forEach(this::item);
    } else if (step instanceof NextStep.LookForFault look) {
      look(look);
    } else if (step instanceof NextStep.MakeRicher richer) {
      heading(Message.of("session.richer").with("part", richer.change().to()));
      item(capital("session.richer.why", richer.sign().observation()));
      seized(richer.sign().observation());
      items("session.richer.how-far", "session.richer.then");
      lambdas(richer.change());
    } else if (step instanceof NextStep.Change next) {
      change(next);
    } else {
      end(step);
    }
  }

  private static Message observed(String key, Observation observation) {
    return Message.of(key).with("observed", Argument.words(observation.message()));
  }

  private Message capital(String key, Observation observation) {
    return Message.of(key).with("observed", capital(observation.message()));
  }

  private void ride(TuningSession session, NextStep.Ride ride) {
    Message opening =
        ride.test().kind() == NextTest.Kind.RUN_DOWN
            ? Message.of("session.overrun")
            : Words.opening(ride.test().throttle());
    heading(Message.of("session.test").with("opening", Argument.words(opening)));
    if (ride.confirming()) {
      items("session.test.confirming");
    }
    if (isAskedAgain(session, ride.test())) {
      items("session.test.no-proof");
    }
    ride.test().steps().forEach(this::item);
  }

  /** Whether the last answer to this very test says too little of the mixture. */
  private static boolean isAskedAgain(TuningSession session, NextTest test) {
    List<Observation> seen = session.last().observations();
    return !seen.isEmpty()
        && seen.get(seen.size() - 1).throttle().equals(test.throttle())
        && test.kind() != NextTest.Kind.RUN_DOWN
        && !SignReader.isConclusive(seen.get(seen.size() - 1));
  }

  private void look(NextStep.LookForFault look) {
    heading(
        look.why() == NextStep.LookForFault.Why.TOGETHER
            ? Message.of("session.fault.together")
            : observed("session.fault", look.observation()));
    item(Words.of("session.fault.why", look.why()));
    seized(look.observation());
    beside(look.observation());
    look.faults().forEach(fault -> item(fault("session.fault.may-be", fault)));
    items("session.fault.found", "session.fault.not-found");
  }

  private void seized(Observation observation) {
    if (observation.evidence().equals(new Evidence.Felt(Symptom.SEIZES))) {
      items("session.seized");
    }
  }

  /** What looks lean and is neither the setting nor one of the faults of an engine. */
  private void beside(Observation observation) {
    if (observation.evidence() instanceof Evidence.Wideband) {
      items("session.fault.sensor");
    } else if (observation.evidence().equals(new Evidence.Felt(Symptom.PINGS))) {
      items("session.fault.octane");
    }
  }

  private static Message fault(String key, Fault fault) {
    return Message.of(key)
        .with("fault", Argument.words(fault.message()))
        .with("check", Argument.words(fault.settledBy().message()));
  }

  private void change(NextStep.Change next) {
    heading(Message.of("session.change").with("part", next.change().to()));
    next.because()
        .ifPresent(
            sign ->
                item(
                    capital(
                        sign.isLean() ? "session.change.lean" : "session.change.rich",
                        sign.observation())));
    item(next.change().reason().message());
    items("session.change.one");
    lambdas(next.change());
  }

  private void end(NextStep step) {
    if (step instanceof NextStep.NotToBeRidden parked) {
      heading(Message.of("session.parked"));
      parked
          .sign()
          .ifPresentOrElse(
              sign -> item(capital("session.parked.sign", sign.observation())),
              () -> item(parked.worst().map(SessionText::tooLean).orElse(ON_OVERRUN)));
      if (!parked.faults().isEmpty()) {
        items("session.parked.fault");
        parked.faults().forEach(fault -> item(fault("session.fault.may-be", fault)));
      }
      item(
          parked.parts().isEmpty()
              ? Message.of("session.parked.report")
              : Message.of("session.parked.buy").with("parts", Argument.items(parked.parts())));
    } else if (step instanceof NextStep.FaultLeft left) {
      heading(observed("session.fault-left", left.observation()));
      seized(left.observation());
      beside(left.observation());
      left.faults().forEach(fault -> item(fault("session.fault.may-be", fault)));
      items("session.fault-left.then");
    } else if (step instanceof NextStep.Unread unread) {
      heading(observed("session.unread", unread.observation()));
      items("session.unread.then");
    } else if (step instanceof NextStep.LeftRich rich) {
      heading(Message.of("session.left-rich"));
      rich.signs().forEach(sign -> item(capital("session.left-rich.sign", sign.observation())));
      items("session.left-rich.parts");
      left(rich.left());
      items("session.coldest");
    } else if (step instanceof NextStep.Confirmed confirmed) {
      heading(Message.of("session.confirmed"));
      items("session.confirmed.read");
      left(confirmed.left());
      items("session.coldest");
    } else if (step instanceof NextStep.Reserved reserved) {
      heading(
          Message.of(reserved.faults().isEmpty() ? "session.reserved.uphill" : "session.reserved"));
      left(reserved.left());
      reserved.faults().forEach(fault -> item(fault("session.reserved.may-be", fault)));
      if (reserved.faults().isEmpty()) {
        items("session.reserved.climbs");
      } else {
        items("session.reserved.stop", "session.reserved.found");
      }
    } else if (step instanceof NextStep.Refused refused) {
      heading(Message.of("session.refused"));
      refused.dangers().forEach(this::danger);
      items("session.refused.then");
    }
  }

  private static Message tooLean(ThrottleOpening worst) {
    return worst.equals(ThrottleOpening.CLOSED)
        ? Message.of("session.parked.idle")
        : Message.of("session.parked.at").with("throttle", Argument.throttle(worst));
  }

  private void danger(RankedFinding found) {
    item(found.finding().words());
    item(found.finding().remedy().message());
  }

  /** The risk that readings leave, faults that they do not rule out among it. */
  private void left(RiskLeft left) {
    item(
        Message.of("session.left")
            .with("risk", Argument.risk(left.risk(), left.accepted()))
            .with("accepted", Argument.risk(left.accepted())));
  }

  private void lambdas(NextChange change) {
    List<RiskPoint> before = change.before().points();
    for (int i = 0; i < before.size(); i++) {
      RiskPoint was = before.get(i);
      RiskPoint becomes = change.after().points().get(i);
      if (Held.OPENINGS.contains(was.mixture().throttle())) {
        item(
            Message.of("session.lambdas")
                .with("opening", Argument.words(Words.opening(was.mixture().throttle())))
                .with("before", Argument.lambda(was.lambda()))
                .with("after", Argument.lambda(becomes.lambda()))
                .with("risk", Argument.risk(was.leanRisk()))
                .with("riskAfter", Argument.risk(becomes.leanRisk())));
      }
    }
  }

  private static List<Argument> parts(Setting setting) {
    return List.of(
        Argument.mainJet(setting.mainJet()),
        Argument.pilotJet(setting.pilotJet()),
        Argument.screw(setting.screw().kind(), setting.screw().turns()),
        Argument.cutaway(setting.cutaway()),
        Argument.needleJet(setting.needleJet().bore()),
        Argument.needle(setting.needle().id()),
        Argument.clip(setting.clip()));
  }

  private void heading(Message heading) {
    text.append('\n');
    line(heading);
  }

  private void items(String... keys) {
    Stream.of(keys).map(Message::of).forEach(this::item);
  }

  private void item(Message item) {
    line("- " + wording.text(item));
  }

  private void line(Message line) {
    line(wording.text(line));
  }

  private void line(String line) {
    text.append(line.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "\uFFFD")).append('\n');
  }
}
