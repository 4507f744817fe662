package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.units.InvalidValueException;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Runs documents at the corners, one for each seed, or more: {@code -Dcorners.documents=100}. */
final class CornerRuns {

  private static final int DOCUMENTS = Integer.getInteger("corners.documents", 1);

  private CornerRuns() {}

  /** Draws documents and answers each; the drawing says whether the reader took it. */
  static void run(long seed, Predicate<Random> draw) {
    AtomicInteger taken = new AtomicInteger();
    for (int i = 0; i < DOCUMENTS; i++) {
      long own = seed + i;
      try {
        taken.addAndGet(draw.test(new Random(own)) ? 1 : 0);
      } catch (RuntimeException | AssertionError | StackOverflowError e) {
        throw new AssertionError("document of seed " + own, e);
      }
    }
    if (DOCUMENTS > 1) {
      System.out.println(taken + " of " + DOCUMENTS + " documents taken from seed " + seed);
    }
  }

  /** Whether a reader takes a document. */
  static Predicate<String> takes(Consumer<String> reader) {
    return document -> {
      try {
        reader.accept(document);
        return true;
      } catch (JsonInputException | InvalidValueException e) {
        return false;
      }
    };
  }

  static void assertFinite(String shown) {
    assertThat(shown).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("∞");
  }

  /** One line that names a field. */
  static void assertNamesAPlace(JsonInputException refusal) {
    assertThat(refusal.path()).startsWith("$").hasSizeGreaterThan(1);
    assertThat(refusal.getMessage()).doesNotContain("\n").hasSizeLessThan(1000);
  }
}
