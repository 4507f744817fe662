package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.Measure;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Altitude;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.FuelConsumption;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.KinematicViscosity;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Power;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.Quantity;
import dev.jetting.units.QuantityException;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.VolumeFlow;
import dev.jetting.units.number.Decimals;
import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Quantities in JSON. Three forms are read: a text, a number where the quantity has no unit, and an
 * object of value and unit.
 */
final class Quantities {

  /** Every quantity with the function that reads its text. */
  static final Map<Class<? extends Quantity<?>>, Function<String, ? extends Quantity<?>>> PARSERS =
      ImmutableMap.<Class<? extends Quantity<?>>, Function<String, ? extends Quantity<?>>>builder()
          .put(AirFuelRatio.class, AirFuelRatio::parse)
          .put(Altitude.class, Altitude::parse)
          .put(Area.class, Area::parse)
          .put(ClipPosition.class, ClipPosition::parse)
          .put(Cutaway.class, Cutaway::parse)
          .put(Density.class, Density::parse)
          .put(Diameter.class, Diameter::parse)
          .put(Displacement.class, Displacement::parse)
          .put(DynamicViscosity.class, DynamicViscosity::parse)
          .put(EngineSpeed.class, EngineSpeed::parse)
          .put(FloatLevel.class, FloatLevel::parse)
          .put(FuelConsumption.class, FuelConsumption::parse)
          .put(JetBore.class, JetBore::parse)
          .put(JetFlow.class, JetFlow::parse)
          .put(KinematicViscosity.class, KinematicViscosity::parse)
          .put(Lambda.class, Lambda::parse)
          .put(Length.class, Length::parse)
          .put(MassFlow.class, MassFlow::parse)
          .put(Power.class, Power::parse)
          .put(PremixRatio.class, PremixRatio::parse)
          .put(Pressure.class, Pressure::parse)
          .put(Probability.class, Probability::parse)
          .put(RelativeHumidity.class, RelativeHumidity::parse)
          .put(ScrewTurns.class, ScrewTurns::parse)
          .put(Temperature.class, Temperature::parse)
          .put(TemperatureDifference.class, TemperatureDifference::parse)
          .put(ThrottleOpening.class, ThrottleOpening::parse)
          .put(VolumeFlow.class, VolumeFlow::parse)
          .buildOrThrow();

  private Quantities() {}

  /**
   * Reads a quantity.
   *
   * @throws QuantityException if the text is none of the type
   */
  static <Q extends Quantity<Q>> Q parse(Class<Q> type, String text) {
    return type.cast(Objects.requireNonNull(PARSERS.get(type)).apply(text));
  }

  /** What may be written for a quantity. */
  static Sentence allowed(Class<?> type) {
    Function<String, ?> parse = PARSERS.get(type);
    try {
      throw new AssertionError("reads an empty text: " + (parse == null ? type : parse.apply("")));
    } catch (QuantityException e) {
      return Sentence.of("error.quantity-form")
          .with("what", Sentence.name(e.quantity()))
          .with("form", e.sentence().part("allowed").orElseThrow());
    }
  }

  /** Writes the text of a quantity. */
  static final class TextSerializer extends JsonSerializer<Quantity<?>> {
    @Override
    public void serialize(Quantity<?> quantity, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeString(quantity.toString());
    }
  }

  /**
   * Writes a number where the quantity has no unit, an object of value and unit where it has one,
   * and a text where it is no single number.
   */
  static final class MeasureSerializer extends JsonSerializer<Quantity<?>> {
    @Override
    public void serialize(Quantity<?> quantity, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      Optional<Sentence.Amount> amount = quantity.amount();
      if (amount.isEmpty()) {
        out.writeString(quantity.toString());
      } else if (amount.get().unit().isEmpty()) {
        out.writeNumber(amount.get().value());
      } else {
        provider.defaultSerializeValue(new Measure(amount.get().value(), amount.get().unit()), out);
      }
    }
  }

  /** Reads every form of a quantity. */
  static final class Deserializer<Q extends Quantity<?>> extends JsonDeserializer<Q> {
    private final Class<?> type;
    private final Function<String, ? extends Q> parse;

    Deserializer(Class<?> type, Function<String, ? extends Q> parse) {
      this.type = type;
      this.parse = parse;
    }

    @Override
    public Class<?> handledType() {
      return type;
    }

    @Override
    @SuppressWarnings("unchecked") // the handler never returns another type
    public Q deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return switch (in.currentToken()) {
        case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parse.apply(in.getText());
        case START_OBJECT -> parse.apply(text(context.readValue(in, Measure.class)));
        default -> (Q) context.handleUnexpectedToken(type, in);
      };
    }

    /** Never such that number and unit run together to a mixed fraction, such as 1 and 3/4. */
    private static String text(Measure measure) {
      String number = Decimals.shortest(measure.value());
      boolean whole = number.chars().allMatch(c -> c == '-' || Character.isDigit(c));
      return number + (whole ? ".0 " : " ") + measure.unit();
    }
  }
}
