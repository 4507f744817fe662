package dev.jetting.rules.laws;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.advice.Adviser;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** What comes of doing what a report advises. */
final class RemedyLaws {

  /** More changes than there are parts to change, each a few times. */
  private static final int MOST_CHANGES = 60;

  private static final double ROUNDING = 1e-6;

  private RemedyLaws() {}

  static LawVerdict check(Experiment experiment) {
    Candidate candidate = experiment.candidate();
    Adviser adviser = Adviser.of(candidate.rulebook()).assessing(candidate::assess);
    AssessedSetting start = experiment.before();
    Report report = adviser.advise(start);
    for (RankedFinding finding : report.findings()) {
      Optional<String> harm =
          change(finding).flatMap(change -> harm(finding, change, start, report, candidate));
      if (harm.isPresent()) {
        return LawVerdict.violated(finding.ruleId(), harm.get());
      }
    }
    Optional<Remedy.Change> next = first(report);
    return next.isEmpty()
        ? LawVerdict.notTried("no remedy is a change of a part")
        : follow(adviser, start, next, candidate);
  }

  private static Optional<String> harm(
      RankedFinding finding,
      Remedy.Change change,
      AssessedSetting start,
      Report before,
      Candidate candidate) {
    AssessedSetting then = after(start.sheet(), change, candidate);
    Report after = candidate.rulebook().evaluate(then);
    double was = excess(before, finding.ruleId());
    double is = excess(after, finding.ruleId());
    if (is > was + ROUNDING) {
      return Optional.of(
          change.deed()
              + " carries the finding it is for from "
              + Numbers.text(was)
              + " to "
              + Numbers.text(is)
              + " beyond its limit");
    }
    Set<String> dangers = dangers(after);
    dangers.removeAll(dangers(before));
    return dangers.isEmpty()
        ? Optional.empty()
        : Optional.of(change.deed() + " brings a danger by " + dangers);
  }

  private static LawVerdict follow(
      Adviser adviser, AssessedSetting start, Optional<Remedy.Change> first, Candidate candidate) {
    Set<Setting> seen = new HashSet<>();
    AssessedSetting now = start;
    Optional<Remedy.Change> next = first;
    while (next.isPresent()) {
      if (!seen.add(now.setting()) || seen.size() > MOST_CHANGES) {
        return LawVerdict.violated(
            "", "the first remedy, followed " + seen.size() + " times, does not end");
      }
      now = after(start.sheet(), next.get(), candidate);
      next = first(adviser.advise(now));
    }
    return LawVerdict.held();
  }

  private static Optional<Remedy.Change> first(Report report) {
    return report.findings().stream().flatMap(finding -> change(finding).stream()).findFirst();
  }

  private static Optional<Remedy.Change> change(RankedFinding finding) {
    return finding.finding().remedy() instanceof Remedy.Change change
        ? Optional.of(change)
        : Optional.empty();
  }

  private static AssessedSetting after(
      SetupSheet sheet, Remedy.Change change, Candidate candidate) {
    return candidate.assess(sheet.withSetup(sheet.setup().withSetting(change.setting())));
  }

  private static double excess(Report report, String rule) {
    return report.findings().stream()
        .filter(finding -> finding.ruleId().equals(rule))
        .map(RankedFinding::finding)
        .mapToDouble(Finding::excess)
        .max()
        .orElse(0);
  }

  private static Set<String> dangers(Report report) {
    Set<String> rules = new HashSet<>();
    report.findings().stream()
        .filter(finding -> finding.severity() == Severity.DANGER)
        .forEach(finding -> rules.add(finding.ruleId()));
    return rules;
  }
}
