package dev.jetting.core.mixture;

/**
 * How ln λ answers to the ways in which a real engine may differ from the model: ∂ ln λ/∂ z, z the
 * natural logarithm of true by modelled flow. Plain numbers.
 *
 * @param pilot to the pilot circuit, −1 to 0: minus its share of the fuel
 * @param needle to the ring between needle and needle jet, −1 to 0
 * @param main to the main jet, −1 to 0
 * @param air to the air by its signal, zero or more
 */
public record Sensitivities(double pilot, double needle, double main, double air) {

  /**
   * The sensitivity to one source.
   *
   * @param source the source
   * @return ∂ ln λ/∂ z
   */
  public double to(ErrorSource source) {
    return switch (source) {
      case PILOT -> pilot;
      case NEEDLE -> needle;
      case MAIN -> main;
      case AIR -> air;
    };
  }
}
