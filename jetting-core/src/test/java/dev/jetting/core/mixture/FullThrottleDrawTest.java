package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import dev.jetting.units.Temperature;
import org.junit.jupiter.api.Test;

class FullThrottleDrawTest {

  private static final Setup REFERENCE = ReferenceSetup.setup();

  /** Main and pilot of the last line of MODEL.md's reference table, g/s, by 740 kg/m³. */
  @Test
  void draw_isTheFuelOfTheReferenceTable() {
    assertThat(FullThrottleDraw.of(REFERENCE).litresPerHour())
        .isCloseTo((1.483282 + 0.104394) / 740 * 3600, within(1e-5));
  }

  /** A float valve is asked for a quarter in reserve: a bound wider than that would be no use. */
  @Test
  void bound_liesNoFurtherAboveTheReferenceThanTheReserveOfAFloatValve() {
    double draw = FullThrottleDraw.of(REFERENCE).litresPerHour();

    assertThat(FullThrottleDraw.atMost(REFERENCE).litresPerHour()).isBetween(draw, 1.25 * draw);
  }

  /** At 28 mm some idle lifts make full lift a last digit more, where the needle has ended. */
  @Test
  void needleThatEndsAtFullLift_isWithinTheBoundHoweverTheLiftIsRounded() {
    Setting s = REFERENCE.setting();
    for (int idle = 1; idle <= 100; idle++) {
      Setting ending =
          Setting.builder()
              .carburettor(s.carburettor())
              .intake(s.intake())
              .pilotJet(s.pilotJet())
              .screw(s.screw())
              .cutaway(s.cutaway())
              .idleLift(Length.ofMillimetres(idle / 10.0))
              .needleJet(s.needleJet())
              .needle(ReferenceSetup.needle(28))
              .clip(ClipPosition.fromTop(1, 5))
              .mainJet(JetBore.ofMillimetres(3))
              .build();
      Setup setup = REFERENCE.withSetting(ending);

      assertThat(FullThrottleDraw.of(setup)).isLessThanOrEqualTo(FullThrottleDraw.atMost(setup));
    }
  }

  @Test
  void airColderThanTheFuelIsKnownFor_isRefusedByTheBoundAsByTheModel() {
    Setup arctic =
        REFERENCE
            .withFuel(Fuel.PETROL)
            .withAir(Air.dry(Pressure.ofPascals(101_325), Temperature.ofCelsius(-50)));
    String refusal = "fuel temperature in °C -50: allowed -40 to 80";

    assertThatThrownBy(() -> FullThrottleDraw.of(arctic)).hasMessage(refusal);
    assertThatThrownBy(() -> FullThrottleDraw.atMost(arctic)).hasMessage(refusal);
  }
}
