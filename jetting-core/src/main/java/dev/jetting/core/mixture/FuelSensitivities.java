package dev.jetting.core.mixture;

import java.util.Objects;

/**
 * ln λ at an operating point, and how it answers to the three sources that act on the fuel alone: ∂
 * ln λ/∂ z, z the natural logarithm of true by modelled flow; and to the sizes of the parts. Plain
 * numbers.
 *
 * <p>In closed form: λ is one over the fuel, so each is minus the share of the fuel that comes that
 * way, times what the source has to say there. 0 where λ is that of {@link MixturePoint#LEANEST}.
 *
 * @param lnLambda ln λ
 * @param pilot to the pilot circuit, −1 to 0
 * @param needle to the ring between needle and needle jet, −1 to 0
 * @param main to the main jet, −1 to 0
 * @param sizes to the sizes of the parts
 */
public record FuelSensitivities(
    double lnLambda, double pilot, double needle, double main, SizeSensitivities sizes) {

  /**
   * Checks for null.
   *
   * @param lnLambda ln λ
   * @param pilot to the pilot circuit, −1 to 0
   * @param needle to the ring between needle and needle jet, −1 to 0
   * @param main to the main jet, −1 to 0
   * @param sizes to the sizes of the parts
   */
  public FuelSensitivities {
    Objects.requireNonNull(sizes, "sizes");
  }

  /**
   * With the answer to the air.
   *
   * @param air ∂ ln λ/∂ z of the air, or a chord for it
   * @return all four
   */
  public Sensitivities with(double air) {
    return new Sensitivities(pilot, needle, main, air);
  }
}
