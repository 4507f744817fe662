package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The sentences of a plan, made from its data. */
final class PlanWords {

  private PlanWords() {}

  static Message of(Plan plan) {
    List<Message> sentences = new ArrayList<>();
    sentences.add(ending(plan));
    List<Argument> dangers = rules(plan, left -> left.severity() == Severity.DANGER);
    if (!dangers.isEmpty()) {
      sentences.add(Message.of("plan.danger").with("rules", Argument.items(dangers)));
    }
    if (!plan.partsToBuy().isEmpty()) {
      sentences.add(Message.of("plan.buy").with("parts", Argument.items(plan.partsToBuy())));
    }
    return Message.joined(sentences);
  }

  private static Message ending(Plan plan) {
    boolean none = plan.steps().isEmpty();
    return switch (plan.ending()) {
      case NOTHING_TO_DO -> Message.of("plan.nothing-to-do");
      case REMEDIED -> Message.of("plan.remedied");
      case NO_DANGER ->
          Message.of(none ? "plan.no-danger.now" : "plan.no-danger")
              .with("rules", Argument.items(rules(plan, left -> true)));
      case DANGER_LEFT -> Message.of(none ? "plan.danger-left.now" : "plan.danger-left");
    };
  }

  private static List<Argument> rules(Plan plan, Predicate<Plan.Left> which) {
    return plan.left().stream()
        .filter(which)
        .map(left -> Rule.titleWords(left.ruleId(), left.title()))
        .distinct()
        .map(title -> Argument.words(Message.of("verdict.rule").with("title", title)))
        .toList();
  }

  /** One step, with what it does over the throttle range. */
  static Message step(Remedy.Change change) {
    Message step =
        Message.of(change.toBuy() ? "plan.step.buy" : "plan.step")
            .with("deed", Argument.words(change.deedMessage()))
            .with(
                "risk",
                RemedyWords.fromTo(
                    change.effect().before().highestRisk(), change.effect().after().highestRisk()));
    return RemedyWords.withCondition(change, step);
  }
}
