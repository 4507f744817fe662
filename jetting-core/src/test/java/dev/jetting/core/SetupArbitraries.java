package dev.jetting.core;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Random setups: carburettors of 12 to 45 mm with parts from too small to too big, both kinds of
 * screw, open mouths and filters, straight and many-tapered needles that may end inside the jet, on
 * engines from too small to too big for them, anywhere a person rides. Far from each other, but
 * each could be bolted together. {@link Extreme} also holds what could not.
 */
public final class SetupArbitraries extends DomainContextBase {

  @Provide
  static Arbitrary<Setup> setups() {
    return Combinators.combine(engines(), settings(), airs(), fuels(), numbers(-10, 35))
        .as(
            (engine, setting, air, fuel, warmerBy) ->
                Setup.builder()
                    .engine(scaled(engine, byReference(setting.carburettor())))
                    .setting(setting)
                    .air(air)
                    .fuel(fuel)
                    .fuelWarmerBy(TemperatureDifference.ofKelvin(warmerBy))
                    .build());
  }

  @Provide
  static Arbitrary<ThrottleOpening> throttles() {
    return numbers(0, 1).map(ThrottleOpening::ofShare);
  }

  @Provide
  static Arbitrary<EngineSpeed> speeds() {
    return numbers(500, 10_000).map(EngineSpeed::ofRpm);
  }

  /** How far a part moves, from a hair to half as much again. */
  @Provide
  static Arbitrary<Step> steps() {
    return numbers(1e-3, 0.5).map(Step::new);
  }

  /** A share of what a part measures. */
  public record Step(double share) {}

  /** Setups and operating points at and beyond the end of what is sensible, all of them valid. */
  public static final class Extreme extends DomainContextBase {

    @Provide
    static Arbitrary<Setup> setups() {
      return Combinators.combine(extremeEngines(), extremeSettings(), airs(), fuels())
          .as(
              (engine, setting, air, fuel) ->
                  Setup.builder().engine(engine).setting(setting).air(air).fuel(fuel).build());
    }

    @Provide
    static Arbitrary<ThrottleOpening> throttles() {
      return oneOf(0, 1e-9, 0.03, 0.5, 1 - 1e-9, 1).map(ThrottleOpening::ofShare);
    }

    @Provide
    static Arbitrary<EngineSpeed> speeds() {
      return oneOf(1e-6, 1, 100, 6000, 100_000).map(EngineSpeed::ofRpm);
    }
  }

  /** Bore by the 30 mm for which engines and jets are drawn. */
  private static double byReference(Carburettor carburettor) {
    return carburettor.bore().millimetres() / 30;
  }

  /** An engine with as much more displacement as the carburettor's bore has more area. */
  private static Engine scaled(Engine e, double byReference) {
    return Engine.builder()
        .id(e.id())
        .displacement(
            Displacement.ofCubicCentimetres(
                e.displacement().cubicCentimetres() * byReference * byReference))
        .deliveryRatio(e.deliveryRatio())
        .induction(e.induction())
        .exhaust(e.exhaust())
        .loadLine(e.loadLine())
        .need(e.need())
        .build();
  }

  /** Engines for a carburettor of 30 mm. */
  public static Arbitrary<Engine> engines() {
    Arbitrary<Exhaust> exhausts = curves(0.6, 1.4).map(curve -> new Exhaust("some exhaust", curve));
    return Combinators.combine(
            numbers(60, 350), curves(0.3, 1.1), inductions(), exhausts, loadLines())
        .as(
            (cm3, delivery, induction, exhaust, loadLine) ->
                Engine.builder()
                    .id("some engine")
                    .displacement(Displacement.ofCubicCentimetres(cm3))
                    .deliveryRatio(delivery)
                    .induction(induction)
                    .exhaust(exhaust)
                    .loadLine(loadLine)
                    .need(MixtureNeed.assumedMild())
                    .build());
  }

  private static Arbitrary<Engine> extremeEngines() {
    return Combinators.combine(oneOf(1, 100, 5000), oneOf(1e-6, 1, 2), inductions(), loadLines())
        .as(
            (cm3, delivery, induction, loadLine) ->
                Engine.builder()
                    .id("extreme engine")
                    .displacement(Displacement.ofCubicCentimetres(cm3))
                    .deliveryRatio(RpmCurve.constant(delivery))
                    .induction(induction)
                    .exhaust(Exhaust.reference("none"))
                    .loadLine(loadLine)
                    .need(MixtureNeed.assumedMild())
                    .build());
  }

