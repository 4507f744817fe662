package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import dev.jetting.units.Quantity;
import java.io.Serial;
import java.util.Optional;
import java.util.function.Function;

/**
 * Lets a Jackson mapper of the caller's own write and read setup sheets, reports and everything in
 * them, in the form of {@link ReportJson}. It is strict about the types of this library and leaves
 * all others alone. The exception is {@link Optional}, which it writes as its content or not at
 * all.
 *
 * <p>Not for documents from outside. {@link SheetJson} and {@link ReportJson} have limits of size,
 * reject duplicate fields, report errors in their own words and print the same bytes on every Java.
 * With a mapper of one's own, all that depends on the mapper.
 */
public final class JettingModule extends SimpleModule {

  @Serial private static final long serialVersionUID = 1L;

  /** A module that writes a quantity with a unit as an object of value and unit. */
  public JettingModule() {
    this(new Quantities.MeasureSerializer());
  }

  /** A module that writes quantities as texts. */
  static JettingModule ofTexts() {
    return new JettingModule(new Quantities.TextSerializer());
  }

  /** A module that reads and writes rule files too, and no plain text or number but as written. */
  static JettingModule ofRuleFiles() {
    JettingModule module = ofTexts();
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

  private JettingModule(JsonSerializer<Quantity<?>> quantities) {
    super("jetting");
    add(Quantity.class, quantities);
    Quantities.PARSERS.forEach(this::addQuantity);
    Form.ALL.forEach(this::addForm);
    add(Optional.class, new Optionals.Serializer());
    add(Optional.class, new Optionals.Deserializer(null));
    setDeserializerModifier(new ObjectDeserializer.Modifier());
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
    super.setupModule(context);
    context.addSerializers(new Enums.Writers());
    context.addDeserializers(new Enums.Readers());
    context.insertAnnotationIntrospector(new StrictIntrospector());
  }
}
