package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.TemperatureDifference;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TuningSessionTest {

  private static final TuningSession BEGUN =
      TuningSession.beginning(Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.36))));

  private static final Observation RICH =
      Workshop.observation(8, 7500, new Evidence.Wideband(Lambda.of(0.70)));

  private static final Setup SMALLER =
      BEGUN.now().setup().withSetting(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.30)));

  @Test
  void undone_takesTheLastEntryBack() {
    TuningSession longer = BEGUN.observing(RICH).changing(SMALLER).observing(RICH);
    assertThat(longer.undone()).isEqualTo(BEGUN.observing(RICH).changing(SMALLER));
    assertThat(longer.undone().undone()).isEqualTo(BEGUN.observing(RICH));
    assertThat(longer.undone().undone().undone()).isEqualTo(BEGUN);
    assertThat(BEGUN.undone()).isEqualTo(BEGUN);
  }

  /** A step is assessed on the sheet; what the sheet could not say was refused only then. */
  @Test
  void step_beyondTheRangesOfASheet_isRefusedWithItsField() {
    Setup huge = BEGUN.now().setup().withSetting(ALL_ROUND.withMainJet(JetBore.ofMillimetres(9)));
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> BEGUN.changing(SMALLER).changing(huge))
        .withMessage("steps[2].setup.setting.mainJet 9 mm: allowed 0.3 mm to 5 mm")
        .satisfies(e -> assertThat(e.field()).isEqualTo("steps[2].setup.setting.mainJet"));

    String json = SessionJson.write(BEGUN.changing(SMALLER));
    int last = json.lastIndexOf("\"mainJet\": \"1.3 mm\"");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () ->
                SessionJson.read(
                    json.substring(0, last) + json.substring(last).replaceFirst("1.3 mm", "9 mm")))
        .withMessage("$.steps[1].setup.setting.mainJet: 9 mm: allowed 0.3 mm to 5 mm");
  }

  @Test
  void step_onADayOnWhichTheFuelIsUnknown_isRefused() {
    Setup boiling = SMALLER.withFuelWarmerBy(TemperatureDifference.ofKelvin(80));
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> BEGUN.changing(boiling))
        .withMessageStartingWith("temperature of the fuel on the day of the setup ")
        .satisfies(e -> assertThat(e.field()).isEqualTo("steps[1].setup"));
  }

  @Test
  void now_isTheSheetWithTheLastSetup() {
    assertThat(BEGUN.changing(SMALLER).now().setup()).isEqualTo(SMALLER);
    assertThat(BEGUN.changing(SMALLER).now().parts()).isEqualTo(Workshop.PARTS);
  }

  @Test
  void calibration_addsUpWhatWasSeenOnDifferentJets() {
    TuningSession session =
        BEGUN
            .observing(RICH)
            .changing(SMALLER)
            .observing(Workshop.observation(4, 5700, new Evidence.Colour(PlugColour.BROWN)))
            .observing(Workshop.observation(0, 1400, new Evidence.Felt(Symptom.HANGS)));
    var calibration = Tuner.readingWith(Set.of(Instrument.WIDEBAND)).calibration(session);
    assertThat(calibration.readings()).hasSize(3);
    assertThat(calibration.readings().get(0).setup()).isEqualTo(BEGUN.now().setup());
    assertThat(calibration.readings().get(1).setup()).isEqualTo(SMALLER);
    assertThat(calibration.difference(ErrorSource.MAIN).deviation())
        .isLessThan(RiskModel.assumed().uncertainty().main().value());
  }

  @Test
  void steps_firstNotOfTheSheet_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new TuningSession(BEGUN.sheet(), Set.of(), List.of(TuningStep.on(SMALLER))))
        .withMessageContaining("the first on the setup of its sheet");
  }

  @Test
  void json_everyKindOfSeen_comesBackEqual() {
    TuningSession session =
        BEGUN
            .checking(Set.of(Check.HEAT_RANGE))
            .observing(RICH)
            .observing(Workshop.observation(6, 6700, new Evidence.Colour(PlugColour.DARK)))
            .changing(SMALLER)
            .observing(Workshop.observation(1, 3500, new Evidence.Felt(Symptom.FOUR_STROKES)))
            .observing(
                Workshop.observation(
                    8,
                    7500,
                    new Evidence.ExhaustTemperature(
                        TemperatureDifference.ofKelvin(-25), Lambda.of(0.8))))
            .observing(Workshop.observation(2, 4400, new Evidence.Proven()))
            .observing(Workshop.observation(0, 7500, new Evidence.Overrun(RunDown.POPS)))
            .checking(Set.of(Check.FUEL_LEVEL, Check.AIR_LEAK));
    String json = SessionJson.write(session);
    assertThat(SessionJson.read(json)).isEqualTo(session);
    assertThat(SessionJson.write(SessionJson.read(json))).isEqualTo(json);
  }

  @Test
  void json_twoKindsAtOnce_isRefusedWithItsPlace() {
    String json =
        SessionJson.write(BEGUN.observing(RICH))
            .replace("\"wideband\" : 0.7", "\"wideband\" : 0.7, \"colour\" : \"brown\"")
            .replace("\"wideband\": 0.7", "\"wideband\": 0.7, \"colour\": \"brown\"")
            .replace("\"wideband\": \"0.7\"", "\"wideband\": \"0.7\", \"colour\": \"brown\"");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SessionJson.read(json))
        .withMessageContaining("$.steps[0].observations[0].evidence")
        .withMessageContaining("one of wideband");
  }
}
