package dev.jetting.rules.arbitraries;

import static net.jqwik.api.Combinators.combine;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.AirFormula;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.ElementalComposition;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.fuel.FuelShare;
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
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.NeedleWear;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.ProvenCylinder;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.PlugColour;
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
import dev.jetting.units.JetFlow;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.TemperatureDifference;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;

/**
 * Random valid setup sheets and their components. Sizes are those of real parts and far beyond, in
 * numbers as people write them and as calculations leave them. Names contain characters that a
 * document has to escape. Each could be bolted together; few would run well.
 *
 * <p>Not a picture of what is on the road: no share of these settings means anything.
 */
public final class SheetArbitraries {

  private SheetArbitraries() {}

  /** {@return setup sheets} */
  public static Arbitrary<SetupSheet> sheets() {
    return combine(titles(), setups(), ridings(), partsAtHand(), provenances(), typicalValues())
        .as(SetupSheet::new);
  }

  /** {@return sets of typical values, most of them empty} */
  public static Arbitrary<Set<MachineValue>> typicalValues() {
    return Arbitraries.frequencyOf(
        Tuple.of(2, Arbitraries.just(Set.of())),
        Tuple.of(1, Arbitraries.of(MachineValue.class).set()));
  }

  /** {@return setups: an engine, its setting, the air, the fuel and how warm it is} */
  public static Arbitrary<Setup> setups() {
    return combine(engines(), settings(), airs(), fuels(), warmths())
        .as(
            (engine, setting, air, fuel, warmerBy) ->
                Setup.builder()
                    .engine(suited(engine, setting.carburettor()))
                    .setting(setting)
                    .air(air)
                    .fuel(fuel)
                    .fuelWarmerBy(warmerBy)
                    .build());
  }

  private static Arbitrary<TemperatureDifference> warmths() {
    return Arbitraries.oneOf(
        Arbitraries.just(Setup.ASSUMED_FUEL_WARMER_BY),
        numbers(-20, 35).map(TemperatureDifference::ofKelvin));
  }

