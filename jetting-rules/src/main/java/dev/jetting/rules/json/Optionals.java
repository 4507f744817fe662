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

    private final @Nullable JsonSerializer<?> content;

    /**
     * @param content what writes the content; null for the mapper's own
     */
    Serializer(@Nullable JsonSerializer<?> content) {
      this.content = content;
    }

    @Override
    public boolean isEmpty(SerializerProvider provider, Optional<?> optional) {
      return optional.isEmpty();
    }

    @Override
    public void serialize(Optional<?> optional, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      if (content == null || optional.isEmpty()) {
        provider.defaultSerializeValue(optional.orElse(null), out);
      } else {
        write(content, optional.get(), out, provider);
      }
    }

    @SuppressWarnings("unchecked") // the introspector gives what writes the type
    private static <T> void write(
        JsonSerializer<T> content, Object value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      content.serialize((T) value, out, provider);
    }
  }

  static final class Deserializer extends JsonDeserializer<Optional<?>>
      implements ContextualDeserializer {

    private final @Nullable JavaType type;
    private final @Nullable BeanProperty property;

    /** Looked up when first used: types that hold themselves would have no end otherwise. */
    private volatile @Nullable JsonDeserializer<?> content;

    Deserializer() {
      this(null, null);
    }

    private Deserializer(@Nullable JavaType type, @Nullable BeanProperty property) {
      this.type = type;
      this.property = property;
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, @Nullable BeanProperty at) {
      return new Deserializer(context.getContextualType().containedTypeOrUnknown(0), at);
    }

    @Override
    public Optional<?> deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return type == null
          ? (Optional<?>) context.handleUnexpectedToken(Optional.class, in)
          : Optional.ofNullable(content(type, context).deserialize(in, context));
    }

    private JsonDeserializer<?> content(JavaType of, DeserializationContext context)
        throws JsonMappingException {
      JsonDeserializer<?> known = content;
      if (known == null) {
        JsonDeserializer<?> strict = StrictIntrospector.reader(of.getRawClass());
        known =
            strict == null
                ? context.findContextualValueDeserializer(strictlyRead(of), property)
                : strict;
        content = known;
      }
      return known;
    }

    /** A list or map whose plain texts and numbers are read as they are written. */
    private static JavaType strictlyRead(JavaType type) {
      JavaType content = type.getContentType();
      JsonDeserializer<?> strict =
          content == null ? null : StrictIntrospector.reader(content.getRawClass());
      return strict == null ? type : type.withContentValueHandler(strict);
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
