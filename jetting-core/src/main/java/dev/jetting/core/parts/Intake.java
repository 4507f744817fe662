package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;
import dev.jetting.units.Area;
import dev.jetting.units.Sentence;
import java.util.Optional;

/**
 * What stands before the carburettor: an open mouth, or a filter or box that the air has to pass.
 *
 * <p>A filter is described by the effective area of the plain opening that hinders the air as much,
 * discharge coefficient included. Not for the length or tuning of an intake.
 *
 * @param id plain name
 * @param effectiveArea the filter's effective area, 1 mm² or more; empty for an open mouth
 */
public record Intake(String id, Optional<Area> effectiveArea) {

  /**
   * Checks the parts.
   *
   * @param id plain name
   * @param effectiveArea the filter's effective area, 1 mm² or more
   * @throws IllegalArgumentException if the id is empty or the area is below 1 mm²
   */
  public Intake {
    Checks.id("intake", id);
    effectiveArea.ifPresent(
        a ->
            Checks.that(
                a.squareMillimetres() >= 1,
                () -> Sentence.of("error.name.effective-area"),
                a,
                () -> Sentence.of("error.or-more").with("low", new Sentence.Amount(1, "mm²"))));
  }

  /** {@return an open mouth} */
  public static Intake openMouth() {
    return new Intake("open mouth", Optional.empty());
  }

  /**
   * A filter or box.
   *
   * @param id plain name
   * @param effectiveArea effective area, 1 mm² or more
   * @return the filter
   * @throws IllegalArgumentException if the id is empty or the area is below 1 mm²
   */
  public static Intake filter(String id, Area effectiveArea) {
    return new Intake(id, Optional.of(effectiveArea));
  }
}
