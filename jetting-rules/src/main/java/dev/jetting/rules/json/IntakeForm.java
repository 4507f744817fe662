package dev.jetting.rules.json;

import dev.jetting.core.parts.Intake;
import dev.jetting.units.Area;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
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
      throw InvalidValueException.worded(
          Sentence.of(open ? "error.name.intake.open" : "error.name.intake.none"),
          Sentence.of("error.intake"));
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