  private static Arbitrary<Induction> inductions() {
    Arbitrary<Induction> ports =
        numbers(110, 210).map(duration -> Induction.pistonPort("port", invented(duration)));
    Arbitrary<Induction> valves =
        Combinators.combine(numbers(100, 160), numbers(35, 90))
            .as(
                (opens, closes) ->
                    Induction.rotaryValve("valve")
                        .opens(invented(opens))
                        .closes(invented(closes))
                        .build());
    return Arbitraries.oneOf(
        ports, valves, Arbitraries.of(Induction.reedValve("reed"), Induction.unknown("unknown")));
  }

  private static Arbitrary<LoadLine> loadLines() {
    return Combinators.combine(numbers(800, 2500), numbers(1000, 10_000))
        .as((idle, span) -> new LoadLine(EngineSpeed.ofRpm(idle), EngineSpeed.ofRpm(idle + span)));
  }

  private static Arbitrary<RpmCurve> curves(double low, double high) {
    return numbers(low, high)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(
            values -> {
              List<RpmCurve.Point> points = new ArrayList<>();
              for (double value : values) {
                points.add(RpmCurve.Point.of(1000 + 3000.0 * points.size(), value));
              }
              return new RpmCurve(points);
            });
  }

  public static Arbitrary<Setting> settings() {
    return Combinators.combine(
            carburettors(),
            intakes(),
            needlesInJets(),
            jets(),
            screws(),
            shares(),
            shares(),
            floats(numbers(14, 26)))
        .as(
            (carburettor, intake, hung, jets, screw, cutaway, idle, floats) ->
                afloat(
                    floats,
                    setting(
                        carburettor,
                        intake,
                        hung,
                        jets.scaled(byReference(carburettor)),
                        screw,
                        0.3 * cutaway,
                        Length.ofMillimetres(0.3 + 2 * idle))));
  }

  private static Arbitrary<Setting> extremeSettings() {
    Arbitrary<Jets> jets =
        Combinators.combine(oneOf(1e-3, 0.5, 10), oneOf(1e-3, 1, 10)).as(Jets::new);
    return Combinators.combine(
            extremeCarburettors(),
            extremeIntakes(),
            extremeNeedles(),
            jets,
            oneOf(0, 1, 50),
            oneOf(0, 0.1, 0.99),
            oneOf(0.01, 1, 4.99),
            floats(oneOf(0, 20, 200)))
        .as(
            (carburettor, intake, hung, bores, turns, cutaway, idle, floats) ->
                afloat(
                    floats,
                    setting(
                        carburettor,
                        intake,
                        hung,
                        bores,
                        turns,
                        cutaway,
                        Length.ofMillimetres(idle))));
  }

  /** Floats that are meant to be set to 20 mm; in half of the settings they are unknown. */
  private static Arbitrary<Optional<Floats>> floats(Arbitrary<Double> levels) {
    return levels
        .map(
            set ->
                Floats.builder()
                    .set(FloatLevel.ofMillimetres(set))
                    .nominal(FloatLevel.ofMillimetres(20))
                    .build())
        .optional(0.5);
  }

  private static Setting afloat(Optional<Floats> floats, Setting setting) {
    return floats.map(setting::withFloats).orElse(setting);
  }

  private record Jets(double pilot, double main) {
    Jets scaled(double factor) {
      return new Jets(pilot * factor, main * factor);
    }
  }

  private record Hung(NeedleJet jet, Needle needle, ClipPosition clip) {}

  private static Setting setting(
      Carburettor carburettor,
      Intake intake,
      Hung hung,
      Jets jets,
      double turns,
      double cutawayByBore,
      Length idleLift) {
    return Setting.builder()
        .carburettor(carburettor)
        .intake(intake)
        .pilotJet(JetBore.ofMillimetres(jets.pilot))
        .screw(new Screw(carburettor.pilot().screwKind(), ScrewTurns.of(turns)))
        .cutaway(
            Cutaway.ofMillimetres(Math.min(50, cutawayByBore * carburettor.bore().millimetres())))
        .idleLift(idleLift)
        .needleJet(hung.jet)
        .needle(hung.needle)
        .clip(hung.clip)
        .mainJet(JetBore.ofMillimetres(jets.main))
        .build();
  }

  private static Arbitrary<Jets> jets() {
    return Combinators.combine(numbers(0.3, 0.8), numbers(0.7, 1.8)).as(Jets::new);
  }

  private static Arbitrary<Double> screws() {
    return numbers(0, 4);
  }

  public static Arbitrary<Carburettor> carburettors() {
    return Combinators.combine(
            numbers(12, 45), numbers(1, 8), numbers(0, 20), pilots(), flowCoefficients())
        .as(SetupArbitraries::carburettor);
  }

