package dev.jetting.units;

/**
 * The flow of a jet on a test bench: the numbering in cubic centimetres a minute.
 *
 * <p>Kept in cubic centimetres a minute, above 0 up to 10000.
 *
 * <p>Says nothing about the bench; the numbers of two benches compare only if head and fluid are
 * the same. Not the bore numbering: that is {@link JetBore}, and only a {@link JetCalibration}
 * leads from one to the other. Not for the flow through a running engine, which is a {@link
 * VolumeFlow}.
 */
public final class JetFlow extends Scalar<JetFlow> {
  private static final Kind KIND =
      Kind.of(
          "jet flow",
          Range.aboveUpTo(0, 10_000),
          Unit.of("cm³/min", "cm3/min", "cc/min", "ml/min", "mL/min"));

  private JetFlow(double cubicCentimetresPerMinute) {
    super(cubicCentimetresPerMinute);
  }

  /**
   * Creates a jet flow from cubic centimetres a minute.
   *
   * @param cubicCentimetresPerMinute cubic centimetres a minute, above 0 up to 10000
   * @return the jet flow
   * @throws QuantityException if {@code cubicCentimetresPerMinute} is not finite or out of range
   */
  public static JetFlow ofCubicCentimetresPerMinute(double cubicCentimetresPerMinute) {
    return new JetFlow(KIND.check(cubicCentimetresPerMinute));
  }

  /**
   * Reads a jet flow: cubic centimetres or millilitres a minute.
   *
   * @param text such as {@code 118 cm³/min}, {@code 118 cm3/min}, {@code 118 cc/min} or {@code 118
   *     ml/min}; a bare number is refused
   * @return the jet flow
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static JetFlow parse(String text) {
    return new JetFlow(KIND.parse(text));
  }

  /**
   * Returns this jet flow in cubic centimetres a minute.
   *
   * @return cubic centimetres a minute
   */
  public double cubicCentimetresPerMinute() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