  /** An engine for 30 mm with as much more displacement as the bore has more area. */
  private static Engine suited(Engine e, Carburettor carburettor) {
    double byReference = carburettor.bore().millimetres() / 30;
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

  /** {@return engines of 60 to 350 cm³} */
  public static Arbitrary<Engine> engines() {
    return combine(
            ids(),
            numbers(60, 350).map(Displacement::ofCubicCentimetres),
            curves(0.1, 1.2),
            inductions(),
            exhausts(),
            loadLines(),
            needs())
        .as(Engine::new);
  }

  /** {@return settings with parts that fit each other} */
  public static Arbitrary<Setting> settings() {
    return combine(carburettors(), needles()).flatAs(SheetArbitraries::settings);
  }

  private static Arbitrary<Setting> settings(Carburettor carburettor, Needle needle) {
    return combine(unfloated(carburettor, needle), floats().optional(0.5))
        .as((setting, floats) -> floats.map(setting::withFloats).orElse(setting));
  }

  private static Arbitrary<Floats> floats() {
    Arbitrary<FloatLevel> levels = numbers(0, 60).map(FloatLevel::ofMillimetres);
    return combine(levels, levels).as(Floats::new);
  }

  private static Arbitrary<Setting> unfloated(Carburettor carburettor, Needle needle) {
    Arbitrary<NeedleJet> needleJets =
        combine(
                numbers(0.02, 0.5)
                    .map(gap -> Diameter.ofMillimetres(needle.cylinder().millimetres() + gap)),
                lengths(0, 3))
            .as(NeedleJet::new);
    return combine(
            intakes(),
            jets(0.3, 0.9),
            screws(),
            cutaways(),
            lengths(0.3, 1.5),
            needleJets,
            clips(needle.grooves()),
            jets(0.8, 2))
        .as(
            (intake, pilotJet, screw, cutaway, idleLift, needleJet, clip, mainJet) ->
                Setting.builder()
                    .carburettor(carburettor)
                    .intake(intake)
                    .pilotJet(pilotJet)
                    .screw(screw)
                    .cutaway(cutaway)
                    .idleLift(idleLift)
                    .needleJet(needleJet)
                    .needle(needle)
                    .clip(clip)
                    .mainJet(mainJet)
                    .build());
  }

  /** {@return slide carburettors of 14 to 44 mm, with either kind of screw} */
  public static Arbitrary<Carburettor> carburettors() {
    return combine(
            ids(),
            numbers(14, 44).map(Diameter::ofMillimetres),
            lengths(1, 12),
            lengths(1, 20),
            pilotCircuits(),
            floatValves(),
            flows())
        .as(Carburettor::new);
  }

  /** {@return pilot circuits with either kind of screw} */
  public static Arbitrary<PilotCircuit> pilotCircuits() {
    return combine(
            Arbitraries.of(ScrewKind.class),
            areas(0.02, 1),
            areas(0.1, 3),
            areas(0, 2),
            lengths(0, 2),
            numbers(0.1, 3),
            lengths(0, 20),
            numbers(1, 10).map(ScrewTurns::of))
        .as(
            (kind, perTurn, fixed, hole, from, stretch, head, most) ->
                PilotCircuit.builder()
                    .screwKind(kind)
                    .areaPerTurn(perTurn)
                    .fixedArea(fixed)
                    .progressionHole(hole)
                    .uncoversFrom(from)
                    .uncoversTo(Length.ofMillimetres(from.millimetres() + stretch))
                    .head(head)
                    .mostTurns(most)
                    .build());
  }

  /** {@return needles with none to three tapers} */
  public static Arbitrary<Needle> needles() {
    return combine(
            ids(),
            numbers(1.5, 3.5).map(Diameter::ofMillimetres),
            tapers(),
            Arbitraries.integers().between(1, 9),
            lengths(0, 2),
            numbers(1, 20))
        .as(
            (id, cylinder, tapers, grooves, pitch, beyond) ->
                Needle.builder()
                    .id(id)
                    .cylinder(cylinder)
                    .tapers(tapers)
                    .grooves(grooves)
                    .groovePitch(pitch)
                    .tip(
                        Length.ofMillimetres(
                            beyond
                                + (tapers.isEmpty()
                                    ? 0
                                    : tapers.get(tapers.size() - 1).start().millimetres())))
                    .build());
  }

  private static Arbitrary<List<Taper>> tapers() {
    Arbitrary<Taper> stretches = combine(lengths(1, 12), numbers(0, 0.02)).as(Taper::new);
    return stretches
        .list()
        .ofMaxSize(3)
        .map(
            list -> {
              List<Taper> tapers = new ArrayList<>();
              double start = 0;
              for (Taper stretch : list) {
                start += stretch.start().millimetres();
                tapers.add(new Taper(Length.ofMillimetres(start), stretch.rate()));
              }
              return tapers;
            });
  }

  /** {@return the air from 600 to 1100 hPa and −20 to 45 °C} */
  public static Arbitrary<Air> airs() {
    return combine(
            numbers(60_000, 110_000).map(Pressure::ofPascals),
            numbers(-20, 45).map(Temperature::ofCelsius),
            numbers(0, 1).map(RelativeHumidity::ofShare),
            Arbitraries.of(AirFormula.class))
        .as((p, t, humidity, formula) -> Air.of(p, t, humidity).withFormula(formula));
  }

  /**
   * {@return fuels on sale and invented ones, with premix and without, and of stated properties}
   */
  public static Arbitrary<Fuel> fuels() {
    Arbitrary<Fuel> blended =
        combine(blends(), premixes(), components("oil"))
            .as((blend, premix, oil) -> Fuel.of(blend).withPremix(premix, oil));
    Arbitrary<Fuel> usual =
        combine(Arbitraries.of(Fuel.PETROL, Fuel.E5, Fuel.E10, Fuel.E85), premixes())
            .as(Fuel::withPremix);
    Arbitrary<Fuel> stated =
        combine(
                numbers(650, 900).map(Density::ofKilogramsPerCubicMetre),
                numbers(0.0003, 0.003).map(DynamicViscosity::ofPascalSeconds),
                numbers(6, 16).map(AirFuelRatio::of),
                premixes())
            .as(
                (density, viscosity, ratio, premix) ->
                    Fuel.ofProperties(density, viscosity, ratio).withPremix(premix));
    return Arbitraries.oneOf(usual, blended, stated);
  }

  private static Arbitrary<FuelBlend> blends() {
    Arbitrary<FuelComponent> others =
        Arbitraries.oneOf(
            Arbitraries.of(FuelComponent.ETHANOL, FuelComponent.METHANOL),
            components("blendstock"));
    return combine(others, numbers(0.01, 0.99), Arbitraries.of(FuelBlend.Basis.class))
        .as(
            (other, share, basis) -> {
              List<FuelShare> shares =
                  List.of(
                      new FuelShare(other, share), new FuelShare(FuelComponent.PETROL, 1 - share));
              return basis == FuelBlend.Basis.MASS
                  ? FuelBlend.byMass(shares)
                  : FuelBlend.byVolume(shares);
            });
  }

  private static Arbitrary<FuelComponent> components(String id) {
    Arbitrary<Optional<ElementalComposition>> compositions =
        combine(numbers(1, 8), numbers(2, 18), numbers(0, 1))
            .as(ElementalComposition::new)
            .optional(0.5);
    return combine(
            compositions,
            titles(),
            coefficients("1", 6, 16),
            coefficients("kg/m³", 600, 1100),
            coefficients("1/K", 0, 0.002),
            coefficients("mm²/s", 5, 900),
            coefficients("mm²/s", 0.3, 4))
        .as(
            (composition, source, ratio, density, expansion, cold, hot) -> {
              FuelComponent.Builder builder =
                  FuelComponent.builder(id).density(density).thermalExpansion(expansion);
              composition.ifPresentOrElse(
                  elements -> builder.composition(elements, source),
                  () -> builder.stoichiometricRatio(ratio));
              return builder
                  .viscosity(Temperature.ofCelsius(60), hot)
                  .viscosity(Temperature.ofCelsius(-20), cold)
                  .build();
            });
  }

  private static Arbitrary<PremixRatio> premixes() {
    return numbers(16, 100)
        .map(PremixRatio::ofPetrolToOil)
        .injectDuplicates(0.05)
        .optional(0.7)
        .map(premix -> premix.orElse(PremixRatio.NO_OIL));
  }

  /** {@return ways of riding} */
  public static Arbitrary<Riding> ridings() {
    Arbitrary<RidingProfile> profiles =
        throttles()
            .flatMap(
                list ->
                    numbers(0.1, 1000)
                        .list()
                        .ofSize(list.size())
                        .map(
                            weights ->
                                new RidingProfile(
                                    IntStream.range(0, list.size())
                                        .mapToObj(
                                            i ->
                                                new RidingProfile.Point(
                                                    list.get(i), weights.get(i)))
                                        .toList())));
    return combine(
            numbers(0.001, 0.5).map(Probability::of),
            Arbitraries.oneOf(profiles, Arbitraries.just(RidingProfile.assumedRoad())),
            airs(),
            airs(),
            Arbitraries.oneOf(
                Arbitraries.just(RiddenSpeeds.assumed()), numbers(1, 10).map(RiddenSpeeds::new)))
        .as(
            (accepted, profile, one, other, speeds) ->
                riding(accepted, profile, one, other).withSpeeds(speeds));
  }

  /** The denser air of two is the coldest day's. */
  static Riding riding(Probability accepted, RidingProfile profile, Air one, Air other) {
    return one.density().isLessThan(other.density())
        ? Riding.builder()
            .acceptedRisk(accepted)
            .profile(profile)
            .coldest(other)
            .hottest(one)
            .build()
        : Riding.builder()
            .acceptedRisk(accepted)
            .profile(profile)
            .coldest(one)
            .hottest(other)
            .build();
  }

  /** {@return parts at hand, a few of each or none} */
  public static Arbitrary<PartsAtHand> partsAtHand() {
    return combine(
            jets(0.3, 0.9).list().ofMaxSize(3),
            cutaways().list().ofMaxSize(3),
            combine(numbers(2, 4).map(Diameter::ofMillimetres), lengths(0, 3))
                .as(NeedleJet::new)
                .list()
                .ofMaxSize(2),
            needles().list().ofMaxSize(2),
            jets(0.8, 2).list().ofMaxSize(3))
        .as(PartsAtHand::new);
  }

  /** {@return provenances, each thing set or not} */
  public static Arbitrary<Provenance> provenances() {
    return combine(machines(), mountings(), days(), numbersOnJets())
        .as(
            (machine, mounting, day, numbers) ->
                built(
                    builder ->
                        machine.andThen(mounting).andThen(day).andThen(numbers).accept(builder)));
  }

  private static Provenance built(Consumer<Provenance.Builder> provenance) {
    Provenance.Builder builder = Provenance.builder();
    provenance.accept(builder);
    return builder.build();
  }

  /** The engine, or parts of it, or neither. */
  private static Arbitrary<Consumer<Provenance.Builder>> machines() {
    Arbitrary<ProvenCylinder> cylinders =
        combine(numbers(40, 350).map(Displacement::ofCubicCentimetres), curves(0.1, 1.2))
            .as(ProvenCylinder::new);
    return combine(
            engines().optional(0.2),
            exhausts().optional(0.2),
            cylinders.optional(0.2),
            inductions().optional(0.2))
        .as(
            (engine, exhaust, cylinder, induction) ->
                builder -> {
                  if (engine.isPresent()) {
                    builder.engine(engine.get());
                    return;
                  }
                  exhaust.ifPresent(builder::exhaust);
                  cylinder.ifPresent(builder::cylinder);
                  induction.ifPresent(builder::induction);
                });
  }

  /** The setting, or parts of it, or neither. */
  private static Arbitrary<Consumer<Provenance.Builder>> mountings() {
    return combine(
            settings().optional(0.2),
            carburettors().optional(0.2),
            intakes().optional(0.3),
            jets(0.8, 2).optional(0.2))
        .as(
            (setting, carburettor, intake, mainJet) ->
                builder -> {
                  if (setting.isPresent()) {
                    builder.setting(setting.get());
                    return;
                  }
                  carburettor.ifPresent(builder::carburettor);
                  intake.ifPresent(builder::intake);
                  mainJet.ifPresent(builder::mainJet);
                });
  }

  private static Arbitrary<Consumer<Provenance.Builder>> days() {
    Arbitrary<NeedleWear> wears = combine(lengths(0, 0.2), lengths(0, 0.2)).as(NeedleWear::new);
    return combine(fuels().optional(0.3), airs().optional(0.3), wears.optional(0.2), observations())
        .as(
            (fuel, air, wear, observed) ->
                builder -> {
                  fuel.ifPresent(builder::fuel);
                  air.ifPresent(builder::air);
                  wear.ifPresent(builder::needleWear);
                  builder.observed(observed);
                });
  }

  private static Arbitrary<Consumer<Provenance.Builder>> numbersOnJets() {
    Arbitrary<JetFlow> flows = numbers(5, 500).map(JetFlow::ofCubicCentimetresPerMinute);
    return combine(flows.optional(0.3), flows.optional(0.3))
        .as(
            (pilot, main) ->
                builder -> {
                  pilot.ifPresent(builder::pilotJetFlow);
                  main.ifPresent(builder::mainJetFlow);
                });
  }

  /** What was seen at up to three openings; more often nothing. */
  private static Arbitrary<List<ProvenObservation>> observations() {
    Arbitrary<ProvenObservation> one =
        combine(Arbitraries.integers().between(0, 8).map(ThrottleOpening::ofEighths), seen())
            .as(ProvenObservation::new);
    return one.list()
        .ofMinSize(1)
        .ofMaxSize(3)
        .uniqueElements(ProvenObservation::throttle)
        .optional(0.4)
        .map(seen -> seen.orElse(List.of()));
  }

  private static Arbitrary<Evidence> seen() {
    return Arbitraries.oneOf(
        Arbitraries.just(new Evidence.Proven()),
        Arbitraries.of(PlugColour.class).map(Evidence.Colour::new),
        numbers(0.7, 1.1).map(Lambda::of).map(Evidence.Wideband::new));
  }

  private static Arbitrary<Induction> inductions() {
    Arbitrary<Induction> ports =
        combine(ids(), coefficients("°", 110, 200)).as(Induction::pistonPort);
    Arbitrary<Induction> valves =
        combine(ids(), coefficients("°", 100, 160), coefficients("°", 35, 90))
            .as(
                (id, opens, closes) ->
                    Induction.rotaryValve(id).opens(opens).closes(closes).build());
    return Arbitraries.oneOf(
        ports,
        valves,
        ids().map(Induction::reedValve),
        Arbitraries.of(Induction.assumedMild(), Induction.assumedTuned()));
  }

  private static Arbitrary<Exhaust> exhausts() {
    return combine(ids(), curves(0.5, 1.5)).as(Exhaust::new);
  }

  private static Arbitrary<LoadLine> loadLines() {
    return combine(numbers(800, 2500), numbers(0, 9000))
        .as((idle, span) -> new LoadLine(EngineSpeed.ofRpm(idle), EngineSpeed.ofRpm(idle + span)));
  }

  private static Arbitrary<MixtureNeed> needs() {
    return throttles()
        .flatMap(
            list ->
                numbers(0.6, 1.2)
                    .list()
                    .ofSize(list.size())
                    .map(
                        lambdas ->
                            new MixtureNeed(
                                IntStream.range(0, list.size())
                                    .mapToObj(
                                        i ->
                                            new MixtureNeed.Point(
                                                list.get(i), Lambda.of(lambdas.get(i))))
                                    .toList())));
  }

  private static Arbitrary<List<ThrottleOpening>> throttles() {
    return numbers(0, 1)
        .map(ThrottleOpening::ofShare)
        .set()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(set -> set.stream().sorted().toList());
  }

  private static Arbitrary<RpmCurve> curves(double low, double high) {
    return combine(
            Arbitraries.integers().between(0, 12_000).set().ofMinSize(1).ofMaxSize(4),
            numbers(low, high).list().ofSize(4))
        .as(
            (speeds, values) -> {
              List<Integer> rising = speeds.stream().sorted().toList();
              return new RpmCurve(
                  IntStream.range(0, rising.size())
                      .mapToObj(i -> RpmCurve.Point.of(rising.get(i), values.get(i)))
                      .toList());
            });
  }

  private static Arbitrary<FloatValve> floatValves() {
    return combine(
            numbers(1, 4).map(Diameter::ofMillimetres), lengths(10, 500), coefficients("1", 0.1, 1))
        .as(FloatValve::new);
  }

  private static Arbitrary<FlowCoefficients> flows() {
    List<Arbitrary<Coefficient>> each =
        List.of(
            coefficients("1", 0.5, 1),
            coefficients("1", 0.5, 1),
            coefficients("1", 0, 0.5),
            coefficients("1", 0.5, 3),
            coefficients("1", 0.5, 2),
            coefficients("1", 0, 4),
            coefficients("1", 0.5, 2),
            coefficients("1", 0, 1),
            coefficients("1", 0.5, 1),
            coefficients("1", 0.5, 1),
            coefficients("1", 1, 4),
            coefficients("1", 1, 4));
    Arbitrary<FlowCoefficients> measured =
        combine(each)
            .as(
                c ->
                    FlowCoefficients.builder()
                        .upstreamGap(c.get(0))
                        .downstreamGap(c.get(1))
                        .nozzleClosed(c.get(2))
                        .nozzleOpen(c.get(3))
                        .nozzleExponent(c.get(4))
                        .neckEffect(c.get(5))
                        .needleEntryLoss(c.get(6))
                        .needleEccentricity(c.get(7))
                        .pilotOutlet(c.get(8))
                        .pilotBleed(c.get(9))
                        .mainJetLength(c.get(10))
                        .pilotJetLength(c.get(11))
                        .build());
    return Arbitraries.oneOf(measured, Arbitraries.just(FlowCoefficients.assumed()));
  }

  /** {@return open mouths and filters} */
  public static Arbitrary<Intake> intakes() {
    return combine(ids(), areas(100, 3000).optional(0.7)).as(Intake::new);
  }

  private static Arbitrary<Screw> screws() {
    return combine(Arbitraries.of(ScrewKind.class), numbers(0.25, 4).map(ScrewTurns::of))
        .as(Screw::new);
  }

  private static Arbitrary<ClipPosition> clips(int grooves) {
    return combine(Arbitraries.integers().between(1, grooves), Arbitraries.of(true, false))
        .as(
            (groove, fromTop) ->
                fromTop
                    ? ClipPosition.fromTop(groove, grooves)
                    : ClipPosition.fromBottom(groove, grooves));
  }

  private static Arbitrary<Cutaway> cutaways() {
    return numbers(0, 8).map(Cutaway::ofMillimetres);
  }

  private static Arbitrary<JetBore> jets(double low, double high) {
    return numbers(low, high).map(JetBore::ofMillimetres);
  }

  private static Arbitrary<Length> lengths(double low, double high) {
    return numbers(low, high).map(Length::ofMillimetres);
  }

  private static Arbitrary<Area> areas(double low, double high) {
    return numbers(low, high).map(Area::ofSquareMillimetres);
  }

  private static Arbitrary<Coefficient> coefficients(String unit, double low, double high) {
    // As a note a unit is refused; none has more than five letters.
    Arbitrary<String> notes = titles().map(title -> title.length() > 5 ? title : title + " noted");
    return combine(numbers(low, high), Arbitraries.of(Coefficient.Origin.class), notes)
        .as((value, origin, note) -> new Coefficient(value, unit, origin, note));
  }

  /** Numbers as people write them, and numbers as calculations leave them. */
  private static Arbitrary<Double> numbers(double low, double high) {
    Arbitrary<Double> calculated =
        Arbitraries.doubles()
            .between(0, 1)
            .ofScale(15)
            .withDistribution(RandomDistribution.uniform())
            .map(share -> Math.min(high, low + share * (high - low)));
    Arbitrary<Double> written =
        Arbitraries.doubles()
            .between(low, high)
            .ofScale(4)
            .withDistribution(RandomDistribution.uniform());
    return Arbitraries.oneOf(written, calculated);
  }

  private static Arbitrary<String> ids() {
    return titles();
  }

  /** One line each, with what JSON and Markdown have to escape in one. */
  private static Arbitrary<String> titles() {
    return Arbitraries.strings()
        .alpha()
        .numeric()
        .withChars(" \"\\/{}[]:,'…λ³·é`*_<>|~&#")
        .ofMinLength(1)
        .ofMaxLength(24)
        .filter(text -> !text.isBlank());
  }
}
