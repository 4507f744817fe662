package dev.jetting.rules.laws;

import java.util.Objects;
import java.util.Optional;

/**
 * The result of trying a law.
 *
 * @param lawId id of the law
 * @param title its title
 * @param held on how many trials it held
 * @param notTried on how many trials it could say nothing
 * @param counterexample the first violation, shrunken; empty if there was none. A law is not tried
 *     further once it is violated
 */
public record LawResult(
    String lawId, String title, int held, int notTried, Optional<Counterexample> counterexample) {

  /**
   * Checks for nulls.
   *
   * @param lawId id of the law
   * @param title its title
   * @param held on how many trials it held
   * @param notTried on how many trials it could say nothing
   * @param counterexample the first violation, shrunken; empty if there was none
   */
  public LawResult {
    Objects.requireNonNull(lawId, "lawId");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(counterexample, "counterexample");
  }

  /** {@return whether the law held on at least one trial and was violated on none} */
  public boolean wasTriedAndHeld() {
    return held > 0 && counterexample.isEmpty();
  }

  /** {@return a line, and the counterexample if there is one} */
  @Override
  public String toString() {
    return lawId
        + ": "
        + (counterexample.isPresent() ? "violated after it held" : "held")
        + " on "
        + held
        + " trials, not tried on "
        + notTried
        + "\n"
        + counterexample.map(Counterexample::toString).orElse("");
  }
}
