package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.engine.LoadLine;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.api.Test;

/** Lean is counted where a setting is ridden. */
class TruthTest {

  private static final SetupSheet SHEET = Machine.fitting("standard-180");
  private static final LoadLine LINE = SHEET.setup().engine().loadLine();
  private static final MixtureLimits LIMITS = RiskModel.assumed().limits();
  private static final ThrottleOpening HALF = ThrottleOpening.ofEighths(4);

  @Test
  void of_leanOnAClimbAlone_isLean_unlessOnlyLevelRoadsAreRidden() {
    TrueEngine sound = AssumedEngine.draw(SHEET.setup(), RiskModel.assumed().uncertainty(), 5);
    TrueEngine leanUphill =
        Altered.none(sound)
            .withShift(
                (setting, air, throttle, speed) ->
                    throttle.equals(HALF) && speed.rpm() < LINE.at(HALF).rpm() - 1 ? 1 : 0);
    SetupSheet flat = SHEET.withRiding(SHEET.riding().withSpeeds(RiddenSpeeds.levelRoad()));

    assertThat(truth(sound, SHEET).leanAnywhere()).isFalse();
    assertThat(truth(leanUphill, flat).leanAnywhere()).isFalse();
    assertThat(truth(leanUphill, SHEET).leanAnywhere()).isTrue();
  }

  private static Truth truth(TrueEngine engine, SetupSheet sheet) {
    return Truth.of(engine, sheet, sheet.setup().setting(), LIMITS);
  }
}
