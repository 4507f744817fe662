package dev.jetting.core.typical;

import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.parts.Coefficient;

/**
 * How much an engine was built for power: it decides peak speed, delivery, timing of the inlet and
 * the mixture needed together, so that the four fit each other.
 *
 * <p>A cylinder kit, other porting or a tuned exhaust moves an engine to another state of tune.
 */
@SuppressWarnings("ImmutableEnumChecker") // records of immutable parts
public enum StateOfTune {
  /** Built for work at low speed, with a restrictive exhaust: carts, mopeds, pumps. */
  UTILITY(9.5, 1300, 0.50, 0.60, 0.58, 135, 125, 50, MixtureNeed.assumedVeryMild()),
  /** As sold for the road, with a simple exhaust. */
  STANDARD(13.5, 1400, 0.50, 0.64, 0.70, 145, 130, 55, MixtureNeed.assumedMild()),
  /** Tuned for the road, with an expansion chamber. */
  SPORT(16.5, 1500, 0.48, 0.66, 0.82, 160, 135, 62, MixtureNeed.assumedTuned()),
  /** Built for races, with an expansion chamber for one narrow range of speed. */
  RACE(20, 1900, 0.46, 0.66, 0.92, 175, 140, 70, MixtureNeed.assumedTuned());

  private static final String BY_TUNE = "typical of this state of tune; not measured";

  private final double pistonSpeed;
  private final double idle;
  private final double deliveryAtIdle;
  private final double deliveryInTheMiddle;
  private final double deliveryAtPeak;
  private final double pistonPort;
  private final double opens;
  private final double closes;
  private final MixtureNeed need;

  StateOfTune(
      double pistonSpeed,
      double idle,
      double deliveryAtIdle,
      double deliveryInTheMiddle,
      double deliveryAtPeak,
      double pistonPort,
      double opens,
      double closes,
      MixtureNeed need) {
    this.pistonSpeed = pistonSpeed;
    this.idle = idle;
    this.deliveryAtIdle = deliveryAtIdle;
    this.deliveryInTheMiddle = deliveryInTheMiddle;
    this.deliveryAtPeak = deliveryAtPeak;
    this.pistonPort = pistonPort;
    this.opens = opens;
    this.closes = closes;
    this.need = need;
  }

  /** {@return mean piston speed at the speed of peak power, m/s} */
  public Coefficient meanPistonSpeed() {
    return assumed(pistonSpeed, "m/s");
  }

  /** {@return idle speed, rpm} */
  public Coefficient idleSpeed() {
    return assumed(idle, "rpm");
  }

  /** {@return delivery ratio at idle speed with the throttle open} */
  public Coefficient deliveryAtIdle() {
    return assumed(deliveryAtIdle, "1");
  }

  /** {@return delivery ratio at six tenths of the way from idle to peak speed} */
  public Coefficient deliveryInTheMiddle() {
    return assumed(deliveryInTheMiddle, "1");
  }

  /** {@return delivery ratio at the peak speed} */
  public Coefficient deliveryAtPeak() {
    return assumed(deliveryAtPeak, "1");
  }

  /** {@return degrees of the crank for which a piston port is open} */
  public Coefficient pistonPortDuration() {
    return assumed(pistonPort, "°");
  }

  /** {@return degrees before top dead centre at which a rotary valve begins to open} */
  public Coefficient rotaryValveOpens() {
    return assumed(opens, "°");
  }

  /** {@return degrees after top dead centre at which a rotary valve is shut} */
  public Coefficient rotaryValveCloses() {
    return assumed(closes, "°");
  }

  /** {@return the mixture needed by a fan-cooled engine} */
  public MixtureNeed need() {
    return need;
  }

  private static Coefficient assumed(double value, String unit) {
    return Coefficient.assumed(value, unit, BY_TUNE);
  }
}
