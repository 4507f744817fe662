package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.Plan;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The way out of what a report found, as its page shows it.
 *
 * @param machine the machine
 * @param text what comes of the plan, in a sentence or two
 * @param verdict what the report comes to as it stands
 * @param steps the changes, in order
 * @param buy the parts to buy
 * @param left what stays after the last step
 */
public record PlanView(
    Machine machine,
    String text,
    Verdict verdict,
    List<Step> steps,
    List<String> buy,
    List<Left> left) {

  /**
   * A change of one part.
   *
   * @param number its number
   * @param deed what to do
   * @param buy whether the part is not at hand
   * @param effect what it does, before it is done
   * @param warning what to heed before it is done; empty where there is nothing
   * @param query the part of the picture's address that shows it; empty where the part is to be
   *     bought
   */
  public record Step(
      int number, String deed, boolean buy, String effect, String warning, String query) {}

  /**
   * Something that stays.
   *
   * @param severity how much it matters, as a name in style sheets
   * @param text what it is
   */
  public record Left(String severity, String text) {}

  /**
   * Works the plan of a machine out.
   *
   * @param machine the machine
   * @param words the language
   * @return the plan's page
   */
  public static PlanView of(Machine machine, Words words) {
    Report report = Knowledge.of(machine).advise(machine.sheet());
    Optional<Plan> plan = report.plan();
    return new PlanView(
        machine,
        plan.map(found -> words.say(found.message())).orElse(""),
        Verdict.of(report, words),
        plan.map(found -> steps(machine, found, words)).orElse(List.of()),
        plan.map(found -> found.partsToBuy().stream().map(words::say).toList()).orElse(List.of()),
        plan.map(found -> left(found, words)).orElse(List.of()));
  }

  /**
   * Returns the setting after the first step of a machine's plan.
   *
   * @param machine the machine
   * @return the change; empty where there is none
   */
  public static Optional<Remedy.Change> first(Machine machine) {
    return Knowledge.of(machine)
        .advise(machine.sheet())
        .plan()
        .flatMap(plan -> plan.steps().stream().findFirst());
  }

  private static List<Step> steps(Machine machine, Plan plan, Words words) {
    List<Step> steps = new ArrayList<>();
    for (Remedy.Change change : plan.steps()) {
      steps.add(
          new Step(
              steps.size() + 1,
              words.say(change.deedMessage()),
              change.toBuy(),
              words.say(effect(machine, change.effect())),
              change.direction() == Remedy.Direction.LEANER ? words.say("plan.leaner") : "",
              query(machine, change.setting())));
    }
    return steps;
  }

  private static Message effect(Machine machine, Remedy.Effect effect) {
    var accepted = machine.sheet().riding().acceptedRisk();
    return Words.message(
        "plan.effect",
        "throttle",
        Argument.throttle(effect.throttle()),
        "before",
        Argument.lambdaNumber(effect.before().lambda()),
        "after",
        Argument.lambdaNumber(effect.after().lambda()),
        "risk",
        Argument.risk(effect.before().highestRisk(), accepted),
        "riskAfter",
        Argument.risk(effect.after().highestRisk(), accepted));
  }

  /** Only what exists can be looked at in the picture. */
  private static String query(Machine machine, Setting setting) {
    Proposal looked = new Proposal(machine.sheet(), setting);
    try {
      Proposal.of(machine.sheet(), looked.differences()::get);
      return looked.query();
    } catch (IllegalArgumentException e) {
      return "";
    }
  }

  private static List<Left> left(Plan plan, Words words) {
    return plan.left().stream()
        .filter(left -> left.severity() != Severity.NOTE)
        .map(
            left ->
                new Left(left.severity().name().toLowerCase(Locale.ROOT), words.say(left.words())))
        .toList();
  }
}
