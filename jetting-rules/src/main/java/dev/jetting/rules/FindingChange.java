package dev.jetting.rules;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A finding in which two reports differ.
 *
 * @param kind how
 * @param ruleId id of the rule, the present one where it was renamed
 * @param subject path of the part or circuit it is about
 * @param before the finding in the report before; empty if it is new
 * @param after the finding in the report after; empty if it is gone
 */
public record FindingChange(
    Kind kind,
    String ruleId,
    String subject,
    Optional<RankedFinding> before,
    Optional<RankedFinding> after) {

  /** How a finding changed. */
  public enum Kind {
    /** It was not there. */
    NEW,
    /** It matters more, is further beyond its limit, or is no longer waived. */
    WORSE,
    /** It matters less, is less far beyond its limit, or is waived. */
    BETTER,
    /** It is no longer there. */
    GONE
  }

  /**
   * Checks for nulls.
   *
   * @param kind how
   * @param ruleId id of the rule
   * @param subject path of the part or circuit it is about
   * @param before the finding in the report before
   * @param after the finding in the report after
   */
  public FindingChange {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
  }

  /** {@return the kind, the rule and what the finding says, or said, in English} */
  @Override
  public String toString() {
    return text(Wording.english());
  }

  /**
   * Returns the change in the words of a language.
   *
   * @param wording the words
   * @return the kind, the rule and what the finding says, or said
   */
  public String text(Wording wording) {
    Message head =
        Message.plain("{kind} {rule}, {subject}: ")
            .with("kind", Argument.word("difference.kind." + kind.name().toLowerCase(Locale.ROOT)))
            .with("rule", Argument.name(ruleId))
            .with("subject", Argument.name(subject));
    return wording.text(head)
        + after.or(() -> before).map(found -> wording.text(found.finding().words())).orElse("");
  }
}
