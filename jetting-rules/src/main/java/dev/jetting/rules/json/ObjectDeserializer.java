package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
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

  private ObjectDeserializer(JsonDeserializer<?> delegate, boolean reportsErrors) {
    super(delegate);
    this.reportsErrors = reportsErrors;
  }

  @Override
  protected JsonDeserializer<?> newDelegatingInstance(JsonDeserializer<?> delegate) {
    return new ObjectDeserializer(delegate, reportsErrors);
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
    if (in.hasToken(JsonToken.START_OBJECT)) {
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

  /** Puts it before every record of the project and everything that has a form. */
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
      return object ? new ObjectDeserializer(found, reportsErrors) : found;
    }
  }
}
