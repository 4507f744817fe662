package dev.jetting.rules.json;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.joining;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.google.common.collect.Sets;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Meaning;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the advice of a tuner rests on, in JSON.
 *
 * @param instruments what the rider reads the engine with
 * @param limits how lean and how rich is too much
 * @param spreads how far an engine may differ from the model
 * @param steps the customary step of each part
 * @param meanings what colours and symptoms mean
 * @param rulebook the rules whose dangers a session does not ride on; they are not in the document
 */
record TunerForm(
    List<Instrument> instruments,
    MarginsForm limits,
    SpreadsForm spreads,
    List<SizeForm> steps,
    MeaningsForm meanings,
    EditionForm rulebook) {

  /** Passes over the tuner where the session alone is read, whatever stands in it. */
  static final class PassingOver extends JsonDeserializer<TunerForm> {
    @Override
    public @Nullable TunerForm deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      in.skipChildren();
      return null;
    }
  }

  TunerForm {
    all("steps", MeteringPart.class, steps.stream().map(SizeForm::part).toList());
    once("instruments", instruments);
    Tuner.readingWith(Sets.immutableEnumSet(instruments));
  }

  /**
   * Limits at fixed margins, in JSON.
   *
   * @param lean lean limit by the λ wanted, more than 1 and less than 3
   * @param rich rich limit by the λ wanted, more than 0 and less than 1
   * @param overrun λ on the overrun by the λ wanted at closed throttle, more than the rich limit
   *     and less than 3
   */
  record MarginsForm(Coefficient lean, Coefficient rich, Coefficient overrun) {

    MarginsForm {
      limits(lean, rich, overrun);
    }

    static MarginsForm of(MixtureLimits limits) {
      if (limits.getClass() != MixtureLimits.assumed().getClass()) {
        throw InvalidValueException.worded(
            Sentence.of("error.limits-class"), Sentence.of("error.limits-class.allowed"));
      }
      List<Coefficient> basis = List.copyOf(limits.basis().values());
      return new MarginsForm(basis.get(0), basis.get(1), basis.get(2));
    }

    MixtureLimits limits() {
      return limits(lean, rich, overrun);
    }

    private static MixtureLimits limits(Coefficient lean, Coefficient rich, Coefficient overrun) {
      return MixtureLimits.margins().lean(lean).rich(rich).overrun(overrun).build();
    }
  }

  /**
   * Spreads of the model, in JSON.
   *
   * @param pilot spread of the pilot circuit, 0 to 1
   * @param needle spread of the ring between needle and needle jet, 0 to 1
   * @param main spread of the main jet, 0 to 1
   * @param air spread of the air by its signal, 0 to 1
   * @param residual spread of what is left, 0 to 1
   * @param residualLength how far apart in throttle opening two residuals are that differ
   * @param pilotJetTolerance of pilot jets, mm
   * @param mainJetTolerance of main jets, mm
   * @param needleJetTolerance of needle jets, mm
   * @param needleTolerance of needles, mm
   * @param guessed values of a machine by whose guesses the spreads are already wider; left out
   *     where there are none
   */
  record SpreadsForm(
      Coefficient pilot,
      Coefficient needle,
      Coefficient main,
      Coefficient air,
      Coefficient residual,
      Coefficient residualLength,
      Coefficient pilotJetTolerance,
      Coefficient mainJetTolerance,
      Coefficient needleJetTolerance,
      Coefficient needleTolerance,
      Optional<List<MachineValue>> guessed) {

    SpreadsForm {
      guessed.ifPresent(values -> once("guessed", values));
      new ModelUncertainty(
          pilot,
          needle,
          main,
          air,
          residual,
          residualLength,
          pilotJetTolerance,
          mainJetTolerance,
          needleJetTolerance,
          needleTolerance,
          Set.of());
    }

    static SpreadsForm of(ModelUncertainty u) {
      return new SpreadsForm(
          u.pilot(),
          u.needle(),
          u.main(),
          u.air(),
          u.residual(),
          u.residualLength(),
          u.pilotJetTolerance(),
          u.mainJetTolerance(),
          u.needleJetTolerance(),
          u.needleTolerance(),
          Optional.of(List.copyOf(u.guessed())).filter(values -> !values.isEmpty()));
    }

    ModelUncertainty uncertainty() {
      return new ModelUncertainty(
          pilot,
          needle,
          main,
          air,
          residual,
          residualLength,
          pilotJetTolerance,
          mainJetTolerance,
          needleJetTolerance,
          needleTolerance,
          Sets.immutableEnumSet(guessed.orElse(List.of())));
    }
  }

  /**
   * The customary step of a part, in JSON.
   *
   * @param part the part
   * @param size the step in the part's own unit, more than 0 and at most 1
   */
  record SizeForm(MeteringPart part, double size) {

    SizeForm {
      CustomarySteps.assumed().with(part, size);
    }
  }

  /**
   * What colours and symptoms mean, in JSON.
   *
   * @param colours what each colour means, each once; the bands meet
   * @param symptoms what each symptom means, each once
   * @param kelvinPerLnLambda rise of exhaust temperature by ln λ on the rich side, 50 to 5000 K
   * @param wideband standard deviation of ln λ of a wideband sensor, 0.001 to 1
   * @param exhaustThermometer standard deviation of ln λ of an exhaust thermometer, 0.001 to 1
   * @param proven standard deviation of ln λ of a setting that is known to serve, 0.001 to 1
   */
  record MeaningsForm(
      List<ColourForm> colours,
      List<SymptomForm> symptoms,
      Coefficient kelvinPerLnLambda,
      Coefficient wideband,
      Coefficient exhaustThermometer,
      Coefficient proven) {

    MeaningsForm {
      meanings(colours, symptoms, kelvinPerLnLambda, wideband, exhaustThermometer, proven);
    }

    /**
     * What a colour means, in JSON.
     *
     * @param colour the colour of a plug
     * @param meaning what it means
     */
    record ColourForm(PlugColour colour, Meaning meaning) {}

    /**
     * What a symptom means, in JSON.
     *
     * @param symptom how the engine runs
     * @param meaning what it means
     */
    record SymptomForm(Symptom symptom, Meaning meaning) {}

    static MeaningsForm of(Meanings meanings) {
      return new MeaningsForm(
          meanings.colours().entrySet().stream()
              .map(entry -> new ColourForm(entry.getKey(), entry.getValue()))
              .toList(),
          meanings.symptoms().entrySet().stream()
              .map(entry -> new SymptomForm(entry.getKey(), entry.getValue()))
              .toList(),
          meanings.kelvinPerLnLambda(),
          requireNonNull(meanings.accuracies().get(Instrument.WIDEBAND)),
          requireNonNull(meanings.accuracies().get(Instrument.EXHAUST_THERMOMETER)),
          meanings.proven());
    }

    Meanings meanings() {
      return meanings(colours, symptoms, kelvinPerLnLambda, wideband, exhaustThermometer, proven);
    }

    private static Meanings meanings(
        List<ColourForm> colours,
        List<SymptomForm> symptoms,
        Coefficient kelvinPerLnLambda,
        Coefficient wideband,
        Coefficient exhaustThermometer,
        Coefficient proven) {
      all("colours", PlugColour.class, colours.stream().map(ColourForm::colour).toList());
      all("symptoms", Symptom.class, symptoms.stream().map(SymptomForm::symptom).toList());
      Map<PlugColour, Meaning> byColour = new EnumMap<>(PlugColour.class);
      colours.forEach(form -> byColour.put(form.colour(), form.meaning()));
      Map<Symptom, Meaning> bySymptom = new EnumMap<>(Symptom.class);
      symptoms.forEach(form -> bySymptom.put(form.symptom(), form.meaning()));
      Map<Instrument, Coefficient> accuracies =
          Map.of(Instrument.WIDEBAND, wideband, Instrument.EXHAUST_THERMOMETER, exhaustThermometer);
      return new Meanings(byColour, bySymptom, kelvinPerLnLambda, accuracies, proven);
    }
  }

  /**
   * A rulebook by name, in JSON.
   *
   * @param name its name
   * @param version its version
   * @param digest the digest of its rules
   */
  record EditionForm(String name, String version, String digest) {

    static EditionForm of(RulebookEdition edition) {
      return new EditionForm(edition.name(), edition.version(), edition.digest());
    }

    @Override
    public String toString() {
      return name + " " + version + " of digest " + digest;
    }
  }

  static TunerForm of(Tuner tuner) {
    RiskModelForm risk = RiskModelForm.of(tuner.riskModel());
    return new TunerForm(
        List.copyOf(tuner.instruments()),
        risk.limits(),
        risk.spreads(),
        risk.steps(),
        MeaningsForm.of(tuner.meanings()),
        EditionForm.of(tuner.rulebook().edition()));
  }

  Tuner tuner(Rulebook rules) {
    EditionForm given = EditionForm.of(rules.edition());
    if (!given.equals(rulebook)) {
      throw InvalidValueException.at(
          "tuner.rulebook", Quote.quoted(rulebook.toString()), Sentence.plain(given.toString()));
    }
    return Tuner.readingWith(Sets.immutableEnumSet(instruments))
        .withRiskModel(new RiskModelForm(limits, spreads, steps).risk())
        .withMeanings(meanings.meanings())
        .withRulebook(rules);
  }

  /** Each of them once and none left out: what is not stated would be the library's own. */
  static <E extends Enum<E>> void all(String field, Class<E> type, List<E> stated) {
    once(field, stated);
    if (stated.size() != type.getEnumConstants().length) {
      throw refused(field, stated);
    }
  }

  private static <E extends Enum<E>> void once(String field, List<E> stated) {
    if (stated.stream().distinct().count() < stated.size()) {
      throw refused(field, stated);
    }
  }

  private static InvalidValueException refused(String field, List<? extends Enum<?>> stated) {
    String names = stated.stream().map(Enums::name).collect(joining(", "));
    return InvalidValueException.at(field, Quote.listed(names), Sentence.of("error.each-once"));
  }
}
