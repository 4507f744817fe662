package dev.jetting.examples.kitdesk;

import dev.jetting.rules.search.Cost;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What may stand after an option. */
final class Words {

  private static final int MOST_THREADS = 64;

  private static final Pattern PRICE = Pattern.compile("[0-9]{1,7}(\\.[0-9]{1,4})?");

  private Words() {}

  static <E extends Enum<E>> E constant(String option, Class<E> type, String text)
      throws UnusableException {
    List<String> names = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      String name = word(constant);
      if (name.equals(text)) {
        return constant;
      }
      names.add(name);
    }
    throw new UnusableException(
        option + " " + text + ": allowed one of " + String.join(", ", names));
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Cost cost(String text) throws UnusableException {
    return switch (text) {
      case "parts" -> Cost.NEW_PARTS;
      case "price" -> Cost.PRICE;
      default -> throw new UnusableException("--front " + text + ": allowed parts or price");
    };
  }

  /** A price as parts lists have it. */
  static BigDecimal price(String text) throws UnusableException {
    if (!PRICE.matcher(text).matches()) {
      throw new UnusableException(
          "--pay " + text + ": allowed a decimal number from 0, such as 12.50, at most 4 decimals");
    }
    return new BigDecimal(text);
  }

  static int threads(@Nullable Integer requested) throws UnusableException {
    int threads = requested == null ? Runtime.getRuntime().availableProcessors() : requested;
    if (threads < 1 || threads > MOST_THREADS) {
      throw new UnusableException("--threads " + threads + ": allowed 1 to " + MOST_THREADS);
    }
    return threads;
  }
}
