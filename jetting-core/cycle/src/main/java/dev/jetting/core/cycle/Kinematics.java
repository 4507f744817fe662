package dev.jetting.core.cycle;

import java.util.stream.DoubleStream;

/**
 * Piston and ports over the crank angle a in radians after top dead centre.
 *
 * <p>x(a) = (1 − cos a + (1 − √(1 − l² sin² a))/l)/2 is the piston's way from top dead centre by
 * the stroke, l half of the stroke by the rod: the slider crank, exact.
 */
final class Kinematics {

  private final Crankcase crankcase;
  private final double inletOpens;
  private final double transferOpens;

  Kinematics(Crankcase crankcase) {
    this.crankcase = crankcase;
    inletOpens =
        crankcase.inlet() instanceof Inlet.PistonPort port
            ? way(StrictMath.toRadians(port.duration() / 2))
            : 0;
    transferOpens = way(Math.PI - StrictMath.toRadians(crankcase.transfer().duration() / 2));
  }

  /** The piston's way from top dead centre by the stroke, 0 to 1. */
  double way(double angle) {
    double l = crankcase.crankByRod();
    double sin = StrictMath.sin(angle);
    return (1 - StrictMath.cos(angle) + (1 - Math.sqrt(1 - l * l * sin * sin)) / l) / 2;
  }

  /** How fast the way grows, per radian. */
  double wayByAngle(double angle) {
    double l = crankcase.crankByRod();
    double sin = StrictMath.sin(angle);
    double cos = StrictMath.cos(angle);
    return sin * (1 + l * cos / Math.sqrt(1 - l * l * sin * sin)) / 2;
  }

  /** Volume of the crankcase by the swept volume. */
  double volume(double angle) {
    return 1 / (crankcase.primaryCompression() - 1) + 1 - way(angle);
  }

  /** Open share of the transfer ports, 0 to 1. */
  double transferShare(double angle) {
    return Math.max(0, (way(angle) - transferOpens) / (1 - transferOpens));
  }

  /**
   * Open share of the inlet, 0 to 1.
   *
   * @param angle a
   * @param drop pressure before the inlet less that in the crankcase, Pa
   */
  double inletShare(double angle, double drop) {
    Inlet inlet = crankcase.inlet();
    if (inlet instanceof Inlet.PistonPort) {
      return Math.max(0, 1 - way(angle) / inletOpens);
    }
    if (inlet instanceof Inlet.RotaryValve valve) {
      double degrees = StrictMath.toDegrees(angle > Math.PI ? angle - 2 * Math.PI : angle);
      double inside = Math.min(degrees + valve.opensBefore(), valve.closesAfter() - degrees);
      return Math.min(Math.max(inside / valve.ramp(), 0), 1);
    }
    double full = ((Inlet.Reed) inlet).fullyOpenAt().pascals();
    return Math.min(Math.max(drop / full, 0), 1);
  }

  /** The angles from 0 to 2π at which a port begins or ends to open, rising, both ends included. */
  double[] kinks() {
    double transfer = StrictMath.toRadians(crankcase.transfer().duration() / 2);
    return DoubleStream.concat(
            DoubleStream.of(0, Math.PI - transfer, Math.PI + transfer, 2 * Math.PI), inletKinks())
        .map(angle -> angle < 0 ? angle + 2 * Math.PI : angle)
        .sorted()
        .distinct()
        .toArray();
  }

  private DoubleStream inletKinks() {
    Inlet inlet = crankcase.inlet();
    if (inlet instanceof Inlet.PistonPort port) {
      return DoubleStream.of(-port.duration() / 2, port.duration() / 2).map(StrictMath::toRadians);
    }
    if (inlet instanceof Inlet.RotaryValve valve) {
      return DoubleStream.of(
              -valve.opensBefore(),
              -valve.opensBefore() + valve.ramp(),
              valve.closesAfter() - valve.ramp(),
              valve.closesAfter())
          .map(StrictMath::toRadians);
    }
    return DoubleStream.empty();
  }
}
