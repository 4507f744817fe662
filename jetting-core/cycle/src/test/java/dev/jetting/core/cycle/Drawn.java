package dev.jetting.core.cycle;

import com.google.common.collect.ImmutableList;
import dev.jetting.core.air.Air;
import dev.jetting.core.air.AirFormula;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.flow.Pulsation;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.Pressure;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Random;

/** Engines and carburettors drawn at random that the fit has not seen. */
final class Drawn {

  /** Where a trial is made: the range of the targets, and the two below it. */
  enum Range {
    USUAL(3000, List.of(0.0625, 0.125, 0.25, 0.5, 1.0)),
    SLOW(1300, List.of(0.0625, 0.25, 1.0)),
    SHUT(3000, List.of(0.0, 1 / 64.0, 1 / 32.0));

    private final double leastRpm;
    private final ImmutableList<Double> openings;

    Range(double leastRpm, List<Double> openings) {
      this.leastRpm = leastRpm;
      this.openings = ImmutableList.copyOf(openings);
    }

    List<Double> openings() {
      return openings;
    }

    /** A speed of an engine that peaks at a speed. */
    private double rpm(Random random, double peak) {
      double usual = Math.max(leastRpm, peak * between(random, 0.35, 1.1));
      return this == SLOW ? leastRpm + (usual - leastRpm) % (3000 - leastRpm) : usual;
    }
  }

  private Drawn() {}

  /** An engine and its carburettor, at a speed. */
  record Trial(SlideSignal.Kind kind, Setup setup, Crankcase crankcase, double rpm) {

    /** The same engine, its inlet not stated. */
    Trial ofUnknownKind() {
      Induction unknown = Induction.unknown("not stated");
      return new Trial(
          kind, setup.withEngine(setup.engine().withInduction(unknown)), crankcase, rpm);
    }

    /** The same engine, its delivery ratio stated wrong by a factor. */
    Trial withDelivery(double factor) {
      Engine engine = setup.engine();
      double stated = factor * engine.deliveryRatioAt(EngineSpeed.ofRpm(rpm));
      return new Trial(
          kind,
          setup.withEngine(engine.withDeliveryRatio(RpmCurve.constant(stated))),
          crankcase,
          rpm);
    }

    CyclePoint cycle(double opening) {
      return CrankcaseCycle.of(setup, crankcase)
          .at(ThrottleOpening.ofShare(opening), EngineSpeed.ofRpm(rpm));
    }

    MixturePoint modelled(double opening) {
      return MixtureModel.of(setup).at(ThrottleOpening.ofShare(opening), EngineSpeed.ofRpm(rpm));
    }
  }

  private static int place(SlideSignal.Kind kind) {
    return switch (kind) {
      case PISTON -> 0;
      case ROTARY -> 1;
      case REED -> 2;
    };
  }

