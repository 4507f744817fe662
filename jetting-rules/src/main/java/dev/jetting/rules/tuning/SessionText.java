package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tuning session as plain text for people: where it stands, what the readings say of the engine,
 * what to be wary of, and what to do next. Lines end in {@code \n} and are as long as they come;
 * the same bytes in every locale. Characters that would steer a terminal are replaced.
 *
 * <p>Not for programs: they read {@link NextStep}. Never a promise of safety.
 */
public final class SessionText {

  private final StringBuilder text = new StringBuilder();

  private SessionText() {}

  /**
   * Renders a session.
   *
   * @param session the session so far
   * @param tuner who leads it
   * @return its text
   */
  public static String of(TuningSession session, Tuner tuner) {
    SessionText page = new SessionText();
    Findings findings = new Findings(tuner, session);
    Calibration calibration = findings.calibration();
    page.stands(session.now(), AssessedSetting.of(session.now(), tuner.riskModel(), calibration));
    page.proof(findings);
    if (!calibration.readings().isEmpty()) {
      page.engine(session.now(), session.now().riskModel(tuner.riskModel()).untried(), calibration);
    }
    page.crisp(session);
    page.next(tuner.next(session));
    return page.text.toString();
  }

  private void stands(SetupSheet now, AssessedSetting assessed) {
    line(now.title());
    line("Setting: " + parts(now.setup().setting()));
    Probability accepted = now.riding().acceptedRisk();
    RiskPoint today = assessed.profile().worst();
    RiskPoint worst =
        Stream.of(assessed.profile(), assessed.coldest(), assessed.hottest())
            .map(RiskProfile::worst)
            .reduce((a, b) -> b.leanRisk().isMoreThan(a.leanRisk()) ? b : a)
            .orElseThrow();
    line(
        "Lean risk on the worst day: "
            + at(worst, accepted)
            + "; "
            + TradeStyle.probability(accepted)
            + " accepted.");
    if (worst.leanRisk().isMoreThan(today.leanRisk())) {
      line("Today: " + at(today, accepted) + ".");
    }
  }

  private void proof(Findings findings) {
    int observations = findings.known().readings().size();
    if (findings.isProofDoubted()) {
      line(
          "The proven setting no longer counts: what was read now contradicts it. Something has"
              + " changed since it was proven. Look for what.");
    } else if (observations > 0) {
      line(
          "The proven setting counts, by "
              + (observations == 1 ? "one observation." : observations + " observations."));
    }
  }

  private static String at(RiskPoint worst, Probability accepted) {
    return TradeStyle.probability(worst.leanRisk(), accepted)
        + " at "
        + TradeStyle.throttle(worst.mixture().throttle());
  }

