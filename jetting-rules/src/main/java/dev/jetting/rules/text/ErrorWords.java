package dev.jetting.rules.text;

import static java.util.Comparator.comparingInt;

import com.google.common.base.Splitter;
import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The sentences of errors as messages. A check writes one English line, in a module that knows no
 * bundles. Here the line is found among the English templates, its values by their places.
 *
 * <p>Values stay as they are written: a reader takes a decimal point and the unit's own symbol.
 */
final class ErrorWords {

  private static final String AREA = "error.";
  private static final String NAME = AREA + "name.";

  /** Longer than any line of a check; matching a longer one would take its time. */
  private static final int LONGEST_LINE = 2000;

  private static final Pattern SLOT = Pattern.compile("\\{(\\w+)}");

  /** Slots with words of this area, where there are such words. */
  private static final Set<String> WORDS =
      ImmutableSet.of(
          "problem", "allowed", "detail", "readings", "sample", "first", "second", "third");

  /** The slot with a name of this area. */
  private static final String NAMED = "what";

  /** The slot with a sentence of this area that is no name. */
  private static final String FORM = "form";

  /** Slots with several words of this area, and what stands between them. */
  private static final Map<String, Splitter> LISTS =
      Map.of("missing", Splitter.on(", "), "twice", Splitter.on("; "));

  /** Between the parts of a line, and so looked for before any sentence. */
  private static final List<String> PARTS =
      Stream.of("at-row", "at-path", "allowed").map(AREA::concat).toList();

  /** Between the parts of a sentence, and so looked for after all others. */
  private static final List<String> JOINTS =
      Stream.of("quantity-form", "or.three", "or").map(AREA::concat).toList();

  private static final Set<String> NUMBERS =
      ImmutableSet.of("low", "high", "most", "size", "count", "number", "depth", "line");

  private static final String NUMBER = "([-−]?[0-9]\\S*?(?: [^\\s:;,]+){0,2}?)";

  private static final Supplier<ImmutableList<Template>> TEMPLATES =
      Suppliers.memoize(() -> templates(false));

  private static final Supplier<ImmutableList<Template>> NAMES =
      Suppliers.memoize(() -> templates(true));

  private ErrorWords() {}

  /** A sentence of the bundle with its slots. */
  private record Template(
      String key, String english, Pattern pattern, List<String> slots, int letters) {

    static Template of(String key, String english) {
      StringBuilder pattern = new StringBuilder();
      ImmutableList.Builder<String> slots = ImmutableList.builder();
      Matcher slot = SLOT.matcher(english);
      int end = 0;
      while (slot.find()) {
        pattern.append(Pattern.quote(english.substring(end, slot.start())));
        pattern.append(form(slot.group(1)));
        slots.add(slot.group(1));
        end = slot.end();
      }
      pattern.append(Pattern.quote(english.substring(end)));
      int letters = SLOT.matcher(english).replaceAll("").length();
      return new Template(
          key, english, Pattern.compile(pattern.toString()), slots.build(), letters);
    }

    /** Below zero for the parts of a line, above for the joints of a sentence. */
    int rank() {
      return PARTS.contains(key) ? PARTS.indexOf(key) - PARTS.size() : JOINTS.indexOf(key) + 1;
    }

    private static String form(String slot) {
      if (slot.equals("path")) {
        return "(\\$.*?)";
      }
      return NUMBERS.contains(slot) ? NUMBER : "(.+?)";
    }

    Optional<Message> read(String line) {
      Matcher matcher = pattern.matcher(line);
      if (!matcher.matches()) {
        return Optional.empty();
      }
      Message message = Message.of(key, english);
      for (int i = 0; i < slots.size(); i++) {
        String text = matcher.group(i + 1);
        Optional<Argument> value = value(slots.get(i), text);
        if (value.isEmpty()) {
          return Optional.empty();
        }
        message = message.with(slots.get(i), value.get());
      }
      return Optional.of(message);
    }

    private static Optional<Argument> value(String slot, String text) {
      if (slot.equals(NAMED)) {
        return found(text).map(Argument::words);
      }
      if (slot.equals(FORM)) {
        return found(text).filter(message -> !message.key().startsWith(NAME)).map(Argument::words);
      }
      if (LISTS.containsKey(slot)) {
        return Optional.of(
            Argument.items(
                LISTS.get(slot).splitToStream(text).map(ErrorWords::wordsOrName).toList()));
      }
      return Optional.of(WORDS.contains(slot) ? wordsOrName(text) : Argument.name(text));
    }
  }

  /** More letters first: a template with few of them would match the line of another. */
  private static ImmutableList<Template> templates(boolean names) {
    return Bundles.of(Bundles.ENGLISH).entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(AREA))
        .filter(entry -> !names || entry.getKey().startsWith(NAME))
        .filter(entry -> SLOT.matcher(entry.getValue()).replaceAll("").matches(".*\\S.*"))
        .map(entry -> Template.of(entry.getKey(), entry.getValue()))
        .sorted(
            comparingInt(Template::rank)
                .thenComparing(comparingInt(Template::letters).reversed())
                .thenComparing(Template::key))
        .collect(ImmutableList.toImmutableList());
  }

  /** The line as a message; in its English words where the bundle has none such. */
  static Message message(String line) {
    return line.length() > LONGEST_LINE
        ? Message.plain(line.substring(0, LONGEST_LINE))
        : found(line).orElseGet(() -> Message.plain(line));
  }

  private static Argument wordsOrName(String text) {
    return found(text).map(Argument::words).orElseGet(() -> Argument.name(text));
  }

  private static Optional<Message> found(String line) {
    return read(TEMPLATES.get(), line).or(() -> nameAndValue(line));
  }

  private static Optional<Message> read(List<Template> templates, String line) {
    return templates.stream().flatMap(template -> template.read(line).stream()).findFirst();
  }

  /**
   * A name and, after a blank, its value: "cutaway 41 mm". Of names without a value in them the
   * longest that is one, else the shortest: an id has no blank as a rule.
   */
  private static Optional<Message> nameAndValue(String line) {
    Optional<Message> best = Optional.empty();
    for (int at = line.indexOf(' '); at > 0; at = line.indexOf(' ', at + 1)) {
      Optional<Message> name = read(NAMES.get(), line.substring(0, at));
      boolean plain = name.filter(message -> message.arguments().isEmpty()).isPresent();
      if (plain || (name.isPresent() && best.isEmpty())) {
        String value = line.substring(at + 1);
        best =
            name.map(
                message ->
                    Message.of(AREA + "value")
                        .with("what", Argument.words(message))
                        .with("value", Argument.name(value)));
      }
    }
    return best;
  }
}
