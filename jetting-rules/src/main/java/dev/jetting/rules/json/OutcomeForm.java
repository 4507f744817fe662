package dev.jetting.rules.json;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Optional;

/**
 * An outcome, in JSON.
 *
 * @param status how it came out
 * @param findings what was found; left out unless failed
 * @param reason why not applicable, what is missing, or what broke; left out otherwise
 * @param reasonMessage the reason by its key and typed arguments, where it has a key
 * @param branches outcomes of the rules that this one is composed of, with the ids of those rules;
 *     left out where it is not composed
 * @param margin how near it came to failing, where no finding says it; empty of a rule that judges
 *     by yes and no
 */
record OutcomeForm(
    Outcome.Status status,
    Optional<List<Finding>> findings,
    Optional<String> reason,
    Optional<Message> reasonMessage,
    Optional<List<Outcome.Branch>> branches,
    Optional<Margin> margin) {

  static OutcomeForm of(Outcome outcome) {
    return new OutcomeForm(
        outcome.status(),
        Optional.of(outcome.findings()).filter(findings -> !findings.isEmpty()),
        Optional.of(outcome.reason()).filter(reason -> !reason.isEmpty()),
        MessageForm.keyed(outcome.why()),
        Optional.of(outcome.branches()).filter(branches -> !branches.isEmpty()),
        outcome.margin());
  }

  Outcome outcome() {
    return new Outcome(
        status,
        findings.orElse(List.of()),
        reasonMessage.orElseGet(() -> Message.plain(reason.orElse(""))),
        branches.orElse(List.of()),
        margin);
  }
}
