package dev.jetting.core.calibration;

import dev.jetting.core.checks.Checks;
import java.util.List;
import java.util.Objects;

/**
 * A number that is normally distributed in each of a few cases: what statistics call a finite
 * mixture of normal distributions, a word that means something else here.
 *
 * @param cases the cases; at least one
 */
public record NormalCases(List<Case> cases) {

  /**
   * One case.
   *
   * @param probability its probability, more than 0 and at most 1
   * @param value the number's distribution in this case
   */
  public record Case(double probability, Normal value) {

    /**
     * Checks the probability.
     *
     * @param probability its probability, more than 0 and at most 1
     * @param value the number's distribution in this case
     * @throws IllegalArgumentException if the probability is out of range
     */
    public Case {
      Checks.that(
          probability > 0 && probability <= 1,
          "probability of a case",
          probability,
          "more than 0 and at most 1");
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * Copies the list.
   *
   * @param cases the cases; at least one, their probabilities with the sum 1
   * @throws IllegalArgumentException if there is none or the sum is not 1
   */
  public NormalCases {
    cases = List.copyOf(cases);
    double sum = 0;
    for (Case each : cases) {
      sum += each.probability();
    }
    Checks.that(Math.abs(sum - 1) < 1e-9, "probabilities of the cases, sum", sum, "1");
  }

  /**
   * The case in the middle of the list: that which is as expected, where they rise.
   *
   * @return the number's distribution in this case
   */
  public Normal middle() {
    return cases.get(cases.size() / 2).value();
  }

  /** {@return the mean over all cases} */
  public double mean() {
    double mean = 0;
    for (Case each : cases) {
      mean += each.probability() * each.value().mean();
    }
    return mean;
  }

  /** {@return the standard deviation over all cases: within them, and of their means} */
  public double deviation() {
    double mean = mean();
    double variance = 0;
    for (Case each : cases) {
      double off = each.value().mean() - mean;
      double within = each.value().deviation();
      variance += each.probability() * (within * within + off * off);
    }
    return Math.sqrt(variance);
  }

  /**
   * Returns this number with an independent error of mean zero added in every case.
   *
   * @param variance the error's variance, 0 or more
   * @return the sum, normal in each case
   */
  public NormalCases plus(double variance) {
    return new NormalCases(
        cases.stream()
            .map(each -> new Case(each.probability(), each.value().plus(variance)))
            .toList());
  }

  /**
   * The probability of more than a number.
   *
   * @param number the number
   * @return 0 to 1
   */
  public double above(double number) {
    double above = 0;
    for (Case each : cases) {
      above += each.probability() * each.value().above(number);
    }
    return Math.min(above, 1); // the sum of the probabilities is 1, except for rounding
  }
}
