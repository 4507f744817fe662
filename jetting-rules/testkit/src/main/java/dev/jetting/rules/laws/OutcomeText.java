package dev.jetting.rules.laws;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import java.util.stream.Collectors;

/** Prints an outcome in a few words. */
final class OutcomeText {

  private OutcomeText() {}

  static String of(Outcome outcome) {
    String findings =
        outcome.findings().stream()
            .map((Finding finding) -> finding.text())
            .collect(Collectors.joining("; "));
    String more = findings.isEmpty() ? outcome.reason() : findings;
    return more.isEmpty() ? outcome.status().toString() : outcome.status() + " (" + more + ")";
  }
}
