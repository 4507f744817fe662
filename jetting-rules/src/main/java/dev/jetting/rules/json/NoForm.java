package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.ser.Serializers;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Rule;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import org.jspecify.annotations.Nullable;

/**
 * What has no form: the project's types that are no plain data, a rule, which holds a function, and
 * an assessed setting, which is assessed anew. They are refused in our own words. A mapper would
 * look for fields and getters.
 */
final class NoForm {

  private NoForm() {}

  private static boolean is(Class<?> type) {
    boolean plain = type.isRecord() || type.isEnum() || type.isArray();
    return type == AssessedSetting.class || type == Rule.class || (Ours.is(type) && !plain);
  }

  private static InvalidValueException refused(Class<?> type) {
    return InvalidValueException.worded(
        Sentence.of("error.no-form").with("type", Sentence.name(type.getSimpleName())),
        Sentence.of("error.no-form.allowed"));
  }

  /** To be asked after all others. */
  static final class Writers extends Serializers.Base {
    @Override
    public @Nullable JsonSerializer<?> findSerializer(
        SerializationConfig config, JavaType type, BeanDescription description) {
      Class<?> raw = type.getRawClass();
      return is(raw) ? new Serializer(raw) : null;
    }
  }

  /** To be asked after all others. */
  static final class Readers extends Deserializers.Base {
    @Override
    public @Nullable JsonDeserializer<?> findBeanDeserializer(
        JavaType type, DeserializationConfig config, BeanDescription description) {
      Class<?> raw = type.getRawClass();
      return is(raw) ? new Deserializer(raw) : null;
    }
  }

  private static final class Serializer extends JsonSerializer<Object> {
    private final Class<?> type;

    Serializer(Class<?> type) {
      this.type = type;
    }

    @Override
    public void serialize(Object value, JsonGenerator out, SerializerProvider provider) {
      throw refused(type);
    }
  }

  private static final class Deserializer extends JsonDeserializer<Object> {
    private final Class<?> type;

    Deserializer(Class<?> type) {
      this.type = type;
    }

    @Override
    public Class<?> handledType() {
      return type;
    }

    @Override
    public Object deserialize(JsonParser in, DeserializationContext context) {
      throw refused(type);
    }
  }
}
