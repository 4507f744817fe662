package dev.jetting.units;

/**
 * A mass in a volume, of air or of a liquid.
 *
 * <p>Kept in kilograms in a cubic metre, above 0 up to 25000.
 *
 * <p>Not a specific gravity, which has no unit and depends on the reference liquid's temperature.
 */
public final class Density extends Scalar<Density> {
  private static final Kind KIND =
      Kind.of("density", Range.aboveUpTo(0, 25_000), Unit.of("kg/m³", "kg/m3", "g/L", "g/l"));

  private Density(double kilogramsPerCubicMetre) {
    super(kilogramsPerCubicMetre);
  }

  /**
   * Creates a density from kilograms in a cubic metre.
   *
   * @param kilogramsPerCubicMetre kilograms in a cubic metre, above 0 up to 25000
   * @return the density
   * @throws QuantityException if {@code kilogramsPerCubicMetre} is not finite or out of range
   */
  public static Density ofKilogramsPerCubicMetre(double kilogramsPerCubicMetre) {
    return new Density(KIND.check(kilogramsPerCubicMetre));
  }

  /**
   * Reads a density: kilograms in a cubic metre, which are grams in a litre.
   *
   * @param text such as {@code 1.225 kg/m³}, {@code 745 kg/m3} or {@code 745 g/L}
   * @return the density
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static Density parse(String text) {
    return new Density(KIND.parse(text));
  }

  /**
   * Returns this density in kilograms in a cubic metre.
   *
   * @return kilograms in a cubic metre
   */
  public double kilogramsPerCubicMetre() {
    return canonical;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
