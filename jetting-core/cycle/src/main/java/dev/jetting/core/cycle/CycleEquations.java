package dev.jetting.core.cycle;

import dev.jetting.core.cycle.GasFlow.Gas;
import dev.jetting.core.mixture.Setup;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * The equations of a turn, by the crank angle a in radians.
 *
 * <p>Each volume holds an ideal gas with mass m and pressure p: dm/dt = Σ ṁ and dp/dt = (γ/V) (Σ R
 * T ṁ − p dV/dt). R T is that of the side the gas comes from; the walls take no heat. The gas
 * column of the tract follows L/A dṁ/dt = p₁ − p₂. Fuel: {@link FuelPath}.
 *
 * <p>The state, scaled to the size of one: pressure and mass behind the slide; with inertia those
 * before the inlet and the flow between the two; pressure and mass in the crankcase; the fuel's
 * flow; then the sums over the turn ({@link Sums}).
 */
final class CycleEquations implements OrdinaryDifferentialEquation {

  /** The sums over a turn, in the order in which they end the state. */
  enum Sums {
    AIR(0),
    BACKWARDS(1),
    DELIVERED(2),
    DROP(3),
    ROOT_DROP(4),
    MAIN_FUEL(5),
    PILOT_FUEL(6);

    private final int place;

    Sums(int place) {
      this.place = place;
    }
  }

  private static final double GAMMA = GasFlow.GAMMA;

  /** A step that the integrator tries and rejects may leave a volume empty; a turn never does. */
  private static final double LEAST = 1e-3;

  private final Crankcase crankcase;
  private final Kinematics kinematics;
  private final SlideState slide;
  private final GasFlow gasFlow;
  private final double discharge;
  private final boolean inertia;
  private final double radiansPerSecond;
  private final double sweptVolume;
  private final Gas ambient;
  private final Gas cylinder;
  private final boolean pilotCounts;

  /** The mass that the displacement would hold at ambient density, kg. */
  final double charge;

  /** The scale of the fuel's flow, m³/s. */
  final double fuelScale;

  CycleEquations(
      Setup setup,
      Crankcase crankcase,
      SlideState slide,
      CycleCoefficients coefficients,
      double revolutionsPerSecond,
      boolean pilotCounts) {
    this.pilotCounts = pilotCounts;
    this.crankcase = crankcase;
    this.slide = slide;
    kinematics = new Kinematics(crankcase);
    gasFlow = new GasFlow(coefficients.smoothing().value());
    discharge = coefficients.portDischarge().value();
    inertia = crankcase.tract().inertia() == IntakeTract.Inertia.COUNTED;
    radiansPerSecond = 2 * Math.PI * revolutionsPerSecond;
    sweptVolume = setup.engine().displacement().cubicCentimetres() * 1e-6;
    double pressure = setup.air().pressure().pascals();
    double gasTemperature = setup.air().specificGasConstant() * setup.air().temperature().kelvin();
    ambient = new Gas(pressure, gasTemperature);
    cylinder = new Gas(pressure - crankcase.transfer().pull().pascals(), gasTemperature);
    charge = pressure / gasTemperature * sweptVolume;
    fuelScale = Math.max(slide.fuel().settled(pressure / 10), 1e-12);
  }

  double[] kinks() {
    return kinematics.kinks();
  }

  private int crank() {
    return inertia ? 5 : 2;
  }

  private int fuel() {
    return crank() + 2;
  }

  /** How many of the state must repeat from turn to turn. */
  int periodic() {
    return fuel() + 1;
  }

  int sum(Sums which) {
    return periodic() + which.place;
  }

  @Override
  public int getDimension() {
    return periodic() + Sums.values().length;
  }

  /** Everything at ambient pressure and temperature. */
  double[] start() {
    double[] y = new double[getDimension()];
    double tract = crankcase.tract().volume() / sweptVolume / (inertia ? 2 : 1);
    y[0] = 1;
    y[1] = tract;
    if (inertia) {
      y[2] = 1;
      y[3] = tract;
    }
    y[crank()] = 1;
    y[crank() + 1] = kinematics.volume(0);
    return y;
  }

