package dev.jetting.units;

import java.util.Objects;

/**
 * A conversion between the bore of a jet and its flow on a test bench. It has the head of liquid
 * above the jet, the liquid, the law of discharge, and the uncertainty of the result. The flow is Q
 * = Cd π/4 d² √(2 g h), with standard gravity g = 9.80665 m/s² (by definition).
 *
 * <p>It is the only way between {@link JetBore} and {@link JetFlow}, and every call states what it
 * assumes. Not for the flow through a jet in a running engine.
 *
 * @param head the height of liquid above the jet, more than none
 * @param liquid what flows
 * @param law how the discharge coefficient follows from the jet and the liquid
 * @param relativeUncertainty the standard uncertainty of a flow as a share of it, from 0 to 0.5:
 *     how far jets of the same bore differ, and how well the law fits
 */
public record JetCalibration(
    Length head, Liquid liquid, DischargeLaw law, double relativeUncertainty) {

  private static final double STANDARD_GRAVITY = 9.80665;
  private static final double CUBIC_CENTIMETRES_PER_MINUTE = 60e6;
  private static final double LARGEST_BORE = 10;

  /**
   * Checks the numbers.
   *
   * @param head the height of liquid above the jet
   * @param liquid what flows
   * @param law the law of the discharge coefficient
   * @param relativeUncertainty the standard uncertainty of a flow as a share of it
   * @throws QuantityException if there is no head or {@code relativeUncertainty} is not from 0 to
   *     0.5
   */
  public JetCalibration {
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(liquid, "liquid");
    Objects.requireNonNull(law, "law");
    check("error.name.jet-calibration.head", head.millimetres(), Range.aboveUpTo(0, 100_000));
    check("error.name.jet-calibration.uncertainty", relativeUncertainty, Range.fromTo(0, 0.5));
  }

  /**
   * The liquid on a test bench.
   *
   * @param name what it is, for people
   * @param density its density at the temperature of the test
   * @param viscosity its dynamic viscosity at the temperature of the test
   */
  public record Liquid(String name, Density density, DynamicViscosity viscosity) {

    private static final int LONGEST_NAME = 60;

    /**
     * Checks the name.
     *
     * @param name what it is, for people; one line of at most 60 UTF-16 units
     * @param density its density
     * @param viscosity its dynamic viscosity
     * @throws InvalidValueException if the name is longer or not one line of visible characters
     */
    public Liquid {
      Objects.requireNonNull(name, "name");
      if (name.length() > LONGEST_NAME || name.codePoints().anyMatch(OneLine::steers)) {
        throw InvalidValueException.worded(
            Sentence.of("error.value")
                .with("what", Sentence.of("error.name.liquid"))
                .with("value", OneLine.quoted(name)),
            "name",
            OneLine.quoted(name),
            Sentence.of("error.one-line.visible").with("most", LONGEST_NAME));
      }
      Objects.requireNonNull(density, "density");
      Objects.requireNonNull(viscosity, "viscosity");
    }
  }

  /** How the discharge coefficient of a jet follows from its Reynolds number. */
  public sealed interface DischargeLaw {
    /**
     * Returns the share of the ideal flow that passes.
     *
     * @param reynolds the Reynolds number ρ v d / μ of the ideal velocity v = √(2 g h), above 0
     * @return the discharge coefficient, above 0
     */
    double coefficient(double reynolds);
  }

  /**
   * The same discharge coefficient for every jet.
   *
   * @param coefficient the coefficient, above 0 up to 1; measured or assumed by the caller
   */
  public record ConstantCoefficient(double coefficient) implements DischargeLaw {
    /**
     * Checks the number.
     *
     * @param coefficient the coefficient
     * @throws QuantityException if {@code coefficient} is not above 0 up to 1
     */
    public ConstantCoefficient {
      check("error.name.jet-calibration.discharge", coefficient, Range.aboveUpTo(0, 1));
    }

    @Override
    public double coefficient(double reynolds) {
      return coefficient;
    }
  }

  /**
   * A bore with sharp edges whose length is a fixed multiple of its diameter: Lichtarowicz, Duggins
   * and Markland 1965, 1/Cd = 1/Cdu + (20/Re)(1 + 2.25 L/d) − 0.005 (L/d) / (1 + 7.5 (log10 0.00015
   * Re)²), Cdu = 0.827 − 0.0085 L/d.
   *
   * <p>The Reynolds number is taken on the ideal velocity: only then does the flow become
   * proportional to the head where viscosity rules, as it must. The formula was fitted from about
   * 10 to 20 000 (from memory); beyond it is an extrapolation.
   *
   * @param lengthToDiameter L/d, from 2 to 10
   */
  public record ShortOrifice(double lengthToDiameter) implements DischargeLaw {
    /**
     * Checks the number.
     *
     * @param lengthToDiameter L/d
     * @throws QuantityException if {@code lengthToDiameter} is not from 2 to 10
     */
    public ShortOrifice {
      check("error.name.jet-calibration.length", lengthToDiameter, Range.fromTo(2, 10));
    }

    @Override
    public double coefficient(double reynolds) {
      double ultimate = 0.827 - 0.0085 * lengthToDiameter;
      double decades = StrictMath.log10(1.5e-4 * reynolds);
      return 1
          / (1 / ultimate
              + 20 / reynolds * (1 + 2.25 * lengthToDiameter)
              - 0.005 * lengthToDiameter / (1 + 7.5 * decades * decades));
    }
  }

  /**
   * Returns the calibration of a bench on which a jet of known bore was measured, with the constant
   * discharge coefficient that follows.
   *
   * @param bore the bore of the jet
   * @param flow its flow on the bench
   * @param head the height of liquid above the jet, more than none
   * @param liquid what flowed
   * @param relativeUncertainty the standard uncertainty of flows computed with it, as a share, from
   *     0 to 0.5
   * @return the calibration
   * @throws QuantityException if there is no head, if more would flow than the ideal flow, or if
   *     {@code relativeUncertainty} is out of range
   */
  public static JetCalibration fromMeasurement(
      JetBore bore, JetFlow flow, Length head, Liquid liquid, double relativeUncertainty) {
    double ideal =
        new JetCalibration(head, liquid, new ConstantCoefficient(1), relativeUncertainty)
            .flow(Objects.requireNonNull(bore, "bore").millimetres());
    double measured = Objects.requireNonNull(flow, "flow").cubicCentimetresPerMinute();
    return new JetCalibration(
        head, liquid, new ConstantCoefficient(measured / ideal), relativeUncertainty);
  }

  /**
   * Returns the flow to expect of a bore.
   *
   * @param bore the bore of a jet
   * @return its flow on this bench, give or take the relative uncertainty
   * @throws QuantityException if the flow is out of the range of {@link JetFlow}
   */
  public Uncertain<JetFlow> flowOf(JetBore bore) {
    double flow = flow(Objects.requireNonNull(bore, "bore").millimetres());
    return new Uncertain<>(
        JetFlow.ofCubicCentimetresPerMinute(flow),
        JetFlow.ofCubicCentimetresPerMinute(flow * (1 - relativeUncertainty)),
        JetFlow.ofCubicCentimetresPerMinute(flow * (1 + relativeUncertainty)));
  }

  /**
   * Returns the bore to expect of a flow.
   *
   * @param flow the flow of a jet on this bench
   * @return the bore that has this flow, give or take what the uncertainty of flows makes of it
   * @throws QuantityException if no bore in the range of {@link JetBore} lets so much through
   */
  public Uncertain<JetBore> boreOf(JetFlow flow) {
    double number = Objects.requireNonNull(flow, "flow").cubicCentimetresPerMinute();
    return new Uncertain<>(
        JetBore.ofMillimetres(bore(number)),
        JetBore.ofMillimetres(bore(number / (1 + relativeUncertainty))),
        JetBore.ofMillimetres(bore(number / (1 - relativeUncertainty))));
  }

  /**
   * Returns what the calibration assumes, for people.
   *
   * @return such as {@code head 500 mm of water (998.2 kg/m³, 0.001002 Pa·s), discharge coefficient
   *     0.8, standard uncertainty 3 % of the flow}
   */
  @Override
  public String toString() {
    String coefficient =
        law instanceof ShortOrifice orifice
            ? "short orifice of length to diameter " + Text.number(orifice.lengthToDiameter())
            : "discharge coefficient " + Text.number(law.coefficient(1));
    return "head %s of %s (%s, %s), %s, standard uncertainty %s %% of the flow"
        .formatted(
            head,
            liquid.name(),
            liquid.density(),
            liquid.viscosity(),
            coefficient,
            Text.number(Unit.of("%").times("0.01").fromCanonical(relativeUncertainty)));
  }

  /** In cm³/min, of a bore in mm; rises with the bore. */
  private double flow(double bore) {
    double metres = bore / 1000;
    double velocity = Math.sqrt(2 * STANDARD_GRAVITY * head.millimetres() / 1000);
    double reynolds =
        liquid.density().kilogramsPerCubicMetre()
            * velocity
            * metres
            / liquid.viscosity().pascalSeconds();
    return law.coefficient(reynolds)
        * (Math.PI / 4 * metres * metres)
        * velocity
        * CUBIC_CENTIMETRES_PER_MINUTE;
  }

  /** Halves the interval that holds the bore until no double lies between its ends. */
  private double bore(double flow) {
    double most = flow(LARGEST_BORE);
    if (flow > most) {
      throw QuantityException.outOfRange(
          Sentence.of("error.name.jet-calibration.flow"),
          flow,
          "cm³/min",
          Sentence.of("error.up-to").with("most", new Sentence.Amount(most, "cm³/min")));
    }
    double low = 0;
    double high = LARGEST_BORE;
    for (double middle = high / 2; low < middle && middle < high; middle = (low + high) / 2) {
      if (flow(middle) < flow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static void check(String key, double value, Range range) {
    if (!range.contains(value)) {
      throw QuantityException.outOfRange(
          Sentence.of(key), value, "", range.describeIn(Unit.of("")));
    }
  }
}
