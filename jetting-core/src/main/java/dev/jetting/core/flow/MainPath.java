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
 * @param column the fuel from the main jet to the mouth, by its inertia
 */
public record MainPath(
    Nozzle nozzle,
    NeedleAnnulus annulus,
    double annulusFactor,
    double needleJet,
    Jet mainJet,
    double head,
    double density,
    double viscosity,
    FuelColumn column) {

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
   * The fuel.
   *
   * @param flow mean mass flow, kg/s
   * @param needle diameter of the needle in the jet, m
   * @param ring restriction of the ring
   * @param drive what drives it
   */
  public record Fuel(double flow, double needle, Restriction ring, Drive drive) {}

  /**
   * What drives the fuel.
   *
   * @param openShare φ, share of the turn for which the wave stands
   * @param peak suction of the wave less the head, Pa
   * @param mean mean suction less the head, Pa
   * @param inertia N I, Pa s/m³
   */
  public record Drive(double openShare, double peak, double mean, double inertia) {

    /**
     * Mean volume flow through a restriction that is given by its numbers.
     *
     * @param alpha α, Pa/(m³/s)²
     * @param beta β, Pa/(m³/s)
     * @return m³/s
     */
    public double flow(double alpha, double beta) {
      return PulsedFlow.flow(alpha, beta, openShare, peak, mean, inertia);
    }

    PulsedFlow.Sensitivity sensitivity(Restriction all) {
      return PulsedFlow.sensitivity(all.alpha(), all.beta(), openShare, peak, mean, inertia);
    }
  }

  /**
   * What drives the fuel of this path.
   *
   * @param air state of the air side
   * @param suction Δp_N while the wave stands, Pa
   * @return the drive
   */
  public Drive drive(AirSide.State air, double suction) {
    double headPressure = density * GRAVITY * head;
    return new Drive(
        air.openShare(),
        suction - headPressure,
        air.openShare() * suction - headPressure,
        air.revolutions() * density * column.lengthByArea(air.lift()));
  }

  /**
   * How the fuel answers to what meters it.
   *
   * @param ring ∂ ln Q/∂ ln of what the ring passes, zero or more
   * @param jet ∂ ln Q/∂ ln of what the main jet passes, zero or more
   * @param byNeedleJet ∂ ln Q/∂ of the needle jet's diameter, 1/m, zero or more
   * @param byNeedle ∂ ln Q/∂ of the needle's diameter, 1/m, zero or less
   * @param byMainJet ∂ ln Q/∂ of the main jet's bore, 1/m, zero or more
   */
  public record Sensitivities(
      double ring, double jet, double byNeedleJet, double byNeedle, double byMainJet) {}

  /**
   * The fuel.
   *
   * @param drive what drives it
   * @param needle diameter of the needle in the jet, m
   * @return its flow
   */
  public Fuel fuel(Drive drive, double needle) {
    Restriction ring = restriction(needle);
    Restriction all = ring.then(mainJet.restriction());
    return new Fuel(density * drive.flow(all.alpha(), all.beta()), needle, ring, drive);
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
  public Sensitivities sensitivities(Fuel fuel) {
    return sensitivities(
        NeedleAnnulus.Ring.of(fuel.ring, needleJet, fuel.needle), mainJet, fuel.drive);
  }

  /**
   * How the fuel through a ring and a main jet answers.
   *
   * @param ring the ring
   * @param mainJet the main jet
   * @param drive what drives the fuel
   * @return its answers
   */
  public static Sensitivities sensitivities(NeedleAnnulus.Ring ring, Jet mainJet, Drive drive) {
    Restriction own = ring.restriction();
    PulsedFlow.Sensitivity sensitivity = drive.sensitivity(own.then(mainJet.restriction()));
    return new Sensitivities(
        sensitivity.to(passing(own)),
        sensitivity.to(passing(mainJet.restriction())),
        sensitivity.to(ring.byJet()),
        sensitivity.to(ring.byNeedle()),
        sensitivity.to(mainJet.byBore()));
  }

  /** How a restriction changes with the logarithm of what it passes. */
  private static Restriction passing(Restriction restriction) {
    return new Restriction(-2 * restriction.alpha(), -restriction.beta());
  }
}
