package dev.jetting.examples.kitdesk;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Severity;
import dev.jetting.rules.kit.KitValidation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Counts what came of the lines; remembers the first few that did not pass, and no more. */
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
  private final List<Outcome> failing = new ArrayList<>();
  private final List<Outcome> bad = new ArrayList<>();
  private long passed;
  private long failed;
  private long badLines;
  private long lastLine;

  void add(Outcome outcome) {
    lastLine = Math.max(lastLine, outcome.line());
    if (outcome.validation().isEmpty()) {
      badLines++;
      remember(bad, outcome);
      return;
    }
    KitValidation validation = outcome.validation().get();
    if (validation.passes()) {
      passed++;
    } else {
      failed++;
      remember(failing, outcome);
    }
    Map<String, Severity> worst = new TreeMap<>();
    findings(validation)
        .forEach(
            found ->
                worst.merge(
                    found.ruleId(), found.severity(), (a, b) -> a.compareTo(b) > 0 ? a : b));
    worst.forEach((id, severity) -> byRule.merge(id, new Spread(id, severity, 1), Spread::and));
  }

  private static void remember(List<Outcome> outcomes, Outcome outcome) {
    if (outcomes.size() < REMEMBERED) {
      outcomes.add(outcome);
    }
  }

  static Stream<RankedFinding> findings(KitValidation validation) {
    return Stream.concat(
        validation.findings().stream(),
        validation.machines().stream().flatMap(machine -> machine.findings().stream()));
  }

  long lastLine() {
    return lastLine;
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
          outcome -> {
            KitValidation validation = outcome.validation().orElseThrow();
            table.row(
                outcome.line(),
                Table.fitted(validation.kit(), 24),
                Table.fitted(KitText.why(validation), 42));
          });
      text.append('\n').append(heading("failing", failed)).append(table.text());
    }
    if (!bad.isEmpty()) {
      Table table = new Table(">line", "what is wrong");
      bad.forEach(outcome -> table.row(outcome.line(), Table.fitted(outcome.problem(), 68)));
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
