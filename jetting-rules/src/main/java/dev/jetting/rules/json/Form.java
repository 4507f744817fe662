package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Intake;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Plan;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Verdict;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.json.TunerForm.MarginsForm;
import dev.jetting.rules.json.TunerForm.MeaningsForm;
import dev.jetting.rules.json.TunerForm.SpreadsForm;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitWaiver;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Meanings;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import dev.jetting.units.JetCalibration;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The record that stands in JSON for a type that is no record, or whose own components are not what
 * a person should have to write.
 *
 * @param type the type
 * @param form its stand-in; checks what the type itself does not
 * @param write from the type to its stand-in
 * @param read from the stand-in to the type
 * @param <T> the type
 * @param <F> its stand-in
 */
record Form<T, F extends Record>(
    Class<T> type, Class<F> form, Function<T, F> write, Function<F, T> read) {

  static final Form<Report, ReportForm> REPORT =
      new Form<>(Report.class, ReportForm.class, ReportForm::of, ReportForm::report);

  static final List<Form<?, ?>> ALL =
      List.of(
          REPORT,
          new Form<>(RiskProfile.class, ProfileForm.class, ProfileForm::of, ProfileForm::profile),
          new Form<>(After.class, AfterForm.class, AfterForm::of, AfterForm::after),
          new Form<>(SetupSheet.class, SheetForm.class, SheetForm::of, SheetForm::sheet),
          new Form<>(PartsAtHand.class, PartsForm.class, PartsForm::of, PartsForm::parts),
          new Form<>(
              Provenance.class,
              ProvenanceForm.class,
              ProvenanceForm::of,
              ProvenanceForm::provenance),
          new Form<>(
              Catalogue.class, CatalogueForm.class, CatalogueForm::of, CatalogueForm::catalogue),
          new Form<>(Part.class, PartForm.class, PartForm::of, PartForm::part),
          new Form<>(JetCalibration.class, BenchForm.class, BenchForm::of, BenchForm::bench),
          new Form<>(Kit.class, KitForm.class, KitForm::of, KitForm::kit),
          new Form<>(Evidence.class, EvidenceForm.class, EvidenceForm::of, EvidenceForm::evidence),
          new Form<>(TuningStep.class, StepForm.class, StepForm::of, StepForm::step),
          new Form<>(TuningSession.class, SessionForm.class, SessionForm::of, SessionForm::session),
          new Form<>(Message.class, MessageForm.class, MessageForm::of, MessageForm::message),
          new Form<>(Argument.class, ArgumentForm.class, ArgumentForm::of, ArgumentForm::argument),
          new Form<>(Finding.class, FindingForm.class, FindingForm::of, FindingForm::finding),
          new Form<>(Margin.class, MarginForm.class, MarginForm::of, MarginForm::margin),
          new Form<>(Outcome.class, OutcomeForm.class, OutcomeForm::of, OutcomeForm::outcome),
          new Form<>(
              UnusedWaiver.class,
              UnusedWaiverForm.class,
              UnusedWaiverForm::of,
              UnusedWaiverForm::unused),
          new Form<>(Remedy.class, RemedyForm.class, RemedyForm::of, RemedyForm::remedy),
          new Form<>(Plan.class, PlanForm.class, PlanForm::of, PlanForm::plan),
          new Form<>(Waiver.class, WaiverForm.class, WaiverForm::of, WaiverForm::waiver),
          new Form<>(
              KitWaiver.class, KitWaiverForm.class, KitWaiverForm::of, KitWaiverForm::waiver),
          new Form<>(Verdict.class, VerdictForm.class, VerdictForm::of, VerdictForm::verdict),
          new Form<>(
              ReportDifference.class,
              DifferenceForm.class,
              DifferenceForm::of,
              DifferenceForm::difference),
          new Form<>(Intake.class, IntakeForm.class, IntakeForm::of, IntakeForm::intake),
          new Form<>(
              Induction.class, InductionForm.class, InductionForm::of, InductionForm::induction),
          new Form<>(Exhaust.class, ExhaustForm.class, ExhaustForm::of, ExhaustForm::exhaust),
          new Form<>(Setup.class, SetupForm.class, SetupForm::of, SetupForm::setup),
          new Form<>(Riding.class, RidingForm.class, RidingForm::of, RidingForm::riding),
          new Form<>(Air.class, AirForm.class, AirForm::of, AirForm::air),
          new Form<>(Fuel.class, FuelForm.class, FuelForm::of, FuelForm::fuel),
          new Form<>(FuelBlend.class, BlendForm.class, BlendForm::of, BlendForm::blend),
          new Form<>(
              FuelComponent.class,
              ComponentForm.class,
              ComponentForm::of,
              ComponentForm::component),
          new Form<>(RiskModel.class, RiskModelForm.class, RiskModelForm::of, RiskModelForm::risk),
          new Form<>(MixtureLimits.class, MarginsForm.class, MarginsForm::of, MarginsForm::limits),
          new Form<>(
              ModelUncertainty.class, SpreadsForm.class, SpreadsForm::of, SpreadsForm::uncertainty),
          new Form<>(Meanings.class, MeaningsForm.class, MeaningsForm::of, MeaningsForm::meanings));

  /** Not for a caller's own mapper, whose way with plain texts and numbers may be a lax one. */
  static final Form<RuleFile, RuleFileForm> RULE_FILE =
      new Form<>(RuleFile.class, RuleFileForm.class, RuleFile::form, RuleFileReader::read);

  static Optional<Form<?, ?>> of(Class<?> type) {
    return Stream.concat(ALL.stream(), Stream.of(RULE_FILE))
        .filter(form -> form.type().equals(type))
        .findFirst();
  }

  JsonSerializer<T> serializer() {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator out, SerializerProvider provider)
          throws IOException {
        provider.defaultSerializeValue(write.apply(value), out);
      }
    };
  }

  JsonDeserializer<T> deserializer() {
    return new Deserializer<>(this, null);
  }

  /** Reads the stand-in, whose reader it looks up once for each place where the type stands. */
  private static final class Deserializer<T, F extends Record> extends JsonDeserializer<T>
      implements ContextualDeserializer {

    private final Form<T, F> form;
    private final @Nullable JsonDeserializer<Object> reader;

    Deserializer(Form<T, F> form, @Nullable JsonDeserializer<Object> reader) {
      this.form = form;
      this.reader = reader;
    }

    @Override
    public Class<?> handledType() {
      return form.type;
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, @Nullable BeanProperty property)
        throws JsonMappingException {
      return new Deserializer<>(
          form, context.findRootValueDeserializer(context.constructType(form.form)));
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
      Object standIn =
          reader == null ? context.readValue(in, form.form) : reader.deserialize(in, context);
      return form.read.apply(form.form.cast(standIn));
    }
  }
}
