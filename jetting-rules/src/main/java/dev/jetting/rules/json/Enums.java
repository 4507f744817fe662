package dev.jetting.rules.json;

import static com.google.common.collect.ImmutableMap.toImmutableMap;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.deser.KeyDeserializers;
import com.fasterxml.jackson.databind.ser.Serializers;
import com.google.common.base.CaseFormat;
import com.google.common.collect.ImmutableMap;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The project's enums by their names in lower case joined by hyphens. */
final class Enums {

  private Enums() {}

  static String name(Enum<?> constant) {
    return CaseFormat.UPPER_UNDERSCORE.to(CaseFormat.LOWER_HYPHEN, constant.name());
  }

  static List<String> names(Class<?> type) {
    return Stream.of(type.getEnumConstants()).map(constant -> name((Enum<?>) constant)).toList();
  }

  static final class Writers extends Serializers.Base {
    @Override
    public @Nullable JsonSerializer<?> findSerializer(
        SerializationConfig config, JavaType type, BeanDescription description) {
      return type.isEnumType() && Ours.is(type.getRawClass()) ? new Serializer() : null;
    }
  }

  static final class Readers extends Deserializers.Base {
    @Override
    public @Nullable JsonDeserializer<?> findEnumDeserializer(
        Class<?> type, DeserializationConfig config, BeanDescription description) {
      return Ours.is(type) ? new Deserializer(type) : null;
    }
  }

  /** Names that stand before a value, such as the shares of the circuits. */
  static final class KeyWriters extends Serializers.Base {
    @Override
    public @Nullable JsonSerializer<?> findSerializer(
        SerializationConfig config, JavaType type, BeanDescription description) {
      return type.isEnumType() && Ours.is(type.getRawClass()) ? new KeySerializer() : null;
    }
  }

  static final class KeyReaders implements KeyDeserializers {
    @Override
    public @Nullable KeyDeserializer findKeyDeserializer(
        JavaType type, DeserializationConfig config, BeanDescription description) {
      return type.isEnumType() && Ours.is(type.getRawClass())
          ? new KeyReader(type.getRawClass())
          : null;
    }
  }

  private static final class KeySerializer extends JsonSerializer<Enum<?>> {
    @Override
    public void serialize(Enum<?> constant, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeFieldName(name(constant));
    }
  }

  private static final class KeyReader extends KeyDeserializer {
    private final Class<?> type;

    KeyReader(Class<?> type) {
      this.type = type;
    }

    @Override
    public Object deserializeKey(String key, DeserializationContext context) {
      for (Object constant : type.getEnumConstants()) {
        if (name((Enum<?>) constant).equals(key)) {
          return constant;
        }
      }
      throw InvalidValueException.worded(
          Sentence.plain(Quote.quoted(key)), Expected.root(type).allowed());
    }
  }

  private static final class Serializer extends JsonSerializer<Enum<?>> {
    @Override
    public void serialize(Enum<?> constant, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeString(name(constant));
    }
  }

  private static final class Deserializer extends JsonDeserializer<Object> {
    private final Class<?> type;
    private final ImmutableMap<String, Object> constants;

    Deserializer(Class<?> type) {
      this.type = type;
      this.constants =
          ImmutableMap.<String, Object>builder()
              .putAll(
                  Stream.of(type.getEnumConstants())
                      .collect(toImmutableMap(c -> name((Enum<?>) c), c -> c)))
              .putAll(FormerNames.of(type))
              .buildOrThrow();
    }

    @Override
    public Class<?> handledType() {
      return type;
    }

    @Override
    public Object deserialize(JsonParser in, DeserializationContext context) throws IOException {
      Object constant = in.hasToken(JsonToken.VALUE_STRING) ? constants.get(in.getText()) : null;
      return constant == null ? context.handleUnexpectedToken(type, in) : constant;
    }
  }
}
