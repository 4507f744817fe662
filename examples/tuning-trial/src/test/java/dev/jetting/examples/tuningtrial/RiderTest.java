package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.api.Test;

/** Riders and engines are what they claim to be. */
class RiderTest {

  @Test
  void colour_farOffEitherWay_isWhiteOrBlack() {
    Rider rider = new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED, 1);
    assertThat(rider.colour(0.5)).isEqualTo(PlugColour.WHITE);
    assertThat(rider.colour(-0.6)).isEqualTo(PlugColour.BLACK);
  }

  @Test
  void read_wideband_errsByTwoPercent() {
    Rider rider = new Rider(Instrument.WIDEBAND, Rider.Skill.AS_ASSUMED, 2);
    NextTest test =
        new NextTest(
            NextTest.Kind.STEADY,
            ThrottleOpening.FULL,
            EngineSpeed.ofRpm(7500),
            Instrument.WIDEBAND,
            Probability.of(0.01));
    double squares = 0;
    int readings = 4000;
    for (int i = 0; i < readings; i++) {
      Evidence seen = rider.read(test, -0.2, -0.22);
      double ln = StrictMath.log(((Evidence.Wideband) seen).lambda().value());
      squares += (ln + 0.2) * (ln + 0.2);
    }
    assertThat(Math.sqrt(squares / readings)).isCloseTo(0.02, within(0.001));
  }

  /** Student's t with four degrees of freedom is beyond four deviations far more often. */
  @Test
  void chance_heavy_hasItsDeviationAndTheTails() {
    Chance chance = Chance.of(3, "test");
    int far = 0;
    double squares = 0;
    int draws = 40_000;
    for (int i = 0; i < draws; i++) {
      double draw = chance.heavy(1);
      squares += draw * draw;
      far += Math.abs(draw) > 4 ? 1 : 0;
    }
    assertThat(Math.sqrt(squares / draws)).isCloseTo(1, within(0.1));
    // P(|t| > 4√2) with 4 degrees of freedom is 0.0048; a normal one has 0.00006.
    assertThat(far / (double) draws).isBetween(0.003, 0.007);
  }

  @Test
  void engine_sameSeed_isTheSame_anotherIsAnother() {
    RiskModel risk = RiskModel.assumed();
    Machine machine = Trial.PUBLISHED.machines(10).get(0);
    var setup = machine.start().setup();
    var speed = setup.engine().loadLine().peak();
    for (World world : World.values()) {
      double first = at(world.engine(setup, risk.uncertainty(), 7), machine, speed.rpm());
      assertThat(at(world.engine(setup, risk.uncertainty(), 7), machine, speed.rpm()))
          .isEqualTo(first);
      assertThat(at(world.engine(setup, risk.uncertainty(), 8), machine, speed.rpm()))
          .isNotEqualTo(first);
    }
  }

  private static double at(TrueEngine engine, Machine machine, double rpm) {
    return engine.lnLambda(
        machine.start().setup().setting(), ThrottleOpening.FULL, EngineSpeed.ofRpm(rpm));
  }
}
