package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.DelegatingDeserializer;
import com.fasterxml.jackson.databind.node.TreeTraversingParser;
import java.io.IOException;
import java.io.Serial;
import java.util.Optional;

/** Reads an object, the name of one, or the points of a curve; nothing else. */
final class ObjectDeserializer extends DelegatingDeserializer {

  @Serial private static final long serialVersionUID = 1L;

  /** What a mapper's reading carries while it is inside of one of our types. */
  private static final String INSIDE = "dev.jetting.inside";

  private static final DocumentLimits LIMITS = new DocumentLimits(16_000_000, 200);

  /** Whether errors are to be turned into those of this library here. */
  private final boolean reportsErrors;

  /** Whether what is read is an object; else a quantity, an enum or what has no form. */
  private final boolean object;

  private ObjectDeserializer(JsonDeserializer<?> delegate, boolean reportsErrors, boolean object) {
    super(delegate);
    this.reportsErrors = reportsErrors;
    this.object = object;
  }

  @Override
  protected JsonDeserializer<?> newDelegatingInstance(JsonDeserializer<?> delegate) {
    return new ObjectDeserializer(delegate, reportsErrors, object);
  }

  @Override
  public Object deserialize(JsonParser in, DeserializationContext context) throws IOException {
    if (!reportsErrors || context.getAttribute(INSIDE) != null) {
      return read(in, context);
    }
    JsonNode tree = context.readTree(in);
    context.setAttribute(INSIDE, true);
    try (JsonParser again = new TreeTraversingParser(tree, in.getCodec())) {
      again.nextToken();
      return read(again, context);
    } catch (JsonMappingException | IllegalArgumentException | IllegalStateException e) {
      Document document = Document.of(tree.toString(), Document.factory(LIMITS), LIMITS);
      throw new Failures(document, Expected.root(handledType())).of(e);
    } finally {
      context.setAttribute(INSIDE, null);
    }
  }

  private Object read(JsonParser in, DeserializationContext context) throws IOException {
    if (!object || in.hasToken(JsonToken.START_OBJECT)) {
      return super.deserialize(in, context);
    }
    Optional<Curve<?>> curve = Curve.of(handledType());
    if (in.hasToken(JsonToken.START_ARRAY) && curve.isPresent()) {
      return curve.get().read(in, context);
    }
    Object named =
        in.hasToken(JsonToken.VALUE_STRING) ? Shorthands.of(handledType()).get(in.getText()) : null;
    return named == null ? context.handleUnexpectedToken(handledType(), in) : named;
  }

  /**
   * Puts it before every record of the project and everything that has a form, and before its other
   * types where errors are turned into those of this library.
   */
  static final class Modifier extends BeanDeserializerModifier {

    @Serial private static final long serialVersionUID = 1L;

    private final boolean reportsErrors;

    Modifier(boolean reportsErrors) {
      this.reportsErrors = reportsErrors;
    }

    @Override
    public JsonDeserializer<?> modifyDeserializer(
        DeserializationConfig config, BeanDescription description, JsonDeserializer<?> found) {
      Class<?> type = description.getBeanClass();
      boolean record = type.isRecord() && Ours.is(type) && type != JsonText.class;
      boolean object = record || Form.of(type).isPresent();
      boolean value = reportsErrors && Ours.is(type);
      return object || value ? new ObjectDeserializer(found, reportsErrors, object) : found;
    }

    @Override
    public JsonDeserializer<?> modifyEnumDeserializer(
        DeserializationConfig config,
        JavaType type,
        BeanDescription description,
        JsonDeserializer<?> found) {
      return reportsErrors && Ours.is(type.getRawClass())
          ? new ObjectDeserializer(found, true, false)
          : found;
    }
  }
}