  @Override
  public double[] computeDerivatives(double angle, double[] y) {
    double[] rates = new double[y.length];
    double volume = crankcase.tract().volume() / (inertia ? 2 : 1);
    Gas behindSlide = gas(y, 0, volume);
    Gas beforeInlet = inertia ? gas(y, 2, volume) : behindSlide;
    Gas inside = gas(y, crank(), kinematics.volume(angle) * sweptVolume);

    double past = gasFlow.flow(slide.area(), ambient, behindSlide);
    double entering = gasFlow.flow(inletArea(angle, beforeInlet, inside), beforeInlet, inside);
    double delivered = gasFlow.flow(transferArea(angle), inside, cylinder);

    double pastHeat = past * upstream(past, ambient, behindSlide);
    double enteringHeat = entering * upstream(entering, beforeInlet, inside);
    if (inertia) {
      double between = y[4] * charge * radiansPerSecond;
      double betweenHeat = between * upstream(between, behindSlide, beforeInlet);
      fill(rates, 0, volume, past - between, pastHeat - betweenHeat);
      fill(rates, 2, volume, between - entering, betweenHeat - enteringHeat);
      rates[4] =
          (behindSlide.pressure() - beforeInlet.pressure())
              * areaByLength()
              / (charge * radiansPerSecond * radiansPerSecond);
    } else {
      fill(rates, 0, volume, past - entering, pastHeat - enteringHeat);
    }
    // Gas that comes back from the cylinder is taken to be as warm as the crankcase.
    double work =
        inside.pressure() * kinematics.wayByAngle(angle) * -sweptVolume * radiansPerSecond;
    fill(
        rates,
        crank(),
        kinematics.volume(angle) * sweptVolume,
        entering - delivered,
        enteringHeat - delivered * inside.gasTemperature() - work);

    double depression = ambient.pressure() - behindSlide.pressure();
    double fuelFlow = fuelRate(rates, y[fuel()], slide.suction(depression));
    sum(rates, past, delivered, depression, fuelFlow);
    return rates;
  }

  private double fuelRate(double[] rates, double scaledFlow, double suction) {
    FuelPath path = slide.fuel();
    if (!path.hasInertia()) {
      return path.settled(suction);
    }
    double flow = scaledFlow * fuelScale;
    rates[fuel()] = path.acceleration(suction, flow) / fuelScale / radiansPerSecond;
    return Math.max(flow, 0);
  }

  private void sum(
      double[] rates, double past, double delivered, double depression, double fuelFlow) {
    double drawn = Math.max(depression, 0);
    double turn = 1 / (2 * Math.PI);
    rates[sum(Sums.AIR)] = past / (charge * radiansPerSecond);
    rates[sum(Sums.BACKWARDS)] = Math.max(-past, 0) / (charge * radiansPerSecond);
    rates[sum(Sums.DELIVERED)] = delivered / (charge * radiansPerSecond);
    rates[sum(Sums.DROP)] = drawn / ambient.pressure() * turn;
    rates[sum(Sums.ROOT_DROP)] = Math.sqrt(drawn / ambient.pressure()) * turn;
    rates[sum(Sums.MAIN_FUEL)] = fuelFlow / fuelScale * turn;
    if (pilotCounts) {
      rates[sum(Sums.PILOT_FUEL)] =
          slide.pilot().fuelFlow(depression) / slide.fuel().density() / fuelScale * turn;
    }
  }

  /** Air past the slide in kg/s at a state. */
  double past(double[] y) {
    double volume = crankcase.tract().volume() / (inertia ? 2 : 1);
    return gasFlow.flow(slide.area(), ambient, gas(y, 0, volume));
  }

  double pressureBehindSlide(double[] y) {
    return y[0] * ambient.pressure();
  }

  double pressureInCrankcase(double[] y) {
    return y[crank()] * ambient.pressure();
  }

  /** Fuel through the main jet in kg/s at a state. */
  double mainFuel(double[] y) {
    FuelPath path = slide.fuel();
    double depression = ambient.pressure() - pressureBehindSlide(y);
    double flow =
        path.hasInertia()
            ? Math.max(y[fuel()], 0) * fuelScale
            : path.settled(slide.suction(depression));
    return path.density() * flow;
  }

  private Gas gas(double[] y, int at, double volume) {
    double pressure = Math.max(y[at], LEAST) * ambient.pressure();
    return Gas.in(volume, pressure, Math.max(y[at + 1], LEAST) * charge);
  }

  private static double upstream(double flow, Gas from, Gas to) {
    return flow >= 0 ? from.gasTemperature() : to.gasTemperature();
  }

  private double inletArea(double angle, Gas before, Gas inside) {
    double share = kinematics.inletShare(angle, before.pressure() - inside.pressure());
    return discharge * share * crankcase.inlet().area().squareMillimetres() * 1e-6;
  }

  private double transferArea(double angle) {
    double area = crankcase.transfer().area().squareMillimetres() * 1e-6;
    return discharge * kinematics.transferShare(angle) * area;
  }

  private double areaByLength() {
    IntakeTract tract = crankcase.tract();
    return tract.area().squareMillimetres() * 1e-6 / (tract.length().millimetres() * 1e-3);
  }

  /** The rates of pressure and mass in a volume that mass and heat flow into. */
  private void fill(double[] rates, int at, double volume, double mass, double heat) {
    rates[at] = GAMMA * heat / volume / ambient.pressure() / radiansPerSecond;
    rates[at + 1] = mass / charge / radiansPerSecond;
  }
}
