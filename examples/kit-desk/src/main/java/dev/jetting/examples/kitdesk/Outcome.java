package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import java.util.Optional;

/**
 * What came of a line: what is said of its kit, or what is wrong with the line.
 *
 * @param line its number, from 1
 * @param validation what is said of the kit; empty for a line that is none
 * @param problem what is wrong with the line; empty for a kit
 */
record Outcome(long line, Optional<KitValidation> validation, String problem) {

  static Outcome of(Numbered line, KitValidator validator, KitDepth depth) {
    try {
      return new Outcome(line.line(), Optional.of(validator.validate(line.kit().get(), depth)), "");
    } catch (IllegalArgumentException e) {
      String problem = String.valueOf(e.getMessage());
      String told = "line " + line.line() + ", ";
      return new Outcome(
          line.line(),
          Optional.empty(),
          problem.startsWith(told) ? problem.substring(told.length()) : problem);
    }
  }
}
