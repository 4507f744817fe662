package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import java.util.Optional;

/**
 * The result of a line: the validation of its kit, or what is wrong with the line.
 *
 * @param line its number, from 1
 * @param input digest of what was read
 * @param validation what is said of the kit; empty for a line that is none
 * @param problem what is wrong with the line; empty for a kit
 */
record Outcome(long line, String input, Optional<KitValidation> validation, String problem) {

  static Outcome of(Numbered line, KitValidator validator, KitDepth depth) {
    try {
      KitValidation validation = validator.validate(line.kit().get(), depth);
      return new Outcome(line.line(), line.input(), Optional.of(validation), "");
    } catch (IllegalArgumentException e) {
      String problem = String.valueOf(e.getMessage());
      String prefix = "line " + line.line() + ", ";
      return problem(
          line, problem.startsWith(prefix) ? problem.substring(prefix.length()) : problem);
    } catch (RuntimeException e) {
      // A fault of the program in one line is no reason to leave the others unjudged.
      return problem(line, "cannot be judged: " + e);
    }
  }

  private static Outcome problem(Numbered line, String problem) {
    return new Outcome(line.line(), line.input(), Optional.empty(), problem);
  }
}
