package dev.jetting.rules.advice;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.text.Argument;

/**
 * One size of a part, or one position of an adjustment.
 *
 * @param name the size in trade style
 * @param atHand whether the rider has it
 * @param fit puts it into a setting; throws IllegalArgumentException where it does not fit
 */
record Rung(Argument name, boolean atHand, Fit fit) {

  /** Puts a part into a setting. */
  @FunctionalInterface
  interface Fit {
    Setting into(Setting setting);
  }
}
