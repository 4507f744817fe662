package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MeaningsTest {

  private static final Setup SETUP = Workshop.sheet(ALL_ROUND).setup();

  @Test
  void colours_coverEveryMixtureWithoutGapOrOverlap() {
    PlugColour[] colours = PlugColour.values();
    for (int i = 1; i < colours.length; i++) {
      Meaning leaner = Meanings.assumed().of(colours[i - 1]);
      Meaning richer = Meanings.assumed().of(colours[i]);
      assertThat(richer.to()).isEqualTo(leaner.from());
    }
  }

  /** The lean limit of the risk model begins where the plug is white. */
  @Test
  void white_beginsAtTheLeanLimit() {
    assertThat(Meanings.assumed().of(PlugColour.WHITE).from()).isEqualTo(1.16);
  }

  @Test
  void exhaustTemperature_hotter_isLeaner() {
    Reading reading =
        read(new Evidence.ExhaustTemperature(TemperatureDifference.ofKelvin(50), Lambda.of(0.80)));
    // e^0.1 leaner, by the assumed 500 K.
    assertThat(reading.from().value()).isCloseTo(0.80 * 1.105171, within(1e-6));
    assertThat(reading.to()).isEqualTo(reading.from());
  }

  @Test
  void fourStroking_isARichBand_andPingingALeanOne() {
    double need = SETUP.engine().need().at(ThrottleOpening.FULL).value();
    assertThat(read(new Evidence.Felt(Symptom.FOUR_STROKES)).to().value()).isLessThan(need);
    assertThat(read(new Evidence.Felt(Symptom.PINGS)).from().value()).isGreaterThan(need);
  }

  @Test
  void crisp_isNoProof_andAllowsLean() {
    Reading crisp = read(new Evidence.Felt(Symptom.CRISP));
    double need = SETUP.engine().need().at(ThrottleOpening.FULL).value();
    assertThat(crisp.to().value()).isGreaterThan(need * 1.16);
  }

  @Test
  void proven_isWhatTheEngineNeeds() {
    assertThat(read(new Evidence.Proven()).from())
        .isEqualTo(SETUP.engine().need().at(ThrottleOpening.FULL));
  }

  @Test
  void meanings_oneColourMissing_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Meanings(
                    Map.of(PlugColour.BROWN, Meaning.assumed(0.9, 1.1, 0.07)),
                    Meanings.assumed().symptoms(),
                    Coefficient.assumed(500, "K", "test")))
        .withMessageContaining("each colour");
  }

  @Test
  void meaning_bandTheWrongWayRound_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meaning.builder().from(1.1).to(0.9).deviation(0.07).why("test").build())
        .withMessageContaining("band");
  }

  private static Reading read(Evidence seen) {
    return seen.reading(SETUP, ThrottleOpening.FULL, EngineSpeed.ofRpm(7500), Meanings.assumed())
        .orElseThrow();
  }
}
