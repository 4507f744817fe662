package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import dev.jetting.rules.Report;
import dev.jetting.units.Quantity;
import java.io.Serial;
import java.util.function.Function;

/**
 * Lets a Jackson mapper of the caller's own write and read setup sheets, reports and everything in
 * them, in the form of {@link SheetJson}, {@link ReportJson} and the others. A mapper finds it by
 * {@code findAndRegisterModules()}. It is strict about the types of this library and leaves all
 * others alone.
 *
 * <p>All plain data of the library is written: records, enums, quantities, and limits made by
 * {@code MixtureLimits.margins()}. A type that is no plain data, such as {@code AssessedSetting} or
 * {@code Tuner}, is refused in a sentence that names what to take instead.
 *
 * <p>What cannot be read throws a {@link JsonInputException}, whose path begins at the value of
 * this library and whose line and column are 1. Inside of a type of somebody else's, Jackson wraps
 * it, as it does all exceptions.
 *
 * <p>Not for documents from outside. {@link SheetJson} and {@link ReportJson} have limits of size,
 * reject duplicate fields and print the same bytes on every Java. With a mapper of one's own, all
 * that depends on the mapper.
 */
public final class JettingModule extends SimpleModule {

  @Serial private static final long serialVersionUID = 1L;

  /** A module for a mapper. */
  public JettingModule() {
    this(true);
    addDeserializer(TunerForm.class, new TunerForm.PassingOver());
  }

  /** A module for a reader that reports errors by the text of the document. */
  static JettingModule ofReader() {
    JettingModule module = ofTuners();
    module.addDeserializer(TunerForm.class, new TunerForm.PassingOver());
    return module;
  }

  /** A module for a reader of the tuner in the document of a session. */
  static JettingModule ofTuners() {
    return new JettingModule(false);
  }

  /** A module that reads and writes rule files too, and no plain text or number but as written. */
  static JettingModule ofRuleFiles() {
    JettingModule module = ofReader();
    module.addForm(Form.RULE_FILE);
    module.addDeserializer(String.class, Scalars.TEXT);
    module.addDeserializer(Double.class, Scalars.NUMBER);
    module.addSerializer(Double.class, Scalars.FINITE_NUMBER);
    module.addDeserializer(Threshold.class, new Threshold.Deserializer());
    module.addSerializer(Threshold.class, new Threshold.Serializer());
    module.addDeserializer(JsonText.class, new JsonText.Deserializer());
    module.addSerializer(JsonText.class, new JsonText.Serializer());
    return module;
  }

  private JettingModule(boolean reportsErrors) {
    super("jetting");
    add(Quantity.class, new Quantities.TextSerializer());
    Quantities.PARSERS.forEach(this::addQuantity);
    Form.ALL.forEach(this::addForm);
    add(After.class, new After.Serializer());
    add(After.class, new After.Deserializer());
    add(Report.class, new After.ReportSerializer());
    add(Report.class, new After.ReportDeserializer(Form.REPORT.deserializer()));
    setDeserializerModifier(new ObjectDeserializer.Modifier(reportsErrors));
  }

  private void addQuantity(
      Class<? extends Quantity<?>> type, Function<String, ? extends Quantity<?>> parse) {
    add(type, new Quantities.Deserializer<>(type, parse));
  }

  private <T> void addForm(Form<T, ?> form) {
    addSerializer(form.type(), form.serializer());
    addDeserializer(form.type(), form.deserializer());
  }

  /** The type tokens of generic types are raw. */
  @SuppressWarnings({"unchecked", "rawtypes"})
  private void add(Class<?> type, JsonSerializer<?> serializer) {
    addSerializer((Class) type, (JsonSerializer) serializer);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private void add(Class<?> type, JsonDeserializer<?> deserializer) {
    addDeserializer((Class) type, (JsonDeserializer) deserializer);
  }

  @Override
  public void setupModule(SetupContext context) {
    context.addSerializers(new NoForm.Writers()); // what is added first is asked last
    context.addDeserializers(new NoForm.Readers());
    super.setupModule(context);
    context.addSerializers(new Enums.Writers());
    context.addDeserializers(new Enums.Readers());
    context.addKeySerializers(new Enums.KeyWriters());
    context.addKeyDeserializers(new Enums.KeyReaders());
    context.insertAnnotationIntrospector(new StrictIntrospector());
  }
}
