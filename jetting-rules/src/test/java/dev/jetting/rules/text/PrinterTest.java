package dev.jetting.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.fuel.FuelShare;
import dev.jetting.rules.Measure;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values in English as {@link TradeStyle} has them, and in the other languages. */
class PrinterTest {

  private static final Wording GERMAN = Wording.of(Locale.GERMAN);
  private static final Wording ITALIAN = Wording.of(Locale.ITALIAN);

  @Test
  void english_isTradeStyle() {
    IntStream.rangeClosed(0, 1000)
        .mapToDouble(i -> i / 1000.0)
        .forEach(
            x -> {
              ThrottleOpening opening = ThrottleOpening.ofShare(x);
              Probability risk = Probability.of(x);
              Probability limit = Probability.of(0.1);
              ScrewTurns turns = ScrewTurns.of(4 * x);
              JetBore bore = JetBore.ofMillimetres(0.3 + x);
              Diameter diameter = Diameter.ofMillimetres(2 + x);
              Cutaway cutaway = Cutaway.ofMillimetres(1 + 5 * x);
              Lambda lambda = Lambda.of(0.5 + x);
              Temperature temperature = Temperature.ofCelsius(-40 + 80 * x);
              Pressure pressure = Pressure.ofHectopascals(700 + 400 * x);
              RelativeHumidity humidity = RelativeHumidity.ofShare(x);
              assertThat(Argument.throttle(opening).text()).isEqualTo(TradeStyle.throttle(opening));
              assertThat(Argument.opening(opening).text() + " throttle")
                  .isEqualTo(TradeStyle.throttle(opening));
              assertThat(Argument.risk(risk).text()).isEqualTo(TradeStyle.probability(risk));
              assertThat(Argument.risk(risk, limit).text())
                  .isEqualTo(TradeStyle.probability(risk, limit));
              assertThat(Argument.turns(turns).text()).isEqualTo(TradeStyle.turns(turns));
              assertThat(Argument.mainJet(bore).text()).isEqualTo(TradeStyle.main(bore));
              assertThat(Argument.pilotJet(bore).text()).isEqualTo(TradeStyle.pilot(bore));
              assertThat(Argument.diameter(diameter).text())
                  .isEqualTo(TradeStyle.diameter(diameter));
              assertThat(Argument.cutaway(cutaway).text()).isEqualTo(TradeStyle.cutaway(cutaway));
              assertThat(Argument.temperature(temperature).text())
                  .isEqualTo(TradeStyle.temperature(temperature));
              assertThat(Argument.pressure(pressure).text())
                  .isEqualTo(TradeStyle.pressure(pressure));
              assertThat(Argument.humidity(humidity).text())
                  .isEqualTo(TradeStyle.humidity(humidity));
              assertThat(Argument.lambda(lambda).text()).startsWith("λ ").hasSize(6);
            });
    for (ScrewKind kind : ScrewKind.values()) {
      ScrewTurns turns = ScrewTurns.of(1.5);
      assertThat(Argument.screw(kind, turns).text()).isEqualTo(TradeStyle.screw(kind, turns));
    }
    for (String clip : List.of("2 of 5 from top", "1 of 4 from bottom")) {
      ClipPosition position = ClipPosition.parse(clip);
      assertThat(Argument.clip(position).text()).isEqualTo(TradeStyle.clip(position));
    }
  }

  @Test
  void english_fuelIsItsOwnText() {
    FuelBlend thirds =
        FuelBlend.byVolume(
            List.of(
                new FuelShare(FuelComponent.ETHANOL, 0.25),
                new FuelShare(FuelComponent.PETROL, 0.75)));
    PremixRatio premix = PremixRatio.ofPetrolToOil(32.5);
    for (Fuel fuel : List.of(Fuel.PETROL, Fuel.E85, Fuel.E5.withPremix(premix), Fuel.of(thirds))) {
      assertThat(Argument.fuel(fuel).text()).isEqualTo(fuel.toString());
    }
    assertThat(GERMAN.text(Argument.fuel(Fuel.E5.withPremix(premix)))).startsWith("E5 mit 32,5:1 ");
  }

  @ParameterizedTest
  @CsvSource({
    "0, closed throttle, geschlossenem Gas, gas chiuso",
    "0.375, 3/8 throttle, 3/8 Gas, 3/8 di gas",
    "0.405, 40.5 % throttle, '40,5 % Gas', '40,5 % di gas'",
    "1, full throttle, Vollgas, tutto gas"
  })
  void throttle_inEachLanguage(double share, String english, String german, String italian) {
    Argument value = Argument.throttle(ThrottleOpening.ofShare(share));
    assertThat(value.text()).isEqualTo(english);
    assertThat(GERMAN.text(value)).isEqualTo(german);
    assertThat(ITALIAN.text(value)).isEqualTo(italian);
  }

  @ParameterizedTest
  @CsvSource({
    "0.12, 12 %, 12 %, 12 %",
    "0.104, 10.4 %, '10,4 %', '10,4 %'",
    "0.001, under 1 %, unter 1 %, sotto l'1 %",
    "0.999, over 99 %, über 99 %, oltre il 99 %",
    "0.1000000001, just over 10 %, knapp über 10 %, appena più di 10 %"
  })
  void risk_besideATenth(double risk, String english, String german, String italian) {
    Argument value = Argument.risk(Probability.of(risk), Probability.of(0.1));
    assertThat(value.text()).isEqualTo(english);
    assertThat(GERMAN.text(value)).isEqualTo(german);
    assertThat(ITALIAN.text(value)).isEqualTo(italian);
  }

  @Test
  void lambda_besideAnother_isDistinguishedFromIt() {
    Argument value = Argument.lambda(Lambda.of(0.8812), Lambda.of(0.8801));
    assertThat(value.text()).isEqualTo("λ 0.881");
    assertThat(GERMAN.text(value)).isEqualTo("λ 0,881");
  }

  @Test
  void units_thatAreWords_areTranslatedAndOthersKept() {
    assertThat(GERMAN.text(new Measure(2, "turns").argument())).isEqualTo("2,000 Umdrehungen");
    assertThat(ITALIAN.text(Argument.exact(7000, "rpm"))).isEqualTo("7000 giri/min");
    assertThat(GERMAN.text(Argument.measured(12.346, "Pa"))).isEqualTo("12,35 Pa");
    assertThat(GERMAN.text(Argument.measured(1.5, "furlongs"))).isEqualTo("1,500 furlongs");
    assertThat(GERMAN.text(Argument.speed(EngineSpeed.ofRpm(6645.4)))).isEqualTo("6645/min");
  }

  @Test
  void parts_haveTheWordsOfTheTrade() {
    assertThat(GERMAN.text(Argument.mainJet(JetBore.ofHundredths(117.5))))
        .isEqualTo("Hauptdüse 117,5");
    assertThat(ITALIAN.text(Argument.pilotJet(JetBore.ofHundredths(45))))
        .isEqualTo("getto del minimo 45");
    assertThat(GERMAN.text(Argument.screw(ScrewKind.AIR, ScrewTurns.of(1.5))))
        .isEqualTo("Luftschraube 1½ Umdrehungen offen");
    assertThat(ITALIAN.text(Argument.clip(ClipPosition.parse("2 of 5 from top"))))
        .isEqualTo("tacca 2 di 5 dall'alto");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, 2})
  void amount_thatIsNoneOfItsKind_isRefused(double share) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Argument.Amount(Argument.Style.THROTTLE, share, Optional.empty()))
        .withMessageContaining("allowed");
  }
}
