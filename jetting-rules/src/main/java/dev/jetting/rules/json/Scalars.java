package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Plain numbers and texts, taken as they are written and as nothing else. */
final class Scalars {

  /** A longer id would swamp every message that names its part. */
  static final int LONGEST_ID = 60;

  static final JsonDeserializer<Double> NUMBER = new NumberDeserializer();
  static final JsonDeserializer<Integer> WHOLE_NUMBER = new WholeNumberDeserializer();
  static final JsonDeserializer<Long> LONG_NUMBER = new LongNumberDeserializer();
  static final JsonDeserializer<BigDecimal> DECIMAL = new DecimalDeserializer();
  static final JsonDeserializer<Boolean> TRUTH = new TruthDeserializer();
  static final JsonDeserializer<String> TEXT = new TextDeserializer(Integer.MAX_VALUE);
  static final JsonDeserializer<String> ID = new TextDeserializer(LONGEST_ID);
  static final JsonSerializer<List<Double>> NUMBERS = new NumbersSerializer();
  static final JsonSerializer<Double> FINITE_NUMBER = new FiniteNumberSerializer();

  private Scalars() {}

  private static final class NumberDeserializer extends JsonDeserializer<Double> {
    @Override
    public Double deserialize(JsonParser in, DeserializationContext context) throws IOException {
      double value = in.currentToken().isNumeric() ? in.getDoubleValue() : Double.NaN;
      return Double.isFinite(value)
          ? (Double) value
          : (Double) context.handleUnexpectedToken(double.class, in);
    }
  }

  private static final class DecimalDeserializer extends JsonDeserializer<BigDecimal> {
    @Override
    public BigDecimal deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return in.currentToken().isNumeric()
          ? in.getDecimalValue()
          : (BigDecimal) context.handleUnexpectedToken(BigDecimal.class, in);
    }
  }

  private static final class TruthDeserializer extends JsonDeserializer<Boolean> {
    @Override
    public Boolean deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return in.currentToken().isBoolean()
          ? (Boolean) in.getBooleanValue()
          : (Boolean) context.handleUnexpectedToken(boolean.class, in);
    }
  }

  private static final class WholeNumberDeserializer extends JsonDeserializer<Integer> {
    @Override
    public Integer deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return in.hasToken(JsonToken.VALUE_NUMBER_INT)
              && in.getNumberType() == JsonParser.NumberType.INT
          ? (Integer) in.getIntValue()
          : (Integer) context.handleUnexpectedToken(int.class, in);
    }
  }

  private static final class LongNumberDeserializer extends JsonDeserializer<Long> {
    @Override
    public Long deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return in.hasToken(JsonToken.VALUE_NUMBER_INT)
              && in.getNumberType() != JsonParser.NumberType.BIG_INTEGER
          ? (Long) in.getLongValue()
          : (Long) context.handleUnexpectedToken(long.class, in);
    }
  }

  private static final class TextDeserializer extends JsonDeserializer<String> {
    private final int longest;

    TextDeserializer(int longest) {
      this.longest = longest;
    }

    @Override
    public String deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return in.hasToken(JsonToken.VALUE_STRING) && in.getTextLength() <= longest
          ? in.getText()
          : (String) context.handleUnexpectedToken(String.class, in);
    }
  }

  private static final class FiniteNumberSerializer extends JsonSerializer<Double> {
    @Override
    public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      if (!Double.isFinite(value)) {
        throw InvalidValueException.of(
            Sentence.of("error.name.number"), value, Sentence.of("error.finite"));
      }
      out.writeNumber(value);
    }
  }

  /** Numbers of a column, which are finite by the records that they come from. */
  private static final class NumbersSerializer extends JsonSerializer<List<Double>> {
    @Override
    public void serialize(List<Double> values, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      ReadablePrinter.onOneLine(out, true);
      out.writeStartArray();
      for (double value : values) {
        if (value == (int) value) {
          out.writeNumber((int) value);
        } else {
          out.writeNumber(value);
        }
      }
      out.writeEndArray();
      ReadablePrinter.onOneLine(out, false);
    }
  }
}
