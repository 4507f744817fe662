package dev.jetting.rules.arbitraries;

import static net.jqwik.api.Combinators.combine;

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
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomDistribution;

/**
 * Random sheets that a tuner would believe: invented engines of 65 to 250 cm³ whose carburettor and
 * jets suit them by size. They are set too lean, too rich or about right, on ordinary days, in
 * numbers as people write them. Ranges are common practice, no source.
 *
 * <p>Not a picture of what is on the road: no share of these settings means anything.
 */
public final class PlausibleArbitraries {

  private PlausibleArbitraries() {}

  /** {@return plausible sheets, one risk in a hundred to one in five accepted} */
  public static Arbitrary<SetupSheet> sheets() {
    Arbitrary<Riding> ridings =
        combine(numbers(0.01, 0.2, 2), airs(), airs())
            .as(
                (risk, one, other) ->
                    SheetArbitraries.riding(
                        Probability.of(risk), RidingProfile.assumedRoad(), one, other));
    return combine(setups(), ridings)
        .as(
            (setup, riding) ->
                SetupSheet.builder().title("plausible").setup(setup).riding(riding).build())
        .withoutEdgeCases();
  }

  /**
   * {@return plausible sheets whose setting was proven on the same engine, behind another intake or
   * not, in other air, with observations at one to four openings}
   */
  public static Arbitrary<SetupSheet> provenSheets() {
    Arbitrary<Consumer<Provenance.Builder>> changes =
        combine(airs(), intakes(30).optional(0.5))
            .as(
                (air, intake) ->
                    proven -> {
                      proven.air(air);
                      intake.ifPresent(proven::intake);
                    });
    return combine(sheets(), changes, observations())
        .as(
            (sheet, change, observed) -> {
              Provenance.Builder proven = Provenance.builder().engine(sheet.setup().engine());
              change.accept(proven);
              return sheet.withProvenance(proven.observed(observed).build());
            });
  }

