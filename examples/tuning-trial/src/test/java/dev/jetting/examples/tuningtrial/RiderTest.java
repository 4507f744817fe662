package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.NextTest;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
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
    double squares = 0;
    int readings = 4000;
    for (int i = 0; i < readings; i++) {
      double ln = sensed(rider);
      squares += (ln + 0.2) * (ln + 0.2);
    }
    assertThat(Math.sqrt(squares / readings)).isCloseTo(0.02, within(0.001));
  }

  @Test
  void read_sensorOff_isOffByItsShareToOneSide() {
    Rider rider = new Rider(Instrument.WIDEBAND, Rider.Skill.AS_ASSUMED.withSensorOff(0.03), 2);
    double sum = 0;
    int readings = 4000;
    for (int i = 0; i < readings; i++) {
      sum += sensed(rider) + 0.2;
    }
    assertThat(Math.abs(sum / readings)).isCloseTo(0.03, within(0.002));
  }

  @Test
  void colour_blindToOne_neverCallsIt() {
    for (long seed = 0; seed < 10; seed++) {
      Rider rider = new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED.blindToAColour(), seed);
      Set<PlugColour> called = EnumSet.noneOf(PlugColour.class);
      for (int i = 0; i < 2000; i++) {
        called.add(rider.colour(i / 2000.0 - 0.6));
      }
      assertThat(called).hasSize(PlugColour.values().length - 1);
    }
  }

  @Test
  void read_overrunBeyondItsLimit_pops_andFarBelowIt_dies() {
    assertThat(runDown(0.6)).isEqualTo(RunDown.POPS);
    assertThat(runDown(-0.05)).isEqualTo(RunDown.CLEAN);
    assertThat(runDown(-1.1)).isEqualTo(RunDown.DIES);
  }

  /** A share does not try the screw, and says what was felt. */
  @Test
  void idle_plainlyLean_isFasterTowardsRich_forMostRiders() {
    Evidence felt = new Evidence.Felt(Symptom.CLEAN);
    List<Evidence> said =
        LongStream.range(0, 400)
            .mapToObj(seed -> new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED, seed))
            .map(rider -> rider.idle(felt, 0.5, -0.5, 0.9))
            .toList();
    assertThat(Collections.frequency(said, felt) / 400.0).isCloseTo(0.3, within(0.08));
    assertThat(Set.copyOf(said))
        .containsExactlyInAnyOrder(felt, new Evidence.Idle(IdleAnswer.FASTER_RICHER));
  }

  @Test
  void idle_leanAtTheRichEnd_isBeyondIt_andRichAtTheLeanEndBeyondThat() {
    assertThat(answers(0.9, 0.7, 1.2)).containsOnly(IdleAnswer.BEYOND_RICH);
    assertThat(answers(-0.9, -1.2, -0.7)).containsOnly(IdleAnswer.BEYOND_LEAN);
    assertThat(answers(-0.4, -0.8, 0.2)).containsOnly(IdleAnswer.FASTER_LEANER);
  }

  private static List<IdleAnswer> answers(double leaner, double richEnd, double leanEnd) {
    return LongStream.range(0, 40)
        .mapToObj(seed -> new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED, seed))
        .map(rider -> rider.idle(new Evidence.Felt(Symptom.CLEAN), leaner, richEnd, leanEnd))
        .filter(Evidence.Idle.class::isInstance)
        .map(seen -> ((Evidence.Idle) seen).answer())
        .toList();
  }

  /** Twice the air is heard by all who listen, as much as there should be by hardly one. */
  @Test
  void hearsItRace_byTheAirThatIsTooMuch() {
    assertThat(racing(0.7)).isBetween(0.6, 0.8);
    assertThat(racing(0)).isLessThan(0.02);
  }

  private static double racing(double falseAir) {
    return LongStream.range(0, 1000)
            .filter(
                seed ->
                    new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED, seed).hearsItRace(falseAir))
            .count()
        / 1000.0;
  }

  private static RunDown runDown(double leaner) {
    Rider rider = new Rider(Instrument.PLUG, Rider.Skill.AS_ASSUMED, 3);
    NextTest test = test(NextTest.Kind.RUN_DOWN, ThrottleOpening.CLOSED, Instrument.FEEL);
    return ((Evidence.Overrun) rider.read(test, leaner - 0.6, -0.6)).runDown();
  }

  private static double sensed(Rider rider) {
    NextTest test = test(NextTest.Kind.STEADY, ThrottleOpening.FULL, Instrument.WIDEBAND);
    Evidence evidence = rider.read(test, -0.2, -0.22);
    return StrictMath.log(((Evidence.Wideband) evidence).lambda().value());
  }

  private static NextTest test(
      NextTest.Kind kind, ThrottleOpening throttle, Instrument instrument) {
    return new NextTest(kind, throttle, EngineSpeed.ofRpm(6000), instrument, Probability.of(0.1));
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

  /** Engines are numbered one after the other; one number says nothing of the next one's engine. */
  @Test
  void chance_ofNeighbouringSeeds_isIndependentFromTheFirstDrawOn() {
    int happened = 0;
    int same = 0;
    boolean before = false;
    for (int seed = 0; seed < 4000; seed++) {
      boolean now = Chance.of(seed, "test").happens(0.2);
      happened += now ? 1 : 0;
      same += now == before ? 1 : 0;
      before = now;
    }
    // Standard deviations 0.0063 and 0.0074 (binomial); 0.68 = 0.2² + 0.8².
    assertThat(happened / 4000.0).isCloseTo(0.2, within(0.03));
    assertThat(same / 4000.0).isCloseTo(0.68, within(0.04));
  }

  @Test
  void engine_sameSeed_isTheSame_anotherIsAnother() {
    RiskModel risk = RiskModel.assumed();
    Machine machine = Trial.PUBLISHED.machines(10).get(0);
    SetupSheet sheet = machine.start();
    EngineSpeed speed = sheet.setup().engine().loadLine().peak();
    for (World world : World.values()) {
      double first = at(world.engine(sheet, risk.uncertainty(), 7), machine, speed);
      assertThat(at(world.engine(sheet, risk.uncertainty(), 7), machine, speed)).isEqualTo(first);
      assertThat(at(world.engine(sheet, risk.uncertainty(), 8), machine, speed))
          .isNotEqualTo(first);
    }
  }

  private static double at(TrueEngine engine, Machine machine, EngineSpeed speed) {
    return engine.lnLambda(machine.start().setup().setting(), ThrottleOpening.FULL, speed);
  }
}
