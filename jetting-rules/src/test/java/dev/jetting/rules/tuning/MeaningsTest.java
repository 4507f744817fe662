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
import java.util.EnumMap;
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
                    Coefficient.assumed(500, "K", "test"),
                    Meanings.assumed().accuracies(),
                    Meanings.assumed().proven()))
        .withMessageContaining("each colour");
  }

  @Test
  void coloursWithAGapOrAnOverlap_areRefused() {
    Meaning pale = Meanings.assumed().of(PlugColour.PALE);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meanings.assumed().withColour(PlugColour.PALE, pale.withTo(1.2)))
        .withMessage(
            "white from 1.16, but pale to 1.2: allowed 1.16, because each colour begins where the"
                + " next ends");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meanings.assumed().withColour(PlugColour.PALE, pale.withFrom(1.07)))
        .withMessageContaining("pale from 1.07, but brown to 1.06");
  }

  @Test
  void withColours_movesAnEdgeOfTwo() {
    Map<PlugColour, Meaning> moved = new EnumMap<>(Meanings.assumed().colours());
    moved.computeIfPresent(PlugColour.WHITE, (colour, white) -> white.withFrom(1.2));
    moved.computeIfPresent(PlugColour.PALE, (colour, pale) -> pale.withTo(1.2));

    assertThat(Meanings.assumed().withColours(moved).of(PlugColour.PALE).to()).isEqualTo(1.2);
    assertThat(Meanings.assumed().withColours(moved).symptoms())
        .isEqualTo(Meanings.assumed().symptoms());
  }

  /** Percent per K, °F and degrees for a tenth are what people have at hand. */
  @Test
  void temperatureRise_thatCannotBe_isRefused() {
    for (double rise : new double[] {-500, 0, 5, 49, 5001}) {
      assertThatIllegalArgumentException()
          .isThrownBy(
              () ->
                  Meanings.assumed().withKelvinPerLnLambda(Coefficient.assumed(rise, "K", "test")))
          .withMessageContaining("rise of exhaust temperature by ln λ")
          .withMessageContaining("allowed 50 to 5000 K");
    }
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Meanings.assumed().withKelvinPerLnLambda(Coefficient.assumed(900, "°F", "test")))
        .withMessage("unit \"°F\" of the rise of exhaust temperature by ln λ: allowed \"K\"");
  }

  @Test
  void accuracyOfASensor_isTheDeviationOfItsReading() {
    Meanings shops =
        Meanings.assumed()
            .withAccuracy(Instrument.WIDEBAND, Coefficient.assumed(0.01, "1", "test"))
            .withAccuracy(Instrument.EXHAUST_THERMOMETER, Coefficient.assumed(0.09, "1", "test"))
            .withProven(Coefficient.assumed(0.04, "1", "test"));
    assertThat(deviation(new Evidence.Wideband(Lambda.of(0.8)), shops)).isEqualTo(0.01);
    Evidence hotter =
        new Evidence.ExhaustTemperature(TemperatureDifference.ofKelvin(50), Lambda.of(0.80));
    assertThat(deviation(hotter, shops)).isEqualTo(0.09);
    assertThat(deviation(new Evidence.Proven(), shops)).isEqualTo(0.04);
  }

  private static double deviation(Evidence seen, Meanings meanings) {
    return seen.reading(SETUP, ThrottleOpening.FULL, EngineSpeed.ofRpm(7500), meanings)
        .orElseThrow()
        .deviation();
  }

  @Test
  void accuracyOutOfRange_orOfAPlug_isRefused() {
    Coefficient none = Coefficient.assumed(0, "1", "test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meanings.assumed().withAccuracy(Instrument.WIDEBAND, none))
        .withMessageContaining("allowed 0.001 to 1 in ln λ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Meanings.assumed().withAccuracy(Instrument.PLUG, none))
        .withMessageContaining("allowed one of the wideband sensor and one of the exhaust");
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
