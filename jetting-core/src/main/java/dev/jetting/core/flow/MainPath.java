package dev.jetting.core.flow;

/**
 * The way of the fuel through main jet and needle jet.
 *
 * @param nozzle suction at the needle jet's mouth
 * @param annulus needle in needle jet
 * @param annulusFactor factor on what the ring passes; 1 unless an engine is known to differ
 * @param needleJet diameter of the needle jet, m
 * @param mainJet the main jet
 * @param head height of the mouth over the fuel level, m
 * @param density ρ of the fuel, kg/m³
 * @param viscosity μ of the fuel, Pa s
 */
public record MainPath(
    Nozzle nozzle,
    NeedleAnnulus annulus,
    double annulusFactor,
    double needleJet,
    Jet mainJet,
    double head,
    double density,
    double viscosity) {

  /** Standard acceleration of free fall, m/s² (exact by definition, ISO 80000-3). */
  public static final double GRAVITY = 9.80665;

  /**
   * Suction at the needle jet's mouth: Δp (i_F + κ i_U)/S.
   *
   * @param air state of the air side
   * @param felt κ, by the nozzle's factor there
   * @return Δp_N, Pa
   */
  public static double suction(AirSide.State air, double felt) {
    return air.depression() * (air.filterShare() + felt * air.upstreamShare());
  }

  /**
   * The fuel while the inlet is open.
   *
   * @param flow mass flow, kg/s
   * @param volumeFlow Q, m³/s
   * @param needle diameter of the needle in the jet, m
   * @param ring restriction of the ring
   */
  public record Fuel(double flow, double volumeFlow, double needle, Restriction ring) {}

  /**
   * How the fuel answers to what meters it.
   *
   * @param ring ∂ ln Q/∂ ln of what the ring passes, 0 to 1; the main jet has the rest
   * @param byNeedleJet ∂ ln Q/∂ of the needle jet's diameter, 1/m, zero or more
   * @param byNeedle ∂ ln Q/∂ of the needle's diameter, 1/m, zero or less
   * @param byMainJet ∂ ln Q/∂ of the main jet's bore, 1/m, zero or more
   */
  public record Answers(double ring, double byNeedleJet, double byNeedle, double byMainJet) {}

  /**
   * The fuel while the inlet is open.
   *
   * @param suction Δp_N, Pa
   * @param needle diameter of the needle in the jet, m
   * @return its flow
   */
  public Fuel fuel(double suction, double needle) {
    Restriction ring = restriction(needle);
    double flow = ring.then(mainJet.restriction()).flow(suction - density * GRAVITY * head);
    return new Fuel(density * flow, flow, needle, ring);
  }

  /**
   * The ring with how it changes, the needle standing in the jet with a diameter.
   *
   * @param needle diameter of the needle in the jet, m
   * @return the ring
   */
  public NeedleAnnulus.Ring ring(double needle) {
    return NeedleAnnulus.Ring.of(restriction(needle), needleJet, needle);
  }

  /**
   * What the ring does to the fuel, the needle standing in the jet with a diameter.
   *
   * @param needle diameter of the needle in the jet, m
   * @return its restriction
   */
  public Restriction restriction(double needle) {
    return annulus.restriction(needleJet, needle, density, viscosity).passing(annulusFactor);
  }

  /**
   * How the fuel answers.
   *
   * @param fuel the fuel of this path
   * @return its answers
   */
  public Answers answers(Fuel fuel) {
    return answers(
        NeedleAnnulus.Ring.of(fuel.ring, needleJet, fuel.needle), mainJet, fuel.volumeFlow);
  }

  /**
   * How the fuel through a ring and a main jet answers.
   *
   * @param ring the ring
   * @param mainJet the main jet
   * @param flow Q through both, m³/s
   * @return its answers
   */
  public static Answers answers(NeedleAnnulus.Ring ring, Jet mainJet, double flow) {
    Restriction all = ring.restriction().then(mainJet.restriction());
    return new Answers(
        ring.restriction().say(all, flow),
        all.answer(ring.byJet(), flow),
        all.answer(ring.byNeedle(), flow),
        all.answer(mainJet.byBore(), flow));
  }
}
