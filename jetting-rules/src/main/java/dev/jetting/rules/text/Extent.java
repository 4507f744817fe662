package dev.jetting.rules.text;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * How large a message is, in characters of English.
 *
 * @param stored its template and its values, each once
 * @param shown its text at most
 * @param depth how deep words stand in others; 0 where none do
 */
record Extent(long stored, long shown, int depth) {

  /** Of a number with a unit that the library's styles know. */
  private static final long LONGEST_NUMBER = 60;

  /** Of a double of 1e308 written out. */
  private static final long LONGEST_DECIMAL = 330;

  static Extent of(String template, Map<String, Argument> arguments) {
    return new Sum().of(template, arguments);
  }

  /** Looks at each message once, however often it is shown. */
  private static final class Sum {
    private final IdentityHashMap<Message, Extent> known = new IdentityHashMap<>();

    Extent of(String template, Map<String, Argument> arguments) {
      long stored = template.length();
      int depth = 0;
      Map<String, Long> sizes = new HashMap<>();
      for (Map.Entry<String, Argument> argument : arguments.entrySet()) {
        Extent extent = of(argument.getValue());
        stored += extent.stored();
        depth = Math.max(depth, extent.depth());
        sizes.put(argument.getKey(), extent.shown());
      }
      long shown =
          template.length()
              + Message.placeholders(template).mapToLong(n -> sizes.getOrDefault(n, 0L)).sum();
      return new Extent(stored, shown, depth);
    }

    private Extent of(Argument argument) {
      if (argument instanceof Argument.Words words) {
        Extent inner = known.get(words.message());
        if (inner == null) {
          inner = of(words.message().template(), words.message().arguments());
          known.put(words.message(), inner);
        }
        return new Extent(inner.stored(), inner.shown(), inner.depth() + 1);
      }
      if (argument instanceof Argument.Items items) {
        Extent sum = new Extent(0, 0, 0);
        for (Argument item : items.items()) {
          Extent extent = of(item);
          sum =
              new Extent(
                  sum.stored() + extent.stored() + 2,
                  sum.shown() + extent.shown() + 2,
                  Math.max(sum.depth(), extent.depth()));
        }
        return sum;
      }
      return flat(length(argument));
    }

    private static Extent flat(long length) {
      return new Extent(length, length, 0);
    }

    private static long length(Argument argument) {
      if (argument instanceof Argument.Name name) {
        return name.text().length();
      }
      if (argument instanceof Argument.Measured measured) {
        return LONGEST_DECIMAL + measured.unit().length();
      }
      return argument instanceof Argument.Fixed fixed
          ? LONGEST_DECIMAL + fixed.unit().length()
          : LONGEST_NUMBER;
    }
  }
}
