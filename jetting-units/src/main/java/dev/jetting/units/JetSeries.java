package dev.jetting.units;

import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The sizes that a part can be had in, such as mains from 100 to 150 by 2.5 and on to 200 by 5, and
 * so what the next size up or down is. Steps may change along the series or be irregular. Serves
 * {@link JetBore} and {@link JetFlow}, and as well {@link Cutaway} or the {@link Diameter} of
 * needle jets.
 *
 * <p>Not a stock list: it says what sizes exist, not what is on the shelf.
 *
 * @param <J> the quantity that the sizes are
 */
public final class JetSeries<J extends Quantity<J>> {
  private static final String NAME = "jet series";
  private static final int MOST_SIZES = 10_000;
  private static final String SAMPLE = "\"35, 38, 40 to 60 by 2.5, to 70 by 5 hundredths\"";

  private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?(?:e-?[0-9]+)?)";
  private static final Pattern PART =
      Pattern.compile("(?:" + NUMBER + " )?to " + NUMBER + " by " + NUMBER + "|" + NUMBER);

  private final List<J> sizes;

  private JetSeries(Collection<J> sizes) {
    if (sizes.isEmpty() || sizes.size() > MOST_SIZES) {
      throw QuantityException.outOfRange(
          Sentence.of("error.name.jet-series.count"),
          sizes.size(),
          "sizes",
          Sentence.of("error.from-to").with("low", 1).with("high", MOST_SIZES));
    }
    this.sizes = List.copyOf(new TreeSet<>(sizes));
    this.sizes.forEach(JetSeries::amount);
  }

  /**
   * Returns the series of these sizes.
   *
   * @param sizes the sizes in any order, from 1 to 10000 of them; equal ones count once
   * @param <J> the quantity that the sizes are
   * @return the series
   * @throws QuantityException if there are no sizes or too many, or if one of them does not print
   *     as a number with a unit
   */
  public static <J extends Quantity<J>> JetSeries<J> of(Collection<J> sizes) {
    return new JetSeries<>(Objects.requireNonNull(sizes, "sizes"));
  }

  /**
   * Returns the series from a first to a last size by one step, all three in the unit of the
   * factory: {@code regular(JetBore::ofHundredths, 100, 2.5, 150)}. Steps are added in decimals, so
   * that they do not drift.
   *
   * @param unit makes a size of a number, such as {@code JetBore::ofHundredths}
   * @param first the smallest size
   * @param step what is added from size to size, above 0
   * @param last the largest size, a whole number of steps above the first
   * @param <J> the quantity that the sizes are
   * @return the series
   * @throws QuantityException if a number is not finite, the step is not above 0, whole steps do
   *     not lead to the last size, or there are more than 10000 sizes or one out of range
   */
  public static <J extends Quantity<J>> JetSeries<J> regular(
      DoubleFunction<J> unit, double first, double step, double last) {
    Objects.requireNonNull(unit, "unit");
    String text = Text.number(first) + " to " + Text.number(last) + " by " + Text.number(step);
    if (!Double.isFinite(first) || !Double.isFinite(step) || !Double.isFinite(last)) {
      throw refused(text, Sentence.of("error.finite-numbers"));
    }
    return new JetSeries<>(
        run(decimal(first), decimal(step), decimal(last), text).stream()
            .map(number -> unit.apply(number.doubleValue()))
            .toList());
  }

  /**
   * Reads a series: sizes and runs, separated by a comma and a space, with one unit at the end. A
   * run without a beginning goes on from the size before it.
   *
   * @param text such as {@code 100 to 150 by 2.5, to 200 by 5 hundredths} or {@code 35, 38, 40
   *     cm³/min}
   * @param size reads one size, such as {@code JetBore::parse}
   * @param <J> the quantity that the sizes are
   * @return the series
   * @throws QuantityException if the text has another form, if whole steps do not lead to the end
   *     of a run, or if a size cannot be read
   */
  public static <J extends Quantity<J>> JetSeries<J> parse(String text, Function<String, J> size) {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(size, "size");
    List<BigDecimal> numbers = new ArrayList<>();
    String rest = text.strip();
    boolean more = true;
    while (more) {
      Matcher part = PART.matcher(rest);
      if (!part.lookingAt()) {
        throw unreadable(text);
      }
      addPart(part, numbers, text);
      rest = rest.substring(part.end());
      more = rest.startsWith(", ");
      rest = rest.substring(more ? 2 : 0).strip();
    }
    String unit = rest;
    return new JetSeries<>(
        numbers.stream()
            .map(number -> size.apply(Text.withUnit(number.toString(), unit)))
            .toList());
  }

  /**
   * Returns the series of the sizes of both.
   *
   * @param other the sizes to add, such as a run with another step
   * @return the union
   * @throws QuantityException if that makes more than 10000 sizes
   */
  public JetSeries<J> and(JetSeries<J> other) {
    TreeSet<J> union = new TreeSet<>(sizes);
    union.addAll(Objects.requireNonNull(other, "other").sizes);
    return new JetSeries<>(union);
  }

  /**
   * Returns all sizes.
   *
   * @return the sizes in ascending order, at least one; cannot be changed
   */
  public List<J> sizes() {
    return sizes;
  }

  /**
   * Returns the smallest size.
   *
   * @return the first of {@link #sizes()}
   */
  public J smallest() {
    return sizes.get(0);
  }

  /**
   * Returns the largest size.
   *
   * @return the last of {@link #sizes()}
   */
  public J largest() {
    return sizes.get(sizes.size() - 1);
  }

  /**
   * Returns whether a size is one of the series.
   *
   * @param size the size to look for
   * @return whether {@link #sizes()} has an equal one
   */
  public boolean contains(J size) {
    return search(size) >= 0;
  }

  /**
   * Returns the next size up.
   *
   * @param size any size, in the series or not (a drilled jet)
   * @return the smallest size of the series that is larger; empty if there is none
   */
  public Optional<J> nextUp(J size) {
    int found = search(size);
    return at(found >= 0 ? found + 1 : -found - 1);
  }

  /**
   * Returns the next size down.
   *
   * @param size any size, in the series or not (a drilled jet)
   * @return the largest size of the series that is smaller; empty if there is none
   */
  public Optional<J> nextDown(J size) {
    int found = search(size);
    return at((found >= 0 ? found : -found - 1) - 1);
  }

  /**
   * Returns the size a number of steps away.
   *
   * @param size a size of the series
   * @param steps how many sizes up; down if negative
   * @return the size; empty if the series ends before
   * @throws QuantityException if {@code size} is not in the series
   */
  public Optional<J> moved(J size, int steps) {
    long index = (long) indexOf(size, "size") + steps;
    return index < 0 || index >= sizes.size() ? Optional.empty() : at((int) index);
  }

  /**
   * Returns how many steps lead from one size to another.
   *
   * @param from a size of the series
   * @param to a size of the series
   * @return the number of steps up; negative if they lead down
   * @throws QuantityException if one of the sizes is not in the series
   */
  public int stepsBetween(J from, J to) {
    return indexOf(to, "to") - indexOf(from, "from");
  }

  /**
   * Returns the size of the series that is nearest to a size; of two equally near ones the larger,
   * which for a fuel jet is the richer and safer.
   *
   * @param size any size
   * @return the nearest size
   */
  public J nearest(J size) {
    Optional<J> below = contains(size) ? Optional.of(size) : nextDown(size);
    Optional<J> above = nextUp(size);
    if (below.isEmpty() || above.isEmpty() || contains(size)) {
      return below.or(() -> above).orElseThrow();
    }
    BigDecimal number = number(size);
    BigDecimal downwards = number.subtract(number(below.get()));
    BigDecimal upwards = number(above.get()).subtract(number);
    return downwards.compareTo(upwards) < 0 ? below.get() : above.get();
  }

  /**
   * Compares the sizes.
   *
   * @param other anything
   * @return whether the other is a series of the same sizes
   */
  @Override
  @SuppressWarnings("exports") // callers compile without the annotation
  public boolean equals(@Nullable Object other) {
    return other instanceof JetSeries<?> that && that.sizes.equals(sizes);
  }

  @Override
  public int hashCode() {
    return sizes.hashCode();
  }

  /**
   * Returns sizes and runs in the canonical unit, which {@link #parse} reads.
   *
   * @return such as {@code 1 to 1.5 by 0.025, to 2 by 0.05 mm}
   */
  @Override
  public String toString() {
    List<BigDecimal> numbers = sizes.stream().map(JetSeries::number).toList();
    List<String> parts = new ArrayList<>();
    boolean covered = false; // whether the last part ends with the size at the index
    for (int index = 0; index < numbers.size(); ) {
      int end = endOfRun(numbers, index);
      if (end - index >= 2) {
        BigDecimal step = numbers.get(index + 1).subtract(numbers.get(index));
        String beginning = covered ? "" : plain(numbers.get(index)) + " ";
        parts.add(beginning + "to " + plain(numbers.get(end)) + " by " + plain(step));
        index = end;
        covered = true;
      } else {
        if (!covered) {
          parts.add(plain(numbers.get(index)));
        }
        index++;
        covered = false;
      }
    }
    return Text.withUnit(String.join(", ", parts), amount(smallest()).unit());
  }

  private static int endOfRun(List<BigDecimal> numbers, int start) {
    int end = start;
    while (end + 1 < numbers.size() && (end == start || evenAround(numbers, end))) {
      end++;
    }
    return end;
  }

  private static boolean evenAround(List<BigDecimal> numbers, int index) {
    BigDecimal before = numbers.get(index).subtract(numbers.get(index - 1));
    BigDecimal after = numbers.get(index + 1).subtract(numbers.get(index));
    return before.compareTo(after) == 0;
  }

  private static void addPart(Matcher part, List<BigDecimal> numbers, String text) {
    String single = part.group(4);
    if (single != null) {
      numbers.add(new BigDecimal(single));
      return;
    }
    String beginning = part.group(1);
    if (beginning == null && numbers.isEmpty()) {
      throw unreadable(text);
    }
    BigDecimal first =
        beginning == null ? numbers.get(numbers.size() - 1) : new BigDecimal(beginning);
    BigDecimal last = new BigDecimal(part.group(2));
    BigDecimal step = new BigDecimal(part.group(3));
    numbers.addAll(run(first, step, last, text));
  }

  private static List<BigDecimal> run(
      BigDecimal first, BigDecimal step, BigDecimal last, String text) {
    if (step.signum() <= 0) {
      throw refused(text, Sentence.of("error.steps-above"));
    }
    BigDecimal[] steps = last.subtract(first).divideAndRemainder(step);
    if (steps[1].signum() != 0 || steps[0].signum() < 0) {
      throw refused(text, Sentence.of("error.runs-upwards"));
    }
    if (steps[0].compareTo(BigDecimal.valueOf(MOST_SIZES)) >= 0) {
      throw refused(
          text, Sentence.of("error.sizes-from-to").with("low", 1).with("high", MOST_SIZES));
    }
    List<BigDecimal> run = new ArrayList<>();
    for (int i = 0; i <= steps[0].intValue(); i++) {
      run.add(first.add(step.multiply(BigDecimal.valueOf(i))));
    }
    return run;
  }

  private int search(J size) {
    return Collections.binarySearch(sizes, Objects.requireNonNull(size, "size"));
  }

  private int indexOf(J size, String parameter) {
    int found = search(Objects.requireNonNull(size, parameter));
    if (found < 0) {
      throw refused(size.toString(), Sentence.of("error.size-of").with("series", toString()));
    }
    return found;
  }

  private Optional<J> at(int index) {
    return index < 0 || index >= sizes.size() ? Optional.empty() : Optional.of(sizes.get(index));
  }

  private static Sentence.Amount amount(Quantity<?> size) {
    return size.amount()
        .orElseThrow(() -> refused(size.toString(), Sentence.of("error.sizes-with-unit")));
  }

  private static BigDecimal number(Quantity<?> size) {
    return decimal(amount(size).value());
  }

  private static BigDecimal decimal(double value) {
    return new BigDecimal(Decimals.shortest(value));
  }

  private static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() <= 0 ? stripped.toPlainString() : stripped.toString().replace('E', 'e');
  }

  private static QuantityException unreadable(String text) {
    return QuantityException.unreadable(
        Sentence.name(NAME), text, Sentence.of("error.sizes-runs").with("sample", SAMPLE));
  }

  private static QuantityException refused(String text, Sentence allowed) {
    return QuantityException.refused(Sentence.name(NAME), text, allowed);
  }
}
