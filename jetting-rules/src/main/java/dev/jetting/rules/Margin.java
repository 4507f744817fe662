package dev.jetting.rules;

import static java.util.Comparator.comparingDouble;

import dev.jetting.units.OneLine;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a rule measured against which limit, and how much is left to it. A rule that passes and one
 * that fails state it by the same number, so that settings can be compared.
 *
 * <pre>{@code
 * Margin margin = Margin.atMost("setting.mainJet", measured, limit, ThrottleBand.WHOLE);
 * return margin.fails() ? Outcome.failed(margin.finding().says(…)) : Outcome.passed(margin);
 * }</pre>
 *
 * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
 * @param measured what was measured
 * @param limit what it was held against, in the same unit
 * @param left what is left to the limit, in the unit of both; below zero by how much it is beyond
 * @param band where in the throttle range
 */
public record Margin(
    String subject, Measure measured, Measure limit, Measure left, ThrottleBand band) {

  /**
   * Checks for nulls.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit what it was held against, in the same unit
   * @param left what is left to the limit
   * @param band where in the throttle range
   */
  public Margin {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(left, "left");
    Objects.requireNonNull(band, "band");
    PlainLine.checkLength("subject of a margin", subject);
  }

  /**
   * Creates the margin of something that may be as much as its limit.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit the most allowed, in the same unit
   * @param band where in the throttle range
   * @return the margin; what is left is the limit less what was measured
   * @throws IllegalArgumentException if the units differ
   */
  public static Margin atMost(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(subject, measured, limit, limit.value() - measured.value(), band);
  }

  /**
   * Creates the margin of something that may be as little as its limit.
   *
   * @param subject path of the part or circuit it is about
   * @param measured what was measured
   * @param limit the least allowed, in the same unit
   * @param band where in the throttle range
   * @return the margin; what is left is what was measured less the limit
   * @throws IllegalArgumentException if the units differ
   */
  public static Margin atLeast(String subject, Measure measured, Measure limit, ThrottleBand band) {
    return of(subject, measured, limit, measured.value() - limit.value(), band);
  }

  private static Margin of(
      String subject, Measure measured, Measure limit, double left, ThrottleBand band) {
    if (!measured.unit().equals(limit.unit())) {
      throw new IllegalArgumentException(
          "limit "
              + limit
              + " of something measured as "
              + measured
              + ": allowed a limit in the unit "
              + OneLine.quoted(measured.unit()));
    }
    return new Margin(subject, measured, limit, new Measure(left, limit.unit()), band);
  }

  static Margin of(Finding finding) {
    return new Margin(
        finding.subject(), finding.measured(), finding.limit(), finding.margin(), finding.band());
  }

  /** {@return whether what was measured is beyond the limit; on the limit it is not} */
  public boolean fails() {
    return left.value() < 0;
  }

  /**
   * Returns what is left as a share of the limit, by which margins in different units are compared.
   *
   * @return below zero where the limit is exceeded; of a limit of zero what is left itself
   */
  public double share() {
    double share = left.value() / Math.abs(limit.value());
    return Double.isFinite(share) ? share : left.value();
  }

  /** {@return the texts of a finding of these numbers, for a rule that fails by them} */
  public Finding.Texts finding() {
    return Finding.of(this);
  }

  /** The margin of a rule that holds where this one's does not. */
  Margin turned() {
    return of(subject, measured, limit, -left.value(), band);
  }

  /**
   * Returns the margin that is nearest to failing, or furthest beyond its limit.
   *
   * @param margins the margins
   * @return the one with the least share, the first of equals; empty if there are none
   */
  public static Optional<Margin> nearest(List<Margin> margins) {
    return margins.stream().min(comparingDouble(Margin::share));
  }
}
