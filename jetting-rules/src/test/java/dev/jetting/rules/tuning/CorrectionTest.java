package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.base.Splitter;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CorrectionTest {

  @Test
  void text_clearlyLess_saysWhatItMeans_whatToDo_andWhatThen() {
    assertThat(new Correction(ErrorSource.MAIN, -8.2, 3.9).text())
        .startsWith("The main jet passes about 8 % less fuel than expected, give or take 4 %.")
        .contains("Full throttle runs lean.", "Check that the main jet is clean", "next bigger one")
        .endsWith("then read full throttle again.");
  }

  /** An air leak looks like more air: it is looked for before any jet. */
  @Test
  void text_moreAir_looksForALeakBeforeAnyJet() {
    String text = new Correction(ErrorSource.AIR, 6, 2).text();
    assertThat(text).contains("runs lean.");
    assertThat(text.indexOf("air leak")).isBetween(0, text.indexOf("richer"));
  }

  /** What is no more than its own spread is no reason to touch a part. */
  @Test
  void text_withinTheSpread_asksForNothing() {
    assertThat(new Correction(ErrorSource.AIR, 3, 4).text())
        .isEqualTo(
            "The engine draws as much air as expected, give or take 4 %. Nothing is to be done about"
                + " it.");
    assertThat(new Correction(ErrorSource.PILOT, -0.3, 0.1).text())
        .contains("Nothing is to be done");
  }

  /** Less fuel is answered richer, more fuel leaner, by the part that meters it. */
  @ParameterizedTest
  @EnumSource(ErrorSource.class)
  void text_ofEachSource_isShortSentences_andGoesTheRightWay(ErrorSource source) {
    for (double percent : new double[] {-9, 9}) {
      String text = new Correction(source, percent, 2).text();
      boolean lean = (percent < 0) != (source == ErrorSource.AIR);
      assertThat(text).contains(lean ? "lean." : "rich.");
      assertThat(text).containsPattern(lean ? "bigger|richer" : "smaller|leaner|lean one part");
      for (String sentence : Splitter.on(". ").split(text)) {
        assertThat(Splitter.on(' ').split(sentence)).hasSizeLessThanOrEqualTo(25);
      }
    }
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
