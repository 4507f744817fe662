package dev.jetting.core.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.flow.Jet;
import dev.jetting.core.flow.PilotPath;
import dev.jetting.core.flow.Restriction;
import dev.jetting.units.Pressure;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

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
