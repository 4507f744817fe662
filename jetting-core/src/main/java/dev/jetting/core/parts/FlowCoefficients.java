package dev.jetting.core.parts;

import dev.jetting.core.checks.Checks;

/**
 * How the passages of a carburettor family flow: the numbers of the mixture model that no ruler
 * gives.
 *
 * <p>{@link #assumed()} is the library's own set, calibrated by hand so that one common-practice
 * setting lands in the usual band; none of it is a measurement of a real carburettor. Somebody with
 * a flow bench replaces it.
 *
 * @param upstreamGap C_U, discharge coefficient of the gap on the filter side of the slide
 * @param downstreamGap C_D, discharge coefficient of the gap on the engine side
 * @param nozzleClosed κ₀, share of the upstream depression felt at the needle jet, slide shut
 * @param nozzleOpen κ₁, the same at full lift
 * @param nozzleExponent m, how it grows between
 * @param neckEffect ν, how much a longer neck weakens it
 * @param needleEntryLoss K_n, entry and exit loss of the ring between needle and needle jet
 * @param needleEccentricity e, 0 for a centred needle to 1 for one that touches
 * @param pilotOutlet C_o, discharge coefficient of the pilot outlet
 * @param pilotBleed C_b, discharge coefficient of the pilot air bleed
 * @param mainJetLength length of the main jet's bore by its diameter
 * @param pilotJetLength length of the pilot jet's bore by its diameter
 */
public record FlowCoefficients(
    Coefficient upstreamGap,
    Coefficient downstreamGap,
    Coefficient nozzleClosed,
    Coefficient nozzleOpen,
    Coefficient nozzleExponent,
    Coefficient neckEffect,
    Coefficient needleEntryLoss,
    Coefficient needleEccentricity,
    Coefficient pilotOutlet,
    Coefficient pilotBleed,
    Coefficient mainJetLength,
    Coefficient pilotJetLength) {

  private static final String BY_HAND =
      "calibrated by hand so that a common-practice setting lands in the usual band; not measured";

  private static final FlowCoefficients ASSUMED =
      new FlowCoefficients(
          Coefficient.assumed(0.80, "1", "rounded edge of the cutaway; " + BY_HAND),
          Coefficient.assumed(0.75, "1", "sharp edge of the slide; " + BY_HAND),
          Coefficient.assumed(0, "1", "still air below a shut slide; " + BY_HAND),
          Coefficient.assumed(2.15, "1", BY_HAND),
          Coefficient.assumed(0.86, "1", BY_HAND),
          Coefficient.assumed(2, "1", BY_HAND),
          Coefficient.assumed(1.05, "1", "one velocity head and a little; " + BY_HAND),
          Coefficient.assumed(0.95, "1", "the stream presses the needle to one side; " + BY_HAND),
          Coefficient.assumed(0.7, "1", BY_HAND),
          Coefficient.assumed(0.8, "1", BY_HAND),
          Coefficient.assumed(2, "1", "usual shape of a jet"),
          Coefficient.assumed(2, "1", "usual shape of a jet"));

  /**
   * Checks each coefficient against the range in which the equations keep their meaning.
   *
   * @param upstreamGap C_U, discharge coefficient of the gap on the filter side of the slide
   * @param downstreamGap C_D, discharge coefficient of the gap on the engine side
   * @param nozzleClosed κ₀, share of the upstream depression felt at the needle jet, slide shut
   * @param nozzleOpen κ₁, the same at full lift
   * @param nozzleExponent m, how it grows between
   * @param neckEffect ν, how much a longer neck weakens it
   * @param needleEntryLoss K_n, entry and exit loss of the ring between needle and needle jet
   * @param needleEccentricity e, 0 for a centred needle to 1 for one that touches
   * @param pilotOutlet C_o, discharge coefficient of the pilot outlet
   * @param pilotBleed C_b, discharge coefficient of the pilot air bleed
   * @param mainJetLength length of the main jet's bore by its diameter
   * @param pilotJetLength length of the pilot jet's bore by its diameter
   * @throws IllegalArgumentException if one is out of range
   */
  public FlowCoefficients {
    share("upstreamGap", upstreamGap);
    share("downstreamGap", downstreamGap);
    within("nozzleClosed", nozzleClosed, 0, 10);
    within("nozzleOpen", nozzleOpen, nozzleClosed.value(), 10);
    within("nozzleExponent", nozzleExponent, 0.1, 10);
    within("neckEffect", neckEffect, 0, 20);
    within("needleEntryLoss", needleEntryLoss, 0.1, 10);
    within("needleEccentricity", needleEccentricity, 0, 1);
    share("pilotOutlet", pilotOutlet);
    share("pilotBleed", pilotBleed);
    within("mainJetLength", mainJetLength, 0.5, 10);
    within("pilotJetLength", pilotJetLength, 0.5, 10);
  }

  /** {@return the library's own assumed set} */
  public static FlowCoefficients assumed() {
    return ASSUMED;
  }

  private static void share(String name, Coefficient c) {
    within(name, c, 0.05, 1);
  }

  private static void within(String name, Coefficient c, double low, double high) {
    Checks.within("flow coefficient " + name, c.value(), low, high);
  }
}