  private static double between(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** With the inside that the mixture model assumes, or with what it is not given drawn as well. */
  static Trial draw(SlideSignal.Kind kind, Range range, long seed, boolean hidden) {
    Random r = new Random(seed * 1_000_003 + place(kind));
    double swept = between(r, 50, 250);
    double peak = between(r, 5500, 10500);
    double rpm = range.rpm(r, peak);
    double opens = kind == SlideSignal.Kind.PISTON ? between(r, 65, 92) : between(r, 118, 145);
    double closes = kind == SlideSignal.Kind.PISTON ? opens : between(r, 45, 75);
    // An exhaust pulls near its own speed, not far below.
    double pull = between(r, 0, range == Range.SLOW ? 1 : 18_000);
    double celsius = between(r, -10, 35);
    double kilopascals = between(r, 75, 103);
    double port = hidden ? Math.exp(0.2 * r.nextGaussian()) : 1;
    double transferPort = hidden ? Math.exp(0.15 * r.nextGaussian()) : 1;
    double tract = hidden ? Math.exp(0.3 * r.nextGaussian()) : 1;
    double compression = hidden ? between(r, 1.32, 1.5) : 1.4;
    double transferDuration = hidden ? between(r, 112, 130) : 120;
    double reed = hidden ? Math.exp(0.4 * r.nextGaussian()) : 1;
    double bore =
        Math.rint(4.06 * Math.sqrt(swept * peak / 7000.0 * between(r, 0.18, 0.36)) * 10) / 10;

    double inletArea =
        Pulsation.PORT_AT_PEAK
            * swept
            * 1e-6
            * (peak / 60)
            / Math.sqrt(287.05287 * 288.15)
            / 0.7
            * 1e6;
    Inlet inlet =
        switch (kind) {
          case PISTON -> new Inlet.PistonPort(opens + closes, Bench.area(inletArea * port));
          case ROTARY ->
              new Inlet.RotaryValve(opens, closes, 20, Bench.area(inletArea * port * 460 / 520));
          case REED ->
              new Inlet.Reed(
                  Bench.area(inletArea * port * 560 / 520), Pressure.ofPascals(4000 * reed));
        };
    Crankcase crankcase =
        Crankcase.builder()
            .primaryCompression(compression)
            .inlet(inlet)
            .transfer(
                new Transfer(
                    transferDuration,
                    Bench.area(inletArea * transferPort * 500 / 520),
                    Pressure.ofPascals(pull * kilopascals / 101.325)))
            .tract(
                new IntakeTract(
                    Length.ofMillimetres(70),
                    Area.ofSquareMillimetres(450 * swept / 123 * tract),
                    IntakeTract.Inertia.LEFT_OUT))
            .build();
    double speed =
        Math.log(Pulsation.PORT_AT_PEAK * peak / rpm * Math.sqrt((273.15 + celsius) / 288.15));
    SlideSignal.Group usual = SignalSamples.group(kind, speed, opens, closes, 3.7, pull);
    double inletGroup = usual.inlet() * port;
    SlideSignal.Group own =
        new SlideSignal.Group(
            usual.gap(),
            kind,
            inletGroup,
            opens,
            closes,
            usual.ramp(),
            4000 * reed / (kilopascals * 1e3),
            usual.transfer() * transferPort,
            transferDuration,
            usual.pull(),
            compression,
            0.25,
            usual.tract() * tract);
    double delivery = SlideSignal.of(own).air();
    Engine engine =
        Engine.builder()
            .id("invented")
            .displacement(Displacement.ofCubicCentimetres(swept))
            .deliveryRatio(RpmCurve.constant(delivery))
            .induction(Bench.induction(kind, opens, closes))
            .exhaust(Exhaust.reference("plain"))
            .loadLine(new LoadLine(EngineSpeed.ofRpm(1500), EngineSpeed.ofRpm(peak)))
            .need(MixtureNeed.assumedMild())
            .build();
    Setup base = Bench.setup();
    return new Trial(
        kind,
        Setup.builder()
            .engine(engine)
            .setting(setting(base.setting(), bore, r))
            .air(
                Air.dry(Pressure.ofPascals(kilopascals * 1e3), Temperature.ofCelsius(celsius))
                    .withFormula(AirFormula.IDEAL_GAS))
            .fuel(base.fuel())
            .build(),
        crankcase,
        rpm);
  }

  /** The bench's setting, in proportion to the bore, its parts drawn by a little. */
  private static Setting setting(Setting s, double bore, Random r) {
    double k = bore / 24;
    PilotCircuit p = s.carburettor().pilot();
    PilotCircuit pilot =
        PilotCircuit.builder()
            .screwKind(ScrewKind.MIXTURE)
            .areaPerTurn(Bench.area(0.13 * k * k))
            .fixedArea(Bench.area(0.45 * k * k))
            .progressionHole(Bench.area(0.38 * k * k))
            .uncoversFrom(Length.ofMillimetres(0))
            .uncoversTo(Length.ofMillimetres(1.5 * k))
            .head(p.head())
            .mostTurns(p.mostTurns())
            .build();
    Carburettor c =
        Carburettor.builder()
            .id("invented")
            .bore(Diameter.ofMillimetres(bore))
            .needleJetLength(Length.ofMillimetres(2.5 * k))
            .needleJetHead(Length.ofMillimetres(8 * k))
            .pilot(pilot)
            .floatValve(s.carburettor().floatValve())
            .flow(FlowCoefficients.assumed())
            .build();
    double filter = r.nextBoolean() ? 0 : between(r, 1, 1.6) * Math.PI / 4 * bore * bore;
    return Setting.builder()
        .carburettor(c)
        .intake(filter == 0 ? Intake.openMouth() : Intake.filter("filter", Bench.area(filter)))
        .pilotJet(JetBore.ofMillimetres(0.42 * k * between(r, 0.93, 1.07)))
        .screw(new Screw(ScrewKind.MIXTURE, s.screw().turns()))
        .cutaway(Cutaway.ofMillimetres(3 * k * between(r, 0.8, 1.2)))
        .idleLift(Length.ofMillimetres(k))
        .needleJet(NeedleJet.of(Diameter.ofMillimetres(2.15 * k)))
        .needle(
            Needle.builder()
                .id("invented")
                .cylinder(Diameter.ofMillimetres((2.15 - 0.13 * between(r, 0.8, 1.2)) * k))
                .tapers(List.of(new Taper(Length.ofMillimetres(3.6 * k), 0.028)))
                .grooves(5)
                .groovePitch(Length.ofMillimetres(0.8 * k))
                .tip(Length.ofMillimetres(60 * k))
                .build())
        .clip(s.clip())
        .mainJet(JetBore.ofMillimetres(0.96 * k * between(r, 0.9, 1.1)))
        .build();
  }
}
