package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.FlowCoefficients;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;

/**
 * An engine that differs from the model in more ways than the library assumes. Every flow
 * coefficient, the induction and the delivery over engine speed are others. Its circuits are off
 * with heavier tails than normal, in full and not linearised. The residual bends at a few openings
 * instead of being smooth.
 *
 * <p>Each spread of the library is shared out by variance: half to the coefficients' part and half
 * to the circuits' own errors. How wide the whole comes out is counted by the trial, not fitted.
 */
final class RicherEngine implements TrueEngine {

  /** By how much coefficients differ from carburettor to carburettor (invented). */
  private static final double COEFFICIENT = 0.03;

  /** By how much the delivery is off at each speed of its table (invented). */
  private static final double DELIVERY = 0.05;

  /** By how many degrees the inlet opens and shuts elsewhere (invented). */
  private static final double TIMING = 3;

  private static final double[] BENDS = {0, 0.1, 0.3, 0.6, 1};

  private final Setup setup;
  private final OwnParts parts;
  private final double wider;
  private final Carburettor carburettor;
  private final double pilotFactor;
  private final double mainFactor;
  private final double[] residual = new double[BENDS.length];

  private RicherEngine(Setup nominal, ModelUncertainty spreads, double wider, long seed) {
    parts = new OwnParts(seed, spreads);
    Chance chance = Chance.of(seed, "richer engine");
    this.wider = wider;
    double half = wider * Math.sqrt(0.5);
    pilotFactor = StrictMath.exp(chance.heavy(half * spreads.pilot().value()));
    mainFactor = StrictMath.exp(chance.heavy(half * spreads.main().value()));
    double needleFactor = StrictMath.exp(chance.heavy(half * spreads.needle().value()));
    for (int i = 0; i < BENDS.length; i++) {
      residual[i] = chance.heavy(wider * spreads.residual().value());
    }
    setup = nominal.withEngine(engine(nominal.engine(), chance));
    carburettor = carburettor(nominal.setting().carburettor(), needleFactor, chance);
  }

  static RicherEngine draw(Setup setup, ModelUncertainty spreads, double wider, long seed) {
    return new RicherEngine(setup, spreads, wider, seed);
  }

  @Override
  public Air today() {
    return setup.air();
  }

  @Override
  public EngineSpeed peak() {
    return setup.engine().loadLine().peak();
  }

  @Override
  public double lnLambda(Setting setting, Air air, ThrottleOpening throttle, EngineSpeed speed) {
    MixturePoint point = model(setting, air).at(throttle, speed);
    double mainFuel = point.mainFuelFlow().kilogramsPerSecond();
    double pilotFuel = point.pilotFuelFlow().kilogramsPerSecond();
    double modelled = mainFuel + pilotFuel;
    return StrictMath.log(point.lambda().value() * modelled / (mainFuel + pilotFuel * pilotFactor))
        + residualAt(throttle.share());
  }

  @Override
  public double lnOverrun(Setting setting, Air air) {
    double lambda = model(setting, air).overrun().lambda().value();
    return StrictMath.log(lambda / pilotFactor) + residual[0];
  }

  private MixtureModel model(Setting setting, Air air) {
    Setting own = parts.in(setting);
    // A bore that passes so much more; the parts are moved over, floats and all.
    JetBore main = JetBore.ofMillimetres(own.mainJet().millimetres() * Math.sqrt(mainFactor));
    Setting moved = own.withCarburettor(carburettor).withMainJet(main);
    Setting real = own.floats().map(moved::withFloats).orElse(moved);
    return MixtureModel.of(setup.withAir(air).withSetting(real));
  }

  private double residualAt(double share) {
    int i = 1;
    while (share > BENDS[i]) {
      i++;
    }
    double part = (share - BENDS[i - 1]) / (BENDS[i] - BENDS[i - 1]);
    return residual[i - 1] + part * (residual[i] - residual[i - 1]);
  }

  private Engine engine(Engine nominal, Chance chance) {
    List<RpmCurve.Point> delivery = new ArrayList<>();
    for (RpmCurve.Point point : nominal.deliveryRatio().points()) {
      delivery.add(
          new RpmCurve.Point(point.speed(), point.value() * chance.factor(wider * DELIVERY)));
    }
    Induction induction = nominal.induction();
    double opens = induction.opens().value() + chance.normal(wider * TIMING);
    double closes = induction.closes().value() + chance.normal(wider * TIMING);
    boolean port = induction.kind() == InductionKind.PISTON_PORT;
    return Engine.builder()
        .id(nominal.id())
        .displacement(nominal.displacement())
        .deliveryRatio(new RpmCurve(delivery))
        .induction(
            Induction.builder()
                .id(induction.id())
                .kind(induction.kind())
                .opens(drawn(Math.min(120, Math.max(40, opens))))
                .closes(drawn(Math.min(120, Math.max(port ? 40 : 20, port ? opens : closes))))
                .build())
        .exhaust(nominal.exhaust())
        .loadLine(nominal.loadLine())
        .need(nominal.need())
        .build();
  }

  /** The needle's ring passes its factor more: as if its own losses were so much less. */
  private Carburettor carburettor(Carburettor nominal, double needle, Chance chance) {
    FlowCoefficients flow = nominal.flow();
    double entryLoss = flow.needleEntryLoss().value() * chance.factor(wider * COEFFICIENT);
    double eccentricity = flow.needleEccentricity().value() * chance.factor(wider * COEFFICIENT);
    FlowCoefficients drawn =
        FlowCoefficients.builder()
            .upstreamGap(drawn(flow.upstreamGap(), chance, 1))
            .downstreamGap(drawn(flow.downstreamGap(), chance, 1))
            .nozzleClosed(flow.nozzleClosed())
            .nozzleOpen(drawn(flow.nozzleOpen(), chance, 10))
            .nozzleExponent(drawn(flow.nozzleExponent(), chance, 10))
            .neckEffect(drawn(flow.neckEffect(), chance, 10))
            .needleEntryLoss(drawn(entryLoss / (needle * needle)))
            .needleEccentricity(drawn(Math.min(1, eccentricity)))
            .pilotOutlet(drawn(flow.pilotOutlet(), chance, 1))
            .pilotBleed(drawn(flow.pilotBleed(), chance, 1))
            .mainJetLength(drawn(flow.mainJetLength(), chance, 10))
            .pilotJetLength(drawn(flow.pilotJetLength(), chance, 10))
            .build();
    return Carburettor.builder()
        .id(nominal.id())
        .bore(nominal.bore())
        .needleJetLength(Length.ofMillimetres(nominal.needleJetLength().millimetres() / needle))
        .needleJetHead(nominal.needleJetHead())
        .pilot(nominal.pilot())
        .floatValve(nominal.floatValve())
        .flow(drawn)
        .build();
  }

  private Coefficient drawn(Coefficient nominal, Chance chance, double most) {
    return drawn(Math.min(most, nominal.value() * chance.factor(wider * COEFFICIENT)));
  }

  private static Coefficient drawn(double value) {
    return Coefficient.assumed(value, "1", "drawn at random");
  }
}
