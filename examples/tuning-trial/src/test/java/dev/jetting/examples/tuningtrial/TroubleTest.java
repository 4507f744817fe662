package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each trouble does to an engine what it is named after. */
class TroubleTest {

  private static final SetupSheet SHEET = Trial.PUBLISHED.machines(10).get(2).start();
  private static final Setting SETTING = SHEET.setup().setting();
  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);
  private static final long SEED = 5;

  @Test
  void airLeak_isLeanerEverywhere_mostWithTheThrottleShut() {
    double shut = change(Trouble.AIR_LEAK, SETTING, ThrottleOpening.CLOSED);

    assertThat(change(Trouble.AIR_LEAK, SETTING, ThrottleOpening.FULL)).isBetween(0.0, 0.03);
    assertThat(change(Trouble.AIR_LEAK, SETTING, HALF)).isBetween(0.0, 0.03);
    assertThat(shut).isGreaterThan(0.1);
  }

  /** What leans the idle is air, and air makes it race. */
  @Test
  void airLeak_drawsAsMuchMoreAirAtIdle_andNoOtherTroubleDoes() {
    double shut = change(Trouble.AIR_LEAK, SETTING, ThrottleOpening.CLOSED);

    assertThat(with(Trouble.AIR_LEAK).falseAir(SETTING)).isCloseTo(shut, within(1e-9));
    assertThat(with(Trouble.PILOT_BLOCKED).falseAir(SETTING)).isZero();
    assertThat(sound().falseAir(SETTING)).isZero();
  }

  @Test
  void pilotBlocked_isLeanerWithTheThrottleShut_andHardlyAtFull() {
    double shut = change(Trouble.PILOT_BLOCKED, SETTING, ThrottleOpening.CLOSED);

    assertThat(shut).isGreaterThan(0.1);
    assertThat(change(Trouble.PILOT_BLOCKED, SETTING, ThrottleOpening.FULL)).isBetween(0.0, 0.05);
    assertThat(overrunChange(Trouble.PILOT_BLOCKED)).isGreaterThan(0.1);
  }

  @Test
  void altitudeWrong_isRicherOrLeanerEverywhere() {
    double half = change(Trouble.ALTITUDE_WRONG, SETTING, HALF);
    double full = change(Trouble.ALTITUDE_WRONG, SETTING, ThrottleOpening.FULL);

    assertThat(Math.abs(half)).isBetween(0.005, 0.05);
    assertThat(Math.abs(full)).isBetween(0.005, 0.05);
    assertThat(half * full).isPositive();
  }

  @Test
  void needleWorn_isRicherInTheMiddle_untilAnotherNeedleIsIn() {
    Needle other =
        SHEET.parts().needles().stream()
            .filter(needle -> !needle.equals(SETTING.needle()))
            .findFirst()
            .orElseThrow();

    assertThat(change(Trouble.NEEDLE_WORN, SETTING, HALF)).isLessThan(-0.005);
    assertThat(change(Trouble.NEEDLE_WORN, SETTING.withNeedle(other, SETTING.clip()), HALF))
        .isZero();
  }

  @Test
  void cableSlack_opensLessThanIsMeant_andChangesNothingElse() {
    TrueEngine engine = with(Trouble.CABLE_SLACK);

    assertThat(engine.opened(ThrottleOpening.FULL).share()).isBetween(0.90, 0.97);
    assertThat(engine.opened(ThrottleOpening.CLOSED)).isEqualTo(ThrottleOpening.CLOSED);
    assertThat(change(Trouble.CABLE_SLACK, SETTING, HALF)).isZero();
  }

  /** The stops need no mark; the others are off each by its own, and stay so. */
  @Test
  void marksOff_eachMarkByItsOwn_andTheStopsNot() {
    TrueEngine engine = with(Trouble.MARKS_OFF);

    assertThat(engine.opened(ThrottleOpening.CLOSED)).isEqualTo(ThrottleOpening.CLOSED);
    assertThat(engine.opened(ThrottleOpening.FULL)).isEqualTo(ThrottleOpening.FULL);
    List<Double> off =
        IntStream.range(1, 8)
            .mapToObj(ThrottleOpening::ofEighths)
            .map(mark -> engine.opened(mark).share() - mark.share())
            .toList();
    assertThat(off).doesNotHaveDuplicates().allMatch(share -> Math.abs(share) < 0.15);
    assertThat(engine.opened(HALF)).isEqualTo(engine.opened(HALF));
  }

  @Test
  void leanHole_isEightPercentInOnePlace_andNothingFarAway() {
    List<Double> leaner =
        IntStream.rangeClosed(0, 64)
            .mapToObj(i -> change(Trouble.LEAN_HOLE, SETTING, ThrottleOpening.ofShare(i / 64.0)))
            .toList();
    assertThat(leaner.stream().mapToDouble(Double::doubleValue).max().orElseThrow())
        .isCloseTo(0.08, within(0.005));
    assertThat(leaner.stream().filter(rise -> rise > 0.04).count()).isBetween(4L, 12L);
  }

  /**
   * A quarter of the main jets, and all of them to see where the pilot jet is one of the quarter.
   */
  @Test
  void jetsMislabelled_aboutAQuarterAreASizeOff_andStaySo() {
    List<JetBore> mains = SHEET.parts().mainJets();
    double share =
        IntStream.range(0, 40)
            .mapToLong(
                bag -> mains.stream().filter(main -> labelled(bag, main) != labelled(main)).count())
            .average()
            .orElseThrow();

    assertThat(share / mains.size()).isBetween(0.3, 0.6); // 1/4 + 3/4 of 1/4
    assertThat(labelled(3, mains.get(0))).isEqualTo(labelled(3, mains.get(0)));
  }

  private static double labelled(long bag, JetBore main) {
    return Trouble.JETS_MISLABELLED
        .on(Altered.none(sound()), SHEET, Chance.of(bag, "test"))
        .lnLambda(SETTING.withMainJet(main), HALF, SHEET.setup().engine().loadLine().at(HALF));
  }

  private static double labelled(JetBore main) {
    return sound()
        .lnLambda(SETTING.withMainJet(main), HALF, SHEET.setup().engine().loadLine().at(HALF));
  }

  @Test
  void resonance_swingsByFivePercent_andIsNothingOnAverage() {
    List<Double> swing =
        IntStream.range(0, 15)
            .mapToObj(i -> EngineSpeed.ofRpm(4000 + i * 100))
            .map(speed -> change(Trouble.RESONANCE, SETTING, HALF, speed))
            .toList();

    assertThat(swing.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
        .isCloseTo(0, within(1e-9));
    assertThat(swing.stream().mapToDouble(Math::abs).max().orElseThrow())
        .isCloseTo(0.05, within(0.002));
  }

  private static double change(Trouble trouble, Setting setting, ThrottleOpening throttle) {
    return change(trouble, setting, throttle, SHEET.setup().engine().loadLine().at(throttle));
  }

  private static double change(
      Trouble trouble, Setting setting, ThrottleOpening throttle, EngineSpeed speed) {
    return with(trouble).lnLambda(setting, throttle, speed)
        - sound().lnLambda(setting, throttle, speed);
  }

  private static double overrunChange(Trouble trouble) {
    return with(trouble).lnOverrun(SETTING, sound().today())
        - sound().lnOverrun(SETTING, sound().today());
  }

  private static TrueEngine with(Trouble trouble) {
    return trouble.on(Altered.none(sound()), SHEET, Chance.of(SEED, "test"));
  }

  private static TrueEngine sound() {
    return AssumedEngine.draw(SHEET.setup(), RiskModel.assumed().uncertainty(), SEED);
  }
}