  private static Arbitrary<Carburettor> extremeCarburettors() {
    Arbitrary<PilotCircuit> pilots =
        Combinators.combine(
                Arbitraries.of(ScrewKind.class), oneOf(1e-9, 1, 100), oneOf(1e-9, 1), oneOf(0, 10))
            .as((kind, turn, fixed, hole) -> pilot(kind, turn, fixed, hole, 0, 1e-6, 0));
    return Combinators.combine(
            oneOf(5, 30, 80), oneOf(1e-3, 1000), oneOf(0, 500), pilots, extremeCoefficients())
        .as(SetupArbitraries::carburettor);
  }

  private static Carburettor carburettor(
      double bore, double jetLength, double head, PilotCircuit pilot, FlowCoefficients flow) {
    return Carburettor.builder()
        .id("some carburettor")
        .bore(Diameter.ofMillimetres(bore))
        .needleJetLength(Length.ofMillimetres(jetLength))
        .needleJetHead(Length.ofMillimetres(head))
        .pilot(pilot)
        .floatValve(
            new FloatValve(Diameter.ofMillimetres(2), Length.ofMillimetres(100), invented(0.5)))
        .flow(flow)
        .build();
  }

  private static Arbitrary<PilotCircuit> pilots() {
    return Combinators.combine(
            Arbitraries.of(ScrewKind.class),
            numbers(0.05, 0.4),
            numbers(0.2, 1.5),
            numbers(0, 1.5),
            numbers(0, 1),
            numbers(0.2, 4),
            numbers(0, 4))
        .as(SetupArbitraries::pilot);
  }

  private static PilotCircuit pilot(
      ScrewKind kind,
      double perTurn,
      double fixed,
      double hole,
      double from,
      double span,
      double head) {
    return PilotCircuit.builder()
        .screwKind(kind)
        .areaPerTurn(Area.ofSquareMillimetres(perTurn))
        .fixedArea(Area.ofSquareMillimetres(fixed))
        .progressionHole(Area.ofSquareMillimetres(hole))
        .uncoversFrom(Length.ofMillimetres(from))
        .uncoversTo(Length.ofMillimetres(from + span))
        .head(Length.ofMillimetres(head))
        .mostTurns(ScrewTurns.of(5))
        .build();
  }

  private static Arbitrary<FlowCoefficients> flowCoefficients() {
    Arbitrary<List<Double>> factors = numbers(0.85, 1.15).list().ofSize(12);
    return factors.map(
        f ->
            flow(
                0.80 * f.get(0),
                0.75 * f.get(1),
                0.2 * (f.get(2) - 0.85),
                2.15 * f.get(3),
                0.86 * f.get(4),
                2 * f.get(5),
                1.05 * f.get(6),
                (f.get(7) - 0.85) / 0.3,
                0.7 * f.get(8),
                0.8 * f.get(9),
                2 * f.get(10),
                2 * f.get(11)));
  }

  /** Every coefficient at one end of its range. */
  private static Arbitrary<FlowCoefficients> extremeCoefficients() {
    return Arbitraries.of(true, false)
        .list()
        .ofSize(12)
        .map(
            high ->
                flow(
                    high.get(0) ? 1 : 0.05,
                    high.get(1) ? 1 : 0.05,
                    high.get(2) ? 10 : 0,
                    10,
                    high.get(4) ? 10 : 0.1,
                    high.get(5) ? 20 : 0,
                    high.get(6) ? 10 : 0.1,
                    high.get(7) ? 1 : 0,
                    high.get(8) ? 1 : 0.05,
                    high.get(9) ? 1 : 0.05,
                    high.get(10) ? 10 : 0.5,
                    high.get(11) ? 10 : 0.5));
  }

  private static FlowCoefficients flow(double... c) {
    return FlowCoefficients.builder()
        .upstreamGap(invented(c[0]))
        .downstreamGap(invented(c[1]))
        .nozzleClosed(invented(c[2]))
        .nozzleOpen(invented(c[3]))
        .nozzleExponent(invented(c[4]))
        .neckEffect(invented(c[5]))
        .needleEntryLoss(invented(c[6]))
        .needleEccentricity(invented(c[7]))
        .pilotOutlet(invented(c[8]))
        .pilotBleed(invented(c[9]))
        .mainJetLength(invented(c[10]))
        .pilotJetLength(invented(c[11]))
        .build();
  }

  public static Arbitrary<Intake> intakes() {
    return Arbitraries.oneOf(Arbitraries.just(Intake.openMouth()), filters());
  }

