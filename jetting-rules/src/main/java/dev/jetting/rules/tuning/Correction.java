package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Normal;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.rules.text.Message;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * By how much an engine differs from the model in one respect, by its readings: "the main jet
 * passes about 8 % less fuel than expected, give or take 4 %".
 *
 * <p>It belongs to the engine and its carburettor and stays when a jet is changed. Not a
 * measurement of the part: whatever works as if the part passed so much less counts in it.
 *
 * @param source in what respect
 * @param percent true by modelled flow, less 100 %; below zero where it passes less
 * @param spread standard deviation of that, in percent; zero or more
 */
public record Correction(ErrorSource source, double percent, double spread) {

  /**
   * Checks the numbers.
   *
   * @param source in what respect
   * @param percent true by modelled flow, less 100 %; below zero where it passes less
   * @param spread standard deviation of that, in percent; zero or more
   * @throws IllegalArgumentException if a number is not finite or out of range
   */
  public Correction {
    Objects.requireNonNull(source, "source");
    boolean possible = Double.isFinite(percent) && percent > -100;
    if (!possible || !(spread >= 0 && Double.isFinite(spread))) {
      throw new IllegalArgumentException(
          "correction by "
              + Decimals.shortest(percent)
              + " ± "
              + Decimals.shortest(spread)
              + " %: allowed more than -100 %, and a spread of 0 or more");
    }
    percent += 0.0; // −0.0 becomes 0.0
  }

  /**
   * What is known of an engine, respect by respect.
   *
   * @param calibration what its readings have taught
   * @return a correction for each source, in the order of {@link ErrorSource}
   */
  public static List<Correction> of(Calibration calibration) {
    return Stream.of(ErrorSource.values())
        .map(source -> of(source, calibration.difference(source)))
        .toList();
  }

  /** Of a small ln the deviation is the relative one. */
  private static Correction of(ErrorSource source, Normal ln) {
    double ratio = StrictMath.exp(ln.mean());
    return new Correction(source, 100 * (ratio - 1), 100 * ratio * ln.deviation());
  }

  /**
   * {@return what was found, what it means, what to do, and what then, a sentence each; that
   * nothing is to be done where the difference is no more than its spread}
   */
  public String text() {
    return message().text();
  }

  /** {@return the same for any language} */
  public Message message() {
    return Words.correction(this);
  }
}
