package dev.jetting.core.flow;

/**
 * Mean flow of fuel with inertia under a pulsating suction.
 *
 * <p>Between two limits: a fuel that follows at once, q = φ Q(peak), and one that feels the mean, s
 * = Q(mean suction), both with αQ² + βQ = Δ. The flow is q + w (s − q), w = u/(1 + u), u = 7 x + 46
 * x², x = N I/(√(β² + 4αΔ) + 2.2 β), Δ the mean: how many times a turn the column settles. Where
 * the mean suction hardly lifts the fuel, the second limit is less by D = q − s. There the weight
 * goes from w to nine tenths, by the share D/(D + k s) of the way. Its numbers were set by hand: on
 * the column's own equation under waves of the cycle, and on the agreement of the two (CYCLE.md of
 * jetting-core-cycle). k is assumed: without it the flow has an edge, where the spread of λ jumps.
 *
 * <p>Flow never falls when α or β falls: both limits rise, and the flow with them. Above q, w rises
 * too. Below q a higher w takes flow away, which what s itself gains outweighs (MODEL.md, laws).
 */
public final class PulsedFlow {

  private static final double LINEAR = 7;
  private static final double SQUARE = 46;
  private static final double FRICTION = 2.2;
  private static final double WEAK = 0.9;

  /** k: over what share of the flow the weight changes. */
  private static final double BLEND = 0.05;

  private PulsedFlow() {}

  /**
   * The mean flow.
   *
   * @param alpha α, Pa/(m³/s)²
   * @param beta β, Pa/(m³/s)
   * @param openShare φ, share of the turn for which the peak stands
   * @param peak suction of the wave less the head of the fuel, Pa
   * @param mean mean suction less the head, Pa
   * @param inertia N I, revolutions a second by the inertance of the column, Pa s/m³
   * @return m³/s
   */
  public static double flow(
      double alpha, double beta, double openShare, double peak, double mean, double inertia) {
    double quick = openShare * Restriction.flow(alpha, beta, peak);
    if (quick == 0 || mean <= 0) {
      return (1 - WEAK) * quick;
    }
    double root = Math.sqrt(beta * beta + 4 * alpha * mean);
    double slow = 2 * mean / (beta + root);
    double x = inertia / (root + FRICTION * beta);
    double u = x * (LINEAR + SQUARE * x);
    double weight = u / (1 + u);
    if (slow < quick) {
      double less = quick - slow;
      weight += (WEAK - weight) * less / (less + BLEND * slow);
    }
    return quick + weight * (slow - quick);
  }

  /**
   * How the mean flow answers to the restriction.
   *
   * @param byAlpha ∂ ln Q/∂ α, zero or less
   * @param byBeta ∂ ln Q/∂ β, zero or less
   */
  record Sensitivity(double byAlpha, double byBeta) {

    /** ∂ ln Q/∂ s of a change ∂α/∂s, ∂β/∂s. */
    double to(Restriction change) {
      return byAlpha == 0 && byBeta == 0 ? 0 : byAlpha * change.alpha() + byBeta * change.beta();
    }
  }

  /** How the flow of the same arguments answers; nothing where nothing flows. */
  static Sensitivity sensitivity(
      double alpha, double beta, double openShare, double peak, double mean, double inertia) {
    double fast = Restriction.flow(alpha, beta, peak);
    if (fast == 0) {
      return new Sensitivity(0, 0);
    }
    double steep = 2 * alpha * fast + beta;
    double quick = openShare * fast;
    double quickByAlpha = -quick * fast / steep;
    double quickByBeta = -quick / steep;
    if (mean <= 0) {
      return new Sensitivity(quickByAlpha / quick, quickByBeta / quick);
    }
    double root = Math.sqrt(beta * beta + 4 * alpha * mean);
    double slow = 2 * mean / (beta + root);
    double slowByAlpha = -slow * slow / root;
    double slowByBeta = -slow / root;
    double x = inertia / (root + FRICTION * beta);
    double u = x * (LINEAR + SQUARE * x);
    double byRoot = -(LINEAR + 2 * SQUARE * x) * x / (root + FRICTION * beta) / ((1 + u) * (1 + u));
    double weightByAlpha = byRoot * 2 * mean / root;
    double weightByBeta = byRoot * (beta / root + FRICTION);

    double weight = u / (1 + u);
    double bySlow = weight;
    double byQuick = 1 - weight;
    double byWeight = slow - quick;
    if (slow < quick) {
      double less = quick - slow;
      double width = BLEND * slow;
      double sum = less + width;
      double step = WEAK - weight;
      bySlow += step * less * ((1 + BLEND) * less + 2 * width) / (sum * sum);
      byQuick -= step * less * (less + 2 * width) / (sum * sum);
      byWeight *= width / sum;
      weight += step * less / sum;
    }
    double flow = quick + weight * (slow - quick);
    return new Sensitivity(
        (byQuick * quickByAlpha + bySlow * slowByAlpha + weightByAlpha * byWeight) / flow,
        (byQuick * quickByBeta + bySlow * slowByBeta + weightByBeta * byWeight) / flow);
  }
}
