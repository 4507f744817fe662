package dev.jetting.core.parts;

import dev.jetting.units.Diameter;
import dev.jetting.units.Length;
import java.util.Objects;

/**
 * A needle jet: the tube in which the needle hangs.
 *
 * @param bore diameter of the calibrated bore, more than zero
 * @param neck how far its mouth stands above the reference neck of the carburettor's family; a
 *     longer neck is leaner, most where the slide is low
 */
public record NeedleJet(Diameter bore, Length neck) {

  /**
   * Checks for nulls.
   *
   * @param bore diameter of the calibrated bore, more than zero
   * @param neck how far its mouth stands above the reference neck of the carburettor's family
   */
  public NeedleJet {
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(neck, "neck");
  }

  /**
   * A needle jet with the reference neck.
   *
   * @param bore diameter of the calibrated bore, more than zero
   * @return the needle jet
   */
  public static NeedleJet of(Diameter bore) {
    return new NeedleJet(bore, Length.ofMillimetres(0));
  }
}
