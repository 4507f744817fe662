package dev.jetting.core.flow;

/**
 * Compressible flow of an ideal gas through a nozzle without losses.
 *
 * <p>Mass flux = p₀/√(R T₀) · Ψ(r) with r the ratio of throat to stagnation pressure and Ψ(r) =
 * √(2γ/(γ−1) (r^(2/γ) − r^((γ+1)/γ))), held at its greatest value below the critical ratio
 * (2/(γ+1))^(γ/(γ−1)), where the throat runs at the speed of sound. Source: any textbook of gas
 * dynamics, e.g. Heywood, Internal Combustion Engine Fundamentals, appendix C (from memory).
 */
public final class IsentropicFlow {

  /** Ratio of specific heats of air. */
  public static final double GAMMA_AIR = 1.4;

  /** Worked out once: a flow is asked for far more often than γ changes. */
  private static final double CRITICAL_RATIO_OF_AIR = powered(GAMMA_AIR);

  private IsentropicFlow() {}

  /**
   * The ratio of throat to stagnation pressure at which the flow chokes.
   *
   * @param gamma ratio of specific heats, above 1
   * @return the critical ratio, between 0 and 1
   */
  public static double criticalRatio(double gamma) {
    return gamma == GAMMA_AIR ? CRITICAL_RATIO_OF_AIR : powered(gamma);
  }

  private static double powered(double gamma) {
    return StrictMath.pow(2 / (gamma + 1), gamma / (gamma - 1));
  }

  /**
   * The flow function Ψ.
   *
   * @param pressureRatio throat to stagnation pressure, 0 to 1
   * @param gamma ratio of specific heats, above 1
   * @return Ψ, a plain number; 0 at a ratio of 1, constant below the critical ratio
   */
  public static double psi(double pressureRatio, double gamma) {
    return psiOfDrop(1 - pressureRatio, gamma);
  }

  /**
   * The flow function Ψ by the drop, so that a small drop keeps its digits.
   *
   * @param drop share of the stagnation pressure that is lost up to the throat, 0 to 1
   * @param gamma ratio of specific heats, above 1
   * @return Ψ, a plain number; 0 without a drop, constant beyond the critical one
   */
  public static double psiOfDrop(double drop, double gamma) {
    double lnRatio = StrictMath.log1p(-Math.min(drop, 1 - criticalRatio(gamma)));
    double squared = StrictMath.exp(2 / gamma * lnRatio);
    double rest = -StrictMath.expm1((gamma - 1) / gamma * lnRatio);
    return Math.sqrt(2 * gamma / (gamma - 1) * squared * rest);
  }

  /**
   * The drop 1 − r behind a nozzle, where r is the root of c Ψ(r) = r. A pump draws through the
   * nozzle and takes the same volume at any pressure, at the temperature before the nozzle.
   *
   * <p>Calculated: with x = r^((γ−1)/γ) and B = c² 2γ/(γ−1) the square of the balance is x² = B
   * (1−x), a quadratic, and its one root between 0 and 1 is x = 1 − 2/(2 + B + √(B(B+4))). Once x
   * falls to 2/(γ+1) the nozzle chokes, Ψ is held and r is c times it.
   *
   * @param capacity c, what the nozzle passes where Ψ is 1 by what the pump takes at the pressure
   *     before the nozzle; zero or more, infinite for a pump that stands still
   * @param gamma ratio of specific heats, above 1
   * @return 1 − r, 0 to 1; a small drop keeps its digits
   */
  public static double dropBehindPump(double capacity, double gamma) {
    double square = capacity * capacity * (2 * gamma / (gamma - 1));
    double missing = 2 / (2 + square + Math.sqrt(square * (square + 4)));
    return missing < (gamma - 1) / (gamma + 1)
        ? -StrictMath.expm1(gamma / (gamma - 1) * StrictMath.log1p(-missing))
        : 1 - capacity * psiOfDrop(1, gamma);
  }
}
