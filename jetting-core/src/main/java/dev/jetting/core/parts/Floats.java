package dev.jetting.core.parts;

import dev.jetting.units.FloatLevel;
import java.util.Objects;

/**
 * How the floats of a carburettor are set, against how they are meant to be.
 *
 * <p>The depth at which floats swim does not depend on how they are set. So the fuel stands lower
 * by as much as they are set higher above the joint (assumed: measured in the middle of the float).
 * Not for carburettors whose trade measures the other way round, from the bottom of the bowl.
 *
 * @param set the float level as it was measured
 * @param nominal the float level at which the carburettor's heads hold
 */
public record Floats(FloatLevel set, FloatLevel nominal) {

  /**
   * Checks for nulls.
   *
   * @param set the float level as it was measured
   * @param nominal the float level at which the carburettor's heads hold
   */
  public Floats {
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(nominal, "nominal");
  }

  /** {@return by how many mm the fuel stands lower than it is meant to; below zero if higher} */
  public double lowerBy() {
    return set.millimetres() - nominal.millimetres();
  }
}
