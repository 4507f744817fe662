package dev.jetting.core.mixture.table;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.Pulsation;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Setting;

/** The air side of an engine and a setting in SI units. */
public final class AirSides {

  private static final double MM = 1e-3;
  private static final double SQUARE_MM = 1e-6;

  private AirSides() {}

  /**
   * The air side.
   *
   * @param engine the engine
   * @param setting the carburettor and its slide
   * @param air the air of the day
   * @param higher by how much the cutaway is higher, mm
   * @param signal factor on the signal
   * @return the air side
   */
  public static AirSide of(Engine engine, Setting setting, Air air, double higher, double signal) {
    FlowCoefficients flow = setting.carburettor().flow();
    double filterArea =
        setting.intake().effectiveArea().map(a -> a.squareMillimetres() * SQUARE_MM).orElse(0.0);
    return new AirSide(
        setting.carburettor().bore().millimetres() * MM,
        Math.max(0, setting.cutaway().millimetres() + higher) * MM,
        setting.idleLift().millimetres() * MM,
        flow.upstreamGap().value(),
        flow.downstreamGap().value(),
        filterArea == 0 ? 0 : 1 / (filterArea * filterArea),
        pulsation(engine.induction()),
        engine.loadLine().peak().rpm() / 60,
        signal,
        engine.displacement().cubicCentimetres() * 1e-6,
        air.pressure().pascals(),
        air.temperature().kelvin(),
        air.specificGasConstant());
  }

  private static Pulsation pulsation(Induction induction) {
    double opens = induction.opens().value();
    double closes = induction.closes().value();
    return switch (induction.kind()) {
      case PISTON_PORT -> Pulsation.pistonPort(opens + closes);
      case ROTARY_VALVE -> Pulsation.rotaryValve(opens, closes);
      case REED_VALVE -> Pulsation.reedValve();
      case UNKNOWN -> Pulsation.unknown();
    };
  }
}
