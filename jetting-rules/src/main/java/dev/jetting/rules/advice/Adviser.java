package dev.jetting.rules.advice;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Plan;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.text.Message;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Works out what to do about a report: a plan, and for each finding the change that fits it.
 *
 * <pre>{@code
 * AssessedSetting setting = AssessedSetting.of(sheet);
 * Report report = Adviser.of(StandardRulebook.rulebook()).advise(setting);
 * }</pre>
 *
 * <p>It assesses some hundred settings, each in about the time of the report, so a search or a
 * batch evaluates without it. A remedy that it gives brings no danger, today, on another day or on
 * the overrun, and no finding worse than its own. The findings of one report never ask one part to
 * go both ways. Following a remedy again and again ends.
 *
 * <p>Not for an engine on the way through a tuning session: {@code NextStep} orders tests and
 * changes.
 */
public final class Adviser {

  /** A change of ln λ below this is not worth naming at an opening (assumed). */
  private static final double WORTH_NAMING = 0.005;

  /** A finding from here down to full throttle is one of the whole range (assumed). */
  private static final double MOST_OF_THE_RANGE = 0.5;

  private final Rulebook rulebook;
  private final Optional<Function<? super SetupSheet, AssessedSetting>> assessor;
  private final double share;

  private Adviser(
      Rulebook rulebook,
      Optional<Function<? super SetupSheet, AssessedSetting>> assessor,
      double share) {
    this.rulebook = Objects.requireNonNull(rulebook, "rulebook");
    this.assessor = assessor;
    this.share = share;
  }

  /**
   * An adviser for engines that nobody has read: towards lean it spends at most {@link
   * Riding#SHARE_FOR_UNREAD} of the accepted risk.
   *
   * @param rulebook the rulebook that judges the settings it tries
   * @return the adviser
   */
  public static Adviser of(Rulebook rulebook) {
    return new Adviser(rulebook, Optional.empty(), Riding.SHARE_FOR_UNREAD);
  }

  /**
   * This adviser for an engine with readings, which may come as near as what is accepted.
   *
   * @param assess from a sheet to its assessed setting, as the setting to advise on was assessed;
   *     pure
   * @return the changed adviser
   */
  public Adviser assessing(Function<? super SetupSheet, AssessedSetting> assess) {
    return new Adviser(rulebook, Optional.of(assess), 1);
  }

  /**
   * The report on a setting, with a plan and the remedies that go with it.
   *
   * @param setting the assessed setting
   * @return the report
   * @throws IllegalArgumentException if it was assessed in another way than this adviser does
   */
  public Report advise(AssessedSetting setting) {
    return advise(setting, rulebook.evaluate(setting));
  }

  /**
   * A report with a plan and the remedies that go with it; findings that are waived need none.
   *
   * @param setting the assessed setting
   * @param report the report of this adviser's rulebook on it
   * @return the report with its plan
   * @throws IllegalArgumentException if it was assessed in another way than this adviser does
   */
  public Report advise(AssessedSetting setting, Report report) {
    Set<String> waived = new TreeSet<>();
    report.findings().stream()
        .filter(finding -> finding.waiver().isPresent())
        .forEach(finding -> waived.add(finding.ruleId()));
    report.findings().stream()
        .filter(finding -> finding.waiver().isEmpty())
        .forEach(finding -> waived.remove(finding.ruleId()));
    Judge judge = new Judge(setting, rulebook, assessor(setting), waived);
    Judged start = judge.of(setting.setting()).orElseThrow();
    if (start.report().findings().stream()
        .noneMatch(finding -> finding.finding().remedy() instanceof Remedy.Aim)) {
      return report.withPlan(
          new Plan(Plan.Ending.NOTHING_TO_DO, List.of(), left(start)),
          finding -> finding.finding().remedy());
    }
    Found found = found(judge, start);
    return report.withPlan(plan(start, found.steps), finding -> found.remedy(finding));
  }

  private Function<? super SetupSheet, AssessedSetting> assessor(AssessedSetting setting) {
    if (assessor.isPresent()) {
      return assessor.get();
    }
    if (!AssessedSetting.of(setting.sheet(), setting.riskModel()).equals(setting)) {
      throw new IllegalArgumentException(
          "setting assessed with readings, or narrowed to a throttle band: allowed one assessed as"
              + " AssessedSetting.of(sheet, riskModel) does; for an engine with readings use"
              + " assessing(...)");
    }
    return sheet -> AssessedSetting.of(sheet, setting.riskModel());
  }

  private Found found(Judge judge, Judged start) {
    Found atHand = found(judge, start, false);
    if (atHand.end(start).isSafe()) {
      return atHand;
    }
    Found bought = found(judge, start, true);
    return bought.end(start).isSafe() ? bought : atHand;
  }

