package dev.jetting.rules;

import dev.jetting.core.engine.RpmCurve;
import dev.jetting.units.Displacement;
import java.util.Objects;

/**
 * The cylinder that a setting was proven on, as its carburettor saw it.
 *
 * @param displacement swept volume, more than zero
 * @param deliveryRatio what its porting drew: fresh charge a turn by what the displacement would
 *     hold at ambient density, over engine speed
 */
public record ProvenCylinder(Displacement displacement, RpmCurve deliveryRatio) {

  /**
   * Checks for nulls.
   *
   * @param displacement swept volume, more than zero
   * @param deliveryRatio what its porting drew
   */
  public ProvenCylinder {
    Objects.requireNonNull(displacement, "displacement");
    Objects.requireNonNull(deliveryRatio, "deliveryRatio");
  }
}
