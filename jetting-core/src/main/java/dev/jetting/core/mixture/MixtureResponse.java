package dev.jetting.core.mixture;

import java.util.List;
import java.util.Objects;

/**
 * The mixture at an operating point with all that it answers to.
 *
 * @param point the mixture
 * @param effects what each part does to it, in the order of {@link MeteringPart}
 * @param sensitivities how it answers to the ways in which the engine's fuel may differ from the
 *     model
 */
public record MixtureResponse(
    MixturePoint point, List<PartEffect> effects, FuelSensitivities sensitivities) {

  /**
   * Copies the list.
   *
   * @param point the mixture
   * @param effects what each part does to it
   * @param sensitivities how it answers to the ways in which the engine's fuel may differ from the
   *     model
   */
  public MixtureResponse {
    Objects.requireNonNull(point, "point");
    effects = List.copyOf(effects);
    Objects.requireNonNull(sensitivities, "sensitivities");
  }
}
