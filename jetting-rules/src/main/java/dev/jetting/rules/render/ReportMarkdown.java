package dev.jetting.rules.render;

import static java.util.stream.Collectors.joining;

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
import java.util.stream.Stream;

/**
 * A report as Markdown with tables (CommonMark 0.31 and the tables of GitHub Flavored Markdown
 * 0.29), for a shop's pages and an issue tracker. The verdict is first, lines end in {@code \n},
 * and the machine's locale changes no byte. It is English unless the caller names another wording.
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

  private ReportMarkdown(Report report, Wording wording) {
    this.report = Objects.requireNonNull(report, "report");
    words = new ReportWords(report, wording);
  }

  /**
   * Renders a report, with the number of the values that are assumptions.
   *
   * @param report the report; not null
   * @return its Markdown; never a promise of safety
   */
  public static String of(Report report) {
    return of(report, Wording.english());
  }

  /**
   * Renders a report like {@link #of(Report)} in the words of a language.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return its Markdown; never a promise of safety
   */
  public static String of(Report report, Wording wording) {
    return new ReportMarkdown(report, wording).render(Assumptions.COUNTED);
  }

  /**
   * Renders a report like {@link #of(Report)}, with each assumed value in place of their number.
   *
   * @param report the report; not null
   * @return its Markdown; never a promise of safety
   */
  public static String inFull(Report report) {
    return inFull(report, Wording.english());
  }

  /**
   * Renders a report like {@link #inFull(Report)} in the words of a language.
   *
   * @param report the report; not null
   * @param wording the words; not null
   * @return its Markdown; never a promise of safety
   */
  public static String inFull(Report report, Wording wording) {
    return new ReportMarkdown(report, wording).render(Assumptions.LISTED);
  }

  private String render(Assumptions extent) {
    line("# " + text(words.title()));
    paragraph("**" + words.say("page.verdict") + "** " + text(words.verdict()));
    paragraph("**" + words.say("page.worst") + "** " + text(words.worst().text()));
    entries("page.what", words.what());
    heading("page.throttle-range");
    table(words.table());
    entries("page.beside", words.besides());
    words.plan().ifPresent(this::plan);
    findings();
    unusedWaivers();
    unanswered("page.not-evaluated", "page.missing", Status.NOT_EVALUATED);
    unanswered("page.broken", "page.broke-with", Status.BROKEN);
    heading("page.cautions");
    line("");
    words.cautions().forEach(caution -> line("- " + text(caution)));
    String assumptions = words.assumptions(extent);
    if (!assumptions.isEmpty()) {
      paragraph(text(assumptions));
    }
    paragraph(text(words.versions()));
    return page.toString();
  }

  private void entries(String key, List<ReportWords.Entry> entries) {
    line("");
    row(Stream.of(words.say(key), ""));
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
      paragraph(text(words.say("page.assumption-mark")));
    }
  }

  private void findings() {
    heading("page.findings");
    if (report.findings().isEmpty()) {
      paragraph(words.say("page.none"));
      return;
    }
    line("");
    int number = 0;
    for (RankedFinding ranked : report.findings()) {
      Finding finding = ranked.finding();
      String waived = ranked.waiver().map(words::waived).orElse("");
      item(
          ++number + ". ",
          "**"
              + words.severity(ranked.severity())
              + "**, "
              + text(words.where(finding.band()))
              + ": "
              + text(words.text(finding.words())),
          words.say("page.what-to-do") + " " + text(words.remedy(finding)),
          text(waived),
          text("[" + ranked.ruleId() + ", " + finding.subject() + "]"));
    }
  }

  private void plan(Plan plan) {
    heading("page.plan");
    if (!plan.steps().isEmpty()) {
      line("");
    }
    int number = 0;
    for (Remedy.Change step : plan.steps()) {
      item(++number + ". ", text(words.text(step.stepMessage())));
    }
    paragraph(text(words.text(plan.message())));
  }

  private void unusedWaivers() {
    if (report.unusedWaivers().isEmpty()) {
      return;
    }
    heading("page.unused-waivers");
    line("");
    for (UnusedWaiver unused : report.unusedWaivers()) {
      Waiver waiver = unused.waiver();
      item(
          "- ",
          text(words.unused(unused)),
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
          words.rule(result) + " " + text(words.title(result)),
          words.say(reason) + " " + text(words.text(result.outcome().why())),
          text("[" + result.ruleId() + "]"));
    }
  }

  private void heading(String key) {
    line("");
    line("## " + words.say(key));
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
