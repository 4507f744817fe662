package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CorrectionTest {

  @Test
  void text_less_more_andTheSame() {
    assertThat(new Correction(ErrorSource.NEEDLE, -8.2, 3.9).text())
        .isEqualTo(
            "The needle jet, round the needle, passes 8 ± 4 % less fuel than the model says.");
    assertThat(new Correction(ErrorSource.MAIN, 2.6, 1.2).text())
        .isEqualTo("The main jet passes 3 ± 1 % more fuel than the model says.");
    assertThat(new Correction(ErrorSource.PILOT, -0.3, 6).text())
        .isEqualTo("The pilot circuit passes as much fuel as the model says, ± 6 %.");
    assertThat(new Correction(ErrorSource.AIR, 3, 2).text())
        .isEqualTo("The engine draws 3 ± 2 % more air than the model derives from its suction.");
  }

  @Test
  void of_untriedEngine_isZeroWithTheSpreadsAssumed() {
    List<Correction> corrections = Correction.of(RiskModel.assumed().untried());
    assertThat(corrections).extracting(Correction::percent).containsOnly(0.0);
    assertThat(corrections)
        .extracting(c -> Math.rint(c.spread()))
        .containsExactly(6.0, 6.0, 3.0, 4.0);
  }

  /** A λ a tenth leaner than modelled in the needle's field: its ring passes less fuel. */
  @Test
  void of_leanReadingInTheNeedlesField_saysLessThroughTheNeedleJet() {
    var session = TuningSession.beginning(Workshop.sheet(ALL_ROUND));
    MixtureModel model = MixtureModel.of(session.now().setup());
    double modelled = model.at(ThrottleOpening.ofEighths(2)).lambda().value();
    var observation =
        Workshop.observation(2, 4450, new Evidence.Wideband(Lambda.of(modelled * 1.1)));
    var calibration =
        Tuner.readingWith(Set.of(Instrument.WIDEBAND)).calibration(session.observing(observation));
    Correction needle =
        Correction.of(calibration).stream()
            .filter(c -> c.source() == ErrorSource.NEEDLE)
            .findFirst()
            .orElseThrow();
    assertThat(needle.percent()).isBetween(-8.0, -2.0);
    assertThat(needle.spread()).isLessThan(6);
  }

  @Test
  void correction_ofAllThereIs_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Correction(ErrorSource.MAIN, -100, 1))
        .withMessageContaining("-100 ± 1 %")
        .withMessageContaining("more than -100 %");
  }
}