  private Found found(Judge judge, Judged start, boolean buying) {
    List<Ladder> ladders =
        Ladders.of(
            start.setting(),
            start.assessed().sheet().parts(),
            start.assessed().riskModel().steps(),
            buying);
    WaySearch search = new WaySearch(judge, start, ladders, share);
    Way way = search.best();
    List<Step> steps = new Order(judge, start, share).of(way, ladders).orElse(List.of());
    List<Step> singles = new ArrayList<>();
    Way here = Way.from(start);
    for (Ladder ladder : ladders) {
      Integer planned = way.rungs().get(ladder.part());
      Optional<Step> single =
          planned == null || steps.isEmpty()
              ? search
                  .bestRung(here, ladder)
                  .map(then -> new Step(ladder, then.rung(ladder.part()), start, then.judged()))
              : ladder
                  .on(start.setting(), planned)
                  .flatMap(judge::of)
                  .map(then -> new Step(ladder, planned, start, then));
      single.ifPresent(singles::add);
    }
    return new Found(start, steps, singles, share);
  }

  private static Plan plan(Judged start, List<Step> steps) {
    Judged end = steps.isEmpty() ? start : steps.get(steps.size() - 1).to();
    boolean danger =
        end.report().findings().stream()
            .anyMatch(f -> f.severity() == Severity.DANGER && end.open().contains(f.ruleId()));
    Plan.Ending ending =
        end.isDone()
            ? (steps.isEmpty() ? Plan.Ending.NOTHING_TO_DO : Plan.Ending.REMEDIED)
            : danger ? Plan.Ending.DANGER_LEFT : Plan.Ending.NO_DANGER;
    return new Plan(
        ending,
        steps.stream().map(step -> step.change(step.where(), step.to().isDone())).toList(),
        left(end));
  }

  private static List<Plan.Left> left(Judged end) {
    return end.report().findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .map(f -> new Plan.Left(f.ruleId(), f.severity(), title(end, f), f.finding().words()))
        .toList();
  }

  private static String title(Judged end, RankedFinding found) {
    return end.report().results().stream()
        .filter(result -> result.ruleId().equals(found.ruleId()))
        .map(RuleResult::title)
        .findFirst()
        .orElseThrow();
  }

  /** A plan's steps, and for each part the single change of it that may be a remedy. */
  private record Found(Judged start, List<Step> steps, List<Step> singles, double share) {

    Judged end(Judged otherwise) {
      return steps.isEmpty() ? otherwise : steps.get(steps.size() - 1).to();
    }

    Remedy remedy(RankedFinding ranked) {
      if (!(ranked.finding().remedy() instanceof Remedy.Aim aim)) {
        return ranked.finding().remedy();
      }
      List<Step> serving = singles.stream().filter(step -> serves(step, ranked, aim)).toList();
      return first(serving, ranked.finding(), aim)
          .<Remedy>map(
              step ->
                  step.change(
                      where(step, ranked.finding(), aim), step.to().excess(ranked.ruleId()) == 0))
          .orElseGet(() -> new Remedy.Advice(otherwise(ranked, aim)));
    }

    /** What the plan changes goes first; then what does most at the opening. */
    private Optional<Step> first(List<Step> serving, Finding finding, Remedy.Aim aim) {
      List<MeteringPart> planned = steps.stream().map(step -> step.ladder().part()).toList();
      Comparator<Step> byPlan =
          Comparator.comparing(step -> !planned.contains(step.ladder().part()));
      Comparator<Step> inOrder =
          Comparator.comparing(step -> planned.indexOf(step.ladder().part()));
      Comparator<Step> byEffect =
          Comparator.comparingDouble(step -> -Math.abs(step.lnLambda(aim.throttle())));
      return serving.stream()
          .min(
              byPlan
                  .thenComparing(isWide(finding) ? inOrder : byEffect)
                  .thenComparing(byEffect)
                  .thenComparing(step -> step.ladder().part()));
    }

    private static boolean isWide(Finding finding) {
      return finding.band().to().share() - finding.band().from().share() >= MOST_OF_THE_RANGE;
    }

    /** A finding over most of the range is remedied wherever a part acts in it. */
    private static ThrottleOpening where(Step step, Finding finding, Remedy.Aim aim) {
      ThrottleOpening where = step.where();
      return isWide(finding) && finding.band().contains(where) ? where : aim.throttle();
    }

    private boolean serves(Step step, RankedFinding ranked, Remedy.Aim aim) {
      double excess = ranked.finding().excess();
      double own = step.to().excess(ranked.ruleId());
      double moved = step.lnLambda(where(step, ranked.finding(), aim));
      boolean moves =
          switch (aim.direction()) {
            case RICHER -> moved <= -WORTH_NAMING;
            case LEANER -> moved >= WORTH_NAMING;
            case OTHER -> own < start.excess(ranked.ruleId()) - Judged.SMALL;
          };
      return (moves || own == 0)
          && own <= start.excess(ranked.ruleId()) + Judged.SMALL
          && step.to().isBetterThan(start)
          && step.to().bringsNoDangerTo(start, share)
          && !step.to().bringsWorseTo(start, ranked.severity(), excess);
    }

    private Message otherwise(RankedFinding ranked, Remedy.Aim aim) {
      boolean cured = end(start).excess(ranked.ruleId()) == 0;
      if (cured && !steps.isEmpty()) {
        return Message.joined(List.of(aim.message(), Message.of("remedy.follow-plan")));
      }
      return switch (aim.direction()) {
        case LEANER -> Message.of("remedy.leave");
        case RICHER, OTHER -> Message.joined(List.of(aim.message(), Message.of("remedy.no-part")));
      };
    }
  }
}
