package dev.jetting.rules.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Plan;
import dev.jetting.rules.Present;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** What holds of plans and remedies on any plausible setting. */
class AdviserProperties {

  private static final Rulebook RULEBOOK = StandardRulebook.rulebook();
  private static final Adviser ADVISER = Adviser.of(RULEBOOK);

  /** What rounding and the tolerances of parts may move a risk by, as in the laws. */
  private static final double TOLERANCE = 1e-4;

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void plan_changesEachPartOnceAndNeverBringsADanger(@ForAll("sheets") SetupSheet sheet) {
    AssessedSetting start = AssessedSetting.of(sheet);
    Report report = ADVISER.advise(start);
    Plan plan = report.plan().orElseThrow();

    assertThat(plan.steps()).extracting(Remedy.Change::part).doesNotHaveDuplicates();
    for (Remedy.Change step : plan.steps()) {
      assertNoNewDanger(start, after(sheet, step));
    }
    assertThat(plan.ending() == Plan.Ending.DANGER_LEFT)
        .isEqualTo(hasDangerOfParts(end(sheet, plan, report)));
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void remedies_neverAskOnePartToGoBothWays(@ForAll("sheets") SetupSheet sheet) {
    Map<MeteringPart, Remedy.Direction> ways = new EnumMap<>(MeteringPart.class);
    for (RankedFinding finding : ADVISER.advise(AssessedSetting.of(sheet)).findings()) {
      Present.often(
          change(finding).filter(change -> change.part() != MeteringPart.NEEDLE_DIAMETER),
          change -> {
            Remedy.Direction before = ways.put(change.part(), change.direction());
            assertThat(before).isIn(null, change.direction());
          });
    }
  }

  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void remedy_ofEveryFinding_worsensNeitherItsOwnNorBringsADanger(
      @ForAll("sheets") SetupSheet sheet) {
    AssessedSetting start = AssessedSetting.of(sheet);
    for (RankedFinding finding : ADVISER.advise(start).findings()) {
      Present.often(
          change(finding),
          change -> {
            AssessedSetting then = after(sheet, change);
            assertNoNewDanger(start, then);
            assertThat(worst(RULEBOOK.evaluate(then), finding.ruleId()))
                .isLessThanOrEqualTo(worst(RULEBOOK.evaluate(start), finding.ruleId()) + 1e-6);
          });
    }
  }

  @Property(tries = 4, shrinking = ShrinkingMode.OFF)
  void firstRemedy_againAndAgain_endsAndNeverComesBack(@ForAll("sheets") SetupSheet sheet) {
    Set<Setting> seen = new HashSet<>();
    AssessedSetting now = AssessedSetting.of(sheet);
    Optional<Remedy.Change> next = first(ADVISER.advise(now));
    while (next.isPresent()) {
      assertThat(seen.add(now.setting())).as("a setting for the second time").isTrue();
      assertThat(seen).hasSizeLessThan(60);
      AssessedSetting then = after(sheet, next.get());
      assertNoNewDanger(now, then);
      now = then;
      next = first(ADVISER.advise(now));
    }
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return PlausibleArbitraries.sheets();
  }

  private static Optional<Remedy.Change> first(Report report) {
    return report.findings().stream().flatMap(f -> change(f).stream()).findFirst();
  }

  private static Optional<Remedy.Change> change(RankedFinding finding) {
    return finding.finding().remedy() instanceof Remedy.Change change
        ? Optional.of(change)
        : Optional.empty();
  }

  private static AssessedSetting after(SetupSheet sheet, Remedy.Change change) {
    return AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(change.setting())));
  }

  private static Report end(SetupSheet sheet, Plan plan, Report start) {
    return plan.steps().isEmpty()
        ? RULEBOOK.evaluate(AssessedSetting.of(start.sheet()))
        : RULEBOOK.evaluate(after(sheet, plan.steps().get(plan.steps().size() - 1)));
  }

  private static boolean hasDangerOfParts(Report report) {
    return report.findings().stream()
        .anyMatch(
            f -> f.severity() == Severity.DANGER && f.finding().remedy() instanceof Remedy.Aim);
  }

  private static double worst(Report report, String rule) {
    return report.findings().stream()
        .filter(f -> f.ruleId().equals(rule))
        .mapToDouble(f -> f.finding().excess())
        .max()
        .orElse(0);
  }

  private static void assertNoNewDanger(AssessedSetting before, AssessedSetting after) {
    double accepted = before.sheet().riding().acceptedRisk().value();
    List<RiskProfile> then = List.of(before.profile(), before.coldest(), before.hottest());
    List<RiskProfile> now = List.of(after.profile(), after.coldest(), after.hottest());
    for (int day = 0; day < now.size(); day++) {
      List<RiskPoint> points = now.get(day).points();
      for (int i = 0; i < points.size(); i++) {
        assertThat(points.get(i).leanRisk().value())
            .isLessThanOrEqualTo(
                Math.max(accepted, then.get(day).points().get(i).leanRisk().value() + TOLERANCE));
      }
    }
    assertThat(dangers(RULEBOOK.evaluate(before))).containsAll(dangers(RULEBOOK.evaluate(after)));
  }

  private static Set<String> dangers(Report report) {
    Set<String> rules = new HashSet<>();
    report.findings().stream()
        .filter(f -> f.severity() == Severity.DANGER)
        .forEach(f -> rules.add(f.ruleId()));
    return rules;
  }
}
