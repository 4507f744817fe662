package dev.jetting.rules.search;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import java.util.List;
import java.util.Objects;

/**
 * For how many engines of a kind the choices contain a setting that is right. Such a setting is
 * nowhere beyond the lean limit on any day of the riding, and not too lean on the overrun. On the
 * day of the sheet it is nowhere richer than the rich limit.
 *
 * <p>The engines are drawn from the spreads, evenly and the same every time. The model computes
 * each with its own flows, without the linear approximation that a lean risk makes in the errors of
 * the fuel. The parts are assumed to have their nominal sizes. Not a promise that a tuner finds the
 * setting.
 *
 * @param engines how many engines were drawn
 * @param covered for how many of them the choices contain a right setting
 * @param use how often each part stands in the right setting that is nearest to what the engine
 *     needs; kind by kind, each kind in the order of the choices; the clip positions of a needle
 *     count together
 * @param extras what each extra part would bring on its own, kind by kind in their order
 * @param together the few extra jets that raise the coverage most when they are added one after the
 *     other, by a greedy choice; at most three, fewer if no more is gained. Each entry counts the
 *     jets before it too. Each is the jet that raises the coverage most, and the first of equals. A
 *     pilot and a main jet that together raise it by more than twice as much are both added
 * @param ending how the run ended; unless it is complete, engines that were not looked at to the
 *     end count as not covered
 */
public record Coverage(
    int engines,
    int covered,
    List<PartUse> use,
    List<ExtraPart> extras,
    List<ExtraPart> together,
    SearchEnding ending) {

  /**
   * Checks the numbers.
   *
   * @param engines how many engines were drawn
   * @param covered for how many of them the choices contain a right setting
   * @param use how often each part stands in the best setting
   * @param extras what each extra part would bring on its own
   * @param together the few extra jets that raise the coverage most, one after the other
   * @param ending how the run ended
   * @throws IllegalArgumentException if no engine was drawn or more were covered than drawn
   */
  public Coverage {
    use = List.copyOf(use);
    extras = List.copyOf(extras);
    together = List.copyOf(together);
    Objects.requireNonNull(ending, "ending");
    if (engines < 1 || covered < 0 || covered > engines) {
      throw new IllegalArgumentException(
          "coverage of " + covered + " engines of " + engines + ": allowed 0 to all of 1 or more");
    }
  }

  /** {@return whether every engine was looked at to the end} */
  public boolean complete() {
    return ending == SearchEnding.COMPLETE;
  }

  /** {@return the share of engines that are covered, 0 to 1} */
  public double share() {
    return (double) covered / engines;
  }

  /**
   * The standard error of the share: √(p (1−p)/n), that of engines drawn at random; those drawn
   * evenly do better, so take it as the most.
   *
   * @return the standard error
   */
  public double standardError() {
    return Math.sqrt(share() * (1 - share()) / engines);
  }

  /**
   * The coverage of choices.
   *
   * @param sheet a typical engine of the kind, with carburettor, air, fuel and riding
   * @param choices the parts there are
   * @param riskModel limits and spreads
   * @param engines how many engines to draw, 1 to 65 536; with 256 the error of the share is about
   *     three per cent
   * @param run on which threads, until when
   * @return the coverage, without extra parts
   * @throws IllegalArgumentException if the number is out of range, or the air of a day is colder
   *     than −40 °C and the fuel is a blend
   */
  public static Coverage of(
      SetupSheet sheet, Choices choices, RiskModel riskModel, int engines, Run run) {
    return EngineCount.of(sheet, Extras.none(choices), riskModel, engines, run);
  }

  /**
   * The coverage of choices, what each extra part would bring on its own, and which few extra jets
   * would bring most together.
   *
   * @param sheet a typical engine of the kind, with carburettor, air, fuel and riding
   * @param choices the parts there are
   * @param more the parts there might be; those that are among the choices are no extras, and its
   *     screw positions do not count
   * @param riskModel limits and spreads
   * @param engines how many engines to draw, 1 to 65 536
   * @param run on which threads, until when
   * @return the coverage
   * @throws IllegalArgumentException if the number is out of range, or the air of a day is colder
   *     than −40 °C and the fuel is a blend
   */
  public static Coverage of(
      SetupSheet sheet, Choices choices, Choices more, RiskModel riskModel, int engines, Run run) {
    return EngineCount.of(sheet, Extras.of(choices, more), riskModel, engines, run);
  }
}
