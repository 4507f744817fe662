package dev.jetting.core.typical;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.fuel.FuelBlend;
import dev.jetting.core.fuel.FuelComponent;
import dev.jetting.core.fuel.FuelShare;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.units.Area;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.TemperatureDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/** Where each {@link MachineValue} stands. */
final class Lenses {

  static final Lens PEAK_SPEED =
      new Lens(
          s -> s.engine().loadLine().peak().rpm(),
          (s, x) -> s.withEngine(between(s.engine(), s.engine().loadLine().idle().rpm(), x)),
          (s, x) -> Math.max(x, 1.01 * s.engine().loadLine().idle().rpm()));

  static final Lens IDLE_SPEED =
      new Lens(
          s -> s.engine().loadLine().idle().rpm(),
          (s, x) -> s.withEngine(between(s.engine(), x, s.engine().loadLine().peak().rpm())),
          (s, x) -> Math.min(x, 0.99 * s.engine().loadLine().peak().rpm()));

  static final Lens DELIVERY_AT_PEAK = delivery(1);
  static final Lens DELIVERY_AT_IDLE = delivery(0);

  private static final Coefficient USUAL_DURATION =
      Coefficient.assumed(150, "°", "a usual piston port");

  /** Between a reed valve and a piston port; only an inlet of unknown kind has it. */
  static final Lens INLET_KIND =
      new Lens(
          s -> s.engine().induction().kind() == InductionKind.UNKNOWN ? 0 : Double.NaN,
          (s, x) -> s.withEngine(s.engine().withInduction(kind(s.engine().induction(), x))),
          (s, x) -> within(x, -1, 1));

  /** A piston port opens and shuts as early as late, so both move. */
  static final Lens INLET_OPENS =
      new Lens(
          s -> isTimed(s.engine().induction()) ? opens(s) : Double.NaN,
          (s, x) -> s.withEngine(s.engine().withInduction(opening(s.engine().induction(), x))),
          (s, x) -> within(x, 40, isPistonPort(s.engine().induction()) ? 120 : 180));

  /** Only a rotary valve shuts when it likes. */
  static final Lens INLET_CLOSES =
      new Lens(
          s -> isRotaryValve(s.engine().induction()) ? closes(s) : Double.NaN,
          (s, x) -> s.withEngine(s.engine().withInduction(closing(s.engine().induction(), x))),
          (s, x) -> within(x, 20, 120));

  static final Lens IDLE_LIFT =
      new Lens(
          s -> s.setting().idleLift().millimetres(),
          (s, x) -> s.withSetting(s.setting().withIdleLift(Length.ofMillimetres(x))),
          (s, x) -> within(x, 0.01, 0.9 * s.setting().carburettor().bore().millimetres()));

  static final Lens NEEDLE_JET_LENGTH =
      inCarburettor(
          c -> c.needleJetLength().millimetres(),
          (c, x) -> c.withNeedleJetLength(Length.ofMillimetres(x)));

  static final Lens NEEDLE_JET_HEAD =
      inCarburettor(
          c -> c.needleJetHead().millimetres(),
          (c, x) -> c.withNeedleJetHead(Length.ofMillimetres(x)));

  static final Lens AREA_PER_TURN =
      inPilot(
          p -> p.areaPerTurn().squareMillimetres(),
          (p, x) -> p.withAreaPerTurn(Area.ofSquareMillimetres(x)));

  static final Lens FIXED_AREA =
      inPilot(
          p -> p.fixedArea().squareMillimetres(),
          (p, x) -> p.withFixedArea(Area.ofSquareMillimetres(x)));

  static final Lens PROGRESSION_HOLE =
      inPilot(
          p -> p.progressionHole().squareMillimetres(),
          (p, x) -> p.withProgressionHole(Area.ofSquareMillimetres(x)));

  static final Lens UNCOVERED_AT =
      held(
          inPilot(
              p -> p.uncoversTo().millimetres(),
              (p, x) -> p.withUncoversTo(Length.ofMillimetres(x))),
          s ->
              x ->
                  Math.max(
                      x, s.setting().carburettor().pilot().uncoversFrom().millimetres() + 0.01));

  static final Lens PILOT_HEAD =
      held(
          inPilot(p -> p.head().millimetres(), (p, x) -> p.withHead(Length.ofMillimetres(x))),
          s -> x -> Math.max(x, 0));

  static final Lens NEEDLE_CYLINDER =
      held(
          inNeedle(
              n -> n.cylinder().millimetres(), (n, x) -> n.withCylinder(Diameter.ofMillimetres(x))),
          s -> x -> Math.min(x, s.setting().needleJet().bore().millimetres() - 0.005));

  static final Lens TAPER_START =
      held(
          inNeedle(
              n -> first(n, taper -> taper.start().millimetres()),
              (n, x) ->
                  n.withTapers(changedFirst(n, t -> new Taper(Length.ofMillimetres(x), t.rate())))),
          s -> x -> Math.min(x, below(s.setting().needle())));

