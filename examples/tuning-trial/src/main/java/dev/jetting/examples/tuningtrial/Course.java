package dev.jetting.examples.tuningtrial;

/**
 * How one engine was tuned.
 *
 * @param tests tests ridden
 * @param changes parts changed
 * @param said what the session said on the way and at the end
 * @param start what was true of the starting setting
 * @param end what is true of the setting at which it stopped
 * @param heldAtStart at how many openings the 90 % band held the true λ before any test
 * @param squaresAtStart sum over the openings of (ln of true by expected λ)², each by its variance
 *     as the library has it, before any test
 * @param heldAtEnd at how many it does at the end
 * @param riskAtEnd the highest lean risk that the library sees then
 */
record Course(
    int tests,
    int changes,
    Said said,
    Truth start,
    Truth end,
    int heldAtStart,
    double squaresAtStart,
    int heldAtEnd,
    double riskAtEnd) {

  /** A course that asked the library nothing. */
  static Course byHabit(int tests, int changes, Truth start, Truth end) {
    return new Course(tests, changes, Said.NOTHING, start, end, 0, 0, 0, 0);
  }

  /** Whether somebody rides a setting that is lean somewhere on some day. */
  boolean endsLean() {
    return end.leanAnywhere() && said.ending() != Said.Ending.NOT_TO_BE_RIDDEN;
  }
}
