package dev.jetting.rules.json;

import static dev.jetting.rules.json.Dimension.AIR_FUEL_RATIO;
import static dev.jetting.rules.json.Dimension.AREA;
import static dev.jetting.rules.json.Dimension.COUNT;
import static dev.jetting.rules.json.Dimension.CUTAWAY;
import static dev.jetting.rules.json.Dimension.DENSITY;
import static dev.jetting.rules.json.Dimension.DIAMETER;
import static dev.jetting.rules.json.Dimension.DISPLACEMENT;
import static dev.jetting.rules.json.Dimension.GROOVES;
import static dev.jetting.rules.json.Dimension.HUMIDITY;
import static dev.jetting.rules.json.Dimension.JET_BORE;
import static dev.jetting.rules.json.Dimension.LAMBDA;
import static dev.jetting.rules.json.Dimension.LENGTH;
import static dev.jetting.rules.json.Dimension.MASS_FLOW;
import static dev.jetting.rules.json.Dimension.OIL;
import static dev.jetting.rules.json.Dimension.PRESSURE;
import static dev.jetting.rules.json.Dimension.RATIO;
import static dev.jetting.rules.json.Dimension.RISK;
import static dev.jetting.rules.json.Dimension.SHARE;
import static dev.jetting.rules.json.Dimension.SPEED;
import static dev.jetting.rules.json.Dimension.TEMPERATURE;
import static dev.jetting.rules.json.Dimension.TURNS;
import static dev.jetting.rules.json.Dimension.VISCOSITY;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.json.MeasureDefinition.Plain;
import dev.jetting.rules.json.MeasureDefinition.Swept;
import dev.jetting.rules.json.MeasureDefinition.Word;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Area;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * The table of measures: what a condition may name, the one source of what is read, of the schema
 * and of the documentation. A name is the path in a setup sheet where there is one.
 */
final class MeasureDefinitions {

  private static final MeasureDefinitions TABLE = new MeasureDefinitions();

  private final ImmutableMap.Builder<String, MeasureDefinition> rows = ImmutableMap.builder();
  private final Map<String, MeasureDefinition> byName;

  private MeasureDefinitions() {
    engine();
    carburettor();
    parts();
    surroundings();
    partsAtHand();
    mixture();
    overrun();
    byName = rows.buildOrThrow();
  }

  static Optional<MeasureDefinition> named(String name) {
    return Optional.ofNullable(TABLE.byName.get(name));
  }

  static Collection<MeasureDefinition> all() {
    return TABLE.byName.values();
  }

  static Collection<String> names() {
    return TABLE.byName.keySet();
  }

  private void engine() {
    word("engine.id", "engine", s -> engine(s).id());
    word("engine.exhaust.id", "exhaust", s -> engine(s).exhaust().id());
    number("engine.displacement", "displacement", DISPLACEMENT, s -> cc(engine(s)));
    number("engine.loadLine.idle", "idle speed", SPEED, s -> engine(s).loadLine().idle().rpm());
    number("engine.loadLine.peak", "peak speed", SPEED, s -> engine(s).loadLine().peak().rpm());
    word("engine.induction.kind", "kind of inlet", s -> engine(s).induction().kind().toString());
    swept("engine.need", "λ wanted", LAMBDA, MeasureDefinitions::wanted);
    swept(
        "engine.deliveryRatio",
        "delivery ratio, exhaust included",
        RATIO,
        (s, p) -> engine(s).deliveryRatioAt(p.mixture().speed()));
  }

  private void carburettor() {
    String at = "setting.carburettor.";
    word(at + "id", "carburettor", s -> carburettor(s).id());
    number(at + "bore", "carburettor bore", DIAMETER, s -> carburettor(s).bore().millimetres());
    number(
        at + "needleJetLength",
        "length of the needle jet's bore",
        LENGTH,
        s -> carburettor(s).needleJetLength().millimetres());
    number(
        at + "needleJetHead",
        "height of the needle jet above the fuel",
        LENGTH,
        s -> carburettor(s).needleJetHead().millimetres());
    word(at + "pilot.screwKind", "kind of screw it has", s -> Enums.name(pilot(s).screwKind()));
    number(
        at + "pilot.areaPerTurn",
        "area of the screw per turn",
        AREA,
        s -> pilot(s).areaPerTurn().squareMillimetres());
    number(
        at + "pilot.fixedArea",
        "fixed area of the pilot circuit",
        AREA,
        s -> pilot(s).fixedArea().squareMillimetres());
    number(
        at + "pilot.progressionHole",
        "area of the progression hole",
        AREA,
        s -> pilot(s).progressionHole().squareMillimetres());
    number(at + "pilot.mostTurns", "most turns", TURNS, s -> pilot(s).mostTurns().turns());
    number(
        at + "floatValve.seat",
        "float valve seat",
        DIAMETER,
        s -> carburettor(s).floatValve().seat().millimetres());
    number(
        at + "floatValve.supplyHead",
        "head above the float valve",
        LENGTH,
        s -> carburettor(s).floatValve().supplyHead().millimetres());
  }