  static final Lens TAPER_RATE =
      held(
          inNeedle(
              n -> first(n, Taper::rate),
              (n, x) -> n.withTapers(changedFirst(n, t -> new Taper(t.start(), x)))),
          s -> x -> within(x, 0, 0.5));

  static final Lens GROOVE_PITCH =
      inNeedle(
          n -> n.groovePitch().millimetres(), (n, x) -> n.withGroovePitch(Length.ofMillimetres(x)));

  static final Lens FILTER_AREA =
      new Lens(
          s -> s.setting().intake().effectiveArea().map(Area::squareMillimetres).orElse(Double.NaN),
          (s, x) ->
              s.withSetting(
                  s.setting()
                      .withIntake(
                          Intake.filter(s.setting().intake().id(), Area.ofSquareMillimetres(x)))),
          (s, x) -> Math.max(x, 1));

  static final Lens ETHANOL =
      new Lens(
          s -> ethanol(s.fuel()),
          (s, x) -> s.withFuel(withEthanol(s.fuel(), x)),
          (s, x) -> within(x, 0, 1));

  static final Lens OIL_SHARE =
      new Lens(
          s -> s.fuel().blend().isPresent() ? s.fuel().premix().oilShareOfPetrol() : Double.NaN,
          (s, x) ->
              s.withFuel(
                  s.fuel()
                      .withPremix(
                          x == 0 ? PremixRatio.NO_OIL : PremixRatio.ofPetrolToOil(1 / x),
                          s.fuel().oil().orElse(FuelComponent.TWO_STROKE_OIL))),
          (s, x) -> x < 0.001 ? 0 : Math.min(x, 0.2));

  static final Lens FUEL_WARMTH =
      new Lens(
          s -> s.fuelWarmerBy().kelvin(),
          (s, x) -> s.withFuelWarmerBy(TemperatureDifference.ofKelvin(x)),
          (s, x) -> within(x, Math.max(-20, -40 - celsius(s)), Math.min(80, 80 - celsius(s))));

  static final Lens HUMIDITY =
      new Lens(
          s -> s.air().humidity().share(),
          (s, x) ->
              s.withAir(
                  Air.of(s.air().pressure(), s.air().temperature(), RelativeHumidity.ofShare(x))
                      .withFormula(s.air().formula())),
          (s, x) -> within(x, 0, 1));

  private Lenses() {}

  /** The load line between other speeds, the curve of the delivery stretched with it. */
  private static Engine between(Engine engine, double idle, double peak) {
    double oldIdle = engine.loadLine().idle().rpm();
    double oldPeak = engine.loadLine().peak().rpm();
    List<RpmCurve.Point> points =
        engine.deliveryRatio().points().stream()
            .map(
                p -> {
                  double rpm = p.speed().rpm();
                  double up = oldPeak == oldIdle ? 1 : (rpm - oldIdle) / (oldPeak - oldIdle);
                  double moved =
                      rpm <= oldIdle
                          ? rpm * idle / oldIdle
                          : rpm <= oldPeak ? idle + up * (peak - idle) : rpm + peak - oldPeak;
                  return RpmCurve.Point.of(moved, p.value());
                })
            .toList();
    return engine.toBuilder()
        .loadLine(new LoadLine(EngineSpeed.ofRpm(idle), EngineSpeed.ofRpm(peak)))
        .deliveryRatio(idle < peak ? new RpmCurve(points) : engine.deliveryRatio())
        .build();
  }

  /** The delivery ratio at one end of the load line; the factor fades to 1 at the other. */
  private static Lens delivery(int end) {
    return new Lens(
        s -> s.engine().deliveryRatio().at(speed(s.engine(), end)),
        (s, x) -> s.withEngine(delivering(s.engine(), end, x)),
        (s, x) -> within(x, 0.05, 1.9));
  }

  private static EngineSpeed speed(Engine engine, int end) {
    return end == 1 ? engine.loadLine().peak() : engine.loadLine().idle();
  }

  private static Engine delivering(Engine engine, int end, double ratio) {
    double idle = engine.loadLine().idle().rpm();
    double span = engine.loadLine().peak().rpm() - idle;
    double factor = ratio / engine.deliveryRatio().at(speed(engine, end));
    DoubleUnaryOperator weight =
        rpm -> {
          double up = span == 0 ? 1 : within((rpm - idle) / span, 0, 1);
          return end == 1 ? up : 1 - up;
        };
    return engine.withDeliveryRatio(
        new RpmCurve(
            engine.deliveryRatio().points().stream()
                .map(
                    p -> {
                      double w = weight.applyAsDouble(p.speed().rpm());
                      return new RpmCurve.Point(p.speed(), p.value() * (1 + w * (factor - 1)));
                    })
                .toList()));
  }

  private interface Change<T> {
    T with(T old, double value);
  }

