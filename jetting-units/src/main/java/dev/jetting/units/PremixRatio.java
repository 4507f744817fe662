package dev.jetting.units;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Petrol to two-stroke oil in a premix, by volume: 50:1 is one part of oil on fifty of petrol. The
 * trade calls it 2 %, which is oil over petrol, not oil over the whole. {@link #NO_OIL} is petrol
 * without oil.
 *
 * <p>Ordered by how much oil there is: {@link #NO_OIL} first, then 100:1, 50:1, 25:1.
 *
 * <p>Not a ratio by mass, and not for an oil pump, whose ratio changes with the throttle.
 */
public final class PremixRatio extends Scalar<PremixRatio> {
  private static final Unit OIL_PERCENT = Unit.of("%", "% oil").times("1E+2").inverted();
  private static final Kind KIND =
      Kind.of("premix ratio", Range.fromTo(1, 10_000), Unit.of(":1"), OIL_PERCENT);

  private static final String NO_OIL_TEXT = "no oil";
  private static final Set<String> NO_OIL_FORMS = Set.of(NO_OIL_TEXT, "0 %", "0%");

  /** Petrol without oil. */
  public static final PremixRatio NO_OIL = new PremixRatio(Double.POSITIVE_INFINITY);

  private PremixRatio(double petrolToOil) {
    super(petrolToOil);
  }

  /**
   * Creates a premix from parts of petrol on one part of oil, by volume.
   *
   * @param petrolToOil parts of petrol, from 1 to 10000
   * @return the premix ratio
   * @throws QuantityException if {@code petrolToOil} is not finite or out of range
   */
  public static PremixRatio ofPetrolToOil(double petrolToOil) {
    return new PremixRatio(KIND.check(petrolToOil));
  }

  /**
   * Creates a premix from parts of oil on a hundred parts of petrol, by volume.
   *
   * @param percent parts of oil: 0, which is {@link #NO_OIL}, or from 0.01 to 100
   * @return the premix ratio
   * @throws QuantityException if {@code percent} is not finite or out of range
   */
  public static PremixRatio ofOilPercent(double percent) {
    return percent == 0 ? NO_OIL : new PremixRatio(KIND.check(percent, OIL_PERCENT));
  }

  /**
   * Reads a premix ratio: petrol to oil, oil to petrol, percent of oil on petrol, or none.
   *
   * @param text such as {@code 50:1}, {@code 1:50}, {@code 2 %}, {@code 2 % oil} or {@code no oil}
   * @return the premix ratio
   * @throws QuantityException if the text has another form or the value is out of range
   */
  public static PremixRatio parse(String text) {
    String form = Objects.requireNonNull(text, "text").strip();
    if (NO_OIL_FORMS.contains(form)) {
      return NO_OIL;
    }
    boolean oilFirst = form.startsWith("1:");
    String petrolFirst = oilFirst ? form.substring("1:".length()) + ":1" : form;
    return new PremixRatio(KIND.parse(petrolFirst, text));
  }

  /**
   * Returns whether there is oil in the petrol.
   *
   * @return false for {@link #NO_OIL} only
   */
  public boolean hasOil() {
    return canonical != Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the parts of petrol on one part of oil, by volume.
   *
   * @return parts of petrol
   * @throws IllegalStateException if there is no oil
   */
  public double petrolToOil() {
    if (!hasOil()) {
      throw new IllegalStateException("premix ratio no oil: there is no petrol-to-oil ratio");
    }
    return canonical;
  }

  /**
   * Returns the volume of oil over the volume of petrol.
   *
   * @return oil over petrol, from 0 to 1; 0 without oil
   */
  public double oilShareOfPetrol() {
    return 1 / canonical;
  }

  /**
   * Returns the parts of oil on a hundred parts of petrol, by volume.
   *
   * @return percent of oil on petrol; 0 without oil
   */
  public double oilPercent() {
    return hasOil() ? OIL_PERCENT.fromCanonical(canonical) : 0;
  }

  @Override
  public Optional<Sentence.Amount> amount() {
    return hasOil() ? super.amount() : Optional.empty();
  }

  /** Orders by how much oil there is. */
  @Override
  public int compareTo(PremixRatio other) {
    return Double.compare(Objects.requireNonNull(other, "other").canonical, canonical);
  }

  @Override
  public String toString() {
    return hasOil() ? super.toString() : NO_OIL_TEXT;
  }

  @Override
  Kind kind() {
    return KIND;
  }
}
