package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.units.Temperature;
import java.util.Map;

/** What numbers a measure can be at all; wider where that is not sure. */
final class MeasureRanges {

  /** What a sheet takes, in the unit of the measure: nothing beyond can be read or made. */
  static final Map<String, Interval> OF_SHEETS =
      ImmutableMap.<String, Interval>builder()
          .put("engine.displacement", Interval.between(5, 2500))
          .put("engine.loadLine.idle", Interval.between(200, 25_000))
          .put("engine.loadLine.peak", Interval.between(200, 25_000))
          .put("setting.carburettor.bore", Interval.between(5, 80))
          .put("setting.carburettor.needleJetLength", Interval.between(0.1, 50))
          .put("setting.carburettor.needleJetHead", Interval.between(0, 100))
          .put("setting.carburettor.pilot.areaPerTurn", Interval.between(0.001, 5))
          .put("setting.carburettor.pilot.fixedArea", Interval.between(0.01, 20))
          .put("setting.carburettor.pilot.progressionHole", Interval.between(0, 20))
          .put("setting.carburettor.pilot.mostTurns", Interval.between(0.25, 20))
          .put("setting.carburettor.floatValve.seat", Interval.between(0.3, 10))
          .put("setting.carburettor.floatValve.supplyHead", Interval.between(5, 3000))
          .put("setting.intake.effectiveArea", Interval.between(20, 20_000))
          .put("setting.pilotJet", Interval.between(0.1, 3))
          .put("setting.screw.turns", Interval.between(0, 20))
          .put("setting.cutaway", Interval.between(0, 40))
          .put("setting.idleLift", Interval.between(0.01, 40))
          .put("setting.needleJet.bore", Interval.between(0.5, 6))
          .put("setting.needleJet.neck", Interval.between(0, 20))
          .put("setting.needle.cylinder", Interval.between(0.4, 6))
          .put("setting.needle.groovePitch", Interval.between(0, 5))
          .put("setting.needle.tip", Interval.between(0.1, 150))
          .put("setting.mainJet", Interval.between(0.3, 5))
          .putAll(air("air"))
          .putAll(air("riding.coldest"))
          .putAll(air("riding.hottest"))
          .put("riding.acceptedRisk", new Interval(0, true, 0.5, false))
          .buildOrThrow();

  private static final Map<String, Interval> NARROWER =
      ImmutableMap.<String, Interval>builder()
          .putAll(OF_SHEETS)
          .put("parts.pilotJets.smallest", Interval.between(0.1, 3))
          .put("parts.pilotJets.biggest", Interval.between(0.1, 3))
          .put("parts.mainJets.smallest", Interval.between(0.3, 5))
          .put("parts.mainJets.biggest", Interval.between(0.3, 5))
          .put("mixture.fuelShare.pilot", Interval.between(0, 1))
          .put("mixture.fuelShare.main", Interval.between(0, 1))
          .buildOrThrow();

  private MeasureRanges() {}

  private static Map<String, Interval> air(String at) {
    return ImmutableMap.of(
        at + ".pressure", Interval.between(30_000, 130_000),
        at + ".temperature",
            Interval.between(
                Temperature.ofCelsius(-60).kelvin(), Temperature.ofCelsius(60).kelvin()));
  }

  static Interval of(MeasureDefinition.Numeric definition) {
    Interval narrower = NARROWER.get(definition.name());
    return narrower == null ? of(definition.dimension()) : narrower;
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

  /** The names of the measures that have a range of their own. */
  static Iterable<String> names() {
    return NARROWER.keySet();
  }
}
