package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import com.google.common.hash.Hasher;
import com.google.common.hash.Hashing;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.RulebookChange.Kind;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Works out which edition of its name and version a rulebook is. */
final class Editions {

  private Editions() {}

  static RulebookEdition of(Rulebook book, Map<String, Rule> origin) {
    List<RulebookChange> changes = changes(book.rules(), origin);
    return new RulebookEdition(book.name(), book.version(), changes, digest(book, changes));
  }

  private static List<RulebookChange> changes(List<Rule> rules, Map<String, Rule> origin) {
    Map<String, Rule> lost = new TreeMap<>(origin);
    List<RulebookChange> changes = new ArrayList<>();
    for (Rule rule : rules) {
      Rule was = lost.remove(rule.id());
      if (was == null) {
        changes.add(change(Kind.ADDED, rule));
      } else if (was != rule && !rule.isSameAs(was)) {
        changes.add(change(kind(rule, was), rule));
      }
    }
    lost.values().forEach(rule -> changes.add(change(Kind.LEFT_OUT, rule)));
    changes.sort(RulebookChange.ORDER);
    return changes;
  }

  private static Kind kind(Rule rule, Rule was) {
    if (rule.isSameAs(was.withSeverity(rule.severity()))) {
      return Kind.OTHER_SEVERITY;
    }
    return rule.isSameAs(was.withLimitsOf(rule)) ? Kind.OTHER_LIMITS : Kind.REPLACED;
  }

  private static RulebookChange change(Kind kind, Rule rule) {
    return new RulebookChange(kind, rule.id(), rule.severity());
  }

  /** Each text goes in with its length, so that no two lists of texts read alike. */
  private static String digest(Rulebook book, List<RulebookChange> changes) {
    Hasher hasher = Hashing.sha256().newHasher();
    put(hasher, book.name());
    put(hasher, book.version());
    hasher.putInt(book.rules().size());
    book.rules().stream().sorted(Comparator.comparing(Rule::id)).forEach(rule -> put(hasher, rule));
    new TreeMap<>(book.assumptions())
        .forEach(
            (name, assumed) -> {
              put(hasher, name);
              put(hasher, assumed);
            });
    changes.forEach(
        change -> {
          put(hasher, change.kind().name());
          put(hasher, change.ruleId());
        });
    return hasher.hash().toString();
  }

  /** Titles and rationales are words, which may be put better in the same rules. */
  private static void put(Hasher hasher, Rule rule) {
    put(hasher, rule.id());
    put(hasher, rule.formerIds().stream().sorted().collect(joining(" ")));
    put(hasher, rule.severity().name());
    hasher.putDouble(rule.band().from().share()).putDouble(rule.band().to().share());
    put(hasher, rule.definition());
    rule.limits()
        .forEach(
            (name, limit) -> {
              put(hasher, name);
              put(hasher, limit);
            });
  }

  private static void put(Hasher hasher, Coefficient assumed) {
    hasher.putDouble(assumed.value());
    put(hasher, assumed.unit());
    put(hasher, assumed.origin().name());
  }

  private static void put(Hasher hasher, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    hasher.putInt(bytes.length).putBytes(bytes);
  }
}
