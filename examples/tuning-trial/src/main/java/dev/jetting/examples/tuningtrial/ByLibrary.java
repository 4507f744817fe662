package dev.jetting.examples.tuningtrial;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Fault;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tuning as the library leads it: test what it asks for, change what it says, until it stops. */
final class ByLibrary {

  /** More entries than any rider would make. */
  private static final int MOST_ENTRIES = 60;

  private ByLibrary() {}

  static Course tune(TrueEngine engine, SetupSheet sheet, Rider rider, RiskModel riskModel) {
    TuningSession session = TuningSession.beginning(sheet);
    Tuner tuner = Tuner.readingWith(Set.of(rider.instrument())).withRiskModel(riskModel);
    int tests = 0;
    int changes = 0;
    NextStep next = tuner.next(session);
    while (!next.isEnd() && tests + changes < MOST_ENTRIES) {
      if (next instanceof NextStep.TickOff first) {
        session = session.checking(Set.copyOf(first.checks()));
      } else if (next instanceof NextStep.LookForFault look) {
        session = session.checking(settling(look));
      } else if (test(next).isPresent()) {
        session = session.observing(observation(engine, session, rider, test(next).get()));
        tests++;
      } else {
        Setting setting = change(next).setting();
        session = session.changing(session.now().setup().withSetting(setting));
        changes++;
      }
      next = tuner.next(session);
    }
    Setting end = session.now().setup().setting();
    RiskProfile profile = profile(session.now(), riskModel, tuner.calibration(session));
    Setting begin = sheet.setup().setting();
    RiskProfile untried = profile(sheet, riskModel, riskModel.untried());
    return new Course(
        tests,
        changes,
        !next.isEnd(),
        Truth.of(engine, sheet, begin, riskModel.limits()),
        Truth.of(engine, sheet, end, riskModel.limits()),
        held(engine, begin, untried),
        squares(engine, begin, untried),
        held(engine, end, profile),
        profile.worst().leanRisk().value());
  }

  /** He looks, and finds nothing: these engines have no fault. */
  private static Set<Check> settling(NextStep.LookForFault look) {
    return look.faults().stream().map(Fault::settledBy).collect(Collectors.toUnmodifiableSet());
  }

  private static Optional<NextTest> test(NextStep step) {
    if (step instanceof NextStep.Ride ride) {
      return Optional.of(ride.test());
    }
    return step instanceof NextStep.CheckReading again
        ? Optional.of(again.test())
        : Optional.empty();
  }

  private static NextChange change(NextStep step) {
    return step instanceof NextStep.MakeRicher richer
        ? richer.change()
        : ((NextStep.Change) step).change();
  }

  private static Observation observation(
      TrueEngine engine, TuningSession session, Rider rider, NextTest test) {
    ThrottleOpening throttle = test.throttle();
    var setup = session.now().setup();
    double lnLambda = engine.lnLambda(setup.setting(), throttle, test.speed());
    double lnNeeded = StrictMath.log(setup.engine().need().at(throttle).value());
    return new Observation(throttle, test.speed(), rider.read(test, lnLambda, lnNeeded));
  }

  private static RiskProfile profile(
      SetupSheet sheet, RiskModel riskModel, Calibration calibration) {
    return riskModel.profile(MixtureModel.of(sheet.setup()), Truth.OPENINGS, calibration);
  }

  private static int held(TrueEngine engine, Setting setting, RiskProfile profile) {
    int held = 0;
    for (RiskPoint point : profile.points()) {
      EngineSpeed speed = point.mixture().speed();
      double truth = engine.lnLambda(setting, point.mixture().throttle(), speed);
      boolean below = truth <= StrictMath.log(point.leanEnd());
      held += below && truth >= StrictMath.log(point.richEnd()) ? 1 : 0;
    }
    return held;
  }

  private static double squares(TrueEngine engine, Setting setting, RiskProfile profile) {
    double squares = 0;
    for (RiskPoint point : profile.points()) {
      EngineSpeed speed = point.mixture().speed();
      double truth = engine.lnLambda(setting, point.mixture().throttle(), speed);
      double off = (truth - StrictMath.log(point.lambda().value())) / point.spread();
      squares += off * off;
    }
    return squares;
  }
}
