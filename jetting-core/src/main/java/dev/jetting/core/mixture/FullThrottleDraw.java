package dev.jetting.core.mixture;

import dev.jetting.core.air.Air;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.flow.AirSide;
import dev.jetting.core.flow.FuelColumn;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.PulsedFlow;
import dev.jetting.core.flow.Restriction;
import dev.jetting.core.flow.ShortOrifice;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.table.AirSides;
import dev.jetting.core.mixture.table.Circuits;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.VolumeFlow;
import java.util.List;

/**
 * The fuel that full throttle draws at the speed of the load line's peak, which a float valve has
 * to let in. The model computes it, or a bound above it for a small part of the work.
 *
 * <p>The bound solves no balance of the fuel. It leaves out what would only hold fuel back:
 * friction, the heads, and the pilot's bleed and outlet. The main path's flow rises with the
 * suction and falls with the fuel's density, its inertia included: that is less than the half of a
 * power which the root gives. The needle is taken a hair further up, where it is thinner or gone.
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
    EngineSpeed peak = setup.engine().loadLine().at(ThrottleOpening.FULL);
    double delivery = setup.engine().deliveryRatioAt(peak);
    double density = leastDensity(setup, days, fuels);
    double mainAlpha = density / 2 * mainResistance(setting, flow);
    double pilotAlpha = density / 2 * jetResistance(setting.pilotJet(), flow.pilotJetLength());
    FuelColumn column = Circuits.column(setting);
    double main = 0;
    double pilot = 0;
    for (Air day : days) {
      AirSide.State open =
          AirSides.of(setup.engine(), setting, day, 0, 1).at(1, delivery, peak.rpm() / 60);
      double suction = MainPath.suction(open, flow.nozzleOpen().value());
      double share = open.openShare();
      double inertia = open.revolutions() * density * column.lengthByArea(open.lift());
      main =
          Math.max(main, PulsedFlow.flow(mainAlpha, 0, share, suction, share * suction, inertia));
      pilot =
          Math.max(
              pilot, open.pilotShare() * Restriction.flow(pilotAlpha, 0, open.pilotDepression()));
    }
    return VolumeFlow.ofLitresPerHour(LITRES_PER_HOUR * (main + pilot) * (1 + SLACK));
  }

  private static double leastDensity(Setup setup, List<Air> days, List<Fuel> fuels) {
    Temperature warmest = days.get(0).temperature();
    for (Air day : days) {
      warmest = day.temperature().isMoreThan(warmest) ? day.temperature() : warmest;
    }
    double density = Double.POSITIVE_INFINITY;
    for (Fuel fuel : fuels) {
      Temperature chamber = warmest.plus(setup.fuelWarmerBy());
      density = Math.min(density, fuel.density(chamber).kilogramsPerCubicMetre());
    }
    return density;
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

  /** Of an effective area in m², 1/A²: Δp = ρ/2 Q²/A². */
  private static double resistance(double effectiveArea) {
    return 1 / (effectiveArea * effectiveArea);
  }
}
