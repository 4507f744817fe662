package dev.jetting.core.mixture;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How ln λ answers to the ways in which a real engine may differ from the model: ∂ ln λ/∂ z, z the
 * natural logarithm of true by modelled flow.
 *
 * @param bySource a plain number for each source
 */
public record Sensitivities(Map<ErrorSource, Double> bySource) {

  /**
   * Copies the map, in the order of the sources.
   *
   * @param bySource a plain number for each source
   */
  public Sensitivities {
    Map<ErrorSource, Double> copy = new EnumMap<>(ErrorSource.class);
    copy.putAll(bySource);
    bySource = Collections.unmodifiableMap(copy);
  }

  /**
   * The sensitivity to one source.
   *
   * @param source the source
   * @return ∂ ln λ/∂ z, 0 if the source is not in the map
   */
  public double to(ErrorSource source) {
    return bySource.getOrDefault(source, 0.0);
  }
}
