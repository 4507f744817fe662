package dev.jetting.units;

/**
 * How far an idle mixture screw is turned out, counted from gently seated.
 *
 * <p>Kept in turns, from 0 to 50.
 *
 * <p>Does not say which screw: turned out, a mixture screw makes richer and an air screw leaner;
 * see {@link ScrewKind}.
 */
public final class ScrewTurns extends Scalar<ScrewTurns> {
  private static final Kind KIND =
      Kind.of("screw turns", Range.fromTo(0, 50), Unit.of("turns", "turn", "")).readingFractions();

  private static final Unit QUARTER = Unit.of("quarter turns").over("4");
  private static final Unit EIGHTH = Unit.of("eighth turns").over("8");

  private ScrewTurns(double turns) {
    super(turns);
  }

  /**
   * Returns this number of turns.
   *
   * @param turns turns, from 0 to 50
   * @return the screw turns
   * @throws QuantityException if {@code turns} is not finite or out of range
   */
  public static ScrewTurns of(double turns) {
    return new ScrewTurns(KIND.check(turns));
  }

  /**
   * Returns a number of quarter turns.
   *
   * @param quarters quarter turns, from 0 to 200
   * @return the screw turns
   * @throws QuantityException if {@code quarters} is out of range
   */
  public static ScrewTurns ofQuarters(int quarters) {
    return new ScrewTurns(KIND.check(quarters, QUARTER));
  }

  /**
   * Returns a number of eighth turns.
   *
   * @param eighths eighth turns, from 0 to 400
   * @return the screw turns
   * @throws QuantityException if {@code eighths} is out of range
   */
  public static ScrewTurns ofEighths(int eighths) {
    return new ScrewTurns(KIND.check(eighths, EIGHTH));
  }

  /**
   * Reads screw turns: a decimal, a fraction or a mixed fraction.
   *
   * @param text such as {@code 1.75}, {@code 1.75 turns}, {@code 3/4}, {@code 1 3/4}, {@code 1¾} or
   *     {@code 1½ turns}
   * @return the screw turns
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static ScrewTurns parse(String text) {
    return new ScrewTurns(KIND.parse(text));
  }

  /**
   * Returns how many turns it is out.
   *
   * @return turns
   */
  public double turns() {
    return canonical;
  }

  /**
   * Returns the screw turned further out.
   *
   * @param other how much further
   * @return the sum
   * @throws QuantityException if the sum is out of range
   */
  public ScrewTurns plus(ScrewTurns other) {
    return new ScrewTurns(KIND.check(Sum.of(canonical, given(other, "other"))));
  }

  /**
   * Returns the screw turned back in.
   *
   * @param other how much to turn in
   * @return the difference
   * @throws QuantityException if the screw would be turned in beyond its seat
   */
  public ScrewTurns minus(ScrewTurns other) {
    return new ScrewTurns(KIND.check(Sum.of(canonical, -given(other, "other"))));
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
