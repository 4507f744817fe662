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
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;

/** A pilot jet is judged by the closed throttle after a long open run, not by the idle. */
final class PilotOnOverrun {

  private static final ThrottleBand SHUT = ThrottleBand.at(ThrottleOpening.CLOSED);

  static final Rule RULE =
      RulePages.draft("pilot-on-overrun", "mixture")
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
            .worstAt(ThrottleOpening.CLOSED, overrun.speed())
            .with("speed", Argument.exact(overrun.speed().rpm(), "rpm"))
            .with("lambda", Argument.lambda(overrun.lambda(), limit))
            .with("limit", Argument.lambda(limit, overrun.lambda()))
            .with("share", Argument.share(overrun.fuelShareOfOpen()))
            .says(
                Message.of("rule.pilot-on-overrun.finding"),
                Remedy.Aim.richer(ThrottleOpening.CLOSED, Headroom.log(overrun.lambda(), limit))
                    .saying(Message.of("rule.pilot-on-overrun.remedy"))));
  }
}
