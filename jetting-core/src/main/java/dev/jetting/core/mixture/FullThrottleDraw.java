package dev.jetting.core.mixture;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.flow.ShortOrifice;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Area;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.VolumeFlow;
import java.util.List;

/**
 * The fuel that full throttle draws at the speed of the load line's peak, as a float valve has to
 * let it in: worked out by the model, or a bound above it for a small part of the work.
 *
 * <p>The bound solves nothing. At the model's balance A_eff √(RT) Ψ(r) = k r V η N. By Bernoulli's
 * inequality 1 − r^a ≥ a (1−r) for 0 ≤ a ≤ 1, so with a = (γ−1)/γ, Ψ(r)² = 2/a · r^(2/γ) (1 − r^a)
 * ≥ 2 r² (1−r), and below the critical ratio, where Ψ is held at its greatest, all the more. Hence
 * the depression p₀ (1−r) is at most ρ/2 (k V η N/A_eff)², as if the air did not expand, and never
 * more than p₀. Fuel rises with it. What the bound leaves out would only hold fuel back: friction,
 * the heads, and the pilot's bleed and outlet. The needle is taken a hair further up, where it is
 * thinner or gone.
 *
 * <p>Not for a mixture: that is {@link MixtureModel}.
 */
public final class FullThrottleDraw {

  /** Far more than the roundings of the model and of the bound. */
  private static final double SLACK = 1e-6;

  /** What rounding may move the needle by, and more, mm. */
  private static final double HAIR = 1e-6;

  private static final double SQUARE_MM = 1e-6;

  /** In a m³/s. */
  private static final double LITRES_PER_HOUR = 3.6e6;

  private FullThrottleDraw() {}

  /**
   * What the model says.
   *
   * @param setup engine, setting, air and fuel
   * @return fuel and oil through both circuits, mean over the cycle
   * @throws IllegalArgumentException if the air is colder than −40 °C and the fuel is a blend,
   *     whose density and viscosity are not known there
   */
  public static VolumeFlow of(Setup setup) {
    MixturePoint open = MixtureModel.of(setup).at(ThrottleOpening.FULL);
    return VolumeFlow.from(open.mainFuelFlow().plus(open.pilotFuelFlow()), setup.fuelDensity());
  }

  /**
   * What the model cannot exceed; with the usual parts about a fifth more than it says.
   *
   * @param setup engine, setting, air and fuel
   * @return a flow that is no less than {@link #of} the setup
   * @throws IllegalArgumentException if the air is colder than −40 °C and the fuel is a blend,
   *     whose density is not known there
   */
  public static VolumeFlow atMost(Setup setup) {
    return atMost(setup, List.of(setup.air()), List.of(setup.fuel()));
  }

  /**
   * What the model cannot exceed on any of some days with any of some fuels: with the strongest
   * depression of one day, and the thinnest fuel on another.
   *
   * @param setup engine and setting, and how much warmer than the air the fuel is; its air and fuel
   *     do not count
   * @param days the airs; at least one
   * @param fuels the fuels; at least one
   * @return a flow that is no less than {@link #of} the setup in any of the airs with any of the
   *     fuels
   * @throws IllegalArgumentException if there is no day or no fuel, or the warmest day is colder
   *     than −40 °C and one of the fuels is a blend, whose density is not known there
   */
  public static VolumeFlow atMost(Setup setup, List<Air> days, List<Fuel> fuels) {
    Checks.that(!days.isEmpty(), "days", "none", "at least one");
    Checks.that(!fuels.isEmpty(), "fuels", "none", "at least one");
    Setting setting = setup.setting();
    FlowCoefficients flow = setting.carburettor().flow();
    double bore = circle(setting.carburettor().bore().millimetres());
    double filter = setting.intake().effectiveArea().map(FullThrottleDraw::resistance).orElse(0.0);
    double upstream = resistance(flow.upstreamGap().value() * bore);
    double sum = filter + upstream + resistance(flow.downstreamGap().value() * bore);

    double air = peakAirFlow(setup.engine());
    double depression = 0;
    Temperature warmest = days.get(0).temperature();
    for (Air day : days) {
      double unexpanded = day.density().kilogramsPerCubicMetre() / 2 * sum * air * air;
      depression = Math.max(depression, Math.min(day.pressure().pascals(), unexpanded));
      warmest = day.temperature().isMoreThan(warmest) ? day.temperature() : warmest;
    }
    double suction = depression * (filter + flow.nozzleOpen().value() * upstream) / sum;

    double density = Double.POSITIVE_INFINITY;
    for (Fuel fuel : fuels) {
      Temperature chamber = warmest.plus(setup.fuelWarmerBy());
      density = Math.min(density, fuel.density(chamber).kilogramsPerCubicMetre());
    }
    double main = Math.sqrt(2 * suction / (density * mainResistance(setting, flow)));
    double pilot =
        Math.sqrt(
            2 * depression / (density * jetResistance(setting.pilotJet(), flow.pilotJetLength())));
    double openShare = setup.engine().induction().openShare().value();
    return VolumeFlow.ofLitresPerHour(LITRES_PER_HOUR * openShare * (main + pilot) * (1 + SLACK));
  }

  /** k V η N, m³/s. */
  private static double peakAirFlow(Engine engine) {
    EngineSpeed speed = engine.loadLine().at(ThrottleOpening.FULL);
    double peak = (1 + 2 * engine.blowback()) / engine.induction().openShare().value();
    return peak
        * engine.displacement().cubicCentimetres()
        * 1e-6
        * engine.deliveryRatioAt(speed)
        * (speed.rpm() / 60);
  }

  /** Main jet and, behind it, the ring that the needle leaves. */
  private static double mainResistance(Setting setting, FlowCoefficients flow) {
    Needle needle = setting.needle();
    NeedleJet jet = setting.needleJet();
    double raised = (setting.clip().grooveFromTop() - 1) * needle.groovePitch().millimetres();
    double down = setting.carburettor().bore().millimetres() + raised + HAIR;
    double metal = needle.diameterAt(down);
    double bore = jet.bore().millimetres();
    double ring = Math.PI / 4 * (bore - metal) * (bore + metal) * SQUARE_MM;
    return jetResistance(setting.mainJet(), flow.mainJetLength())
        + flow.needleEntryLoss().value() * resistance(ring);
  }

  private static double jetResistance(JetBore jet, Coefficient lengthRatio) {
    return resistance(
        ShortOrifice.ultimateDischarge(lengthRatio.value()) * circle(jet.millimetres()));
  }

  private static double circle(double millimetres) {
    return Math.PI / 4 * millimetres * millimetres * SQUARE_MM;
  }

  private static double resistance(Area effective) {
    return resistance(effective.squareMillimetres() * SQUARE_MM);
  }

  /** Of an effective area in m², 1/A²: Δp = ρ/2 Q²/A². */
  private static double resistance(double effectiveArea) {
    return 1 / (effectiveArea * effectiveArea);
  }
}
