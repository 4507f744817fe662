package dev.jetting.rules;

import java.util.stream.Collectors;

/** The sentences of a plan, made from its data. */
final class PlanWords {

  private PlanWords() {}

  static String of(Plan plan) {
    return ending(plan) + dangers(plan) + toBuy(plan);
  }

  private static String ending(Plan plan) {
    boolean none = plan.steps().isEmpty();
    return switch (plan.ending()) {
      case NOTHING_TO_DO -> "No part needs to be changed.";
      case REMEDIED -> "After this no part is left to change.";
      case NO_DANGER ->
          none
              ? "No change of a part makes it better without a risk. What stays: "
                  + left(plan)
                  + "."
              : "After this no part makes it better without a risk. What stays: "
                  + left(plan)
                  + ".";
      case DANGER_LEFT ->
          none
              ? "No part of this carburettor helps, at hand or to buy."
              : "After this it is less bad, and no part helps further, at hand or to buy.";
    };
  }

  private static String dangers(Plan plan) {
    String rules =
        plan.left().stream()
            .filter(left -> left.severity() == Severity.DANGER)
            .map(Plan.Left::ruleId)
            .distinct()
            .collect(Collectors.joining(", "));
    return rules.isEmpty() ? "" : " Do not ride it: danger by " + rules + ".";
  }

  private static String left(Plan plan) {
    return plan.left().stream().map(Plan.Left::ruleId).distinct().collect(Collectors.joining(", "));
  }

  private static String toBuy(Plan plan) {
    return plan.toBuy().isEmpty() ? "" : " To buy: " + String.join(", ", plan.toBuy()) + ".";
  }

  /** One step, with what it does over the throttle range. */
  static String step(Remedy.Change change) {
    return change.deed()
        + (change.toBuy() ? " (to buy)" : "")
        + ": "
        + "highest lean risk "
        + RemedyWords.fromTo(
            change.effect().before().highestRisk(), change.effect().after().highestRisk())
        + "."
        + (change.direction() == Remedy.Direction.LEANER
            ? " Towards lean: only after a plug chop that shows it rich."
            : "");
  }
}
