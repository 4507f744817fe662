package dev.jetting.examples.tuningtrial;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Fault;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.NextChange;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tuning as the library leads it: test what it asks for, change what it says, until it stops. */
final class ByLibrary {

  /** More than any session of the published trial takes. */
  private static final int MOST_ENTRIES = 100;

  /** How far a screw is turned to see what the idle does, turns out. */
  private static final double SCREW_IN = 0.75;

  private static final double SCREW_OUT = 2.5;

  private TrueEngine engine;
  private final Rider rider;
  private final RiskModel riskModel;
  private final Optional<Check> finding;
  private final boolean isMended;

  /**
   * A rider, his engine, and what is wrong with it.
   *
   * @param world what is wrong, and whether he finds it when he is asked to look there
   */
  ByLibrary(TrueEngine engine, Rider rider, RiskModel riskModel, World world) {
    this.engine = engine;
    this.rider = rider;
    this.riskModel = riskModel;
    finding = world.trouble().flatMap(Trouble::check);
    isMended = world.isMended();
  }

  Course tune(SetupSheet sheet) {
    Truth start = Truth.of(engine, sheet, sheet.setup().setting(), riskModel.limits());
    TuningSession session = TuningSession.beginning(sheet);
    Tuner tuner = Tuner.readingWith(Set.of(rider.instrument())).withRiskModel(riskModel);
    Said said = Said.NOTHING;
    int tests = 0;
    int changes = 0;
    NextStep next = tuner.next(session);
    while (!next.isEnd() && tests + changes < MOST_ENTRIES) {
      if (next instanceof NextStep.TickOff first) {
        session = session.checking(Set.copyOf(first.checks()));
      } else if (next instanceof NextStep.LookForFault look) {
        Set<Check> checks = settling(look);
        boolean its = finding.filter(checks::contains).isPresent();
        said = said.withFault(its);
        if (its && isMended && engine instanceof Altered sick) {
          engine = sick.sound();
          session = TuningSession.beginning(session.now());
        } else {
          session = session.checking(checks);
        }
      } else if (test(next).isPresent()) {
        NextTest test = test(next).get();
        said = next instanceof NextStep.CheckReading ? said.withReadAgain() : said;
        said = said.withTest(isLean(session, test));
        session = idling(session, test).observing(observation(session, test));
        tests++;
      } else {
        Setting setting = change(next).setting();
        session = session.changing(session.now().setup().withSetting(setting));
        changes++;
      }
      next = tuner.next(session);
    }
    Setting end = session.now().setup().setting();
    RiskProfile profile = profile(session.now(), tuner.calibration(session));
    Setting begin = sheet.setup().setting();
    RiskProfile untried = profile(sheet, riskModel.untried());
    return new Course(
        tests,
        changes,
        said.with(ending(next)),
        start,
        Truth.of(engine, sheet, end, riskModel.limits()),
        held(begin, untried),
        squares(begin, untried),
        held(end, profile),
        profile.worst().leanRisk().value());
  }

  private static Said.Ending ending(NextStep step) {
    if (step instanceof NextStep.NotToBeRidden
        || step instanceof NextStep.FaultLeft
        || step instanceof NextStep.Unread
        || step instanceof NextStep.Refused) {
      return Said.Ending.NOT_TO_BE_RIDDEN;
    }
    if (step instanceof NextStep.LeftRich) {
      return Said.Ending.LEFT_RICH;
    }
    if (step instanceof NextStep.Reserved) {
      return Said.Ending.RESERVED;
    }
    return step.isEnd() ? Said.Ending.CONFIRMED : Said.Ending.NONE;
  }

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

  /** With an idle that races, where he hears it. */
  private TuningSession idling(TuningSession session, NextTest test) {
    double falseAir = engine.falseAir(session.now().setup().setting());
    return test.kind() == NextTest.Kind.IDLE && rider.hearsItRace(falseAir)
        ? session.observing(
            new Observation(test.throttle(), test.speed(), new Evidence.Idle(IdleAnswer.RACES)))
        : session;
  }

  private Observation observation(TuningSession session, NextTest test) {
    MixtureNeed need = session.now().setup().engine().need();
    double compared =
        test.kind() == NextTest.Kind.RUN_DOWN
            ? riskModel.limits().overrun(need).value()
            : need.at(test.throttle()).value();
    double needed = StrictMath.log(compared);
    double ridden = ridden(session, test);
    Evidence read = rider.read(test, ridden, needed);
    boolean byTheScrew = test.kind() == NextTest.Kind.IDLE && test.instrument() == Instrument.FEEL;
    return new Observation(
        test.throttle(),
        test.speed(),
        byTheScrew ? byTheScrew(session, read, ridden, needed) : read);
  }

  private Evidence byTheScrew(TuningSession session, Evidence felt, double ridden, double needed) {
    Setting setting = session.now().setup().setting();
    boolean mixture = setting.carburettor().pilot().screwKind() == ScrewKind.MIXTURE;
    EngineSpeed idle = session.now().setup().engine().loadLine().at(ThrottleOpening.CLOSED);
    double in = idleWith(setting, SCREW_IN, idle) - needed;
    double out = idleWith(setting, SCREW_OUT, idle) - needed;
    return rider.idle(felt, ridden - needed, mixture ? out : in, mixture ? in : out);
  }

  private double idleWith(Setting setting, double turns, EngineSpeed idle) {
    ScrewTurns most = setting.carburettor().pilot().mostTurns();
    Screw screw = new Screw(setting.screw().kind(), ScrewTurns.of(Math.min(turns, most.turns())));
    return engine.lnLambda(setting.withScrew(screw), ThrottleOpening.CLOSED, idle);
  }

  private boolean isLean(TuningSession session, NextTest test) {
    ThrottleOpening opened = engine.opened(test.throttle());
    MixtureNeed need = session.now().setup().engine().need();
    double limit = riskModel.limits().lean(opened, need).value();
    return test.kind() != NextTest.Kind.RUN_DOWN && ridden(session, test) > StrictMath.log(limit);
  }

  /** What he meets: where the slide opens less than he means to, the engine turns slower too. */
  private double ridden(TuningSession session, NextTest test) {
    Setup setup = session.now().setup();
    if (test.kind() == NextTest.Kind.RUN_DOWN) {
      return engine.lnOverrun(setup.setting(), engine.today());
    }
    ThrottleOpening opened = engine.opened(test.throttle());
    EngineSpeed speed =
        opened.equals(test.throttle()) ? test.speed() : setup.engine().loadLine().at(opened);
    return engine.lnLambda(setup.setting(), opened, speed);
  }

  private RiskProfile profile(SetupSheet sheet, Calibration calibration) {
    return riskModel.profile(MixtureModel.of(sheet.setup()), Truth.OPENINGS, calibration);
  }

  private int held(Setting setting, RiskProfile profile) {
    int held = 0;
    for (RiskPoint point : profile.points()) {
      double truth = truth(setting, point);
      boolean below = truth <= StrictMath.log(point.leanEnd());
      held += below && truth >= StrictMath.log(point.richEnd()) ? 1 : 0;
    }
    return held;
  }

  private double squares(Setting setting, RiskProfile profile) {
    double squares = 0;
    for (RiskPoint point : profile.points()) {
      double expected = StrictMath.log(point.lambda().value());
      double off = (truth(setting, point) - expected) / point.spread();
      squares += off * off;
    }
    return squares;
  }

  private double truth(Setting setting, RiskPoint point) {
    EngineSpeed speed = point.mixture().speed();
    return engine.lnLambda(setting, point.mixture().throttle(), speed);
  }
}
