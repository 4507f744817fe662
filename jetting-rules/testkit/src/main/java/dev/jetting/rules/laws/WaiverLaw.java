package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.Severity;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All findings waived before a part is changed: what then passes is no worse than what was waived.
 */
final class WaiverLaw {

  /** Any day does: the waivers do not expire. */
  private static final LocalDate DAY = LocalDate.of(2000, 1, 1);

  private WaiverLaw() {}

  static LawVerdict check(Experiment experiment) {
    Optional<AssessedSetting> after = experiment.after();
    if (after.isEmpty()) {
      return LawVerdict.notTried("no change that can be done");
    }
    Rulebook rulebook = experiment.candidate().rulebook();
    Report before = rulebook.evaluate(experiment.before());
    List<Waiver> waivers =
        before.findings().stream()
            .map(finding -> Waiver.of(before, finding).by("law kit").because("as it is"))
            .toList();
    Report changed = rulebook.evaluate(after.get(), waivers, DAY);
    if (!changed.passes()) {
      return LawVerdict.held();
    }
    Map<Accepted, Double> accepted = dangers(before);
    for (Map.Entry<Accepted, Double> danger : dangers(changed).entrySet()) {
      double was = accepted.getOrDefault(danger.getKey(), 0.0);
      if (danger.getValue() > was * (1 + 1e-12)) {
        return LawVerdict.violated(
            danger.getKey().rule(),
            "a danger of "
                + danger.getKey().subject()
                + " accepted at "
                + Numbers.text(was)
                + " beyond its limit passes at "
                + Numbers.text(danger.getValue()));
      }
    }
    double risk = highest(changed);
    double known = Math.max(highest(before), changed.sheet().riding().acceptedRisk().value());
    return risk > known
        ? LawVerdict.violated(
            "",
            "a lean risk of "
                + Numbers.text(risk)
                + " passes where "
                + Numbers.text(known)
                + " was the highest that was known")
        : LawVerdict.held();
  }

  /** What is waived: a rule on a subject. */
  private record Accepted(String rule, String subject) {}

  /** How far the worst finding of danger of each rule on each subject is beyond its limit. */
  private static Map<Accepted, Double> dangers(Report report) {
    Map<Accepted, Double> dangers = new LinkedHashMap<>();
    for (RankedFinding ranked : report.findings()) {
      if (ranked.severity() == Severity.DANGER) {
        double beyond = Math.max(0, -ranked.finding().margin().value());
        Accepted on = new Accepted(ranked.ruleId(), ranked.finding().subject());
        dangers.merge(on, beyond, Math::max);
      }
    }
    return dangers;
  }

  private static double highest(Report report) {
    return Stream.of(report.profile(), report.coldestDay(), report.hottestDay())
        .map(RiskProfile::worst)
        .map(point -> point.leanRisk())
        .mapToDouble(Probability::value)
        .max()
        .orElse(0);
  }
}
