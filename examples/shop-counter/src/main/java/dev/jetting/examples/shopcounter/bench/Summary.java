package dev.jetting.examples.shopcounter.bench;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.Report;
import dev.jetting.rules.risk.WorstSpot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A report in a few kilobytes, for a program that shows it.
 *
 * @param title the sheet's title
 * @param passes whether nothing speaks against a careful first ride
 * @param verdict the verdict, a word
 * @param sentence why, for people
 * @param days the riskiest opening of each day, climbs included
 * @param findings what was found, the most dangerous first
 * @param cautions what to take care of
 * @param model version of the model
 * @param rulebook version of the rulebook
 */
public record Summary(
    String title,
    boolean passes,
    String verdict,
    String sentence,
    Map<String, Worst> days,
    List<Found> findings,
    List<String> cautions,
    String model,
    String rulebook) {

  /**
   * The riskiest opening of a day, climbs included.
   *
   * @param throttlePercent the opening
   * @param speedRpm the engine speed there
   * @param lambda λ
   * @param leanLimit the lean limit
   * @param leanRisk probability that λ is beyond it
   */
  public record Worst(
      double throttlePercent, double speedRpm, double lambda, double leanLimit, double leanRisk) {}

  /**
   * Shortens a report.
   *
   * @param report the report
   * @param words the language of its texts
   * @return its summary
   */
  public static Summary of(Report report, Words words) {
    Map<String, Worst> days = new LinkedHashMap<>();
    days.put("today", worst(WorstSpot.of(WorstSpot.Day.TODAY, report.profile())));
    days.put("coldest", worst(WorstSpot.of(WorstSpot.Day.COLDEST, report.coldestDay())));
    days.put("hottest", worst(WorstSpot.of(WorstSpot.Day.HOTTEST, report.hottestDay())));
    List<Found> findings = new ArrayList<>();
    report.findings().forEach(ranked -> findings.add(Found.of(findings.size() + 1, ranked, words)));
    Verdict verdict = Verdict.of(report, words);
    return new Summary(
        report.sheet().title(),
        report.passes(),
        verdict.kind().key(),
        verdict.sentence(),
        days,
        findings,
        report.cautions(words.wording()),
        report.model(),
        report.rulebook().toString());
  }

  private static Worst worst(WorstSpot spot) {
    return new Worst(
        spot.throttle().percent(),
        spot.speed().rpm(),
        spot.lambda().value(),
        spot.leanLimit().value(),
        spot.leanRisk().value());
  }
}
