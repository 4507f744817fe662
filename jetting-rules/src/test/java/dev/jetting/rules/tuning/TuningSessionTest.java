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
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.TemperatureDifference;
import java.util.List;
import org.junit.jupiter.api.Test;

class TuningSessionTest {

  private static final TuningSession BEGUN =
      TuningSession.beginning(Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.36))));

  private static final Look RICH = Workshop.look(8, 7500, new Seen.Wideband(Lambda.of(0.70)));

  private static final Setup SMALLER =
      BEGUN.now().setup().withSetting(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.30)));

  @Test
  void undone_takesTheLastEntryBack() {
    TuningSession longer = BEGUN.seeing(RICH).changing(SMALLER).seeing(RICH);
    assertThat(longer.undone()).isEqualTo(BEGUN.seeing(RICH).changing(SMALLER));
    assertThat(longer.undone().undone()).isEqualTo(BEGUN.seeing(RICH));
    assertThat(longer.undone().undone().undone()).isEqualTo(BEGUN);
    assertThat(BEGUN.undone()).isEqualTo(BEGUN);
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
            .seeing(RICH)
            .changing(SMALLER)
            .seeing(Workshop.look(4, 5700, new Seen.Colour(PlugColour.BROWN)))
            .seeing(Workshop.look(0, 1400, new Seen.Felt(Symptom.HANGS)));
    var calibration = session.calibration(RiskModel.assumed(), Meanings.assumed());
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
            () -> new TuningSession(BEGUN.sheet(), List.of(new TuningStep(SMALLER, List.of()))))
        .withMessageContaining("the first on the setup of its sheet");
  }

  @Test
  void json_everyKindOfSeen_comesBackEqual() {
    TuningSession session =
        BEGUN
            .seeing(RICH)
            .seeing(Workshop.look(6, 6700, new Seen.Colour(PlugColour.DARK)))
            .changing(SMALLER)
            .seeing(Workshop.look(1, 3500, new Seen.Felt(Symptom.FOUR_STROKES)))
            .seeing(
                Workshop.look(
                    8,
                    7500,
                    new Seen.ExhaustTemperature(
                        TemperatureDifference.ofKelvin(-25), Lambda.of(0.8))))
            .seeing(Workshop.look(2, 4400, new Seen.Proven()));
    String json = SessionJson.write(session);
    assertThat(SessionJson.read(json)).isEqualTo(session);
    assertThat(SessionJson.write(SessionJson.read(json))).isEqualTo(json);
  }

  @Test
  void json_twoKindsAtOnce_isRefusedWithItsPlace() {
    String json =
        SessionJson.write(BEGUN.seeing(RICH))
            .replace("\"wideband\" : 0.7", "\"wideband\" : 0.7, \"colour\" : \"brown\"")
            .replace("\"wideband\": 0.7", "\"wideband\": 0.7, \"colour\": \"brown\"")
            .replace("\"wideband\": \"0.7\"", "\"wideband\": \"0.7\", \"colour\": \"brown\"");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SessionJson.read(json))
        .withMessageContaining("$.steps[0].looks[0].seen")
        .withMessageContaining("one of wideband");
  }
}
