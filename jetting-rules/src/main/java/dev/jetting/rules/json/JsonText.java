package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.io.StringWriter;

/**
 * A JSON value as a text, its numbers with all their digits.
 *
 * @param json the value on one line
 */
record JsonText(String json) {

  private static final JsonFactory FACTORY = JsonFactory.builder().build();

  /** Writes the value. */
  static final class Serializer extends JsonSerializer<JsonText> {
    @Override
    public void serialize(JsonText value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeRawValue(value.json());
    }
  }

  /** Reads any value. */
  static final class Deserializer extends JsonDeserializer<JsonText> {
    @Override
    public JsonText deserialize(JsonParser in, DeserializationContext context) throws IOException {
      StringWriter text = new StringWriter();
      try (JsonGenerator copy = FACTORY.createGenerator(text)) {
        copy.copyCurrentStructureExact(in);
      }
      return new JsonText(text.toString());
    }
  }
}
