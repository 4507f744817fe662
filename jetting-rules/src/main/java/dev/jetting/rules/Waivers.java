package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The waivers of an evaluation and the day by which they are judged. */
record Waivers(List<Waiver> waivers, Optional<LocalDate> day) {

  static final Waivers NONE = new Waivers(List.of(), Optional.empty());

  /** The first waiver that covers a finding of a rule. */
  Optional<Waiver> covering(Rule rule, Finding finding, SetupSheet sheet) {
    return waivers.stream()
        .filter(this::holds)
        .filter(waiver -> meets(waiver, rule, finding))
        .filter(waiver -> covers(waiver, rule, finding, sheet))
        .findFirst();
  }

  private static boolean meets(Waiver waiver, Rule rule, Finding finding) {
    return rule.answersTo(waiver.ruleId()) && waiver.subject().equals(finding.subject());
  }

  private static boolean covers(Waiver waiver, Rule rule, Finding finding, SetupSheet sheet) {
    return waiver
        .accepted()
        .map(accepted -> accepted.isFor(sheet) && accepted.covers(finding))
        .orElse(rule.severity() != Severity.DANGER);
  }

  /** The waivers that none of the findings carries. */
  List<UnusedWaiver> unused(Rulebook book, List<RankedFinding> findings, SetupSheet sheet) {
    List<Waiver> used = findings.stream().flatMap(f -> f.waiver().stream()).toList();
    return waivers.stream()
        .filter(waiver -> !used.contains(waiver))
        .map(waiver -> new UnusedWaiver(waiver, why(book, waiver, findings, sheet)))
        .toList();
  }

  private Message why(
      Rulebook book, Waiver waiver, List<RankedFinding> findings, SetupSheet sheet) {
    if (!holds(waiver)) {
      return Message.of("waiver.expired")
          .with("day", Argument.name(waiver.expires().map(LocalDate::toString).orElse("")));
    }
    Optional<Rule> rule = book.rule(waiver.ruleId());
    if (rule.isEmpty()) {
      return Message.of("waiver.no-rule");
    }
    return findings.stream()
        .filter(ranked -> ranked.ruleId().equals(rule.get().id()))
        .map(RankedFinding::finding)
        .filter(finding -> meets(waiver, rule.get(), finding))
        .findFirst()
        .map(finding -> shortfall(waiver, finding, sheet))
        .orElse(Message.of("waiver.no-finding"));
  }

  /** Why a waiver does not cover the worst finding of its rule on its subject. */
  private static Message shortfall(Waiver waiver, Finding finding, SetupSheet sheet) {
    Optional<Ceiling> accepted = waiver.accepted();
    if (accepted.isEmpty()) {
      return Message.of("waiver.not-of-danger");
    }
    Ceiling ceiling = accepted.get();
    if (!ceiling.isFor(sheet)) {
      return Message.of("waiver.other-engine")
          .with("engine", Argument.name(ceiling.engine()))
          .with("carburettor", Argument.name(ceiling.carburettor()));
    }
    return Message.of("waiver.exceeded")
        .with("accepted", Argument.words(ceiling.words()))
        .with("now", Argument.words(Ceiling.of(sheet, finding).words()));
  }

  private boolean holds(Waiver waiver) {
    return day.map(waiver::holdsOn).orElse(true);
  }
}