  private static Lens inCarburettor(
      ToDoubleFunction<Carburettor> reader, Change<Carburettor> change) {
    return new Lens(
        s -> reader.applyAsDouble(s.setting().carburettor()),
        (s, x) -> {
          Setting setting = s.setting();
          return s.withSetting(
              setting.toBuilder().carburettor(change.with(setting.carburettor(), x)).build());
        });
  }

  private static Lens inPilot(ToDoubleFunction<PilotCircuit> reader, Change<PilotCircuit> change) {
    return inCarburettor(
        c -> reader.applyAsDouble(c.pilot()), (c, x) -> c.withPilot(change.with(c.pilot(), x)));
  }

  private static Lens inNeedle(ToDoubleFunction<Needle> reader, Change<Needle> change) {
    return new Lens(
        s -> reader.applyAsDouble(s.setting().needle()),
        (s, x) ->
            s.withSetting(
                s.setting().withNeedle(change.with(s.setting().needle(), x), s.setting().clip())));
  }

  private interface Holder {
    DoubleUnaryOperator in(Setup setup);
  }

  private static Lens held(Lens lens, Holder holder) {
    return new Lens(lens.reader(), lens.writer(), (s, x) -> holder.in(s).applyAsDouble(x));
  }

  private static double first(Needle needle, ToDoubleFunction<Taper> number) {
    return needle.tapers().isEmpty() ? Double.NaN : number.applyAsDouble(needle.tapers().get(0));
  }

  private static List<Taper> changedFirst(Needle needle, UnaryOperator<Taper> change) {
    List<Taper> tapers = new ArrayList<>(needle.tapers());
    tapers.set(0, change.apply(tapers.get(0)));
    return tapers;
  }

  /** Just above where the next taper starts or the needle ends. */
  private static double below(Needle needle) {
    double next =
        needle.tapers().size() > 1
            ? needle.tapers().get(1).start().millimetres()
            : needle.tip().millimetres();
    return next - 0.1;
  }

  /** Of petrol with ethanol or without, by volume; of other fuels there is no such number. */
  private static double ethanol(Fuel fuel) {
    List<FuelShare> shares = fuel.blend().map(FuelBlend::shares).orElse(List.of());
    boolean known =
        !shares.isEmpty()
            && shares.stream()
                .map(FuelShare::component)
                .allMatch(c -> c.equals(FuelComponent.PETROL) || c.equals(FuelComponent.ETHANOL))
            && fuel.blend().stream().allMatch(b -> b.basis() == FuelBlend.Basis.VOLUME);
    return known
        ? shares.stream()
            .filter(share -> share.component().equals(FuelComponent.ETHANOL))
            .mapToDouble(FuelShare::share)
            .sum()
        : Double.NaN;
  }

  private static Fuel withEthanol(Fuel fuel, double share) {
    List<FuelShare> shares =
        share == 0
            ? List.of(new FuelShare(FuelComponent.PETROL, 1))
            : share == 1
                ? List.of(new FuelShare(FuelComponent.ETHANOL, 1))
                : List.of(
                    new FuelShare(FuelComponent.PETROL, 1 - share),
                    new FuelShare(FuelComponent.ETHANOL, share));
    Fuel blend = Fuel.of(FuelBlend.byVolume(shares));
    return fuel.oil().map(oil -> blend.withPremix(fuel.premix(), oil)).orElse(blend);
  }

  private static double celsius(Setup setup) {
    return setup.air().temperature().celsius();
  }

  private static Coefficient with(Coefficient old, double value) {
    return new Coefficient(value, old.unit(), old.origin(), old.note());
  }

  private static double within(double value, double least, double most) {
    return Math.min(Math.max(value, least), most);
  }

  private static boolean isPistonPort(Induction induction) {
    return induction.kind() == InductionKind.PISTON_PORT;
  }

  private static boolean isRotaryValve(Induction induction) {
    return induction.kind() == InductionKind.ROTARY_VALVE;
  }

  private static boolean isTimed(Induction induction) {
    return isPistonPort(induction) || isRotaryValve(induction);
  }

  private static double opens(Setup setup) {
    return setup.engine().induction().opens().value();
  }

  private static double closes(Setup setup) {
    return setup.engine().induction().closes().value();
  }

  private static Induction kind(Induction old, double between) {
    if (between < -0.5) {
      return Induction.reedValve(old.id());
    }
    return between > 0.5
        ? Induction.pistonPort(old.id(), USUAL_DURATION)
        : Induction.unknown(old.id());
  }

  private static Induction opening(Induction old, double angle) {
    return isPistonPort(old)
        ? Induction.pistonPort(old.id(), with(old.opens(), 2 * angle))
        : Induction.builder()
            .id(old.id())
            .kind(old.kind())
            .opens(with(old.opens(), angle))
            .closes(old.closes())
            .build();
  }

  private static Induction closing(Induction old, double angle) {
    return Induction.builder()
        .id(old.id())
        .kind(old.kind())
        .opens(old.opens())
        .closes(with(old.closes(), angle))
        .build();
  }
}
