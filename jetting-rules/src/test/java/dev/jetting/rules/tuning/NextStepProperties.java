package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever the sensor shows: engines off the model, and now and then a wrong reading. */
class NextStepProperties {

  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.WIDEBAND));
  private static final int MANY = 60;

  /** It ends read, or where every opening that is left is too risky to be ridden. */
  @Property(tries = 15)
  void session_ends_andNeverOnASettingThatNobodyHasRead(
      @ForAll @IntRange(min = 62, max = 80) int halfMain, @ForAll long seed) {
    Random chance = new Random(seed);
    TuningSession session = begin(halfMain);
    NextStep step = step(session);
    int steps = 0;
    while (!step.isEnd()) {
      assertThat(steps++).isLessThan(MANY);
      if (step instanceof NextStep.Ride ride && ride.confirming()) {
        assertThat(ride.test().throttle()).isEqualTo(riskiest(session));
      }
      session = taken(session, step, chance);
      step = step(session);
    }
    if (!openings(session).isEmpty()) {
      assertThat(last(session).observations()).isNotEmpty();
      assertThat(new StepChooser(TUNER, session).isConfirmed()).isTrue();
    }
  }

  private static TuningSession begin(int halfMain) {
    return TuningSession.beginning(
        Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofHundredths(2 * halfMain))));
  }

  private static NextStep step(TuningSession session) {
    return TUNER.next(session);
  }

  private static TuningSession taken(TuningSession session, NextStep step, Random chance) {
    if (step instanceof NextStep.Change next) {
      var setting = next.change().setting();
      return session.changing(session.now().setup().withSetting(setting));
    }
    NextTest test = ((NextStep.Ride) step).test();
    MixtureModel model = MixtureModel.of(session.now().setup());
    double off = 0.04 * chance.nextGaussian() + (chance.nextInt(5) == 0 ? 0.2 : 0);
    double lambda = model.at(test.throttle(), test.speed()).lambda().value() * StrictMath.exp(-off);
    return session.observing(
        new Observation(test.throttle(), test.speed(), new Evidence.Wideband(Lambda.of(lambda))));
  }

  /** Of equals the widest. */
  private static ThrottleOpening riskiest(TuningSession session) {
    RiskPoint worst = openings(session).get(0);
    for (RiskPoint point : openings(session)) {
      int more = point.leanRisk().compareTo(worst.leanRisk());
      boolean wider = point.mixture().throttle().compareTo(worst.mixture().throttle()) > 0;
      worst = more > 0 || (more == 0 && wider) ? point : worst;
    }
    return worst.mixture().throttle();
  }

  /** Where the risk is accepted and nothing was read on the setup as it is. */
  private static List<RiskPoint> openings(TuningSession session) {
    SetupSheet now = session.now();
    RiskProfile profile =
        TUNER
            .riskModel()
            .profile(
                MixtureModel.of(now.setup()),
                Stream.of(0, 1, 2, 4, 6, 8).map(ThrottleOpening::ofEighths).toList(),
                TUNER.calibration(session));
    List<ThrottleOpening> read =
        last(session).observations().stream().map(Observation::throttle).toList();
    return profile.points().stream()
        .filter(point -> point.leanRisk().compareTo(now.riding().acceptedRisk()) <= 0)
        .filter(point -> !read.contains(point.mixture().throttle()))
        .toList();
  }

  private static TuningStep last(TuningSession session) {
    return session.steps().get(session.steps().size() - 1);
  }
}
