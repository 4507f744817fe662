package dev.jetting.core.cycle;

import dev.jetting.core.flow.Jet;
import dev.jetting.core.flow.MainPath;
import dev.jetting.core.flow.NeedleAnnulus;
import dev.jetting.core.flow.Nozzle;
import dev.jetting.core.flow.Restriction;
import dev.jetting.core.flow.SlideGap;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.ScrewKind;

/**
 * The carburettor of a setup at one throttle opening, in SI units. Read from the setup anew rather
 * than from the fast model, so that the two check each other.
 *
 * @param area effective area of filter and gaps in series, m²
 * @param suctionForwards suction at the needle jet by the depression, the stream forwards
 * @param suctionBackwards suction at the needle jet by the pressure above ambient, backwards
 * @param fuel the way of the main fuel
 * @param pilot the pilot circuit
 */
record SlideState(
    double area,
    double suctionForwards,
    double suctionBackwards,
    FuelPath fuel,
    PilotOutlet pilot) {

  private static final double MM = 1e-3;
  private static final double SQUARE_MM = 1e-6;

  static SlideState of(Setup setup, double throttle, CycleCoefficients coefficients) {
    Setting setting = setup.setting();
    FlowCoefficients flow = setting.carburettor().flow();
    double bore = setting.carburettor().bore().millimetres() * MM;
    double idle = setting.idleLift().millimetres() * MM;
    double lift = idle + throttle * (bore - idle);
    double cutaway = setting.cutaway().millimetres() * MM;
    double upstream = loss(flow.upstreamGap().value() * SlideGap.area(bore, lift + cutaway));
    double downstream = loss(flow.downstreamGap().value() * SlideGap.area(bore, lift));
    double filter =
        setting
            .intake()
            .effectiveArea()
            .map(area -> loss(area.squareMillimetres() * SQUARE_MM))
            .orElse(0.0);
    double sum = upstream + downstream + filter;
    double neck = setting.needleJet().neck().millimetres() * MM / bore;
    double felt =
        new Nozzle(
                flow.nozzleClosed().value(),
                flow.nozzleOpen().value(),
                flow.nozzleExponent().value(),
                flow.neckEffect().value(),
                neck)
            .factor(lift / bore);
    return new SlideState(
        1 / Math.sqrt(sum),
        (filter + felt * upstream) / sum,
        coefficients.reversedShare().value() * felt * upstream / sum,
        fuel(setup, lift, coefficients.fuelColumn().value() * MM),
        pilot(setup, lift - idle, coefficients.pilotSlip().value()));
  }

  /** Suction at the needle jet in Pa under a depression, below zero for a stream backwards. */
  double suction(double depression) {
    return depression >= 0 ? suctionForwards * depression : -suctionBackwards * depression;
  }

  private static double loss(double effectiveArea) {
    return 1 / (effectiveArea * effectiveArea);
  }

  private static FuelPath fuel(Setup setup, double lift, double column) {
    Setting setting = setup.setting();
    Carburettor carburettor = setting.carburettor();
    FlowCoefficients flow = carburettor.flow();
    double density = density(setup);
    double viscosity = viscosity(setup);
    double ringLength = carburettor.needleJetLength().millimetres() * MM;
    double needleJet = setting.needleJet().bore().millimetres() * MM;
    double needle = needle(setting, lift);
    double mainJet = setting.mainJet().millimetres() * MM;
    Restriction ring =
        new NeedleAnnulus(
                ringLength, flow.needleEntryLoss().value(), flow.needleEccentricity().value())
            .restriction(needleJet, needle, density, viscosity);
    Restriction jet =
        Jet.of(mainJet, flow.mainJetLength().value(), density, viscosity).restriction();
    double lengthsByAreas =
        flow.mainJetLength().value() * mainJet / disc(mainJet)
            + column / disc(needleJet)
            + ringLength / (disc(needleJet) - disc(needle));
    return new FuelPath(
        ring.then(jet),
        column == 0 ? 0 : density * lengthsByAreas,
        density * MainPath.GRAVITY * head(setting, carburettor.needleJetHead().millimetres()),
        density);
  }

  private static double needle(Setting setting, double lift) {
    Needle needle = setting.needle();
    double down =
        lift / MM + (setting.clip().grooveFromTop() - 1) * needle.groovePitch().millimetres();
    return down > needle.tip().millimetres() ? 0 : needle.diameterAt(down) * MM;
  }

  private static PilotOutlet pilot(Setup setup, double liftAboveIdle, double slip) {
    Setting setting = setup.setting();
    PilotCircuit pilot = setting.carburettor().pilot();
    FlowCoefficients flow = setting.carburettor().flow();
    double density = density(setup);
    double screw =
        setting.screw().turns().turns() * pilot.areaPerTurn().squareMillimetres() * SQUARE_MM;
    double fixed = pilot.fixedArea().squareMillimetres() * SQUARE_MM;
    boolean mixtureScrew = pilot.screwKind() == ScrewKind.MIXTURE;
    double progression =
        pilot.progressionHole().squareMillimetres()
            * SQUARE_MM
            * uncovered(
                liftAboveIdle / MM,
                pilot.uncoversFrom().millimetres(),
                pilot.uncoversTo().millimetres());
    return new PilotOutlet(
        Jet.of(
                setting.pilotJet().millimetres() * MM,
                flow.pilotJetLength().value(),
                density,
                viscosity(setup))
            .restriction(),
        density * MainPath.GRAVITY * head(setting, pilot.head().millimetres()),
        flow.pilotBleed().value() * (mixtureScrew ? fixed : screw),
        flow.pilotOutlet().value() * ((mixtureScrew ? screw : fixed) + progression),
        slip,
        density,
        setup.air().pressure().pascals(),
        setup.air().specificGasConstant() * setup.air().temperature().kelvin());
  }

  /** Cubic smooth step, as in the fast model. */
  private static double uncovered(double lift, double from, double to) {
    double t = Math.min(Math.max((lift - from) / (to - from), 0), 1);
    return t * t * (3 - 2 * t);
  }

  private static double head(Setting setting, double nominal) {
    return Math.max(0, nominal + setting.fuelLowerBy()) * MM;
  }

  private static double disc(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  private static double density(Setup setup) {
    return setup.fuel().density(setup.fuelTemperature()).kilogramsPerCubicMetre();
  }

  private static double viscosity(Setup setup) {
    return setup.fuel().dynamicViscosity(setup.fuelTemperature()).pascalSeconds();
  }
}
