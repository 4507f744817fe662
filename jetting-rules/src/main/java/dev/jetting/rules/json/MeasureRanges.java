package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import java.util.Map;

/** What numbers a measure can be at all; wider where that is not sure. */
final class MeasureRanges {

  private static final Map<String, Interval> NARROWER =
      ImmutableMap.of(
          "riding.acceptedRisk", new Interval(0, true, 0.5, false),
          "engine.induction.openShare", Interval.between(0, 1),
          "mixture.fuelShare.pilot", Interval.between(0, 1),
          "mixture.fuelShare.main", Interval.between(0, 1));

  private MeasureRanges() {}

  static Interval of(MeasureDefinition.Numeric gauge) {
    Interval narrower = NARROWER.get(gauge.name());
    return narrower == null ? of(gauge.dimension()) : narrower;
  }

  /** The range of the quantity. A suction can be below zero. */
  private static Interval of(Dimension dimension) {
    return switch (dimension) {
      case RISK, HUMIDITY -> Interval.between(0, 1);
      case JET_BORE -> new Interval(0, true, 10, false);
      case CUTAWAY, TURNS -> Interval.between(0, 50);
      case GROOVES -> Interval.from(1);
      case DIAMETER, DISPLACEMENT, LAMBDA, AIR_FUEL_RATIO, TEMPERATURE, DENSITY, VISCOSITY ->
          Interval.above(0);
      case LENGTH, AREA, SPEED, OIL, MASS_FLOW, COUNT -> Interval.from(0);
      case PRESSURE, SHARE, RATIO -> Interval.ANY;
    };
  }
}
