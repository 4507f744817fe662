package dev.jetting.rules.risk;

import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a change did to the mixture and to the lean risk, opening by opening.
 *
 * <p>Example: {@code ProfileDifference.from(before.profile()).to(after.profile()).csv()}.
 *
 * @param rows the rows by rising throttle, at least one
 */
public record ProfileDifference(List<Row> rows) {

  /** The first line of {@link #csv()}: the names of its columns. */
  public static final String CSV_HEADER =
      "throttle_percent,lambda_before,lambda_after,ln_lambda_change,"
          + "lean_risk_before,lean_risk_after";

  /** Of equals, both ends keep the first. */
  private static final Comparator<Row> BY_CHANGE = Comparator.comparingDouble(Row::lnLambdaChange);

  /**
   * The mixture at an opening, at the speed of the level road.
   *
   * @param lambda the mixture expected there
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   */
  public record Mixture(Lambda lambda, Probability leanRisk) {

    /**
     * Checks for nulls.
     *
     * @param lambda the mixture expected there
     * @param leanRisk probability that the true mixture is leaner than the lean limit
     */
    public Mixture {
      Objects.requireNonNull(lambda, "lambda");
      Objects.requireNonNull(leanRisk, "leanRisk");
    }

    private static Mixture of(RiskPoint point) {
      return new Mixture(point.lambda(), point.leanRisk());
    }
  }

  /**
   * One throttle opening.
   *
   * @param throttle throttle opening by lift
   * @param before the mixture before
   * @param after the mixture after
   */
  public record Row(ThrottleOpening throttle, Mixture before, Mixture after) {

    /**
     * Checks for nulls.
     *
     * @param throttle throttle opening by lift
     * @param before the mixture before
     * @param after the mixture after
     */
    public Row {
      Objects.requireNonNull(throttle, "throttle");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }

    /** {@return by how much ln λ changed: below zero where it became richer} */
    public double lnLambdaChange() {
      return StrictMath.log(after.lambda().value() / before.lambda().value());
    }

    private String csv() {
      List<String> cells = new ArrayList<>();
      cells.add(CsvNumber.text(throttle.percent()));
      cells.add(CsvNumber.text(before.lambda().value()));
      cells.add(CsvNumber.text(after.lambda().value()));
      cells.add(CsvNumber.text(lnLambdaChange()));
      cells.add(CsvNumber.text(before.leanRisk().value()));
      cells.add(CsvNumber.text(after.leanRisk().value()));
      return String.join(",", cells);
    }
  }

  /** The first half of a comparison. */
  public static final class Before {
    private final RiskProfile before;

    private Before(RiskProfile before) {
      this.before = Objects.requireNonNull(before, "before");
    }

    /**
     * Compares the profile before with that after a change.
     *
     * @param after the profile after
     * @return what they differ in, one row for each opening
     * @throws IllegalArgumentException if it has other throttle openings
     */
    public ProfileDifference to(RiskProfile after) {
      if (!openings(before).equals(openings(after))) {
        throw new IllegalArgumentException(
            "throttle openings "
                + openings(after)
                + " after a change: allowed those before it, "
                + openings(before));
      }
      List<Row> rows = new ArrayList<>();
      for (int i = 0; i < before.points().size(); i++) {
        RiskPoint was = before.points().get(i);
        RiskPoint is = after.points().get(i);
        rows.add(new Row(was.mixture().throttle(), Mixture.of(was), Mixture.of(is)));
      }
      return new ProfileDifference(rows);
    }
  }

  /**
   * Copies the rows.
   *
   * @param rows the rows by rising throttle, at least one
   * @throws IllegalArgumentException if there is none
   */
  public ProfileDifference {
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(
          "difference of two profiles without rows: allowed at least one");
    }
  }

  /**
   * Begins a comparison.
   *
   * @param before the profile before a change
   * @return the first half; {@link Before#to} completes it
   */
  public static Before from(RiskProfile before) {
    return new Before(before);
  }

  /** {@return the opening that became richer by most, the smallest of equals; empty if none did} */
  public Optional<Row> mostRicher() {
    return rows.stream().min(BY_CHANGE).filter(row -> row.lnLambdaChange() < 0);
  }

  /** {@return the opening that became leaner by most, the smallest of equals; empty if none did} */
  public Optional<Row> mostLeaner() {
    return rows.stream().max(BY_CHANGE).filter(row -> row.lnLambdaChange() > 0);
  }

  /**
   * Returns the difference as comma-separated values with a header line: percent and plain numbers
   * with at most five digits and a decimal point, lines ended by a line feed.
   *
   * @return the text
   */
  public String csv() {
    return rows.stream().map(Row::csv).collect(Collectors.joining("\n", CSV_HEADER + "\n", "\n"));
  }

  private static List<ThrottleOpening> openings(RiskProfile profile) {
    return profile.points().stream().map(point -> point.mixture().throttle()).toList();
  }
}
