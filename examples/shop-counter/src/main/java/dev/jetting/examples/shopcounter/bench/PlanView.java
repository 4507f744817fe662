package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.rules.Plan;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.units.TradeStyle;
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
   * @param severity how much it matters, as a word
   * @param text what it is
   */
  public record Left(String severity, String text) {}

  /**
   * Works the plan of a machine out.
   *
   * @param machine the machine
   * @return the plan's page
   */
  public static PlanView of(Machine machine) {
    Report report = Knowledge.of(machine).advise(machine.sheet());
    Optional<Plan> plan = report.plan();
    return new PlanView(
        machine,
        plan.map(Plan::text).orElse(""),
        Verdict.of(report),
        plan.map(found -> steps(machine, found)).orElse(List.of()),
        plan.map(Plan::toBuy).orElse(List.of()),
        plan.map(PlanView::left).orElse(List.of()));
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

  private static List<Step> steps(Machine machine, Plan plan) {
    List<Step> steps = new ArrayList<>();
    for (Remedy.Change change : plan.steps()) {
      steps.add(
          new Step(
              steps.size() + 1,
              change.deed(),
              change.toBuy(),
              effect(machine, change.effect()),
              change.direction() == Remedy.Direction.LEANER
                  ? "Towards lean: only after a plug chop that shows it rich."
                  : "",
              query(machine, change.setting())));
    }
    return steps;
  }

  private static String effect(Machine machine, Remedy.Effect effect) {
    var accepted = machine.sheet().riding().acceptedRisk();
    return "At "
        + TradeStyle.throttle(effect.throttle())
        + " λ goes from "
        + number(effect.before().lambda().value())
        + " to "
        + number(effect.after().lambda().value())
        + ", and the highest lean risk of any day from "
        + TradeStyle.probability(effect.before().highestRisk(), accepted)
        + " to "
        + TradeStyle.probability(effect.after().highestRisk(), accepted)
        + ".";
  }

  private static String number(double lambda) {
    return String.format(Locale.ROOT, "%.2f", lambda);
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

  private static List<Left> left(Plan plan) {
    return plan.left().stream()
        .filter(left -> left.severity() != Severity.NOTE)
        .map(left -> new Left(left.severity().name().toLowerCase(Locale.ROOT), left.text()))
        .toList();
  }
}