  /** Filters of a quarter to three times the biggest bore's area. */
  public static Arbitrary<Intake> filters() {
    return numbers(400, 5000).map(a -> Intake.filter("some filter", Area.ofSquareMillimetres(a)));
  }

  private static Arbitrary<Intake> extremeIntakes() {
    return Arbitraries.oneOf(
        Arbitraries.just(Intake.openMouth()),
        oneOf(1, 1_000_000).map(a -> Intake.filter("extreme", Area.ofSquareMillimetres(a))));
  }

  private static Arbitrary<Hung> needlesInJets() {
    return Combinators.combine(
            numbers(1.8, 3.6),
            numbers(0, 4),
            numbers(0.02, 0.3),
            numbers(15, 70),
            tapers(),
            numbers(0, 1.5),
            Arbitraries.integers().between(1, 9),
            shares())
        .as(SetupArbitraries::hung);
  }

  private static Arbitrary<Hung> extremeNeedles() {
    return Combinators.combine(
            oneOf(0.5, 3),
            oneOf(0, 1000),
            oneOf(1e-12, 0.1, 0.49),
            oneOf(0.1, 200),
            tapers(),
            oneOf(0, 20),
            Arbitraries.of(1, 9),
            oneOf(0, 1))
        .as(SetupArbitraries::hung);
  }

  /** Where each taper starts by the length of the needle, and how the lost diameter is shared. */
  private static Arbitrary<List<Double>> tapers() {
    return numbers(0.05, 0.95).list().uniqueElements().ofMaxSize(3);
  }

  private static Hung hung(
      double bore,
      double neck,
      double clearance,
      double tip,
      List<Double> starts,
      double pitch,
      int grooves,
      double clip) {
    double cylinder = bore - clearance;
    // Up to 40 % of the diameter goes, so that metal is left at the tip, whatever the tapers.
    double rate = Math.min(0.5, 0.4 * cylinder / tip);
    List<Taper> tapers =
        starts.stream()
            .sorted()
            .map(start -> new Taper(Length.ofMillimetres(start * tip), rate * start))
            .toList();
    Needle needle =
        Needle.builder()
            .id("some needle")
            .cylinder(Diameter.ofMillimetres(cylinder))
            .tapers(tapers)
            .grooves(grooves)
            .groovePitch(Length.ofMillimetres(pitch))
            .tip(Length.ofMillimetres(tip))
            .build();
    return new Hung(
        new NeedleJet(Diameter.ofMillimetres(bore), Length.ofMillimetres(neck)),
        needle,
        ClipPosition.fromTop(1 + (int) Math.rint(clip * (grooves - 1)), grooves));
  }

  public static Arbitrary<Air> airs() {
    return Combinators.combine(numbers(60_000, 105_000), numbers(-30, 45), shares())
        .as(
            (pascals, celsius, humidity) ->
                Air.of(
                    Pressure.ofPascals(pascals),
                    Temperature.ofCelsius(celsius),
                    RelativeHumidity.ofShare(humidity)));
  }

  public static Arbitrary<Fuel> fuels() {
    Arbitrary<Fuel> stated =
        Combinators.combine(
                numbers(680, 820), numbers(3e-4, 3e-3), numbers(6, 16), numbers(15, 100))
            .as(
                (density, viscosity, ratio, premix) ->
                    Fuel.ofProperties(
                            Density.ofKilogramsPerCubicMetre(density),
                            DynamicViscosity.ofPascalSeconds(viscosity),
                            AirFuelRatio.of(ratio))
                        .withPremix(PremixRatio.ofPetrolToOil(premix)));
    Arbitrary<Fuel> mixed =
        Combinators.combine(
                Arbitraries.of(Fuel.PETROL, Fuel.E5, Fuel.E10, Fuel.E85), numbers(15, 100))
            .as((fuel, ratio) -> fuel.withPremix(PremixRatio.ofPetrolToOil(ratio)));
    return Arbitraries.oneOf(stated, mixed, Arbitraries.of(Fuel.PETROL, Fuel.E85));
  }

  private static Arbitrary<Double> shares() {
    return numbers(0, 1);
  }

  private static Arbitrary<Double> numbers(double low, double high) {
    return Arbitraries.doubles()
        .between(low, high)
        .ofScale(12)
        .withDistribution(RandomDistribution.uniform());
  }

  private static Arbitrary<Double> oneOf(double... values) {
    return Arbitraries.of(Arrays.stream(values).boxed().toList());
  }

  private static Coefficient invented(double value) {
    return Coefficient.assumed(value, "1", "invented for a test");
  }
}
