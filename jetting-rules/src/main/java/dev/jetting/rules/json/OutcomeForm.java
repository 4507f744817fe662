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
 * @param findings what was found; empty unless failed
 * @param reason why not applicable, what is missing, or what broke; empty otherwise
 * @param reasonMessage the reason by its key and typed arguments, where it has a key
 * @param branches outcomes of the rules that this one is composed of, with the ids of those rules
 * @param margin how near it came to failing, where no finding says it; empty of a rule that judges
 *     by yes and no
 */
record OutcomeForm(
    Outcome.Status status,
    List<Finding> findings,
    String reason,
    Optional<Message> reasonMessage,
    List<Outcome.Branch> branches,
    Optional<Margin> margin) {

  static OutcomeForm of(Outcome outcome) {
    return new OutcomeForm(
        outcome.status(),
        outcome.findings(),
        outcome.reason(),
        MessageForm.keyed(outcome.why()),
        outcome.branches(),
        outcome.margin());
  }

  Outcome outcome() {
    return new Outcome(
        status, findings, reasonMessage.orElseGet(() -> Message.plain(reason)), branches, margin);
  }
}
