package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Meaning;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A session that carries what the advice on it rests on. */
class SessionTunerTest {

  private static final Rulebook RULES = StandardRulebook.rulebook();
  private static final TuningSession SESSION =
      SessionJson.read(Documents.read("example-session.json"));
  private static final Tuner SHOPS = shops();

  /** One that differs from the library's in everything that a session carries. */
  private static Tuner shops() {
    Meaning brown =
        Meanings.assumed()
            .colours()
            .get(PlugColour.BROWN)
            .withDeviation(0.03)
            .withWhy("read beside a sensor");
    return Tuner.readingWith(Set.of(Instrument.PLUG, Instrument.FEEL))
        .withRiskModel(
            new RiskModel(
                MixtureLimits.margins().lean(coefficient(1.11)).build(),
                ModelUncertainty.assumed().withMain(coefficient(0.02)),
                CustomarySteps.assumed().with(MeteringPart.MAIN_JET, 0.025)))
        .withMeanings(
            Meanings.assumed()
                .withColour(PlugColour.BROWN, brown)
                .withAccuracy(Instrument.WIDEBAND, coefficient(0.015))
                .withAccuracy(Instrument.EXHAUST_THERMOMETER, coefficient(0.07))
                .withProven(coefficient(0.04)));
  }

  private static Coefficient coefficient(double value) {
    return Coefficient.assumed(value, "1", "of the shop");
  }

  @Test
  void readTuner_elsewhere_givesTheSameAdvice() {
    String document = SessionJson.write(SESSION, SHOPS);

    TuningSession session = SessionJson.read(document);
    Tuner elsewhere = SessionJson.readTuner(document, RULES).orElseThrow();

    assertThat(session).isEqualTo(SESSION);
    assertThat(elsewhere.instruments()).isEqualTo(SHOPS.instruments());
    assertThat(elsewhere.meanings()).isEqualTo(SHOPS.meanings());
    assertThat(elsewhere.assess(session).profile()).isEqualTo(SHOPS.assess(SESSION).profile());
    assertThat(elsewhere.next(session)).hasToString(SHOPS.next(SESSION).toString());
    assertThat(SessionJson.write(session, elsewhere)).isEqualTo(document);

    Tuner defaults = Tuner.readingWith(SHOPS.instruments());
    assertThat(defaults.assess(session).profile()).isNotEqualTo(SHOPS.assess(SESSION).profile());
  }

  @Test
  void write_withATuner_isValid() {
    assertThat(Validators.SESSION.complaints(SessionJson.write(SESSION, SHOPS))).isEmpty();
  }

  @Test
  void readTuner_ofASessionAlone_isEmpty() {
    assertThat(SessionJson.readTuner(SessionJson.write(SESSION), RULES)).isEmpty();
  }

  @Test
  void readTuner_byOtherRules_isRefused() {
    String document = SessionJson.write(SESSION, SHOPS);

    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> SessionJson.readTuner(document, RULES.without("lean-anywhere")))
        .satisfies(error -> assertThat(error.field()).isEqualTo("tuner.rulebook"))
        .satisfies(
            error -> assertThat(error.value()).contains(RULES.edition().digest().substring(0, 32)));
  }

  @Test
  void readTuner_ofANumberOutOfRange_saysWhereAndWhatIsAllowed() {
    String document = SessionJson.write(SESSION, SHOPS);

    assertRefused(
        document.replace("\"value\": 1.11", "\"value\": 0.9"),
        "$.tuner.limits",
        "$.tuner.limits: lean margin 0.9 (assumed: of the shop): allowed above 1 and below 3");
    assertRefused(
        document.replaceFirst("\"part\": \"main-jet\",\\s*\"size\": [0-9.]+", MAIN_JET_STEP),
        "$.tuner.steps[7]",
        "allowed more than 0 and at most 1");
    assertRefused(
        document.replace("\"value\": 500.0,", "\"value\": 5,"),
        "$.tuner.meanings",
        "rise of exhaust temperature by ln λ 5 K");
    assertRefused(
        document.replaceFirst("(\"pilotJetTolerance\": [^}]*\"unit\": )\"mm\"", "$1\"1\""),
        "$.tuner.spreads",
        "unit \"1\" of the tolerance of pilot jets: allowed \"mm\"");
  }

  private static final String MAIN_JET_STEP = "\"part\": \"main-jet\", \"size\": 7";

  /** What is left out would be the library's own, and what stands twice would hide one. */
  @Test
  void readTuner_ofPartsLeftOutOrTwice_isRefused() {
    String document = SessionJson.write(SESSION, SHOPS);
    String once = "allowed each once";
    assertRefused(
        document.replace("\"part\": \"screw\"", "\"part\": \"clip\""), "$.tuner.steps", once);
    assertRefused(
        document.replace("\"colour\": \"dark\",", "\"colour\": \"black\","),
        "$.tuner.meanings.colours",
        once);
    assertRefused(
        document.replace(
            "\"value\": 0.015,\n        \"unit\": \"1\"", "\"value\": 0.015, \"unit\": \"%\""),
        "$.tuner.meanings",
        "unit \"%\" of the accuracy");
    String instruments = "\"instruments\": \\[[^\\]]*]";
    assertRefused(
        document.replaceFirst(instruments, "\"instruments\": []"),
        "$.tuner.instruments",
        "at least one");
    assertRefused(
        document.replaceFirst(instruments, "\"instruments\": [\"feel\"]"),
        "$.tuner.instruments",
        "[FEEL]: allowed at least one besides feel");
    assertRefused(
        document.replaceFirst(instruments, "\"instruments\": [\"plug\", \"plug\"]"),
        "$.tuner.instruments",
        once);
  }

  private static void assertRefused(String document, String path, String message) {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> SessionJson.readTuner(document, RULES))
        .withMessageContaining(message)
        .satisfies(error -> assertThat(error.path()).isEqualTo(path))
        .satisfies(error -> assertThat(error.line()).isGreaterThan(1));
  }

  /** A rider's readings are not lost because of a tuner that the caller does not ask for. */
  @Test
  void read_ofTheSessionAlone_passesOverATunerThatIsMalformed() {
    String document = SessionJson.write(SESSION, SHOPS);
    String odd = document.replaceFirst("\"instruments\": \\[", "\"oddments\": [{}, ");

    assertThat(SessionJson.read(odd)).isEqualTo(SESSION);
    assertRefused(odd, "$.tuner.oddments", "unknown field \"oddments\"");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () -> SessionJson.read(odd.replaceFirst("\"tuner\": \\{", "\"tuner\": 5, \"x\": {")));
  }

  @Test
  void write_limitsOfTheCallersOwn_isRefused() {
    Tuner own =
        SHOPS.withRiskModel(
            new RiskModel(new Flat(), ModelUncertainty.assumed(), CustomarySteps.assumed()));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> SessionJson.write(SESSION, own))
        .withMessageContaining("allowed in JSON those of MixtureLimits.margins()");
  }

  private static final class Flat implements MixtureLimits {
    @Override
    public Lambda lean(ThrottleOpening throttle, MixtureNeed need) {
      return Lambda.of(1);
    }

    @Override
    public Lambda rich(ThrottleOpening throttle, MixtureNeed need) {
      return Lambda.of(0.7);
    }

    @Override
    public Lambda overrun(MixtureNeed need) {
      return Lambda.of(1);
    }

    @Override
    public Map<String, Coefficient> basis() {
      return Map.of();
    }
  }
}
