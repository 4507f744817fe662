package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.RulebookChange.Kind;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Which rules a report rests on: the name and version of a rulebook, in which rules it was changed,
 * and a digest of what it holds.
 *
 * @param name name of the rulebook; one line, at most 200 characters
 * @param version its version; one line, at most 200 characters
 * @param changes the rules in which it differs from the rulebook of that name and version
 * @param digest SHA-256, as 64 hexadecimal digits, of the rules' ids, severities, bands and assumed
 *     numbers, rule files whole, and the changes; rulebooks with different digests are different.
 *     It does not cover what a judge in Java computes: name and version identify that
 */
public record RulebookEdition(
    String name, String version, List<RulebookChange> changes, String digest) {

  static final int LONGEST_NAME = 200;

  private static final int SHOWN_DIGITS = 12;
  private static final int SHOWN_RULES = 5;

  /**
   * Copies the changes and checks the texts.
   *
   * @param name name of the rulebook; one line, at most 200 characters
   * @param version its version; one line, at most 200 characters
   * @param changes the rules in which it differs from the rulebook of that name and version
   * @param digest SHA-256 of what the rules declare and assume, and of the changes
   * @throws IllegalArgumentException if name or version is blank, too long or not one line of
   *     visible characters, or the digest is not 64 hexadecimal digits in lower case
   */
  public RulebookEdition {
    PlainLine.checked("name", "name of a rulebook", name, LONGEST_NAME);
    PlainLine.checked("version", "version of a rulebook", version, LONGEST_NAME);
    changes = List.copyOf(changes);
    if (!digest.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "digest of rulebook " + name + ": allowed 64 hexadecimal digits in lower case");
    }
  }

  /** {@return whether the rulebook differs from the original of its name and version} */
  public boolean changed() {
    return !changes.isEmpty();
  }

  /** {@return name and version, and each kind of change with the first rules it befell} */
  @Override
  public String toString() {
    return name + " " + version + (changed() ? ", changed: " + changesInWords() : "");
  }

  String changesInWords() {
    return Stream.of(
            words(Kind.LEFT_OUT, "left out"),
            words(Kind.REPLACED, "replaced"),
            words(Kind.OTHER_SEVERITY, "given another severity"),
            words(Kind.OTHER_LIMITS, "given other limits"),
            words(Kind.ADDED, "added"))
        .filter(words -> !words.isEmpty())
        .collect(joining("; "));
  }

  private String words(Kind kind, String verb) {
    List<RulebookChange> these = changes.stream().filter(c -> c.kind() == kind).toList();
    if (these.isEmpty()) {
      return "";
    }
    String more =
        these.size() > SHOWN_RULES ? " and " + (these.size() - SHOWN_RULES) + " more" : "";
    return these.stream()
        .limit(SHOWN_RULES)
        .map(change -> change.ruleId() + " (" + severity(change) + ")")
        .collect(joining(", ", verb + " ", more));
  }

  private static String severity(RulebookChange change) {
    String now = change.severity().name().toLowerCase(Locale.ROOT);
    return change.kind() == Kind.OTHER_SEVERITY ? "now " + now : now;
  }

  String shortDigest() {
    return digest.substring(0, SHOWN_DIGITS);
  }
}
