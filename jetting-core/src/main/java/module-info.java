import org.jspecify.annotations.NullMarked;

/**
 * The mixture model: from engine, carburettor parts, air and fuel to the mixture over the throttle
 * range.
 */
@NullMarked
// hipparchus has no module descriptor of its own; cycle and rules are compiled after this one
@SuppressWarnings({"requires-automatic", "module"})
module dev.jetting.core {
  requires transitive dev.jetting.units;
  requires com.google.common;
  requires hipparchus.core;
  requires static org.jspecify;

  exports dev.jetting.core.air;
  exports dev.jetting.core.calibration;
  exports dev.jetting.core.elementary;
  exports dev.jetting.core.engine;
  exports dev.jetting.core.fuel;
  exports dev.jetting.core.mixture;
  exports dev.jetting.core.parts;
  exports dev.jetting.core.typical;

  // The reference simulation checks the equations on the same building blocks.
  exports dev.jetting.core.checks to
      dev.jetting.core.cycle,
      dev.jetting.rules;
  exports dev.jetting.core.flow to
      dev.jetting.core.cycle;

  // The search computes many settings at once, by the same equations.
  exports dev.jetting.core.mixture.table to
      dev.jetting.rules;
}
