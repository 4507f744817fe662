package dev.jetting.rules.standard;

import dev.jetting.core.mixture.Overrun;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;

/** A pilot jet is judged by the closed throttle after a long open run, not by the idle. */
final class PilotOnOverrun {

  private static final ThrottleBand SHUT = ThrottleBand.at(ThrottleOpening.CLOSED);

  static final Rule RULE =
      RulePages.draft("pilot-on-overrun", "mixture")
          .title("Pilot circuit too lean for the overrun")
          .rationale(
              "With the throttle shut after a long open run the engine is at its hottest and turns"
                  + " fast, and only the pilot circuit feeds it fuel, and oil with it. A pilot jet"
                  + " a size too small idles well and seizes there.")
          .severity(Severity.DANGER)
          .within(SHUT)
          .judging(PilotOnOverrun::judge);

  private PilotOnOverrun() {}

  private static Outcome judge(AssessedSetting setting) {
    Overrun overrun = setting.overrun();
    Lambda limit = setting.riskModel().limits().overrun(setting.setup().engine().need());
    Margin margin =
        Margin.atMost(
            "setting.pilotJet",
            Measure.onOverrun(overrun.lambda()),
            Measure.onOverrun(limit),
            SHUT);
    if (!margin.fails()) {
      return Outcome.passed(margin);
    }
    return Outcome.failed(
        margin
            .finding()
            .with("speed", overrun.speed())
            .with("lambda", Remedies.lambda(overrun.lambda(), limit))
            .with("limit", Remedies.lambda(limit, overrun.lambda()))
            .with("share", Remedies.percent(overrun.fuelShareOfOpen()))
            .says(
                "Throttle shut at {speed}, the pilot alone gives {lambda}, leaner than {limit}, on"
                    + " the day when it is leanest; fuel and oil a turn are {share} of those at"
                    + " full throttle.",
                Remedy.Aim.richer(ThrottleOpening.CLOSED, Room.log(overrun.lambda(), limit))
                    .saying("Never ride down on a shut throttle with the clutch engaged.")));
  }
}
