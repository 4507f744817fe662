package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.flow.Jet;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.flow.Restriction;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.Pressure;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BuildingBlocksTest {

  private static final double AMBIENT = 101_325;
  private static final double GAS_TEMPERATURE = 287.05 * 288.15;

  /** Choked mass flux of air at 101 325 Pa and 288.15 K: 241.240 kg/(m² s), calculated. */
  @Test
  void gasFlow_chokes() {
    GasFlow flow = new GasFlow(5);
    GasFlow.Gas ambient = new GasFlow.Gas(AMBIENT, GAS_TEMPERATURE);

    assertThat(flow.flow(1, ambient, new GasFlow.Gas(40_000, GAS_TEMPERATURE)))
        .isCloseTo(241.240, within(0.01));
    assertThat(flow.flow(1, ambient, new GasFlow.Gas(20_000, GAS_TEMPERATURE)))
        .isCloseTo(241.240, within(0.01));
    assertThat(flow.flow(1, new GasFlow.Gas(40_000, GAS_TEMPERATURE), ambient))
        .isCloseTo(-241.240, within(0.01));
  }

  @Test
  void gasFlow_goesSmoothlyThroughZero() {
    GasFlow flow = new GasFlow(5);
    GasFlow.Gas ambient = new GasFlow.Gas(AMBIENT, GAS_TEMPERATURE);
    double up = flow.flow(1e-4, ambient, new GasFlow.Gas(AMBIENT - 0.01, GAS_TEMPERATURE));
    double twice = flow.flow(1e-4, ambient, new GasFlow.Gas(AMBIENT - 0.02, GAS_TEMPERATURE));

    assertThat(twice / up).isCloseTo(2, within(1e-3));
  }

  /** From rest under a steady suction without friction Q = Q∞ tanh(t √(α Δ)/I): by separation. */
  @Test
  void fuelColumn_speedsUpAsTheClosedAnswer() {
    double alpha = 2e15;
    double inertance = 8e6;
    double suction = 5000;
    FuelPath path = new FuelPath(new Restriction(alpha, 0), inertance, 0, 740);
    double time = 1e-3;
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            return new double[] {path.acceleration(suction, y[0] * 1e-6) * 1e6};
          }
        };

    double flow =
        new DormandPrince853Integrator(1e-12, 1e-3, 1e-10, 1e-10)
                .integrate(equation, new ODEState(0, new double[] {0}), time)
                .getPrimaryState()[0]
            * 1e-6;

    double settled = Math.sqrt(suction / alpha);
    double expected = settled * StrictMath.tanh(time * Math.sqrt(alpha * suction) / inertance);
    assertThat(flow).isCloseTo(expected, within(1e-8 * expected));
    assertThat(path.settled(suction)).isCloseTo(settled, within(1e-9 * settled));
  }

  /**
   * Under a stream 1 + k sin t a heavy column is richer than under the steady stream by √(1 + k²/2)
   * (known of carburettors of single-cylinder engines, from memory; derived: it feels the mean
   * square), and a light one is not.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1})
  void fuelColumn_underASineStream_isRicherByTheInertialLimit(double k) {
    assertThat(richness(k, 1e9)).isCloseTo(Math.sqrt(1 + k * k / 2), within(1e-3));
    assertThat(richness(k, 3e5)).isCloseTo(1, within(1e-2));
  }

  /**
   * Under a stream 1 + k sin t that turns back, fuel that follows at once is richer by the mean of
   * |1 + k sin t|, which is 2/π (asin(1/k) + √(k² − 1)): it is taken on both ways. The two numbers
   * are said to be published for carburettors of single-cylinder engines, for peaks of 1.5 and 3
   * times the mean. No publication was read. That the peak is the amplitude k is concluded from the
   * numbers, which it gives and others do not.
   */
  @ParameterizedTest
  @CsvSource({"1.5, 1.18", "3, 2.02"})
  void fuelThatFollows_underAStreamThatTurnsBack_isRicherByThePublishedMultiplier(
      double k, double published) {
    CycleCoefficients bothWays =
        CycleCoefficients.assumed()
            .withReversedShare(Coefficient.assumed(1, "1", "as much on the way back"));
    SlideState slide = SlideState.of(Bench.setup(), 0.5, bothWays);
    FuelPath path = new FuelPath(new Restriction(2e15, 0), 0, 0, 740);
    double peak = 2000;
    int parts = 100_000;
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double stream = 1 + k * StrictMath.sin(2 * Math.PI * (i + 0.5) / parts);
      sum += path.settled(slide.suction(peak * stream * Math.abs(stream)));
    }

    double multiplier = sum / parts / path.settled(slide.suction(peak));

    double closed = 2 / Math.PI * (StrictMath.asin(1 / k) + Math.sqrt(k * k - 1));
    assertThat(multiplier).isCloseTo(closed, within(1e-6)).isCloseTo(published, within(0.005));
  }

  /** Mean flow of a column over a turn at 100 turns a second, by that under the steady stream. */
  private static double richness(double k, double inertance) {
    double alpha = 2e15;
    double suction = 5000;
    double settled = Math.sqrt(suction / alpha);
    FuelPath path = new FuelPath(new Restriction(alpha, 0), inertance, 0, 740);
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            double stream = 1 + k * StrictMath.sin(2 * Math.PI * t);
            double flow = y[0] * settled;
            double rate = path.acceleration(suction * stream * stream, flow) / settled / 100;
            return new double[] {rate, y[0]};
          }
        };
    double[] y = {1, 0};
    double turns = Math.max(3, 400 * inertance / Math.sqrt(alpha * suction));
    for (int turn = 0; turn < turns; turn++) {
      y[1] = 0;
      y =
          new DormandPrince853Integrator(1e-12, 0.1, 1e-9, 1e-9)
              .integrate(equation, new ODEState(0, y), 1)
              .getPrimaryState();
    }
    return y[1];
  }

  @Test
  void fuelColumn_doesNotFlowBack() {
    FuelPath path = new FuelPath(new Restriction(2e15, 0), 8e6, 60, 740);

    assertThat(path.acceleration(0, 0)).isZero();
    assertThat(path.acceleration(0, 1e-6)).isNegative();
  }

  /** The mixture model lets the air expand at its temperature, the cycle by the gas equations. */
  @Test
  void pilot_underASmallDepression_isThatOfTheMixtureModel() {
    Restriction jet = Jet.of(0.42e-3, 2, 740, 5e-4).restriction();
    PilotOutlet outlet =
        new PilotOutlet(jet, 7.26, 3.6e-7, 1.4e-7, 1, 740, AMBIENT, GAS_TEMPERATURE);
    PilotPath modelled =
        new PilotPath(
            Jet.of(0.42e-3, 2, 740, 5e-4),
            7.26 / 740 / 9.80665,
            3.6e-7,
            1.4e-7,
            0,
            0,
            1,
            740,
            AMBIENT / GAS_TEMPERATURE,
            AMBIENT);

    double few = modelled.at(50, 0).fuelFlow();
    double more = modelled.at(500, 0).fuelFlow();

    assertThat(outlet.fuelFlow(50)).isCloseTo(few, within(1e-3 * few));
    assertThat(outlet.fuelFlow(500)).isCloseTo(more, within(1e-2 * more));
  }

  /** Without bleed two restrictions to liquid lie in series: (Δ − head) = (α + ρ/(2A²)) Q². */
  @Test
  void pilot_withoutBleed_isLiquidThroughJetAndOutlet() {
    double alpha = 2e16;
    double outlet = 1.4e-7;
    PilotOutlet pilot =
        new PilotOutlet(new Restriction(alpha, 0), 60, 0, outlet, 1, 740, AMBIENT, GAS_TEMPERATURE);

    double flow = Math.sqrt((5000 - 60) / (alpha + 740 / (2 * outlet * outlet)));
    assertThat(pilot.fuelFlow(5000)).isCloseTo(740 * flow, within(1e-8 * 740 * flow));
  }

  /**
   * With hardly any fuel the outlet passes air that keeps its temperature: choked it passes p/√(e R
   * T) a square metre, p the pressure in the well. A bleed sized for a well of 10 kPa holds it
   * there, whatever lies behind the outlet.
   */
  @Test
  void pilot_almostWithoutFuel_isAirThatChokes() {
    double well = 10_000;
    double outlet = 1.4e-7;
    double passed = outlet * (AMBIENT - well) / Math.sqrt(Math.E * GAS_TEMPERATURE);
    double bleed = passed / Math.sqrt(2 * AMBIENT / GAS_TEMPERATURE * well);
    double alpha = 1e28;
    PilotOutlet pilot =
        new PilotOutlet(
            new Restriction(alpha, 0), 60, bleed, outlet, 1, 740, AMBIENT, GAS_TEMPERATURE);

    double fuel = 740 * Math.sqrt((well - 60) / alpha);
    assertThat(pilot.fuelFlow(60_000)).isCloseTo(fuel, within(1e-4 * fuel));
    assertThat(pilot.fuelFlow(90_000)).isCloseTo(fuel, within(1e-4 * fuel));
  }

  @Test
  void pilot_chokesUnderALargeDepression() {
    PilotOutlet outlet =
        new PilotOutlet(
            Jet.of(0.42e-3, 2, 740, 5e-4).restriction(),
            7.26,
            3.6e-7,
            1.4e-7,
            1,
            740,
            AMBIENT,
            GAS_TEMPERATURE);

    assertThat(outlet.fuelFlow(40_000)).isGreaterThan(outlet.fuelFlow(20_000));
    assertThat(outlet.fuelFlow(90_000)).isEqualTo(outlet.fuelFlow(80_000));
    assertThat(outlet.fuelFlow(0)).isZero();
  }

  /** At the ends of the stroke the slider crank is known: 0 and 1, and flat. */
  @Test
  void kinematics_areThoseOfTheSliderCrank() {
    Kinematics kinematics = new Kinematics(Bench.crankcase(Bench.PISTON_PORT));

    assertThat(kinematics.way(0)).isZero();
    assertThat(kinematics.way(Math.PI)).isCloseTo(1, within(1e-12));
    assertThat(kinematics.volume(0) / kinematics.volume(Math.PI)).isCloseTo(1.4, within(1e-12));
    double angle = 1.1;
    double slope = (kinematics.way(angle + 1e-6) - kinematics.way(angle - 1e-6)) / 2e-6;
    assertThat(kinematics.wayByAngle(angle)).isCloseTo(slope, within(1e-8));
  }

  @Test
  void ports_openWhereTheyShould() {
    Kinematics port = new Kinematics(Bench.crankcase(Bench.PISTON_PORT));
    assertThat(port.inletShare(0, 0)).isEqualTo(1);
    assertThat(port.inletShare(StrictMath.toRadians(76), 0)).isZero();
    assertThat(port.inletShare(StrictMath.toRadians(74), 0)).isPositive();
    assertThat(port.transferShare(Math.PI)).isCloseTo(1, within(1e-12));
    assertThat(port.transferShare(StrictMath.toRadians(119))).isZero();

    Kinematics rotary = new Kinematics(Bench.crankcase(Bench.ROTARY));
    assertThat(rotary.inletShare(StrictMath.toRadians(231), 0)).isPositive();
    assertThat(rotary.inletShare(StrictMath.toRadians(229), 0)).isZero();
    assertThat(rotary.inletShare(StrictMath.toRadians(30), 0)).isEqualTo(1);
    assertThat(rotary.inletShare(StrictMath.toRadians(61), 0)).isZero();

    Kinematics reed = new Kinematics(Bench.crankcase(Bench.REED));
    assertThat(reed.inletShare(1, -100)).isZero();
    assertThat(reed.inletShare(1, 2000)).isEqualTo(0.5);
    assertThat(reed.inletShare(1, 9000)).isEqualTo(1);
  }

  @Test
  void numbersOutOfRange_areRefusedByName() {
    assertThatThrownBy(() -> new Inlet.PistonPort(300, Bench.area(500)))
        .hasMessage("duration of the inlet port in degrees 300: allowed 60 to 240");
    assertThatThrownBy(() -> new Transfer(120, Bench.area(0), Pressure.ofPascals(0)))
        .hasMessageContaining("area of the transfer ports")
        .hasMessageContaining("more than 0 mm²");
    assertThatThrownBy(() -> new Transfer(120, Bench.area(10), Pressure.ofPascals(60_000)))
        .hasMessageContaining("0 to 50 kPa");
    assertThatThrownBy(() -> Crankcase.builder().primaryCompression(1.4).build())
        .hasMessage("inlet");
    assertThatThrownBy(() -> Bench.crankcase(Bench.REED).toBuilder().primaryCompression(4).build())
        .hasMessage("primary compression 4: allowed 1.1 to 2.5");
  }
}
