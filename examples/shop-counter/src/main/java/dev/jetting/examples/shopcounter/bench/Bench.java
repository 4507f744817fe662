package dev.jetting.examples.shopcounter.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of a machine: what a setting does over the throttle, beside the one that is fitted.
 *
 * @param machine the machine
 * @param proposal the setting that is looked at
 * @param report its report
 * @param verdict what the report comes to
 * @param days the riskiest opening of each day
 * @param findings what was found, the most dangerous first
 * @param charts the numbers of the charts, as JSON
 * @param speeds the lean risk by throttle and speed
 */
public record Bench(
    Machine machine,
    Proposal proposal,
    Report report,
    Verdict verdict,
    List<DayLine> days,
    List<Found> findings,
    String charts,
    SpeedTable speeds) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * Works the picture out.
   *
   * @param machine the machine
   * @param proposal the setting that is looked at
   * @param words the language
   * @return the picture
   */
  public static Bench of(Machine machine, Proposal proposal, Words words) {
    Knowledge known = Knowledge.of(machine);
    AssessedSetting fitted = known.assess(machine.sheet());
    AssessedSetting looked =
        proposal.changesSomething() ? known.assess(proposal.changed()) : fitted;
    Report report = StandardRulebook.rulebook().evaluate(looked);
    return new Bench(
        machine,
        proposal,
        report,
        Verdict.of(report, words),
        DayLine.all(looked, words),
        findings(report, words),
        json(Charts.of(fitted, looked, words)),
        SpeedTable.of(
            looked.setup(),
            known.riskModel(),
            known.calibration(),
            looked.sheet().riding().acceptedRisk(),
            words));
  }

  private static List<Found> findings(Report report, Words words) {
    List<Found> findings = new ArrayList<>();
    report.findings().forEach(ranked -> findings.add(Found.of(findings.size() + 1, ranked, words)));
    return findings;
  }

  private static String json(Charts charts) {
    try {
      return JSON.writeValueAsString(charts);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