  private void parts() {
    word("setting.intake.id", "intake", s -> s.setting().intake().id());
    maybe(
        "setting.intake.effectiveArea",
        "effective area of the intake",
        AREA,
        MeasureDefinitions::intake);
    number("setting.pilotJet", "pilot jet", JET_BORE, s -> s.setting().pilotJet().millimetres());
    word(
        "setting.screw.kind",
        "kind of screw the setting is meant for",
        s -> Enums.name(s.setting().screw().kind()));
    number("setting.screw.turns", "screw", TURNS, s -> s.setting().screw().turns().turns());
    number("setting.cutaway", "cutaway", CUTAWAY, s -> s.setting().cutaway().millimetres());
    number("setting.idleLift", "idle lift", LENGTH, s -> s.setting().idleLift().millimetres());
    number(
        "setting.needleJet.bore",
        "needle jet bore",
        DIAMETER,
        s -> s.setting().needleJet().bore().millimetres());
    number(
        "setting.needleJet.neck",
        "needle jet neck",
        LENGTH,
        s -> s.setting().needleJet().neck().millimetres());
    word("setting.needle.id", "needle", s -> s.setting().needle().id());
    number(
        "setting.needle.cylinder",
        "needle cylinder",
        DIAMETER,
        s -> s.setting().needle().cylinder().millimetres());
    number("setting.needle.grooves", "grooves", GROOVES, s -> s.setting().needle().grooves());
    number(
        "setting.needle.groovePitch",
        "groove pitch",
        LENGTH,
        s -> s.setting().needle().groovePitch().millimetres());
    number("setting.needle.tip", "tip", LENGTH, s -> s.setting().needle().tip().millimetres());
    number("setting.needle.tapers", "tapers", COUNT, s -> s.setting().needle().tapers().size());
    maybe(
        "setting.needle.tapers[0].start",
        "start of the first taper",
        LENGTH,
        s -> taper(s).map(taper -> taper.start().millimetres()));
    maybe(
        "setting.needle.tapers[0].rate",
        "rate of the first taper",
        RATIO,
        s -> taper(s).map(Taper::rate));
    number(
        "setting.clip.fromTop",
        "clip from the top",
        GROOVES,
        s -> s.setting().clip().grooveFromTop());
    number(
        "setting.clip.fromBottom",
        "clip from the bottom",
        GROOVES,
        s -> s.setting().clip().grooveFromBottom());
    number("setting.mainJet", "main jet", JET_BORE, s -> s.setting().mainJet().millimetres());
  }

  private void surroundings() {
    air("air", "today", s -> s.setup().air());
    air("riding.coldest", "on the coldest day", s -> s.sheet().riding().coldest());
    air("riding.hottest", "on the hottest day", s -> s.sheet().riding().hottest());
    number("fuel.premix", "oil by petrol", OIL, s -> s.setup().fuel().premix().oilShareOfPetrol());
    number(
        "fuel.temperature",
        "temperature of the fuel in the float chamber",
        TEMPERATURE,
        s -> s.setup().fuelTemperature().kelvin());
    number(
        "fuel.stoichiometricRatio",
        "air-fuel ratio of complete combustion",
        AIR_FUEL_RATIO,
        s -> s.setup().fuel().stoichiometricRatio().value());
    number(
        "fuel.density",
        "fuel density, oil included",
        DENSITY,
        s -> s.setup().fuelDensity().kilogramsPerCubicMetre());
    number(
        "fuel.dynamicViscosity",
        "fuel viscosity, oil included",
        VISCOSITY,
        s -> s.setup().fuel().dynamicViscosity(s.setup().fuelTemperature()).millipascalSeconds());
    number(
        "riding.acceptedRisk",
        "accepted risk",
        RISK,
        s -> s.sheet().riding().acceptedRisk().value());
  }

  private void partsAtHand() {
    jets("parts.pilotJets", "pilot jet at hand", PartsAtHand::pilotJets);
    jets("parts.mainJets", "main jet at hand", PartsAtHand::mainJets);
  }

  private void mixture() {
    swept("mixture.speed", "engine speed", SPEED, (s, p) -> p.mixture().speed().rpm());
    swept("mixture.lambda", "λ", LAMBDA, (s, p) -> p.mixture().lambda().value());
    swept(
        "mixture.lambdaByWanted",
        "λ by λ wanted",
        RATIO,
        (s, p) -> p.mixture().lambda().value() / wanted(s, p));
    swept("mixture.leanLimit", "lean limit of λ", LAMBDA, (s, p) -> p.leanLimit().value());
    swept("mixture.richLimit", "rich limit of λ", LAMBDA, (s, p) -> p.richLimit().value());
    swept("mixture.leanRisk", "lean risk", RISK, (s, p) -> p.leanRisk().value());
    swept("mixture.spread", "spread of ln λ", RATIO, (s, p) -> p.spread());
    swept("mixture.lift", "lift of the slide", LENGTH, (s, p) -> p.mixture().lift().millimetres());
    swept(
        "mixture.depression",
        "depression behind the slide",
        PRESSURE,
        (s, p) -> p.mixture().depression().pascals());
    swept(
        "mixture.needleJetSuction",
        "suction at the needle jet",
        PRESSURE,
        (s, p) -> p.mixture().needleJetSuction().pascals());
    swept(
        "mixture.airFlow", "air flow", MASS_FLOW, (s, p) -> p.mixture().airFlow().gramsPerSecond());
    swept(
        "mixture.fuelShare.pilot",
        "fuel share of the pilot circuit",
        SHARE,
        (s, p) -> p.mixture().pilotFuelShare());
    swept(
        "mixture.fuelShare.main",
        "fuel share of needle jet and main jet",
        SHARE,
        (s, p) -> p.mixture().mainFuelShare());
    for (Circuit circuit : Circuit.values()) {
      String name = Enums.name(circuit);
      swept("mixture.authority." + name, "authority, " + name, SHARE, (s, p) -> of(circuit, p));
    }
    day("riding.coldest", "on the coldest day", AssessedSetting::coldest);
    day("riding.hottest", "on the hottest day", AssessedSetting::hottest);
  }