  /** How the engine differs from what was expected of it, where a rider can hold the throttle. */
  private void engine(SetupSheet now, Calibration untried, Calibration read) {
    heading("What the readings say of the engine");
    MixtureModel model = MixtureModel.of(now.setup());
    for (ThrottleOpening held : Held.OPENINGS) {
      double leaner =
          read.on(model).expected(held).value() / untried.on(model).expected(held).value() - 1;
      double spread =
          read.lnLambda(model, held, now.setup().engine().loadLine().at(held)).deviation();
      String percent = Decimals.fixed(100 * Math.abs(leaner), 0);
      String how =
          percent.equals("0")
              ? "as expected"
              : percent + " % " + (leaner > 0 ? "leaner" : "richer") + " than expected";
      item(
          capital(Words.opening(held))
              + ": it runs "
              + how
              + ", give or take "
              + Decimals.fixed(100 * spread, 0)
              + " %.");
    }
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private void crisp(TuningSession session) {
    Optional<Observation> crisp =
        session.steps().stream()
            .flatMap(step -> step.observations().stream())
            .filter(seen -> seen.evidence().equals(new Evidence.Felt(Symptom.CRISP)))
            .findFirst();
    if (crisp.isPresent()) {
      heading("Be wary");
      item(
          "Crisp at "
              + Words.opening(crisp.get().throttle())
              + " is no proof of a good mixture: the last step before too lean feels best. Read the"
              + " plug before going leaner.");
    }
  }

  private void next(NextStep step) {
    if (step instanceof NextStep.TickOff first) {
      heading("Before the first test, check and tick off");
      first.checks().forEach(check -> item(Words.check(check)));
    } else if (step instanceof NextStep.Ride ride) {
      ride(ride);
    } else if (step instanceof NextStep.CheckReading again) {
      heading("Check the reading: " + Words.observed(again.observation()));
      item("It does not fit what else was read, so it does not count yet.");
      item("Change no part. Take the reading once more; the last two have to agree.");
      again.test().howTo().forEach(this::item);
    } else if (step instanceof NextStep.LookForFault look) {
      look(look);
    } else if (step instanceof NextStep.MakeRicher richer) {
      heading("Stop. Make it richer before it is ridden again: " + richer.change().what());
      item(
          capital(Words.observed(richer.sign().observation()))
              + " means that the engine is being hurt there.");
      item("This part acts there. More changes follow until that opening is two sizes richer.");
      item("Then do the checks for an air leak, timing and fuel supply before the next ride.");
      lambdas(richer.change());
    } else if (step instanceof NextStep.Change next) {
      change(next);
    } else {
      end(step);
    }
  }

  private void ride(NextStep.Ride ride) {
    heading(
        "Test next: "
            + (ride.test().kind() == NextTest.Kind.RUN_DOWN
                ? "overrun"
                : Words.opening(ride.test().throttle())));
    if (ride.confirming()) {
      item(
          "Nothing is left to change. Every circuit adds fuel at full throttle, so read it again.");
    }
    ride.test().howTo().forEach(this::item);
  }

  private void look(NextStep.LookForFault look) {
    heading("Look for a fault: " + Words.observed(look.observation()));
    item("It does not fit what else was read. Do not ride it, and change no jet yet.");
    look.faults()
        .forEach(
            fault ->
                item(
                    "It may be "
                        + Words.fault(fault)
                        + ". Check: "
                        + Words.check(fault.settledBy())));
    item("If you find one, mend it and begin a new session: it is another engine then.");
    item(
        "If you find none, tick the checks off. Then the readings count, and the session goes on.");
  }

  private void change(NextStep.Change next) {
    heading("Change next: " + next.change().what());
    next.because()
        .ifPresent(
            sign ->
                item(
                    capital(Words.observed(sign.observation()))
                        + (sign.isLean()
                            ? " means that it is lean there."
                            : " means that it is too rich there.")));
    item(next.change().reason().text());
    item("One change, then read again: never two moves towards lean without a reading.");
    lambdas(next.change());
  }

  private void end(NextStep step) {
    if (step instanceof NextStep.NotToBeRidden parked) {
      heading("Not to be ridden: too lean, and no part at hand makes it rich enough");
      parked.sign().ifPresent(sign -> item(capital(Words.observed(sign.observation())) + "."));
      item(
          parked.buy().isEmpty()
              ? "Get richer parts: the report on this setting names them."
              : "Get " + String.join(", ", parked.buy()) + " and begin again from there.");
    } else if (step instanceof NextStep.LeftRich rich) {
      heading("Safe by all readings, but too rich in one place");
      item(
          capital(Words.observed(rich.sign().observation()))
              + ": no part at hand makes it leaner there safely.");
      left(rich.left());
      item(COLDEST);
    } else if (step instanceof NextStep.Confirmed confirmed) {
      heading("Nothing to test or change");
      item("Full throttle was read on this setting, and everything that was read agrees.");
      left(confirmed.left());
      item(COLDEST);
    } else if (step instanceof NextStep.Reserved reserved) {
      heading("Not confirmed: a fault may be left");
      left(reserved.left());
      reserved
          .faults()
          .forEach(
              fault ->
                  item(
                      "It may be "
                          + Words.fault(fault)
                          + ". Check once more: "
                          + Words.check(fault.settledBy())));
      item("No part at hand is rich enough for that. Do not ride it hard until it is settled.");
      item("If you find the fault, mend it and begin a new session: it is another engine then.");
    }
  }

  /** The risk that readings leave, faults that they do not rule out among it. */
  private void left(RiskLeft left) {
    item(
        "The lean risk that is left is "
            + TradeStyle.probability(left.risk(), left.accepted())
            + ", with the faults that are not ruled out. You accept "
            + TradeStyle.probability(left.accepted())
            + ".");
  }

  private static final String COLDEST =
      "Write it down with the air of the day. Before you trust it, ride it on the coldest morning"
          + " with the next bigger main jet in your pocket.";

  private void lambdas(NextChange change) {
    List<RiskPoint> before = change.before().points();
    for (int i = 0; i < before.size(); i++) {
      RiskPoint was = before.get(i);
      RiskPoint becomes = change.after().points().get(i);
      if (Held.OPENINGS.contains(was.mixture().throttle())) {
        item(
            Words.opening(was.mixture().throttle())
                + ": "
                + TradeStyle.lambda(was.lambda())
                + " becomes "
                + TradeStyle.lambda(becomes.lambda())
                + ", lean risk "
                + TradeStyle.probability(was.leanRisk())
                + " becomes "
                + TradeStyle.probability(becomes.leanRisk()));
      }
    }
  }

  private static String parts(Setting setting) {
    return String.join(
        ", ",
        TradeStyle.main(setting.mainJet()),
        TradeStyle.pilot(setting.pilotJet()),
        TradeStyle.screw(setting.screw().kind(), setting.screw().turns()),
        TradeStyle.cutaway(setting.cutaway()),
        "needle jet " + TradeStyle.diameter(setting.needleJet().bore()),
        "needle " + setting.needle().id(),
        TradeStyle.clip(setting.clip()));
  }

  private void heading(String heading) {
    text.append('\n');
    line(heading);
  }

  private void item(String item) {
    line("- " + item);
  }

  private void line(String line) {
    text.append(line.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "\uFFFD")).append('\n');
  }
}
