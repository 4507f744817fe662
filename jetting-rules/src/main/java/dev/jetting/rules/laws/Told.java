package dev.jetting.rules.laws;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import java.util.stream.Collectors;

/** Outcomes in a few words. */
final class Told {

  private Told() {}

  static String outcome(Outcome outcome) {
    String findings =
        outcome.findings().stream()
            .map((Finding finding) -> finding.text())
            .collect(Collectors.joining("; "));
    String more = findings.isEmpty() ? outcome.reason() : findings;
    return more.isEmpty() ? outcome.status().toString() : outcome.status() + " (" + more + ")";
  }
}
