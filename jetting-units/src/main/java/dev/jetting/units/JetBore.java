package dev.jetting.units;

/**
 * The bore of a jet: the numbering in hundredths of a millimetre, where a main 118 measures 1.18
 * mm.
 *
 * <p>Kept in millimetres, above 0 up to 10.
 *
 * <p>Not the flow numbering: a jet marked with its flow is a {@link JetFlow}, and only a {@link
 * JetCalibration} leads from one to the other. Not for needles, needle jets and venturis, which are
 * a {@link Diameter}.
 */
public final class JetBore extends Scalar<JetBore> {
  private static final Unit HUNDREDTH = Unit.of("hundredths", "1/100 mm").times("0.01");
  private static final Kind KIND =
      Kind.of("jet bore", Range.aboveUpTo(0, 10), Unit.of("mm"), HUNDREDTH);

  private JetBore(double millimetres) {
    super(millimetres);
  }

  /**
   * Creates a jet bore from millimetres.
   *
   * @param millimetres millimetres, above 0 up to 10
   * @return the jet bore
   * @throws QuantityException if {@code millimetres} is not finite or out of range
   */
  public static JetBore ofMillimetres(double millimetres) {
    return new JetBore(KIND.check(millimetres));
  }

  /**
   * Creates a jet bore from hundredths of a millimetre.
   *
   * @param hundredths hundredths of a millimetre, above 0 up to 1000
   * @return the jet bore
   * @throws QuantityException if {@code hundredths} is not finite or out of range
   */
  public static JetBore ofHundredths(double hundredths) {
    return new JetBore(KIND.check(hundredths, HUNDREDTH));
  }

  /**
   * Reads a jet bore: millimetres or hundredths.
   *
   * @param text such as {@code 1.18 mm}, {@code 118 hundredths} or {@code 118 1/100 mm}; a bare
   *     number is refused, because it does not say which numbering it is
   * @return the jet bore
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static JetBore parse(String text) {
    return new JetBore(KIND.parse(text));
  }

  /**
   * Returns this jet bore in millimetres.
   *
   * @return millimetres
   */
  public double millimetres() {
    return canonical;
  }

  /**
   * Returns this jet bore in hundredths of a millimetre.
   *
   * @return hundredths of a millimetre
   */
  public double hundredths() {
    return HUNDREDTH.fromCanonical(canonical);
  }

  /**
   * Returns the bore as a diameter, for the computation of areas.
   *
   * @return the same number of millimetres
   */
  public Diameter toDiameter() {
    return Diameter.ofMillimetres(canonical);
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
