package dev.jetting.units;

/**
 * Turns of the crankshaft a minute.
 *
 * <p>Kept in turns a minute, from 0 to 100000.
 *
 * <p>Not a wheel speed, nor the speed of a vehicle.
 */
public final class EngineSpeed extends Scalar<EngineSpeed> {
  private static final Kind KIND =
      Kind.of("engine speed", Range.fromTo(0, 100_000), Unit.of("rpm", "1/min"));

  private EngineSpeed(double rpm) {
    super(rpm);
  }

  /**
   * Creates an engine speed from turns a minute.
   *
   * @param rpm turns a minute, from 0 to 100000
   * @return the engine speed
   * @throws QuantityException if {@code rpm} is not finite or out of range
   */
  public static EngineSpeed ofRpm(double rpm) {
    return new EngineSpeed(KIND.check(rpm));
  }

  /**
   * Reads an engine speed: turns a minute.
   *
   * @param text such as {@code 7500 rpm} or {@code 7500 1/min}
   * @return the engine speed
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static EngineSpeed parse(String text) {
    return new EngineSpeed(KIND.parse(text));
  }

  /**
   * Returns this engine speed in turns a minute.
   *
   * @return turns a minute
   */
  public double rpm() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
