package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.ReportWords.Assumptions;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A report as Markdown with tables (CommonMark 0.31 and the tables of GitHub Flavored Markdown
 * 0.29), for a shop's pages and an issue tracker: the verdict first, lines that end in {@code \n},
 * the same bytes in every locale.
 *
 * <p>Ids, titles and other texts from outside stand in it as text: what would be markup or HTML is
 * escaped, and characters that steer a terminal are replaced. What a site makes of a bare web
 * address or an {@code @name} is the site's affair.
 *
 * <p>Not for programs: they read {@link Report} or its JSON, and the layout may change.
 */
public final class ReportMarkdown {

  private final Report report;
  private final ReportWords words;
  private final StringBuilder page = new StringBuilder();

  private ReportMarkdown(Report report) {
    this.report = Objects.requireNonNull(report, "report");
    words = new ReportWords(report);
  }

  /**
   * Renders a report, with the number of the values that are assumptions.
   *
   * @param report the report; not null
   * @return its Markdown; never a promise of safety
   */
  public static String of(Report report) {
    return new ReportMarkdown(report).render(Assumptions.COUNTED);
  }

  /**
   * Renders a report like {@link #of}, with each assumed value in place of their number.
   *
   * @param report the report; not null
   * @return its Markdown; never a promise of safety
   */
  public static String inFull(Report report) {
    return new ReportMarkdown(report).render(Assumptions.LISTED);
  }

  private String render(Assumptions extent) {
    line("# Report on: " + text(report.sheet().title()));
    paragraph("**Verdict:** " + text(words.verdict()));
    paragraph("**Worst:** " + text(words.worst().text()));
    entries("what", words.what());
    heading("Over the throttle range");
    table(words.table());
    entries("beside it", words.besides());
    words.plan().ifPresent(this::plan);
    findings();
    unusedWaivers();
    unanswered("Could not be evaluated", "missing", Status.NOT_EVALUATED);
    unanswered("Broken rules", "broke with", Status.BROKEN);
    heading("Cautions");
    line("");
    report.cautions().forEach(caution -> line("- " + text(caution)));
    String assumptions = words.assumptions(extent);
    if (!assumptions.isEmpty()) {
      paragraph(text(assumptions));
    }
    paragraph(text(words.versions()));
    return page.toString();
  }

  private void entries(String heading, List<ReportWords.Entry> entries) {
    line("");
    row(Stream.of(heading, ""));
    line("|---|---|");
    entries.forEach(entry -> row(Stream.of(entry.label(), entry.text())));
  }

  private void table(RangeTable table) {
    line("");
    row(table.headings().stream());
    line(
        table.rightAligned().stream()
            .map(right -> right ? "--:" : "---")
            .collect(joining("|", "|", "|")));
    table.cells().forEach(cells -> row(cells.stream()));
    if (words.marksLimits()) {
      paragraph(text("* an assumption, neither measured nor published"));
    }
  }

  private void findings() {
    heading("Findings, the most dangerous first");
    if (report.findings().isEmpty()) {
      paragraph("none");
      return;
    }
    line("");
    int number = 0;
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      String waived = ranked.waiver().map(w -> "Waived " + ReportWords.words(w)).orElse("");
      item(
          ++number + ". ",
          "**"
              + ranked.severity()
              + "**, "
              + text(ReportWords.where(finding.band()))
              + ": "
              + text(finding.text()),
          "What to do: " + text(words.remedy(finding)),
          text(waived),
          text("[" + ranked.ruleId() + ", " + finding.subject() + "]"));
    }
  }

  private void plan(Plan plan) {
    heading("The way out, one change at a time");
    if (!plan.steps().isEmpty()) {
      line("");
    }
    int number = 0;
    for (Remedy.Change step : plan.steps()) {
      item(++number + ". ", text(PlanWords.step(step)));
    }
    paragraph(text(plan.text()));
  }

  private void unusedWaivers() {
    if (report.unusedWaivers().isEmpty()) {
      return;
    }
    heading("Waivers that waived nothing");
    line("");
    for (UnusedWaiver unused : report.unusedWaivers()) {
      Waiver waiver = unused.waiver();
      item(
          "- ",
          text(ReportWords.words(unused)),
          text("[" + waiver.ruleId() + ", " + waiver.subject() + "]"));
    }
  }

  private void unanswered(String heading, String reason, Status status) {
    List<RuleResult> results = words.results(status);
    if (results.isEmpty()) {
      return;
    }
    heading(heading);
    line("");
    for (RuleResult result : results) {
      item(
          "- ",
          result.severity() + " rule: " + text(result.title()),
          reason + ": " + text(result.outcome().reason()),
          text("[" + result.ruleId() + "]"));
    }
  }

  private void heading(String heading) {
    line("");
    line("## " + heading);
  }

  private void paragraph(String markdown) {
    line("");
    line(markdown);
  }

  /** A list item of one paragraph; the backslash at the end of a line breaks the line. */
  private void item(String marker, String... lines) {
    String indent = " ".repeat(marker.length());
    line(
        Stream.of(lines)
            .filter(line -> !line.isEmpty())
            .collect(joining("\\\n" + indent, marker, "")));
  }

  private void row(Stream<String> cells) {
    line(cells.map(ReportMarkdown::text).collect(joining(" | ", "| ", " |")));
  }

  private void line(String markdown) {
    page.append(markdown.stripTrailing()).append('\n');
  }

  private static String text(String plain) {
    return MarkdownText.escaped(plain);
  }
}
