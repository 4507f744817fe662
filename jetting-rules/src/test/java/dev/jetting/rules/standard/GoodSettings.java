package dev.jetting.rules.standard;

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
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.List;

/**
 * Twenty settings that a tuner would call good, from a moped to race engines.
 *
 * <p>Displacements, bores, kinds of screw, speeds and filters are usual pairings (common practice,
 * no source). The carburettors' passages are the reference geometry, scaled. On such passages a jet
 * size of the trade says little, so each setting was made as a tuner makes it, on the model's own
 * engine: main jet, pilot, needle and slide from the rich side, until the mixture was a little
 * richer than needed at each mark of the grip; the racer of 125 cm³ is richer than that. No rule
 * had a say in it.
 */
final class GoodSettings {

  @SuppressWarnings("ImmutableEnumChecker") // records of immutable parts
  private enum Tune {
    UTILITY(1400, 0.50, 0.62, 0.62, pistonPort(135), MixtureNeed.assumedVeryMild()),
    MILD(1400, 0.50, 0.64, 0.72, rotaryValve(130, 55), MixtureNeed.assumedMild()),
    SPORT(1500, 0.50, 0.64, 0.82, rotaryValve(135, 62), MixtureNeed.assumedTuned()),
    RACE(1500, 0.42, 0.56, 0.95, Induction.reedValve("reed valve"), MixtureNeed.assumedTuned());

    private static Induction pistonPort(double duration) {
      return Induction.pistonPort("piston port", angle(duration));
    }

    private static Induction rotaryValve(double opens, double closes) {
      return Induction.rotaryValve("rotary valve")
          .opens(angle(opens))
          .closes(angle(closes))
          .build();
    }

    private static Coefficient angle(double degrees) {
      return Coefficient.assumed(degrees, "°", "usual for such an engine");
    }

    private final double idle;
    private final double deliveryAtIdle;
    private final double deliveryInTheMiddle;
    private final double deliveryAtPeak;
    private final Induction induction;
    private final MixtureNeed need;

    Tune(
        double idle,
        double deliveryAtIdle,
        double deliveryInTheMiddle,
        double deliveryAtPeak,
        Induction induction,
        MixtureNeed need) {
      this.idle = idle;
      this.deliveryAtIdle = deliveryAtIdle;
      this.deliveryInTheMiddle = deliveryInTheMiddle;
      this.deliveryAtPeak = deliveryAtPeak;
      this.induction = induction;
      this.need = need;
    }
  }

  /** Jets in hundredths of a mm, the cutaway in tenths. */
  private record Row(
      String name,
      Tune tune,
      double displacement,
      double bore,
      ScrewKind screw,
      double peak,
      boolean filter,
      int main,
      int pilot,
      double turns,
      int cutaway,
      int needleJet,
      int clip) {}

  private static final ScrewKind MIXTURE = ScrewKind.MIXTURE;
  private static final ScrewKind AIR = ScrewKind.AIR;

  private static final List<Row> ROWS =
      List.of(
          new Row("moped", Tune.UTILITY, 50, 12, MIXTURE, 5500, true, 50, 32, 1.75, 25, 256, 2),
          new Row("sport moped", Tune.SPORT, 50, 17, AIR, 9500, true, 75, 38, 2, 20, 254, 5),
          new Row(
              "children's racer", Tune.RACE, 65, 24, AIR, 11500, true, 106, 38, 2.25, 15, 262, 3),
          new Row(
              "light utility", Tune.MILD, 80, 18, MIXTURE, 6500, true, 77, 38, 1.75, 35, 262, 2),
          new Row("racer", Tune.RACE, 80, 26, AIR, 11500, true, 116, 41, 2, 20, 264, 3),
          new Row("commuter", Tune.UTILITY, 100, 20, MIXTURE, 6000, true, 78, 38, 1.75, 35, 264, 1),
          new Row("utility", Tune.MILD, 125, 22, MIXTURE, 6000, true, 93, 38, 2, 35, 264, 2),
          new Row("enduro", Tune.SPORT, 125, 26, AIR, 8500, true, 115, 59, 2, 40, 266, 2),
          new Row("sport", Tune.SPORT, 125, 28, AIR, 9500, true, 124, 56, 2, 35, 266, 2),
          new Row("racer", Tune.RACE, 125, 36, AIR, 11000, true, 165, 54, 1.75, 30, 272, 3),
          new Row("scooter", Tune.MILD, 150, 24, MIXTURE, 6000, true, 102, 39, 2.25, 40, 266, 2),
          new Row("trials", Tune.UTILITY, 250, 26, MIXTURE, 5500, true, 101, 52, 2.25, 45, 262, 2),
          new Row("roadster", Tune.MILD, 175, 27, MIXTURE, 6500, true, 114, 50, 1.75, 35, 262, 3),
          new Row("touring", Tune.UTILITY, 200, 27, MIXTURE, 6000, true, 104, 51, 2, 45, 264, 2),
          new Row("standard", Tune.MILD, 200, 30, MIXTURE, 7500, false, 130, 53, 1.75, 40, 264, 3),
          new Row("tuned", Tune.SPORT, 210, 30, MIXTURE, 8500, false, 140, 70, 1.5, 55, 268, 2),
          new Row(
              "tuned wide", Tune.SPORT, 210, 34, MIXTURE, 8500, false, 158, 61, 1.5, 45, 270, 2),
          new Row("enduro", Tune.SPORT, 250, 34, AIR, 7500, true, 156, 63, 1.5, 40, 266, 3),
          new Row("motocross", Tune.RACE, 250, 38, AIR, 8500, true, 179, 65, 1.5, 30, 266, 4),
          new Row("single", Tune.MILD, 350, 32, MIXTURE, 5500, true, 138, 67, 1.75, 50, 266, 2));

