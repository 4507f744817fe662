package dev.jetting.rules.json;

import static java.util.Comparator.comparing;

import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.Sentence;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody may have meant. */
final class Nearest {

  /** A longer name was not meant as any that is known, and would take its time to compare. */
  private static final int LONGEST = 60;

  private static final int MOST_COMPARED = 500;

  private Nearest() {}

  /** What is wrong with a text, the text that was probably meant, if any, and what is known. */
  static Message known(String key, String text, Collection<String> known) {
    Optional<String> meant = meant(text, known);
    Message words =
        Message.of(meant.isPresent() ? key + ".near" : key)
            .with("text", Argument.name(Quote.quoted(text)))
            .with("known", Argument.items(of(text, known, 4).stream().map(Nearest::name).toList()));
    return meant.map(near -> words.with("near", name(near))).orElse(words);
  }

  private static Argument name(String text) {
    return Argument.name(Quote.quoted(text));
  }

  /** A name that is not known, with the known name that was probably meant, where there is one. */
  static Sentence unknown(String key, String keyWithNear, String name, Collection<String> known) {
    Optional<String> meant = meant(name, known);
    Sentence plain = Sentence.of(meant.isPresent() ? keyWithNear : key);
    Sentence unknown = plain.with("value", Quote.quoted(name));
    return meant.map(near -> unknown.with("near", '"' + near + '"')).orElse(unknown);
  }

  /** The known name that was probably meant. */
  static Optional<String> meant(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return Optional.empty();
    }
    int tolerated = 1 + name.length() / 4;
    return of(name, known, 1).stream().filter(k -> distance(name, k) <= tolerated).findFirst();
  }

  /** A known name with its distance. */
  private record Near(String name, int distance) {}

  /** The known names nearest to one, the nearest first; of very many, those that begin alike. */
  static List<String> of(String name, Collection<String> known, int most) {
    String start = name.substring(0, Math.min(name.length(), LONGEST));
    String letter = start.substring(0, Math.min(start.length(), 1));
    return known.stream()
        .filter(k -> known.size() <= MOST_COMPARED || k.regionMatches(true, 0, letter, 0, 1))
        .limit(MOST_COMPARED)
        .map(k -> new Near(k, distance(start, k)))
        .sorted(comparing(Near::distance))
        .limit(most)
        .map(Near::name)
        .toList();
  }

  /** Letters to put in, take out or change to get from one name to the other (Levenshtein 1966). */
  private static int distance(String a, String b) {
    String from = a.toLowerCase(Locale.ROOT);
    String to = b.toLowerCase(Locale.ROOT);
    int[] row = new int[to.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
