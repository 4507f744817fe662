package dev.jetting.rules.json;

import dev.jetting.rules.text.Message;
import java.util.Objects;

/**
 * What a review finds odd about a rule file that can be read. The rules stay what they are; their
 * author may have meant something else.
 *
 * @param kind what is odd
 * @param ruleId id of the rule
 * @param pointer where in the document, as a JSON Pointer (RFC 6901), such as {@code
 *     /rules/0/require/atMost}
 * @param line the line in the document, from 1
 * @param column the column in the line, in UTF-16 units from 1
 * @param words one sentence for people, for any language
 */
public record RuleRemark(
    Kind kind, String ruleId, String pointer, int line, int column, Message words) {

  /** What is odd. */
  public enum Kind {
    /** A condition that no setting meets. */
    NEVER_HOLDS,
    /** A condition that every setting meets. */
    ALWAYS_HOLDS,
    /** A part of a condition that adds nothing to its neighbours. */
    ADDS_NOTHING,
    /** A rule that fails only where another one fails, which is at least as severe. */
    IMPLIED,
    /** A rule that fails just where another one of the same severity fails. */
    DOUBLED,
    /** A text that the measure never has. */
    UNKNOWN_TEXT,
    /** An example whose outcome is not the one that it states. */
    EXAMPLE_FAILS,
    /** An example that cannot be tried: an unknown sheet, or an edit that makes none. */
    EXAMPLE_UNUSABLE,
    /** A rule without an example on which it passes, or without one on which it fails. */
    NO_EXAMPLE
  }

  /**
   * Checks for nulls.
   *
   * @param kind what is odd
   * @param ruleId id of the rule
   * @param pointer where in the document
   * @param line the line in the document, from 1
   * @param column the column in the line
   * @param words one sentence for people, for any language
   */
  public RuleRemark {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(ruleId, "ruleId");
    Objects.requireNonNull(pointer, "pointer");
    Objects.requireNonNull(words, "words");
  }

  /** {@return the sentence in English} */
  public String message() {
    return words.text();
  }

  /** {@return the remark in one line: place, rule and message} */
  @Override
  public String toString() {
    return "line " + line + ", column " + column + ", rule " + ruleId + ": " + message();
  }
}
