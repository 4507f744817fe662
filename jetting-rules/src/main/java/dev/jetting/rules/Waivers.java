package dev.jetting.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The waivers of an evaluation and the day on which they are looked at. */
record Waivers(List<Waiver> waivers, Optional<LocalDate> day) {

  static final Waivers NONE = new Waivers(List.of(), Optional.empty());

  /** The first waiver that covers a finding of a rule. */
  Optional<Waiver> covering(Rule rule, Finding finding) {
    return waivers.stream()
        .filter(this::holds)
        .filter(waiver -> rule.answersTo(waiver.ruleId()))
        .filter(waiver -> waiver.subject().equals(finding.subject()))
        .findFirst();
  }

  /** The waivers that none of the findings carries. */
  List<UnusedWaiver> unused(Rulebook book, List<RankedFinding> findings) {
    List<Waiver> used = findings.stream().flatMap(f -> f.waiver().stream()).toList();
    return waivers.stream()
        .filter(waiver -> !used.contains(waiver))
        .map(waiver -> new UnusedWaiver(waiver, why(book, waiver)))
        .toList();
  }

  private String why(Rulebook book, Waiver waiver) {
    if (!holds(waiver)) {
      return "expired on " + waiver.expires().map(LocalDate::toString).orElse("an earlier day");
    }
    return book.rule(waiver.ruleId()).isEmpty()
        ? "no rule of this id in the rulebook"
        : "no finding of this rule on this subject";
  }

  private boolean holds(Waiver waiver) {
    return day.map(waiver::holdsOn).orElse(true);
  }
}
