package dev.jetting.rules.json;

import dev.jetting.rules.Plan;
import dev.jetting.rules.json.RemedyForm.ChangeForm;
import java.util.List;

/**
 * A plan, in JSON.
 *
 * @param text what comes of it, made from the rest
 * @param ending what the last step leaves
 * @param steps the changes, in order
 * @param left what the last step leaves to remedy, the most dangerous first
 */
record PlanForm(String text, Plan.Ending ending, List<ChangeForm> steps, List<Plan.Left> left) {

  static PlanForm of(Plan plan) {
    return new PlanForm(
        plan.text(),
        plan.ending(),
        plan.steps().stream().map(ChangeForm::of).toList(),
        plan.left());
  }

  /** The text is made anew: it is not what a program reads. */
  Plan plan() {
    return new Plan(ending, steps.stream().map(ChangeForm::change).toList(), left);
  }
}
