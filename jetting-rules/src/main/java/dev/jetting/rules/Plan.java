package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Objects;

/**
 * One way out of what a report found: single changes in the order in which they are made, towards
 * rich first. No part is changed twice, and no step brings a danger that was not there.
 *
 * <p>A calculation on assumed coefficients: ride and read the plug after each step, and before each
 * one towards lean.
 *
 * @param ending what the last step leaves
 * @param steps the changes, in order; each has its effect on the setting before it
 * @param left what the last step leaves to remedy, the most dangerous first
 */
public record Plan(Ending ending, List<Remedy.Change> steps, List<Left> left) {

  /** What is left after the last step. */
  public enum Ending {
    /** The report found nothing to remedy; there are no steps. */
    NOTHING_TO_DO,
    /** Nothing is left to remedy. */
    REMEDIED,
    /** No danger is left, but something that is less. */
    NO_DANGER,
    /** A danger is left: it cannot be done with these parts, nor with customary ones to buy. */
    DANGER_LEFT
  }

  /**
   * Something that a plan does not remedy.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param title title of the rule
   * @param words what is found after the last step
   */
  public record Left(String ruleId, Severity severity, String title, Message words) {

    /**
     * Checks the id.
     *
     * @param ruleId id of the rule
     * @param severity how much it matters
     * @param title title of the rule
     * @param words what is found after the last step
     * @throws IllegalArgumentException if the id is none of a rule
     */
    public Left {
      Rule.checkedId(ruleId);
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(severity, "severity");
      Objects.requireNonNull(words, "words");
    }

    /** {@return what is found after the last step, in English} */
    public String text() {
      return words.text();
    }
  }

  /**
   * Copies the lists.
   *
   * @param ending what the last step leaves
   * @param steps the changes, in order
   * @param left what the last step leaves to remedy, the most dangerous first
   */
  public Plan {
    Objects.requireNonNull(ending, "ending");
    steps = List.copyOf(steps);
    left = List.copyOf(left);
  }

  /** {@return the parts to buy, in the order of the steps, in trade style} */
  public List<String> toBuy() {
    return partsToBuy().stream().map(Argument::text).toList();
  }

  /** {@return the parts to buy, in the order of the steps, for any language} */
  public List<Argument> partsToBuy() {
    return steps.stream().filter(Remedy.Change::toBuy).map(Remedy.Change::to).toList();
  }

  /** {@return the end of the plan, in a sentence or two for people} */
  public Message message() {
    return PlanWords.of(this);
  }

  /** {@return the end of the plan, in a sentence or two, in English} */
  public String text() {
    return message().text();
  }
}