  private void overrun() {
    number(
        "overrun.lambda",
        "λ on the overrun, on the day when it is leanest",
        LAMBDA,
        s -> s.overrun().lambda().value());
    number(
        "overrun.leanLimit",
        "lean limit of λ on the overrun",
        LAMBDA,
        MeasureDefinitions::overrunLimit);
    number(
        "overrun.fuelShareOfOpen",
        "fuel a turn on the overrun by that at full throttle",
        SHARE,
        s -> s.overrun().fuelShareOfOpen());
  }

  private void air(String at, String when, Function<AssessedSetting, Air> air) {
    number(
        at + ".temperature",
        "temperature " + when,
        TEMPERATURE,
        s -> air.apply(s).temperature().kelvin());
    number(at + ".pressure", "pressure " + when, PRESSURE, s -> air.apply(s).pressure().pascals());
    number(at + ".humidity", "humidity " + when, HUMIDITY, s -> air.apply(s).humidity().share());
    number(
        at + ".density",
        "air density " + when,
        DENSITY,
        s -> air.apply(s).density().kilogramsPerCubicMetre());
  }

  private void jets(String at, String words, Function<PartsAtHand, List<JetBore>> jets) {
    maybe(at + ".smallest", "smallest " + words, JET_BORE, s -> bore(jets.apply(parts(s)), true));
    maybe(at + ".biggest", "biggest " + words, JET_BORE, s -> bore(jets.apply(parts(s)), false));
  }

  private void day(String at, String when, Function<AssessedSetting, RiskProfile> profile) {
    put(
        new Swept(
            at + ".lambda", "λ " + when, LAMBDA, profile, (s, p) -> p.mixture().lambda().value()));
    put(
        new Swept(
            at + ".leanRisk", "lean risk " + when, RISK, profile, (s, p) -> p.leanRisk().value()));
  }

  private void word(String name, String words, Function<AssessedSetting, String> text) {
    put(new Word(name, words, text));
  }

  private void number(
      String name, String words, Dimension dimension, ToDoubleFunction<AssessedSetting> number) {
    maybe(name, words, dimension, s -> Optional.of(number.applyAsDouble(s)));
  }

  private void maybe(
      String name,
      String words,
      Dimension dimension,
      Function<AssessedSetting, Optional<Double>> number) {
    put(new Plain(name, words, dimension, number));
  }

  private void swept(
      String name,
      String words,
      Dimension dimension,
      ToDoubleBiFunction<AssessedSetting, RiskPoint> number) {
    put(new Swept(name, words, dimension, AssessedSetting::profile, number));
  }

  private void put(MeasureDefinition definition) {
    rows.put(definition.name(), definition);
  }

  private static Engine engine(AssessedSetting s) {
    return s.setup().engine();
  }

  private static double cc(Engine engine) {
    return engine.displacement().cubicCentimetres();
  }

  private static double wanted(AssessedSetting s, RiskPoint p) {
    return engine(s).need().at(p.mixture().throttle()).value();
  }

  private static Carburettor carburettor(AssessedSetting s) {
    return s.setting().carburettor();
  }

  private static PilotCircuit pilot(AssessedSetting s) {
    return carburettor(s).pilot();
  }

  private static Optional<Double> intake(AssessedSetting s) {
    return s.setting().intake().effectiveArea().map(Area::squareMillimetres);
  }

  private static Optional<Taper> taper(AssessedSetting s) {
    return s.setting().needle().tapers().stream().findFirst();
  }

  private static PartsAtHand parts(AssessedSetting s) {
    return s.sheet().parts();
  }

  private static Optional<Double> bore(List<JetBore> jets, boolean smallest) {
    Comparator<JetBore> order = Comparator.naturalOrder();
    return jets.stream().min(smallest ? order : order.reversed()).map(JetBore::millimetres);
  }

  private static double of(Circuit circuit, RiskPoint point) {
    return point.effects().stream()
        .filter(effect -> effect.part().circuit() == circuit)
        .mapToDouble(PartEffect::authority)
        .sum();
  }

  private static double overrunLimit(AssessedSetting s) {
    Lambda limit = s.riskModel().limits().overrun(engine(s).need());
    return limit.value();
  }
}
