package dev.jetting.core.flow;

/**
 * Compressible flow of an ideal gas through a nozzle without losses.
 *
 * <p>Mass flux = p₀/√(R T₀) · Ψ(r), with r the ratio of throat to stagnation pressure and Ψ(r) =
 * √(2γ/(γ−1) (r^(2/γ) − r^((γ+1)/γ))). Below the critical ratio (2/(γ+1))^(γ/(γ−1)) the throat runs
 * at the speed of sound, and Ψ stays at its greatest value. Source: any textbook of gas dynamics,
 * e.g. Heywood, Internal Combustion Engine Fundamentals, appendix C (from memory).
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
}
