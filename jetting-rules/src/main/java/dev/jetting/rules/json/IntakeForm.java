package dev.jetting.rules.json;

import dev.jetting.core.parts.Intake;
import dev.jetting.units.Area;
import java.util.Optional;

/**
 * What stands before a carburettor in JSON: with its effective area, or said to be an open mouth. A
 * filter whose area was forgotten must not pass for an open mouth, behind which other jets belong.
 *
 * @param id plain name
 * @param effectiveArea discharge coefficient times area of filter and box; or that it is an open
 *     mouth
 * @param openMouth true where nothing stands before the carburettor
 */
record IntakeForm(String id, Optional<Area> effectiveArea, Optional<Boolean> openMouth) {

  IntakeForm {
    boolean open = openMouth.orElse(false);
    if (open == effectiveArea.isPresent()) {
      throw new IllegalArgumentException(
          "intake "
              + (open ? "with an effective area and an open mouth" : "without an effective area")
              + ": allowed effectiveArea, or openMouth true");
    }
  }

  static IntakeForm of(Intake intake) {
    return new IntakeForm(
        intake.id(),
        intake.effectiveArea(),
        intake.effectiveArea().isPresent() ? Optional.empty() : Optional.of(true));
  }

  Intake intake() {
    return new Intake(id, effectiveArea);
  }
}
