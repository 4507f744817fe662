import org.jspecify.annotations.NullMarked;

/**
 * A reference simulation of the crankcase over the crank angle, for checks of the mixture model.
 */
@NullMarked
@SuppressWarnings("requires-automatic") // hipparchus has no module descriptor of its own
module dev.jetting.core.cycle {
  requires transitive dev.jetting.core;
  requires hipparchus.core;
  requires hipparchus.ode;
  requires static org.jspecify;

  exports dev.jetting.core.cycle;
}