  private GoodSettings() {}

  static List<SetupSheet> sheets() {
    return ROWS.stream().map(GoodSettings::sheet).toList();
  }

  private static SetupSheet sheet(Row row) {
    int petrolToOil = row.tune.need.equals(MixtureNeed.assumedTuned()) ? 33 : 50;
    Fuel fuel = Fuel.E5.withPremix(PremixRatio.ofPetrolToOil(petrolToOil));
    return SetupSheet.builder()
        .title(row.name + " " + row.displacement + " on " + row.bore)
        .setup(
            Setup.builder()
                .engine(engine(row))
                .setting(setting(row))
                .air(day(18))
                .fuel(fuel)
                .build())
        .riding(
            Riding.builder()
                .acceptedRisk(Probability.of(0.1))
                .profile(RidingProfile.assumedRoad())
                .coldest(day(8))
                .hottest(day(28))
                .build())
        .build();
  }

  private static Engine engine(Row row) {
    Tune tune = row.tune;
    return Engine.builder()
        .id(row.name)
        .displacement(Displacement.ofCubicCentimetres(row.displacement))
        .deliveryRatio(
            RpmCurve.of(
                RpmCurve.Point.of(tune.idle, tune.deliveryAtIdle),
                RpmCurve.Point.of(0.6 * row.peak, tune.deliveryInTheMiddle),
                RpmCurve.Point.of(row.peak, tune.deliveryAtPeak)))
        .induction(tune.induction)
        .exhaust(Exhaust.reference("own"))
        .loadLine(new LoadLine(EngineSpeed.ofRpm(tune.idle), EngineSpeed.ofRpm(row.peak)))
        .need(tune.need)
        .build();
  }

  private static Setting setting(Row row) {
    double size = row.bore / 30;
    Needle needle =
        Needle.builder()
            .id("needle")
            .cylinder(Diameter.ofMillimetres(2.5))
            .tapers(List.of(new Taper(Length.ofMillimetres(5.1 * size), 0.0226)))
            .grooves(5)
            .groovePitch(Length.ofMillimetres(0.9))
            .tip(Length.ofMillimetres(row.bore + 8))
            .build();
    // As wide a gap at idle, by what the engine draws, as the reference has.
    double idleLift = 2 * StrictMath.pow(row.displacement / 200 / Math.sqrt(size), 2 / 3.0);
    return Setting.builder()
        .carburettor(carburettor(row, size))
        .intake(
            row.filter
                ? Intake.filter("filter box", Area.ofSquareMillimetres(2 * row.bore * row.bore))
                : Intake.openMouth())
        .pilotJet(JetBore.ofMillimetres(row.pilot / 100.0))
        .screw(new Screw(row.screw, ScrewTurns.of(row.turns)))
        .cutaway(Cutaway.ofMillimetres(row.cutaway / 10.0))
        .idleLift(Length.ofMillimetres(Math.rint(10 * idleLift) / 10))
        .needleJet(NeedleJet.of(Diameter.ofMillimetres(row.needleJet / 100.0)))
        .needle(needle)
        .clip(ClipPosition.fromTop(row.clip, 5))
        .mainJet(JetBore.ofMillimetres(row.main / 100.0))
        .build();
  }

  /** A pilot circuit between what the bore and what the engine asks for. */
  private static Carburettor carburettor(Row row, double size) {
    double area = size * Math.sqrt(row.displacement / 200);
    double fixed = row.screw == AIR ? 0.43 : 0.62;
    double seat = row.displacement > 150 ? 2.8 : row.displacement > 100 ? 2.5 : 2;
    return Carburettor.builder()
        .id("carburettor")
        .bore(Diameter.ofMillimetres(row.bore))
        .needleJetLength(Length.ofMillimetres(3))
        .needleJetHead(Length.ofMillimetres(12))
        .pilot(
            PilotCircuit.builder()
                .screwKind(row.screw)
                .areaPerTurn(Area.ofSquareMillimetres((row.screw == AIR ? 0.41 : 0.286) * area))
                .fixedArea(Area.ofSquareMillimetres(fixed * area))
                .progressionHole(Area.ofSquareMillimetres(0.413 * area))
                .uncoversFrom(Length.ofMillimetres(0))
                .uncoversTo(Length.ofMillimetres(2.25 * size))
                .head(Length.ofMillimetres(1))
                .mostTurns(ScrewTurns.of(3))
                .build())
        .floatValve(
            new FloatValve(
                Diameter.ofMillimetres(seat),
                Length.ofMillimetres(150),
                Coefficient.assumed(0.6, "1", "tap and hose included")))
        .flow(FlowCoefficients.assumed())
        .build();
  }

  private static Air day(double celsius) {
    return Air.of(
        Pressure.ofHectopascals(1013.25),
        Temperature.ofCelsius(celsius),
        RelativeHumidity.ofPercent(60));
  }
}
