package dev.jetting.examples.advicecount;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Does what the advice says, and looks what comes of it. */
final class Follower {

  private static final int MOST_CHANGES = 60;

  /** What rounding and the tolerances of parts may move a risk by, as in the laws. */
  private static final double TOLERANCE = 1e-4;

  /**
   * The result of following the advice.
   *
   * @param end the report at the end
   * @param changes how many changes were made
   * @param cycle whether a setting came back, or it went on for ever
   * @param danger whether a danger came that was not there before
   */
  record Followed(Report end, int changes, boolean cycle, boolean danger) {}

  private final Rulebook rulebook;
  private final Adviser adviser;

  Follower(Rulebook rulebook) {
    this.rulebook = rulebook;
    this.adviser = Adviser.of(rulebook);
  }

  Report advise(SetupSheet sheet) {
    return adviser.advise(AssessedSetting.of(sheet));
  }

  Followed plan(SetupSheet sheet, Report advised) {
    AssessedSetting start = AssessedSetting.of(sheet);
    AssessedSetting now = start;
    boolean danger = false;
    List<Remedy.Change> steps = advised.plan().orElseThrow().steps();
    for (Remedy.Change step : steps) {
      now = after(sheet, step);
      danger |= bringsDanger(start, now);
    }
    return new Followed(rulebook.evaluate(now), steps.size(), false, danger);
  }

  /** The first remedy that is a change, whatever its finding's severity, again and again. */
  Followed firstRemedy(SetupSheet sheet, Report advised) {
    Set<Setting> seen = new HashSet<>();
    AssessedSetting now = AssessedSetting.of(sheet);
    Report report = advised;
    Optional<Remedy.Change> next = first(report);
    boolean danger = false;
    while (next.isPresent() && seen.size() < MOST_CHANGES && seen.add(now.setting())) {
      AssessedSetting then = after(sheet, next.get());
      danger |= bringsDanger(now, then);
      now = then;
      report = adviser.advise(now);
      next = first(report);
    }
    return new Followed(report, seen.size(), next.isPresent(), danger);
  }

  private static Optional<Remedy.Change> first(Report report) {
    return report.findings().stream()
        .map(finding -> finding.finding().remedy())
        .filter(Remedy.Change.class::isInstance)
        .map(Remedy.Change.class::cast)
        .findFirst();
  }

  private static AssessedSetting after(SetupSheet sheet, Remedy.Change change) {
    return AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(change.setting())));
  }

  private boolean bringsDanger(AssessedSetting before, AssessedSetting after) {
    double accepted = before.sheet().riding().acceptedRisk().value();
    List<RiskProfile> then = List.of(before.profile(), before.coldest(), before.hottest());
    List<RiskProfile> now = List.of(after.profile(), after.coldest(), after.hottest());
    for (int day = 0; day < now.size(); day++) {
      List<RiskPoint> points = now.get(day).points();
      for (int i = 0; i < points.size(); i++) {
        double was = then.get(day).points().get(i).leanRisk().value();
        double is = points.get(i).leanRisk().value();
        if (is > accepted && is > was + TOLERANCE) {
          return true;
        }
      }
    }
    return !dangers(rulebook.evaluate(before)).containsAll(dangers(rulebook.evaluate(after)));
  }

  private static Set<String> dangers(Report report) {
    Set<String> rules = new HashSet<>();
    report.findings().stream()
        .filter(finding -> finding.severity() == Severity.DANGER)
        .map(RankedFinding::ruleId)
        .forEach(rules::add);
    return rules;
  }
}
