package dev.jetting.rules.risk;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.calibration.Spreads;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.SizeSensitivities;
import dev.jetting.core.parts.Coefficient;
import java.util.Map;

/**
 * How far an engine that nobody has measured may differ from the model: standard deviations.
 *
 * <p>The spreads of the four sources are those of the natural logarithm of true by modelled flow,
 * the residual that of ln λ, the tolerances those of the parts as sold. All of {@link #assumed()}
 * is this project's own assumption.
 *
 * @param pilot spread of the pilot circuit, 0 to 1
 * @param needle spread of the ring between needle and needle jet, 0 to 1
 * @param main spread of the main jet, 0 to 1
 * @param air spread of the air by its signal, 0 to 1
 * @param residual spread of what is left, 0 to 1
 * @param residualLength how far apart in throttle opening two residuals are that differ, 0 to 1
 * @param jetTolerance of pilot and main jets, mm, 0 to 1
 * @param needleJetTolerance of needle jets, mm, 0 to 1
 * @param needleTolerance of needles, mm, 0 to 1
 */
public record ModelUncertainty(
    Coefficient pilot,
    Coefficient needle,
    Coefficient main,
    Coefficient air,
    Coefficient residual,
    Coefficient residualLength,
    Coefficient jetTolerance,
    Coefficient needleJetTolerance,
    Coefficient needleTolerance) {

  private static final ModelUncertainty ASSUMED =
      new ModelUncertainty(
          Coefficient.assumed(0.06, "1", "small passages, dirt and burrs; not measured"),
          Coefficient.assumed(0.06, "1", "a needle hangs as it likes; not measured"),
          Coefficient.assumed(0.03, "1", "a jet is the best-made passage; not measured"),
          Coefficient.assumed(0.04, "1", "blowback differs from engine to engine; not measured"),
          Coefficient.assumed(0.03, "1", "what the model leaves out; not measured"),
          Coefficient.assumed(
              0.25, "1", "what the model leaves out changes over a quarter of the throttle"),
          Coefficient.assumed(0.005, "mm", "half of the last digit that is stamped on a jet"),
          Coefficient.assumed(0.003, "mm", "reamed bore; not measured"),
          Coefficient.assumed(0.003, "mm", "ground needle; not measured"));

  /**
   * Checks that each spread can be one.
   *
   * @param pilot spread of the pilot circuit, 0 to 1
   * @param needle spread of the ring between needle and needle jet, 0 to 1
   * @param main spread of the main jet, 0 to 1
   * @param air spread of the air by its signal, 0 to 1
   * @param residual spread of what is left, 0 to 1
   * @param residualLength how far apart in throttle opening two residuals are that differ, 0 to 1
   * @param jetTolerance of pilot and main jets, mm, 0 to 1
   * @param needleJetTolerance of needle jets, mm, 0 to 1
   * @param needleTolerance of needles, mm, 0 to 1
   * @throws IllegalArgumentException if a spread is outside 0 to 1
   */
  public ModelUncertainty {
    check("spread of the pilot circuit", pilot);
    check("spread of the needle's ring", needle);
    check("spread of the main jet", main);
    check("spread of the air", air);
    check("residual spread", residual);
    check("length of the residual", residualLength);
    check("tolerance of jets", jetTolerance);
    check("tolerance of needle jets", needleJetTolerance);
    check("tolerance of needles", needleTolerance);
  }

  /** {@return the library's own assumed spreads} */
  public static ModelUncertainty assumed() {
    return ASSUMED;
  }

  /** {@return the spreads without the parts' tolerances, as a calibration takes them} */
  public Spreads spreads() {
    return new Spreads(
        pilot.value(),
        needle.value(),
        main.value(),
        air.value(),
        residual.value(),
        residualLength.value());
  }

  /**
   * The tolerance of a part as sold.
   *
   * @param part the part
   * @return its standard deviation in the part's own unit; 0 for what the rider sets himself and
   *     for parts whose tolerance is in another's
   */
  public double tolerance(MeteringPart part) {
    return switch (part) {
      case PILOT_JET, MAIN_JET -> jetTolerance.value();
      case NEEDLE_JET -> needleJetTolerance.value();
      case NEEDLE_DIAMETER -> needleTolerance.value();
      case SCREW, CUTAWAY, NEEDLE_TAPER, CLIP -> 0;
    };
  }

  /**
   * What the tolerances of the parts do to the mixture.
   *
   * @param sizes how ln λ answers to the parts' sizes
   * @return variance of ln λ
   */
  public double partsVariance(SizeSensitivities sizes) {
    return square(sizes.pilotJet() * tolerance(MeteringPart.PILOT_JET))
        + square(sizes.needleJet() * tolerance(MeteringPart.NEEDLE_JET))
        + square(sizes.needle() * tolerance(MeteringPart.NEEDLE_DIAMETER))
        + square(sizes.mainJet() * tolerance(MeteringPart.MAIN_JET));
  }

  private static double square(double x) {
    return x * x;
  }

  /** {@return each coefficient by its name, in an order that does not change} */
  public Map<String, Coefficient> basis() {
    return ImmutableMap.<String, Coefficient>builder()
        .put("spread of the pilot circuit", pilot)
        .put("spread of the needle's ring", needle)
        .put("spread of the main jet", main)
        .put("spread of the air by its signal", air)
        .put("residual spread of ln λ", residual)
        .put("throttle length of the residual", residualLength)
        .put("tolerance of jets", jetTolerance)
        .put("tolerance of needle jets", needleJetTolerance)
        .put("tolerance of needles", needleTolerance)
        .buildOrThrow();
  }

  private static void check(String what, Coefficient c) {
    if (!(c.value() >= 0 && c.value() <= 1)) {
      throw new IllegalArgumentException(what + " " + c + ": allowed 0 to 1");
    }
  }
}