  private static Arbitrary<List<ProvenObservation>> observations() {
    Arbitrary<Evidence> evidence =
        Arbitraries.oneOf(
            Arbitraries.just(new Evidence.Proven()),
            Arbitraries.of(PlugColour.BROWN, PlugColour.DARK).map(Evidence.Colour::new),
            numbers(0.75, 0.95, 2).map(Lambda::of).map(Evidence.Wideband::new));
    return combine(numbers(0, 8, 0).map(e -> ThrottleOpening.ofEighths(e.intValue())), evidence)
        .as(ProvenObservation::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .uniqueElements(ProvenObservation::throttle);
  }

  /** {@return plausible setups} */
  public static Arbitrary<Setup> setups() {
    return numbers(20, 38, 0)
        .flatMap(
            bore ->
                combine(engines(bore), settings(bore), airs(), fuels())
                    .as(
                        (engine, setting, air, fuel) ->
                            Setup.builder()
                                .engine(engine)
                                .setting(setting)
                                .air(air)
                                .fuel(fuel)
                                .build()));
  }

  /** Engines for a bore in mm, with delivery that rises to the peak or falls before it. */
  private static Arbitrary<Engine> engines(double bore) {
    double size = bore / 30 * bore / 30;
    Arbitrary<RpmCurve> deliveries =
        combine(numbers(0.4, 0.55, 2), numbers(0.5, 0.75, 2), numbers(0.6, 0.95, 2))
            .as(
                (idle, middle, peak) ->
                    RpmCurve.of(
                        RpmCurve.Point.of(1400, idle),
                        RpmCurve.Point.of(4500, middle),
                        RpmCurve.Point.of(8000, peak)));
    return combine(
            numbers(150, 240, 0).map(cm3 -> Math.rint(cm3 * size)),
            deliveries,
            Arbitraries.of(
                Induction.assumedMild(),
                Induction.reedValve("reed valve"),
                Induction.rotaryValve("rotary valve")
                    .opens(degrees(130))
                    .closes(degrees(58))
                    .build(),
                Induction.pistonPort("piston port", degrees(150))),
            numbers(1200, 1600, -2),
            numbers(6000, 9500, -2),
            Arbitraries.of(
                MixtureNeed.assumedVeryMild(),
                MixtureNeed.assumedMild(),
                MixtureNeed.assumedTuned()))
        .as(
            (cm3, delivery, induction, idle, peak, need) ->
                Engine.builder()
                    .id("plausible engine")
                    .displacement(Displacement.ofCubicCentimetres(cm3))
                    .deliveryRatio(delivery)
                    .induction(induction)
                    .exhaust(Exhaust.reference("plausible exhaust"))
                    .loadLine(new LoadLine(EngineSpeed.ofRpm(idle), EngineSpeed.ofRpm(peak)))
                    .need(need)
                    .build());
  }

  private static Coefficient degrees(double value) {
    return Coefficient.assumed(value, "°", "invented");
  }

  private static Arbitrary<Setting> settings(double bore) {
    double size = bore / 30;
    Arbitrary<Hung> hung =
        combine(
                numbers(2.46, 2.54, 2),
                numbers(0.12, 0.22, 2),
                numbers(3, 7, 1),
                numbers(0.02, 0.036, 3),
                Arbitraries.integers().between(1, 5),
                numbers(0, 2, 1))
            .as(PlausibleArbitraries::hung);
    return combine(
            carburettors(bore),
            intakes(bore),
            numbers(0.45 * size, 0.65 * size, 2),
            numbers(0.5, 3, 2),
            numbers(3 * size, 5 * size, 1),
            numbers(1, 1.6, 1),
            hung,
            numbers(1.05 * size, 1.5 * size, 2))
        .as(
            (carburettor, intake, pilotJet, turns, cutaway, idleLift, needle, mainJet) ->
                Setting.builder()
                    .carburettor(carburettor)
                    .intake(intake)
                    .pilotJet(JetBore.ofMillimetres(pilotJet))
                    .screw(new Screw(carburettor.pilot().screwKind(), ScrewTurns.of(turns)))
                    .cutaway(Cutaway.ofMillimetres(cutaway))
                    .idleLift(Length.ofMillimetres(idleLift))
                    .needleJet(needle.jet)
                    .needle(needle.needle)
                    .clip(needle.clip)
                    .mainJet(JetBore.ofMillimetres(mainJet))
                    .build());
  }

  private static Arbitrary<Intake> intakes(double bore) {
    return numbers(0.7, 3, 1)
        .map(
            times ->
                Intake.filter(
                    "plausible filter", Area.ofSquareMillimetres(Math.rint(times * bore * bore))))
        .optional(0.5)
        .map(filter -> filter.orElse(Intake.openMouth()));
  }

  private record Hung(NeedleJet jet, Needle needle, ClipPosition clip) {}

  private static Hung hung(
      double cylinder, double clearance, double start, double rate, int groove, double neck) {
    return new Hung(
        new NeedleJet(
            Diameter.ofMillimetres(Math.rint((cylinder + clearance) * 100) / 100),
            Length.ofMillimetres(neck)),
        Needle.builder()
            .id("plausible needle")
            .cylinder(Diameter.ofMillimetres(cylinder))
            .tapers(List.of(new Taper(Length.ofMillimetres(start), rate)))
            .grooves(5)
            .groovePitch(Length.ofMillimetres(0.9))
            .tip(Length.ofMillimetres(50))
            .build(),
        ClipPosition.fromTop(groove, 5));
  }

  private static Arbitrary<Carburettor> carburettors(double bore) {
    double size = bore / 30 * bore / 30;
    return combine(
            Arbitraries.of(ScrewKind.class),
            numbers(0.4 * size, 0.8 * size, 2),
            numbers(0.4 * size, 0.8 * size, 2),
            numbers(0, 0.5, 1),
            numbers(1.6, 2.8, 1))
        .as(
            (kind, fixed, hole, from, seat) ->
                Carburettor.builder()
                    .id("plausible carburettor")
                    .bore(Diameter.ofMillimetres(bore))
                    .needleJetLength(Length.ofMillimetres(3))
                    .needleJetHead(Length.ofMillimetres(12))
                    .pilot(
                        PilotCircuit.builder()
                            .screwKind(kind)
                            .areaPerTurn(Area.ofSquareMillimetres(Math.rint(18 * size) / 100))
                            .fixedArea(Area.ofSquareMillimetres(fixed))
                            .progressionHole(Area.ofSquareMillimetres(hole))
                            .uncoversFrom(Length.ofMillimetres(from))
                            .uncoversTo(Length.ofMillimetres(from + 2))
                            .head(Length.ofMillimetres(1))
                            .mostTurns(ScrewTurns.of(4))
                            .build())
                    .floatValve(
                        new FloatValve(
                            Diameter.ofMillimetres(seat),
                            Length.ofMillimetres(150),
                            Coefficient.assumed(0.6, "1", "tap and hose included")))
                    .flow(FlowCoefficients.assumed())
                    .build());
  }

  /** {@return ordinary days from 700 to 1040 hPa and −10 to 38 °C} */
  public static Arbitrary<Air> airs() {
    return combine(numbers(700, 1040, 0), numbers(-10, 38, 0), numbers(20, 100, 0))
        .as(
            (pressure, temperature, humidity) ->
                Air.of(
                    Pressure.ofHectopascals(pressure),
                    Temperature.ofCelsius(temperature),
                    RelativeHumidity.ofPercent(humidity)));
  }

  private static Arbitrary<Fuel> fuels() {
    return combine(Arbitraries.of(Fuel.PETROL, Fuel.E5, Fuel.E10), numbers(20, 60, 0))
        .as((fuel, ratio) -> fuel.withPremix(PremixRatio.ofPetrolToOil(ratio)));
  }

  /**
   * Numbers with the given decimals, evenly spread; negative decimals mean whole tens and hundreds.
   */
  private static Arbitrary<Double> numbers(double low, double high, int decimals) {
    double scale = StrictMath.pow(10, decimals);
    return Arbitraries.integers()
        .between((int) Math.ceil(low * scale), (int) Math.floor(high * scale))
        .withDistribution(RandomDistribution.uniform())
        .map(number -> number / scale);
  }
}
