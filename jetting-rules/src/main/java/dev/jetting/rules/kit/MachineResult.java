package dev.jetting.rules.kit;

import dev.jetting.rules.RankedFinding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the rulebook says of the recommended setting on one machine with one fuel, and how many
 * engines of its kind the kit serves.
 *
 * @param machine id of the machine
 * @param fuel which of the market's fuels, counted from 1
 * @param passes whether nothing speaks against a careful first ride; never a promise
 * @param today the greatest lean risk on an ordinary day, climbs included
 * @param coldest the same on the coldest day
 * @param hottest the same on the hottest day
 * @param findings the findings of the rulebook, the most dangerous first
 * @param unanswered ids of the rules of danger that could not be evaluated and of those that broke:
 *     each of them keeps the setting from passing
 * @param coverage how many engines the kit serves; empty where it was not asked
 */
public record MachineResult(
    String machine,
    int fuel,
    boolean passes,
    CornerRisk today,
    CornerRisk coldest,
    CornerRisk hottest,
    List<RankedFinding> findings,
    List<String> unanswered,
    Optional<KitCoverage> coverage) {

  /**
   * Copies the lists.
   *
   * @param machine id of the machine
   * @param fuel which of the market's fuels, counted from 1
   * @param passes whether nothing speaks against a careful first ride; never a promise
   * @param today the greatest lean risk on an ordinary day
   * @param coldest the same on the coldest day
   * @param hottest the same on the hottest day
   * @param findings the findings of the rulebook, the most dangerous first
   * @param unanswered ids of the rules of danger that could not be evaluated and of those that
   *     broke
   * @param coverage how many engines the kit serves; empty where it was not asked
   */
  public MachineResult {
    Objects.requireNonNull(machine, "machine");
    Objects.requireNonNull(today, "today");
    Objects.requireNonNull(coldest, "coldest");
    Objects.requireNonNull(hottest, "hottest");
    findings = List.copyOf(findings);
    unanswered = List.copyOf(unanswered);
    Objects.requireNonNull(coverage, "coverage");
  }
}
