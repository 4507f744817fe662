package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import dev.jetting.rules.ThrottleBand;
import java.io.IOException;
import java.util.Optional;

/** What a measure is held against, as it is written. */
sealed interface Threshold {

  /** A quantity. The measure decides of what kind. */
  record Stated(String text) implements Threshold {}

  /** Another measure. */
  record Against(OtherMeasure other) implements Threshold {}

  /**
   * Another measure, with a factor.
   *
   * @param measure name of the other measure, of the same quantity
   * @param take what to take of it where it has a number at each opening
   * @param within the openings at which to take it; all that the rule sees if left out
   * @param times the factor, above 0 to 1000; 1 if left out
   */
  record OtherMeasure(
      String measure, Optional<Take> take, Optional<ThrottleBand> within, Optional<Double> times) {}

  /** Writes a text or an object. */
  final class Serializer extends JsonSerializer<Threshold> {
    @Override
    public void serialize(Threshold threshold, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      if (threshold instanceof Stated stated) {
        out.writeString(stated.text());
      } else {
        provider.defaultSerializeValue(((Against) threshold).other(), out);
      }
    }
  }

  /** Reads a text, a number or an object. */
  final class Deserializer extends JsonDeserializer<Threshold> {
    @Override
    public Threshold deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return switch (in.currentToken()) {
        case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Stated(in.getText());
        case START_OBJECT -> new Against(context.readValue(in, OtherMeasure.class));
        default -> (Threshold) context.handleUnexpectedToken(Threshold.class, in);
      };
    }
  }
}
