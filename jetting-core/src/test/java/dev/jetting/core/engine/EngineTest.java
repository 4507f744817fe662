package dev.jetting.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineTest {

  private static final String BLANK = " is blank: allowed any text with a visible character";
  private static final RpmCurve CURVE =
      RpmCurve.of(RpmCurve.Point.of(2000, 0.4), RpmCurve.Point.of(6000, 0.8));

  @ParameterizedTest
  @CsvSource({"0, 0.4", "2000, 0.4", "3000, 0.5", "6000, 0.8", "9000, 0.8"})
  void curve_isStraightBetweenItsPoints_andHeldAtTheEnds(double rpm, double value) {
    assertThat(CURVE.at(EngineSpeed.ofRpm(rpm))).isCloseTo(value, within(1e-12));
  }

  @Test
  void curve_withoutPointsOrOutOfOrder_isRefused() {
    assertThatThrownBy(RpmCurve::of)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "curve over engine speed []: allowed at least one point, each at a higher speed than"
                + " the one before");
    assertThatThrownBy(() -> RpmCurve.of(RpmCurve.Point.of(6000, 1), RpmCurve.Point.of(6000, 0.9)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("curve over engine speed [")
        .hasMessageContaining("6000 rpm");
    refused(
        () -> RpmCurve.Point.of(3000, 10.5),
        "curve over engine speed at 3000 rpm 10.5: allowed 0 to 10");
    refused(() -> RpmCurve.constant(-1), "curve over engine speed at 0 rpm -1: allowed 0 to 10");
  }

  @ParameterizedTest
  @CsvSource({"0, 1500", "0.25, 4250", "1, 7000"})
  void loadLine_growsWithTheRootOfTheThrottle(double throttle, double rpm) {
    LoadLine line = new LoadLine(EngineSpeed.ofRpm(1500), EngineSpeed.ofRpm(7000));

    assertThat(line.at(ThrottleOpening.ofShare(throttle)).rpm()).isCloseTo(rpm, within(1e-9));
  }

  @Test
  void loadLine_fromStandstillOrBackwards_isRefused() {
    refused(
        () -> new LoadLine(EngineSpeed.ofRpm(0), EngineSpeed.ofRpm(7000)),
        "idle speed 0 rpm: allowed more than 0 rpm and at most the peak of 7000 rpm");
    refused(
        () -> new LoadLine(EngineSpeed.ofRpm(7001), EngineSpeed.ofRpm(7000)),
        "idle speed 7001 rpm: allowed more than 0 rpm and at most the peak of 7000 rpm");
  }

  /** 0.48 with a slipped decimal point; what makes a lean setting look rich. */
  @Test
  void deliveryRatio_thatNoTwoStrokeHas_isRefused() {
    Engine engine = ReferenceSetup.engine();
    refused(
        () ->
            Engine.builder()
                .id("some engine")
                .displacement(engine.displacement())
                .deliveryRatio(
                    RpmCurve.of(RpmCurve.Point.of(1400, 0.5), RpmCurve.Point.of(6000, 4.8)))
                .induction(engine.induction())
                .exhaust(engine.exhaust())
                .loadLine(engine.loadLine())
                .need(engine.need())
                .build(),
        "delivery ratio of engine some engine, exhaust included, at 6000 rpm 4.8: allowed more than"
            + " 0, at most 2");
    assertThatThrownBy(() -> engine.withExhaust(new Exhaust("slipped", RpmCurve.constant(9))))
        .hasMessageContaining("exhaust included")
        .hasMessageContaining("at most 2");
  }

  @Test
  void exhaust_actsOnDelivery() {
    Engine plain = ReferenceSetup.engine();
    Engine tuned = plain.withExhaust(new Exhaust("tuned", CURVE));
    EngineSpeed speed = EngineSpeed.ofRpm(6000);

    assertThat(tuned.deliveryRatioAt(speed))
        .isCloseTo(0.8 * plain.deliveryRatioAt(speed), within(1e-15));
  }

  @Test
  void wrongEngines_areRefused() {
    refused(() -> engine(" ", CURVE), "id of the engine" + BLANK);
    refused(
        () -> engine("e", RpmCurve.of(RpmCurve.Point.of(0, 0), RpmCurve.Point.of(6000, 1))),
        "delivery ratio of engine e 0: allowed more than 0 at every speed");
    refused(
        () -> ReferenceSetup.engine().withExhaust(new Exhaust("blocked", RpmCurve.constant(0))),
        "delivery ratio of engine reference-180 0: allowed more than 0 at every speed");
    refused(() -> new Exhaust("", CURVE), "id of the exhaust" + BLANK);
    refused(
        () -> Induction.rotaryValve("i").opens(degrees(30)).closes(degrees(60)).build(),
        "opening of induction i in degrees before TDC 30: allowed 40 to 180");
    refused(
        () -> Induction.rotaryValve("i").opens(degrees(120)).closes(degrees(130)).build(),
        "closing of induction i in degrees after TDC 130: allowed 20 to 120");
    refused(
        () ->
            Induction.builder()
                .id("i")
                .kind(InductionKind.PISTON_PORT)
                .opens(degrees(70))
                .closes(degrees(60))
                .build(),
        "closing of induction i in degrees after TDC 60: allowed with a piston port the 70 at which"
            + " it opens before TDC");
    refused(() -> Induction.reedValve(""), "id of the induction" + BLANK);
  }

  @Test
  void pistonPort_opensAsEarlyAsItShutsLate() {
    Induction port = Induction.pistonPort("port", degrees(150));
    assertThat(port.opens().value()).isEqualTo(75);
    assertThat(port.closes()).isEqualTo(port.opens());
  }

  @Test
  void assumedInductions_haveNoKind() {
    assertThat(Induction.assumedMild().kind()).isEqualTo(InductionKind.UNKNOWN);
    assertThat(Induction.assumedTuned().kind()).isEqualTo(InductionKind.UNKNOWN);
  }

  private static Coefficient degrees(double value) {
    return Coefficient.assumed(value, "°", "invented");
  }

  private static Engine engine(String id, RpmCurve delivery) {
    Engine e = ReferenceSetup.engine();
    return Engine.builder()
        .id(id)
        .displacement(Displacement.ofCubicCentimetres(200))
        .deliveryRatio(delivery)
        .induction(e.induction())
        .exhaust(e.exhaust())
        .loadLine(e.loadLine())
        .need(e.need())
        .build();
  }

  private static void refused(ThrowingCallable call, String message) {
    assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }
}
