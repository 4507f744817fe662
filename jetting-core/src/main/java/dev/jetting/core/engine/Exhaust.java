package dev.jetting.core.engine;

import dev.jetting.core.checks.Checks;
import java.util.Objects;

/**
 * What an exhaust does to the air that the engine draws, against the exhaust with which the
 * engine's delivery ratio is given.
 *
 * @param id plain name
 * @param deliveryFactor factor on the delivery ratio over engine speed
 */
public record Exhaust(String id, RpmCurve deliveryFactor) {

  /**
   * Checks the id.
   *
   * @param id plain name
   * @param deliveryFactor factor on the delivery ratio over engine speed
   * @throws IllegalArgumentException if a text is blank, too long or not one line of visible
   *     characters
   */
  public Exhaust {
    Checks.id("exhaust", id);
    Objects.requireNonNull(deliveryFactor, "deliveryFactor");
  }

  /**
   * The exhaust with which the delivery ratio is given.
   *
   * @param id plain name
   * @return an exhaust without effect
   */
  public static Exhaust reference(String id) {
    return new Exhaust(id, RpmCurve.constant(1));
  }
}
