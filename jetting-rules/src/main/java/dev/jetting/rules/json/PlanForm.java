package dev.jetting.rules.json;

import dev.jetting.rules.Plan;
import dev.jetting.rules.Severity;
import dev.jetting.rules.json.RemedyForm.ChangeForm;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Optional;

/**
 * A plan, in JSON.
 *
 * @param text what comes of it, made from the rest
 * @param ending what the last step leaves
 * @param steps the changes, in order
 * @param left what the last step leaves to remedy, the most dangerous first
 */
record PlanForm(String text, Plan.Ending ending, List<ChangeForm> steps, List<LeftForm> left) {

  /**
   * Something that a plan does not remedy, in JSON.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param title title of the rule
   * @param text what is found after the last step
   * @param textMessage the text by its key and typed arguments, where it has a key
   */
  record LeftForm(
      String ruleId, String title, Severity severity, String text, Optional<Message> textMessage) {

    static LeftForm of(Plan.Left left) {
      return new LeftForm(
          left.ruleId(),
          left.title(),
          left.severity(),
          left.text(),
          MessageForm.keyed(left.words()));
    }

    Plan.Left left() {
      return new Plan.Left(
          ruleId, severity, title, textMessage.orElseGet(() -> Message.plain(text)));
    }
  }

  static PlanForm of(Plan plan) {
    return new PlanForm(
        plan.text(),
        plan.ending(),
        plan.steps().stream().map(ChangeForm::of).toList(),
        plan.left().stream().map(LeftForm::of).toList());
  }

  /** The text is made anew: it is not what a program reads. */
  Plan plan() {
    return new Plan(
        ending,
        steps.stream().map(ChangeForm::change).toList(),
        left.stream().map(LeftForm::left).toList());
  }
}
