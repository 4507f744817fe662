package dev.jetting.core.flow;

/**
 * Which share of the depression at the upstream gap the needle jet's mouth feels.
 *
 * <p>κ(u) = (κ₀ + (κ₁ − κ₀) u^m) · max(0, 1 − ν (ℓ/D)(1−u)²). This project's own shape. The mouth
 * stands in the slow air below a low slide and in the full stream of an open bore. A longer neck
 * stands further out of the stream, most where the slide is low.
 *
 * @param closed κ₀
 * @param open κ₁
 * @param exponent m
 * @param neckEffect ν
 * @param neckRatio ℓ/D, height of the neck over the family's reference, by the bore
 */
public record Nozzle(
    double closed, double open, double exponent, double neckEffect, double neckRatio) {

  /**
   * The nozzle factor.
   *
   * @param u lift by bore, 0 to 1
   * @return κ
   */
  public double factor(double u) {
    double away = 1 - u;
    return (closed + (open - closed) * StrictMath.exp(exponent * StrictMath.log(u)))
        * Math.max(0, 1 - neckEffect * neckRatio * away * away);
  }
}
