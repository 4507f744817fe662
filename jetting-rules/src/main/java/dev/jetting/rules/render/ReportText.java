package dev.jetting.rules.render;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Plan;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.render.ReportWords.Assumptions;
import dev.jetting.rules.text.Wording;
import java.util.List;
import java.util.Objects;

/**
 * A report as plain text for people: no colour, lines that end in {@code \n}, the same bytes
 * whatever the machine's locale. It is English unless the caller names another wording. Characters
 * that would steer a terminal are replaced.
 *
 * <p>Not for programs: they read {@link Report} or its JSON, and the layout may change.
 */
public final class ReportText {

  private static final String MARGIN = "             ";

  private final Report report;
  private final ReportWords words;
  private final TextPage page = new TextPage();

  private ReportText(Report report, Wording wording) {
    this.report = Objects.requireNonNull(report, "report");
    words = new ReportWords(report, wording);
  }

  /**
   * Renders a report for a rider, eighty columns wide: the verdict and the worst spot first, then
   * the machine, the table, the plan and the findings. At the end stand the cautions and how many
   * values are assumptions.
   *
   * @param report the report; not null
   * @return its text; never a promise of safety
   */
  public static String of(Report report) {
    return of(report, Wording.english());
  }

  /**
   * Renders a report like {@link #of(Report)} in the words of a language.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return its text; never a promise of safety
   */
  public static String of(Report report, Wording wording) {
    return new ReportText(report, wording).render(Assumptions.COUNTED);
  }

  /**
   * Renders a report like {@link #of(Report)}, with each assumed value in place of their number.
   *
   * @param report the report; not null
   * @return its text; never a promise of safety
   */
  public static String inFull(Report report) {
    return inFull(report, Wording.english());
  }

  /**
   * Renders a report like {@link #inFull(Report)} in the words of a language.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return its text; never a promise of safety
   */
  public static String inFull(Report report, Wording wording) {
    return new ReportText(report, wording).render(Assumptions.LISTED);
  }

  /**
   * Renders what was found, a line each, however long. The most dangerous finding is first. Rules
   * that could not be evaluated or broke follow, then waivers that waived nothing, then the
   * verdict.
   *
   * <p>For logs and lists. Not enough to act on: it leaves out the mixture, remedies, assumptions
   * and cautions, which {@link #of(Report)} has.
   *
   * @param report the report; not null
   * @return its lines; the last one, {@code VERDICT}, is always there and no promise of safety
   */
  public static String compact(Report report) {
    return compact(report, Wording.english());
  }

  /**
   * Renders a report like {@link #compact(Report)} in the words of a language.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return its lines; the last one, the verdict, is always there and no promise of safety
   */
  public static String compact(Report report, Wording wording) {
    return new ReportText(report, wording).lines();
  }

  /**
   * Renders the verdict alone.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return a sentence or a few; never a promise of safety
   */
  public static String verdict(Report report, Wording wording) {
    return new ReportWords(report, wording).verdict();
  }

  private String render(Assumptions extent) {
    headline();
    throttleRange();
    page.blank();
    words.besides().forEach(this::entry);
    words.plan().ifPresent(this::plan);
    findings();
    unusedWaivers();
    unanswered("page.not-evaluated", "page.missing", Status.NOT_EVALUATED);
    unanswered("page.broken", "page.broke-with", Status.BROKEN);
    page.heading(words.say("page.cautions"));
    words.cautions().forEach(caution -> page.wrapped("- ", caution, "  "));
    page.blank();
    String assumptions = words.assumptions(extent);
    if (!assumptions.isEmpty()) {
      page.wrapped("", assumptions, "  ");
    }
    page.wrapped("", words.versions(), "  ");
    return page.toString();
  }

  private String lines() {
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      compact(
          words.severity(ranked.severity()),
          words.where(finding.band())
              + ": "
              + words.text(finding.words())
              + ranked.waiver().map(w -> " " + words.waived(w)).orElse(""),
          ranked.ruleId() + ", " + finding.subject());
    }
    words
        .results(Status.NOT_EVALUATED)
        .forEach(r -> compact(words.say("compact.open"), unanswered(r), r.ruleId()));
    words
        .results(Status.BROKEN)
        .forEach(r -> compact(words.say("compact.broken"), unanswered(r), r.ruleId()));
    for (UnusedWaiver unused : report.unusedWaivers()) {
      Waiver waiver = unused.waiver();
      compact(
          words.say("compact.unused"),
          words.unused(unused),
          waiver.ruleId() + ", " + waiver.subject());
    }
    page.line(TextPage.oneLine(words.say("compact.verdict") + " " + words.verdict()));
    return page.toString();
  }

  private void compact(String kind, String text, String ids) {
    page.line(TextPage.oneLine(kind + " " + text + " [" + ids + "]"));
  }

  private String unanswered(RuleResult result) {
    return words.rule(result)
        + " "
        + words.title(result)
        + ": "
        + words.text(result.outcome().why());
  }

  private void headline() {
    page.line(TextPage.shortened(words.title()));
    page.doubleRule();
    entry(new ReportWords.Entry(words.say("label.verdict"), words.verdict()));
    entry(words.worst());
    page.blank();
    words.what().forEach(this::entry);
  }

  private void throttleRange() {
    page.heading(words.say("page.throttle-range"));
    words.table().lines().forEach(page::line);
    if (words.marksLimits()) {
      page.line(words.say("page.assumption-mark"));
    }
  }

  private void findings() {
    page.heading(words.say("page.findings"));
    if (report.findings().isEmpty()) {
      page.line(words.say("page.none"));
    }
    int number = 0;
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      page.wrapped(
          ++number + ". ",
          words.severity(ranked.severity())
              + ", "
              + words.where(finding.band())
              + " ["
              + ranked.ruleId()
              + ", "
              + finding.subject()
              + "]",
          "   ");
      page.wrapped("   ", words.text(finding.words()), "   ");
      page.wrapped("   " + words.say("page.what-to-do") + " ", words.remedy(finding), "   ");
      ranked
          .waiver()
          .ifPresent(
              waiver ->
                  page.wrapped("   " + words.say("page.waived") + " ", words.words(waiver), "   "));
    }
  }

  private void plan(Plan plan) {
    page.heading(words.say("page.plan"));
    int number = 0;
    for (Remedy.Change step : plan.steps()) {
      page.wrapped(++number + ". ", words.text(step.stepMessage()), "   ");
    }
    page.wrapped(words.text(plan.message()));
  }

  private void unusedWaivers() {
    if (report.unusedWaivers().isEmpty()) {
      return;
    }
    page.heading(words.say("page.unused-waivers"));
    for (UnusedWaiver unused : report.unusedWaivers()) {
      page.wrapped("- ", words.unused(unused), "  ");
      page.wrapped(
          "  ", "[" + unused.waiver().ruleId() + ", " + unused.waiver().subject() + "]", "  ");
    }
  }

  private void unanswered(String heading, String reason, Status status) {
    List<RuleResult> results = words.results(status);
    if (results.isEmpty()) {
      return;
    }
    page.heading(words.say(heading));
    for (RuleResult result : results) {
      page.wrapped(words.rule(result) + " ", words.title(result), "  ");
      page.wrapped("   " + words.say(reason) + " ", words.text(result.outcome().why()), "   ");
      page.wrapped("   ", "[" + result.ruleId() + "]", "   ");
    }
  }

  private void entry(ReportWords.Entry entry) {
    page.wrapped((entry.label() + MARGIN).substring(0, MARGIN.length()), entry.text(), MARGIN);
  }
}
