package dev.jetting.core.flow;

/**
 * A restriction to the flow of fuel: Δp = α Q² + β Q. Restrictions in series add.
 *
 * @param alpha α, Pa/(m³/s)²; infinite for a closed passage
 * @param beta β, Pa/(m³/s); infinite for a closed passage
 */
public record Restriction(double alpha, double beta) {

  /**
   * This restriction and another behind it.
   *
   * @param next the other
   * @return their sum
   */
  public Restriction then(Restriction next) {
    return new Restriction(alpha + next.alpha, beta + next.beta);
  }

  /**
   * A passage that passes a factor more under the same pressure difference.
   *
   * @param factor factor on the flow, more than 0
   * @return the restriction: α by the factor squared, β by the factor
   */
  public Restriction passing(double factor) {
    return new Restriction(alpha / (factor * factor), beta / factor);
  }

  /**
   * Volume flow under a pressure difference: 2Δ/(β + √(β² + 4αΔ)), the form that loses no digits.
   *
   * @param difference Δ, Pa; below zero counts as none
   * @return Q, m³/s
   */
  public double flow(double difference) {
    return flow(alpha, beta, difference);
  }

  /**
   * Volume flow through a restriction that is given by its numbers, for tables of many.
   *
   * @param alpha α, Pa/(m³/s)²; infinite for a closed passage
   * @param beta β, Pa/(m³/s); infinite for a closed passage
   * @param difference Δ, Pa; below zero counts as none
   * @return Q, m³/s
   */
  public static double flow(double alpha, double beta, double difference) {
    if (difference <= 0 || Double.isInfinite(alpha)) {
      return 0;
    }
    return 2 * difference / (beta + Math.sqrt(beta * beta + 4 * alpha * difference));
  }

  /**
   * How the flow through this restriction answers to a change of it, or of one of those in series
   * that it is made of: ∂ ln Q/∂ s. From α Q² + β Q = Δ: −(Q ∂α/∂s + ∂β/∂s)/(2αQ + β).
   *
   * @param change ∂α/∂s and ∂β/∂s, in α and β
   * @param flow Q, m³/s
   * @return ∂ ln Q/∂ s; 0 where nothing flows
   */
  double sensitivity(Restriction change, double flow) {
    return flow == 0 ? 0 : -(change.alpha * flow + change.beta) / (2 * alpha * flow + beta);
  }
}
