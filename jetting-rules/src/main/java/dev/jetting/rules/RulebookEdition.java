package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.rules.RulebookChange.Kind;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    String changes = changesInWords().stream().map(Message::text).collect(joining("; "));
    return name + " " + version + (changed() ? ", changed: " + changes : "");
  }

  /**
   * Says what was changed.
   *
   * @return a message for each kind of change; none where nothing was changed
   */
  public List<Message> changesInWords() {
    return Stream.of(
            Kind.LEFT_OUT, Kind.REPLACED, Kind.OTHER_SEVERITY, Kind.OTHER_LIMITS, Kind.ADDED)
        .flatMap(kind -> words(kind).stream())
        .toList();
  }

  private Optional<Message> words(Kind kind) {
    List<RulebookChange> these = changes.stream().filter(c -> c.kind() == kind).toList();
    if (these.isEmpty()) {
      return Optional.empty();
    }
    Argument shown =
        Argument.items(these.stream().limit(SHOWN_RULES).map(RulebookEdition::words).toList());
    int more = these.size() - SHOWN_RULES;
    Argument rules =
        more <= 0
            ? shown
            : Argument.words(
                Message.of("rulebook.more")
                    .with("rules", shown)
                    .with(Message.COUNT, Argument.count(more)));
    return Optional.of(Message.of("rulebook." + lower(kind)).with("rules", rules));
  }

  private static Argument words(RulebookChange change) {
    return Argument.words(
        Message.of(change.kind() == Kind.OTHER_SEVERITY ? "rulebook.now" : "rulebook.rule")
            .with("rule", Argument.name(change.ruleId()))
            .with("severity", Argument.word("rulebook.severity." + lower(change.severity()))));
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** {@return the first digits of the digest, enough for people to compare} */
  public String shortDigest() {
    return digest.substring(0, SHOWN_DIGITS);
  }
}
