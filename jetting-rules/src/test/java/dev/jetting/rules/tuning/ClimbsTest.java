package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.units.Probability;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** On steep climbs the level road is the smaller risk, by a factor of ten and more. */
class ClimbsTest {

  @ParameterizedTest
  @EnumSource(
      value = Instrument.class,
      mode = Mode.INCLUDE,
      names = {"WIDEBAND", "PLUG"})
  void session_forSteepClimbs_endsSafeOnThem_thoughTheLevelRoadHasRoomForLeaner(Instrument read) {
    Tuner tuner = Tuner.readingWith(Set.of(read));
    SetupSheet any = Workshop.sheet(ALL_ROUND);
    SetupSheet steep =
        any.withRiding(
            any.riding()
                .withSpeeds(new RiddenSpeeds(3))
                .withAcceptedRisk(Probability.ofPercent(1)));
    SetupSheet sheet = steep.withSetup(steep.setup().withSetting(tuner.start(steep).setting()));

    TuningSession session = Sessions.begin(sheet);
    NextStep step = tuner.next(session);
    while (!step.isEnd()) {
      session = Sessions.take(session, step, (now, test) -> Sessions.read(now, test, 0));
      step = tuner.next(session);
    }

    Report report = tuner.rulebook().evaluate(tuner.assess(session));
    assertThat(step).isInstanceOf(NextStep.Confirmed.class);
    assertThat(report.worst().leanRisk().value()).isBetween(0.001, 0.01);
    assertThat(report.today().worst().leanRisk().value()).isLessThan(0.0005);
  }
}
