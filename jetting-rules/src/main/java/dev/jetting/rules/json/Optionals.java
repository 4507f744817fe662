package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Optional components: a field that is there or not, never null. */
final class Optionals {

  private Optionals() {}

  static final class Serializer extends JsonSerializer<Optional<?>> {
    @Override
    public boolean isEmpty(SerializerProvider provider, Optional<?> optional) {
      return optional.isEmpty();
    }

    @Override
    public void serialize(Optional<?> optional, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(optional.orElse(null), out);
    }
  }

  static final class Deserializer extends JsonDeserializer<Optional<?>>
      implements ContextualDeserializer {

    private final @Nullable JsonDeserializer<?> content;

    Deserializer(@Nullable JsonDeserializer<?> content) {
      this.content = content;
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, @Nullable BeanProperty property)
        throws JsonMappingException {
      JavaType type = context.getContextualType().containedTypeOrUnknown(0);
      JsonDeserializer<?> strict =
          property != null && StrictIntrospector.isOurs(property.getMember())
              ? StrictIntrospector.reader(type.getRawClass())
              : null;
      return new Deserializer(
          strict == null ? context.findContextualValueDeserializer(type, property) : strict);
    }

    @Override
    public Optional<?> deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return content == null
          ? (Optional<?>) context.handleUnexpectedToken(Optional.class, in)
          : Optional.of(content.deserialize(in, context));
    }

    @Override
    public Optional<?> getNullValue(DeserializationContext context) throws JsonMappingException {
      return context.reportInputMismatch(Optional.class, "null");
    }

    @Override
    public Optional<?> getAbsentValue(DeserializationContext context) {
      return Optional.empty();
    }
  }
}
