package dev.jetting.rules.standard;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.util.List;

/** A pilot jet is judged by the closed throttle after a long open run, not by the idle. */
final class PilotOnOverrun {

  /** So many sizes of the pilot jet are a matter of the jet alone (assumed). */
  private static final int MOST_SIZES = 3;

  private static final ThrottleBand SHUT = ThrottleBand.at(ThrottleOpening.CLOSED);

  static final Rule RULE =
      Rule.named("pilot-on-overrun")
          .title("Pilot circuit too lean for the overrun")
          .rationale(
              "With the throttle shut after a long open run the engine is at its hottest and turns"
                  + " fast, and only the pilot circuit feeds it fuel, and oil with it. A pilot jet a"
                  + " size too small idles well and seizes there.")
          .severity(Severity.DANGER)
          .within(SHUT)
          .judging(PilotOnOverrun::judge);

  private PilotOnOverrun() {}

  private static Outcome judge(AssessedSetting setting) {
    Overrun overrun = setting.overrun();
    Lambda limit = setting.riskModel().limits().overrun(setting.setup().engine().need());
    if (overrun.lambda().compareTo(limit) <= 0) {
      return Outcome.passed();
    }
    return Outcome.failed(
        Finding.above(
                "setting.pilotJet",
                Measure.ratio(overrun.lambda().value()),
                Measure.ratio(limit.value()),
                SHUT)
            .with("speed", overrun.speed())
            .with("lambda", Remedies.lambda(overrun.lambda(), limit))
            .with("limit", Remedies.lambda(limit, overrun.lambda()))
            .with("share", Remedies.percent(overrun.fuelShareOfOpen()))
            .says(
                "Throttle shut at {speed}, the pilot alone gives {lambda}, leaner than {limit}, on the"
                    + " day when it is leanest; fuel and oil a turn are {share} of those at full"
                    + " throttle.",
                remedy(setting, Room.log(overrun.lambda(), limit))
                    + " Never ride down on a shut throttle with the clutch engaged."));
  }

  /** The jet, unless that is many sizes off and the outlet starves it. */
  private static String remedy(AssessedSetting setting, double need) {
    PartEffect jet = effect(MeteringPart.PILOT_JET, setting);
    PartEffect screw = effect(MeteringPart.SCREW, setting);
    return need <= MOST_SIZES * -jet.richer() || jet.richer() < screw.richer()
        ? "Fit the next bigger pilot jet ("
            + Remedies.change(jet.richer())
            + " a step) and set the screw anew."
        : Remedies.richer(List.of(screw, jet), setting.setting(), need);
  }

  /** What a step of the pilot jet or of the screw does to the pilot's fuel alone. */
  private static PartEffect effect(MeteringPart part, AssessedSetting assessed) {
    return new PartEffect(part, stepped(part, true, assessed), stepped(part, false, assessed), 0);
  }

  /** By how much ln λ on the overrun changes with a step of the pilot jet or of the screw. */
  static double stepped(MeteringPart part, boolean richer, AssessedSetting assessed) {
    Setup setup = assessed.setup();
    Setting now = assessed.setting();
    double step = assessed.riskModel().steps().of(part);
    Setting other =
        part == MeteringPart.SCREW
            ? now.withScrew(turned(now.screw(), richer ? step : -step))
            : now.withPilotJet(other(now.pilotJet(), richer ? step : -step));
    return Room.log(
        MixtureModel.of(setup.withSetting(other)).overrun().lambda(),
        MixtureModel.of(setup).overrun().lambda());
  }

  private static JetBore other(JetBore jet, double by) {
    double bore = jet.millimetres();
    return JetBore.ofMillimetres(Math.max(bore / 2, bore + by)); // no jet is shut by a step
  }

  private static Screw turned(Screw screw, double towardsRich) {
    double out = screw.kind() == ScrewKind.AIR ? -towardsRich : towardsRich;
    return new Screw(screw.kind(), ScrewTurns.of(Math.max(0, screw.turns().turns() + out)));
  }
}
