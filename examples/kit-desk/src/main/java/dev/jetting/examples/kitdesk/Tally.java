package dev.jetting.examples.kitdesk;

import dev.jetting.rules.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts the results of the lines. Keeps the first few that did not pass, and no more. */
final class Tally {

  private static final int REMEMBERED = 10;

  /** In how many kits a rule found something, and how grave the worst of it is. */
  private record Spread(String ruleId, Severity worst, long kits) {
    Spread and(Spread other) {
      boolean worse = other.worst.compareTo(worst) > 0;
      return new Spread(ruleId, worse ? other.worst : worst, kits + other.kits);
    }
  }

  private final Map<String, Spread> byRule = new TreeMap<>();
  private final List<Verdict> failing = new ArrayList<>();
  private final List<Verdict> bad = new ArrayList<>();
  private long passed;
  private long failed;
  private long badLines;

  void add(Verdict verdict) {
    if (verdict.judged().isEmpty()) {
      badLines++;
      remember(bad, verdict);
      return;
    }
    Judged judged = verdict.judged().get();
    if (judged.passes()) {
      passed++;
    } else {
      failed++;
      remember(failing, verdict);
    }
    Map<String, Severity> worst = new TreeMap<>();
    judged
        .all()
        .forEach(
            found ->
                worst.merge(
                    found.ruleId(), found.severity(), (a, b) -> a.compareTo(b) > 0 ? a : b));
    worst.forEach((id, severity) -> byRule.merge(id, new Spread(id, severity, 1), Spread::and));
  }

  private static void remember(List<Verdict> verdicts, Verdict verdict) {
    if (verdicts.size() < REMEMBERED) {
      verdicts.add(verdict);
    }
  }

  long lines() {
    return passed + failed + badLines;
  }

  int exitCode() {
    if (badLines > 0) {
      return ExitCode.BAD_LINES;
    }
    return failed > 0 ? ExitCode.FAILED : ExitCode.OK;
  }

  /** The summary, at most 80 columns wide. */
  String text() {
    StringBuilder text = new StringBuilder();
    Table counts = new Table("kits", ">");
    counts.row("pass", passed);
    counts.row("fail", failed);
    counts.row("bad lines", badLines);
    text.append(counts.text());
    if (!byRule.isEmpty()) {
      Table table = new Table("finding", "severity", ">kits");
      byRule.values().stream()
          .sorted(
              Comparator.comparing(Spread::worst)
                  .thenComparing(Spread::kits)
                  .reversed()
                  .thenComparing(Spread::ruleId))
          .forEach(found -> table.row(found.ruleId(), Words.word(found.worst()), found.kits()));
      text.append('\n').append(table.text());
    }
    if (!failing.isEmpty()) {
      Table table = new Table(">line", "kit", "why");
      failing.forEach(
          verdict -> {
            Judged judged = verdict.judged().orElseThrow();
            table.row(
                verdict.line(), Table.fitted(judged.kit(), 24), Table.fitted(judged.why(), 42));
          });
      text.append('\n').append(heading("failing", failed)).append(table.text());
    }
    if (!bad.isEmpty()) {
      Table table = new Table(">line", "what is wrong");
      bad.forEach(each -> table.row(each.line(), Table.fitted(each.problem(), 68)));
      text.append('\n').append(heading("that are no kits", badLines)).append(table.text());
    }
    return text.toString();
  }

  private static String heading(String what, long count) {
    return count > REMEMBERED
        ? "The first " + REMEMBERED + " of " + count + " lines " + what + "\n"
        : "Lines " + what + "\n";
  }
}
