package dev.jetting.rules.risk;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Limits of a caller's own, each against the others. */
class MixtureLimitsTest {

  private static final SetupSheet SHEET = TwoHundred.sheet(STANDARD, ALL_ROUND);

  private static Coefficient number(double value) {
    return Coefficient.assumed(value, "1", "of the shop");
  }

  @Test
  void margins_eachInItsRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MixtureLimits.margins().lean(number(1)).build())
        .withMessage("lean margin 1 (assumed: of the shop): allowed above 1 and below 3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MixtureLimits.margins().rich(number(1)).build())
        .withMessage("rich margin 1 (assumed: of the shop): allowed above 0 and below 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MixtureLimits.margins().overrun(number(3)).build())
        .withMessageContaining("overrun margin 3");
  }

  /** 16 % is not sixteen times as lean. */
  @Test
  void margins_withAUnit_areRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> MixtureLimits.margins().lean(Coefficient.assumed(1.16, "%", "shop")).build())
        .withMessage("unit \"%\" of the lean margin: allowed \"1\"");
  }

  /** Every setting that is clean at closed throttle would be too lean on the overrun. */
  @Test
  void overrunNotLeanerThanRich_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MixtureLimits.margins().rich(number(0.9)).overrun(number(0.9)).build())
        .withMessage(
            "overrun margin 0.9 (assumed: of the shop): allowed more than the rich margin, 0.9");
  }

  /** Limits of a class of the caller's own. */
  private record Own(double lean, double rich, double overrun) implements MixtureLimits {
    @Override
    public Lambda lean(ThrottleOpening throttle, MixtureNeed need) {
      return Lambda.of(lean);
    }

    @Override
    public Lambda rich(ThrottleOpening throttle, MixtureNeed need) {
      return Lambda.of(rich);
    }

    @Override
    public Lambda overrun(MixtureNeed need) {
      return Lambda.of(overrun);
    }

    @Override
    public Map<String, Coefficient> basis() {
      return Map.of();
    }
  }

  private static AssessedSetting assessed(MixtureLimits limits) {
    RiskModel ours = RiskModel.assumed();
    return AssessedSetting.of(SHEET, new RiskModel(limits, ours.uncertainty(), ours.steps()));
  }

  @Test
  void ownLimits_thatContradictEachOther_areRefused() {
    assertThat(assessed(new Own(1.1, 0.7, 1)).profile().points()).isNotEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> assessed(new Own(0.9, 0.9, 1)).profile())
        .withMessage(
            "rich limit λ 0.9 and lean limit λ 0.9 at 0 throttle: allowed a rich limit below the"
                + " lean limit");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> assessed(new Own(1.1, 0.7, 0.7)).profile())
        .withMessage(
            "rich limit λ 0.7 at closed throttle and limit on the overrun λ 0.7: allowed a rich"
                + " limit below the limit on the overrun");
  }
}
