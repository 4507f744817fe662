package dev.jetting.examples.tuningtrial;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Look;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.Set;

/** Tuning as the library leads it: test what it asks for, change what it says, until it stops. */
final class ByLibrary {

  /** More entries than any rider would make. */
  private static final int MOST_ENTRIES = 60;

  private ByLibrary() {}

  static Course tune(TrueEngine engine, SetupSheet sheet, Rider rider, RiskModel riskModel) {
    TuningSession session = TuningSession.beginning(sheet);
    Set<Instrument> instruments = Set.of(rider.instrument());
    int tests = 0;
    int changes = 0;
    NextStep next = NextStep.of(session, riskModel, Meanings.assumed(), instruments);
    while (!next.isNone() && tests + changes < MOST_ENTRIES) {
      if (next.test().isPresent()) {
        session = session.seeing(look(engine, session, rider, next.test().get()));
        tests++;
      } else {
        Setting setting = next.change().orElseThrow().setting();
        session = session.changing(session.now().setup().withSetting(setting));
        changes++;
      }
      next = NextStep.of(session, riskModel, Meanings.assumed(), instruments);
    }
    Setting end = session.now().setup().setting();
    RiskProfile profile =
        profile(session.now(), riskModel, session.calibration(riskModel, Meanings.assumed()));
    Setting begin = sheet.setup().setting();
    RiskProfile untried = profile(sheet, riskModel, riskModel.untried());
    return new Course(
        tests,
        changes,
        !next.isNone(),
        Truth.of(engine, sheet, begin, riskModel.limits()),
        Truth.of(engine, sheet, end, riskModel.limits()),
        held(engine, begin, untried),
        squares(engine, begin, untried),
        held(engine, end, profile),
        profile.worst().leanRisk().value());
  }

  private static Look look(TrueEngine engine, TuningSession session, Rider rider, NextTest test) {
    ThrottleOpening throttle = test.throttle();
    var setup = session.now().setup();
    double lnLambda = engine.lnLambda(setup.setting(), throttle, test.speed());
    double lnNeeded = StrictMath.log(setup.engine().need().at(throttle).value());
    return new Look(throttle, test.speed(), rider.read(throttle, lnLambda, lnNeeded));
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
