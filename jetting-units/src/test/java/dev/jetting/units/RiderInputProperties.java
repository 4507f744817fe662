package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;

/** What the library prints for people, people may type. */
class RiderInputProperties {

  @Property
  void jets_areReadBack(@ForAll @Scale(4) @DoubleRange(min = 0.2, max = 5) double millimetres) {
    JetBore bore = JetBore.ofMillimetres(millimetres);
    readBack(bore, TradeStyle::main, RiderInput::mainJet);
    readBack(bore, TradeStyle::pilot, RiderInput::pilotJet);
  }

  @Property
  void jetsByFlow_areReadBack(@ForAll @Scale(4) @DoubleRange(min = 1, max = 2000) double flow) {
    JetFlow jet = JetFlow.ofCubicCentimetresPerMinute(flow);
    readBack(jet, TradeStyle::main, RiderInput::jetFlow);
    readBack(jet, TradeStyle::pilot, RiderInput::jetFlow);
  }

  @Property
  void cutaways_areReadBack(@ForAll @Scale(4) @DoubleRange(min = 1, max = 20) double millimetres) {
    readBack(Cutaway.ofMillimetres(millimetres), TradeStyle::cutaway, RiderInput::cutaway);
  }

  @Property
  void clips_areReadBack(
      @ForAll @IntRange(min = 1, max = 9) int grooves,
      @ForAll @IntRange(min = 1, max = 9) int groove,
      @ForAll boolean top) {
    int there = 1 + (groove - 1) % grooves;
    ClipPosition clip =
        top ? ClipPosition.fromTop(there, grooves) : ClipPosition.fromBottom(there, grooves);
    readBack(clip, TradeStyle::clip, RiderInput::clip);
    readBack(clip, TradeStyle::clip, text -> RiderInput.clip(text, grooves));
  }

  @Property
  void turns_areReadBack(
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 50) double number, @ForAll ScrewKind kind) {
    ScrewTurns turns = ScrewTurns.of(number);
    readBack(turns, TradeStyle::turns, RiderInput::turns);
    readBack(turns, t -> TradeStyle.screw(kind, t), RiderInput::turns);
  }

  @Property
  void turnsInEighths_areReadBack(@ForAll @IntRange(min = 0, max = 80) int eighths) {
    readBack(ScrewTurns.ofEighths(eighths), TradeStyle::turns, RiderInput::turns);
  }

  @Property
  void openings_areReadBack(@ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double share) {
    readBack(ThrottleOpening.ofShare(share), TradeStyle::throttle, RiderInput::throttle);
  }

  @Property
  void openingsInParts_areReadBack(@ForAll @IntRange(min = 0, max = 128) int parts) {
    readBack(ThrottleOpening.ofShare(parts / 128.0), TradeStyle::throttle, RiderInput::throttle);
  }

  @Property
  void weather_isReadBack(
      @ForAll @Scale(4) @DoubleRange(min = -60, max = 60) double celsius,
      @ForAll @Scale(4) @DoubleRange(min = 300, max = 1300) double hectopascals,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(4) @DoubleRange(min = -400, max = 9000) double metres) {
    readBack(Temperature.ofCelsius(celsius), TradeStyle::temperature, RiderInput::temperature);
    readBack(Pressure.ofHectopascals(hectopascals), TradeStyle::pressure, RiderInput::pressure);
    readBack(RelativeHumidity.ofShare(share), TradeStyle::humidity, RiderInput::humidity);
    readBack(Altitude.ofMetres(metres), TradeStyle::altitude, RiderInput::altitude);
  }

  @Property
  void others_areReadBack(
      @ForAll @Scale(4) @DoubleRange(min = 0.4, max = 2) double lambda,
      @ForAll @Scale(4) @DoubleRange(min = 5, max = 40) double ratio,
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 10_000) double petrol,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 200) double level,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1000) double diameter) {
    readBack(Lambda.of(lambda), TradeStyle::lambda, RiderInput::lambda);
    readBack(AirFuelRatio.of(ratio), TradeStyle::airFuelRatio, RiderInput::airFuelRatio);
    readBack(PremixRatio.ofPetrolToOil(petrol), TradeStyle::premix, RiderInput::premix);
    readBack(PremixRatio.NO_OIL, TradeStyle::premix, RiderInput::premix);
    readBack(FloatLevel.ofMillimetres(level), TradeStyle::floatLevel, RiderInput::floatLevel);
    readBack(Diameter.ofMillimetres(diameter), TradeStyle::diameter, RiderInput::diameter);
  }

  /** Where it is not "under" or "over": those are no number. */
  @Property
  void probabilities_areReadBack(
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.99) double value) {
    readBack(Probability.of(value), TradeStyle::probability, RiderInput::probability);
  }

  /** A reading that is offered can be typed, and is then not asked about again. */
  @Property
  void offeredReadings_areRead(@ForAll @Scale(4) @DoubleRange(min = 0, max = 2000) double number) {
    String text = Text.number(Math.rint(number * 100) / 100);
    offered(text, RiderInput::mainJet);
    offered(text, RiderInput::cutaway);
    offered(text, t -> RiderInput.clip(t, 4));
    offered(text, RiderInput::throttle);
    offered(text, RiderInput::temperature);
    offered(text, RiderInput::premix);
    offered(text, RiderInput::altitude);
    offered(text, RiderInput::diameter);
    offered(text, RiderInput::humidity);
    offered(text, RiderInput::pressure);
  }

  private static void offered(String text, Function<String, ?> reader) {
    try {
      assertThat(reader.apply(text)).isNotNull();
    } catch (QuantityException asked) {
      for (String reading : asked.readings()) {
        try {
          assertThat(reader.apply(reading)).isNotNull();
        } catch (QuantityException refused) {
          assertThat(refused.readings()).as("%s for %s", reading, text).isEmpty();
          assertThat(refused).hasMessageNotContaining("cannot be read");
        }
      }
    }
  }

  /** Whatever is typed, the answer is a value or a sentence. */
  @Property
  void anyText_isReadOrRefusedInWords(@ForAll @StringLength(max = 30) String text) {
    for (Function<String, ?> reader :
        List.<Function<String, ?>>of(
            RiderInput::mainJet,
            RiderInput::cutaway,
            t -> RiderInput.clip(t, 5),
            RiderInput::turns,
            RiderInput::throttle,
            RiderInput::temperature,
            RiderInput::premix,
            RiderInput::lambda,
            RiderInput::jetFlow)) {
      try {
        assertThat(reader.apply(text)).isNotNull();
      } catch (QuantityException refused) {
        assertThat(refused.getMessage()).isNotBlank();
      }
    }
  }

  private static <Q> void readBack(
      Q quantity, Function<Q, String> print, Function<String, Q> read) {
    String printed = print.apply(quantity);
    assertThat(print.apply(read.apply(printed))).isEqualTo(printed);
  }
}
