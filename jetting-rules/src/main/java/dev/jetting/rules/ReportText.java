package dev.jetting.rules;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.ReportWords.Assumptions;
import java.util.List;
import java.util.Objects;

/**
 * A report as plain text for people: no colour, lines that end in {@code \n}, the same bytes in
 * every locale. Characters that would steer a terminal are replaced.
 *
 * <p>Not for programs: they read {@link Report} or its JSON, and the layout may change.
 */
public final class ReportText {

  private static final String MARGIN = "             ";

  private final Report report;
  private final ReportWords words;
  private final TextPage page = new TextPage();

  private ReportText(Report report) {
    this.report = Objects.requireNonNull(report, "report");
    words = new ReportWords(report);
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
    return new ReportText(report).render(Assumptions.COUNTED);
  }

  /**
   * Renders a report like {@link #of}, with each assumed value in place of their number.
   *
   * @param report the report; not null
   * @return its text; never a promise of safety
   */
  public static String inFull(Report report) {
    return new ReportText(report).render(Assumptions.LISTED);
  }

  /**
   * Renders what was found, a line each, however long: the findings, the most dangerous first, then
   * the rules that could not be evaluated or broke, then the waivers that waived nothing, then the
   * verdict.
   *
   * <p>For logs and lists. Not enough to act on: it leaves out the mixture, remedies, assumptions
   * and cautions, which {@link #of} has.
   *
   * @param report the report; not null
   * @return its lines; the last one, {@code VERDICT}, is always there and no promise of safety
   */
  public static String compact(Report report) {
    return new ReportText(report).lines();
  }

  private String render(Assumptions extent) {
    headline();
    throttleRange();
    page.blank();
    words.besides().forEach(this::entry);
    words.plan().ifPresent(this::plan);
    findings();
    unusedWaivers();
    unanswered("Could not be evaluated", "missing: ", Status.NOT_EVALUATED);
    unanswered("Broken rules", "broke with: ", Status.BROKEN);
    page.heading("Cautions");
    report.cautions().forEach(caution -> page.wrapped("- ", caution, "  "));
    page.blank();
    String assumptions = words.assumptions(extent);
    if (!assumptions.isEmpty()) {
      page.wrapped(assumptions);
    }
    page.wrapped("", words.versions(), "  ");
    return page.toString();
  }

  private String lines() {
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      compact(
          ranked.severity().name(),
          ReportWords.where(finding.band())
              + ": "
              + finding.text()
              + ranked.waiver().map(w -> " Waived " + ReportWords.words(w)).orElse(""),
          ranked.ruleId() + ", " + finding.subject());
    }
    words.results(Status.NOT_EVALUATED).forEach(r -> compact("OPEN", unanswered(r), r.ruleId()));
    words.results(Status.BROKEN).forEach(r -> compact("BROKEN", unanswered(r), r.ruleId()));
    for (UnusedWaiver unused : report.unusedWaivers()) {
      Waiver waiver = unused.waiver();
      compact("UNUSED", ReportWords.words(unused), waiver.ruleId() + ", " + waiver.subject());
    }
    page.line(TextPage.oneLine("VERDICT " + words.verdict()));
    return page.toString();
  }

  private void compact(String kind, String text, String ids) {
    page.line(TextPage.oneLine(kind + " " + text + " [" + ids + "]"));
  }

  private static String unanswered(RuleResult result) {
    return result.severity() + " rule: " + result.title() + ": " + result.outcome().reason();
  }

  private void headline() {
    page.line(TextPage.shortened("Report on: " + report.sheet().title()));
    page.doubleRule();
    entry(new ReportWords.Entry("VERDICT", words.verdict()));
    entry(words.worst());
    page.blank();
    words.what().forEach(this::entry);
  }

  private void throttleRange() {
    page.heading("Over the throttle range");
    words.table().lines().forEach(page::line);
    if (words.marksLimits()) {
      page.line("* an assumption, neither measured nor published");
    }
  }

  private void findings() {
    page.heading("Findings, the most dangerous first");
    if (report.findings().isEmpty()) {
      page.line("none");
    }
    int number = 0;
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      page.wrapped(
          ++number + ". ",
          ranked.severity()
              + ", "
              + ReportWords.where(finding.band())
              + " ["
              + ranked.ruleId()
              + ", "
              + finding.subject()
              + "]",
          "   ");
      page.wrapped("   ", finding.text(), "   ");
      page.wrapped("   What to do: ", words.remedy(finding), "   ");
      ranked
          .waiver()
          .ifPresent(waiver -> page.wrapped("   Waived ", ReportWords.words(waiver), "   "));
    }
  }

  private void plan(Plan plan) {
    page.heading("The way out, one change at a time");
    int number = 0;
    for (Remedy.Change step : plan.steps()) {
      page.wrapped(++number + ". ", PlanWords.step(step), "   ");
    }
    page.wrapped(plan.text());
  }

  private void unusedWaivers() {
    if (report.unusedWaivers().isEmpty()) {
      return;
    }
    page.heading("Waivers that waived nothing");
    for (UnusedWaiver unused : report.unusedWaivers()) {
      page.wrapped("- ", ReportWords.words(unused), "  ");
      page.line("  [" + unused.waiver().ruleId() + ", " + unused.waiver().subject() + "]");
    }
  }

  private void unanswered(String heading, String reason, Status status) {
    List<RuleResult> results = words.results(status);
    if (results.isEmpty()) {
      return;
    }
    page.heading(heading);
    for (RuleResult result : results) {
      page.wrapped(result.severity() + " rule: ", result.title(), "  ");
      page.wrapped("   " + reason, result.outcome().reason(), "   ");
      page.line("   [" + result.ruleId() + "]");
    }
  }

  private void entry(ReportWords.Entry entry) {
    page.wrapped((entry.label() + MARGIN).substring(0, MARGIN.length()), entry.text(), MARGIN);
  }
}
