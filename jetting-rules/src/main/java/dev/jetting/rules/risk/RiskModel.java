package dev.jetting.rules.risk;

import dev.jetting.core.calibration.AirCase;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.NormalCases;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.FuelSensitivities;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.MixtureResponse;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

/**
 * From a mixture to the probability that it is too lean.
 *
 * <p>In each of nine cases of the engine's air ({@link AirCase}), which the model computes, ln λ is
 * taken as normal. On an engine without readings its mean there is the model's. Its variance is the
 * sum of those of the residual, of the parts' tolerances, and of the three errors that act on the
 * fuel, each through its sensitivity; readings move the mean and shrink the variance ({@link
 * Calibration}). The lean risk is P(ln λ &gt; ln λ_limit) over the cases.
 *
 * @param limits how lean and how rich is too much
 * @param uncertainty how far an engine may differ from the model
 * @param steps the customary step of each part
 */
public record RiskModel(MixtureLimits limits, ModelUncertainty uncertainty, CustomarySteps steps) {

  private static final RiskModel ASSUMED =
      new RiskModel(MixtureLimits.assumed(), ModelUncertainty.assumed(), CustomarySteps.assumed());

  /**
   * Checks for nulls.
   *
   * @param limits how lean and how rich is too much
   * @param uncertainty how far an engine may differ from the model
   * @param steps the customary step of each part
   */
  public RiskModel {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Objects.requireNonNull(steps, "steps");
  }

  /** {@return the library's own assumed limits, spreads and steps} */
  public static RiskModel assumed() {
    return ASSUMED;
  }

  /**
   * The same for a pilot jet whose bore is less well known, as {@link
   * ModelUncertainty#widerByPilotJet}.
   *
   * @param millimetres standard uncertainty of the bore, mm, 0 to 9
   * @return the changed model
   * @throws IllegalArgumentException if the uncertainty is outside 0 to 9 mm
   */
  public RiskModel widerByPilotJet(double millimetres) {
    return new RiskModel(limits, uncertainty.widerByPilotJet(millimetres), steps);
  }

  /**
   * The same for a main jet whose bore is less well known, as {@link
   * ModelUncertainty#widerByMainJet}.
   *
   * @param millimetres standard uncertainty of the bore, mm, 0 to 9
   * @return the changed model
   * @throws IllegalArgumentException if the uncertainty is outside 0 to 9 mm
   */
  public RiskModel widerByMainJet(double millimetres) {
    return new RiskModel(limits, uncertainty.widerByMainJet(millimetres), steps);
  }

  /**
   * The same for a machine some of whose values were guessed, as {@link
   * ModelUncertainty#withGuesses}.
   *
   * @param setup the machine
   * @param guessed the values that were guessed
   * @return the changed model; this one where no guess is new
   */
  public RiskModel withGuesses(Setup setup, Collection<MachineValue> guessed) {
    return new RiskModel(limits, uncertainty.withGuesses(setup, guessed), steps);
  }

  /** {@return what is known of an engine that nobody has measured} */
  public Calibration untried() {
    return Calibration.untried(uncertainty.spreads());
  }

  /**
   * The lean risk over throttle openings along the engine's load line, on an engine that nobody has
   * measured.
   *
   * @param model the mixture model of a setup
   * @param throttles the openings, rising; at least one
   * @return the risk at each
   * @throws IllegalArgumentException if there is no opening, or the limits contradict each other
   */
  public RiskProfile profile(MixtureModel model, List<ThrottleOpening> throttles) {
    return profile(model, throttles, untried());
  }

  /**
   * The lean risk over throttle openings along the engine's load line.
   *
   * @param model the mixture model of a setup
   * @param throttles the openings, rising; at least one
   * @param calibration what readings have taught about the engine
   * @return the risk at each
   * @throws IllegalArgumentException if there is no opening, or the limits contradict each other
   */
  public RiskProfile profile(
      MixtureModel model, List<ThrottleOpening> throttles, Calibration calibration) {
    return profile(model, throttles, calibration, RiddenSpeeds.assumed());
  }

  /**
   * The lean risk over throttle openings, along the engine's load line and on climbs.
   *
   * @param model the mixture model of a setup
   * @param throttles the openings, rising; at least one
   * @param calibration what readings have taught about the engine
   * @param speeds the speeds at which openings are ridden
   * @return the risk at each
   * @throws IllegalArgumentException if there is no opening, or the limits contradict each other
   */
  public RiskProfile profile(
      MixtureModel model,
      List<ThrottleOpening> throttles,
      Calibration calibration,
      RiddenSpeeds speeds) {
    Margins.inOrderOnTheOverrun(limits, model.setup().engine().need());
    CalibratedModel engine = calibration.on(model);
    return new RiskProfile(
        model.responses(throttles, steps).stream()
            .map(response -> point(response, engine, climb(model, response, speeds)))
            .toList());
  }

  /**
   * The lean risk for each engine speed and throttle opening; none of them is taken for a climb.
   */
  List<RiskPoint> map(
      CalibratedModel engine, List<EngineSpeed> speeds, List<ThrottleOpening> throttles) {
    return engine.model().responses(speeds, throttles, steps).stream()
        .map(response -> point(response, engine, response.point().speed()))
        .toList();
  }

  private static EngineSpeed climb(
      MixtureModel model, MixtureResponse response, RiddenSpeeds speeds) {
    return climb(model, response.point().throttle(), speeds);
  }

  private static EngineSpeed climb(
      MixtureModel model, ThrottleOpening throttle, RiddenSpeeds speeds) {
    return speeds.uphill(model.setup().engine().loadLine(), throttle);
  }

  /**
   * The lean risk alone at a throttle opening along the engine's load line, as in {@link #profile},
   * without the computation of part effects.
   *
   * @param engine the engine with its setup and what readings have taught about it
   * @param throttle the opening
   * @return the risk
   */
  public Probability leanRisk(CalibratedModel engine, ThrottleOpening throttle) {
    return leanRisk(engine, throttle, engine.setup().engine().loadLine().at(throttle));
  }

  /**
   * Returns the lean risk at a throttle opening and an engine speed, on the load line or off it.
   *
   * @param engine the engine with its setup and what readings have taught about it
   * @param throttle the opening
   * @param speed engine speed, more than zero
   * @return the risk
   * @throws IllegalArgumentException if the speed is zero
   */
  public Probability leanRisk(CalibratedModel engine, ThrottleOpening throttle, EngineSpeed speed) {
    Lambda limit = limits.lean(throttle, engine.setup().engine().need());
    return leanRisk(engine.lnLambda(throttle, speed, this::partsVariance), limit);
  }

  /**
   * Returns the highest lean risk at a throttle opening over the speeds at which it is ridden: that
   * of the level road or that of a climb, as in {@link #profile}.
   *
   * @param engine the engine with its setup and what readings have taught about it
   * @param throttle the opening
   * @param speeds the speeds at which openings are ridden
   * @return the higher of both
   */
  public Probability leanRisk(
      CalibratedModel engine, ThrottleOpening throttle, RiddenSpeeds speeds) {
    MixtureModel model = engine.model();
    EngineSpeed level = model.setup().engine().loadLine().at(throttle);
    NormalCases lnLambda = engine.lnLambda(throttle, level, this::partsVariance);
    Lambda limit = limits.lean(throttle, model.setup().engine().need());
    Probability onTheLevel = leanRisk(lnLambda, limit);
    Probability uphill =
        uphill(model.at(throttle, level), model, lnLambda, limit, climb(model, throttle, speeds))
            .leanRisk();
    return uphill.isMoreThan(onTheLevel) ? uphill : onTheLevel;
  }

  private double partsVariance(FuelSensitivities there) {
    return uncertainty.partsVariance(there.sizes());
  }

  private static Probability leanRisk(NormalCases lnLambda, Lambda limit) {
    return Probability.of(lnLambda.above(StrictMath.log(limit.value())));
  }

  private RiskPoint point(MixtureResponse response, CalibratedModel engine, EngineSpeed climb) {
    MixturePoint mixture = response.point();
    NormalCases lnLambda = engine.lnLambda(response, this::partsVariance);
    ThrottleOpening throttle = mixture.throttle();
    MixtureNeed need = engine.setup().engine().need();
    Lambda leanLimit = limits.lean(throttle, need);
    Lambda richLimit = limits.rich(throttle, need);
    Margins.inOrder(richLimit, leanLimit, throttle);
    return new RiskPoint(
        mixture,
        engine.isRead() ? Lambda.of(StrictMath.exp(lnLambda.middle().mean())) : mixture.lambda(),
        lnLambda.deviation(),
        leanLimit,
        richLimit,
        leanRisk(lnLambda, leanLimit),
        uphill(mixture, engine.model(), lnLambda, leanLimit, climb),
        response.effects());
  }

  private static UphillRisk uphill(
      MixturePoint level,
      MixtureModel model,
      NormalCases lnLambda,
      Lambda leanLimit,
      EngineSpeed speed) {
    Lambda modelled =
        speed.equals(level.speed()) ? level.lambda() : model.at(level.throttle(), speed).lambda();
    double change = StrictMath.log(modelled.value() / level.lambda().value());
    NormalCases doubted = change == 0 ? lnLambda : lnLambda.plus(UphillRisk.variance(change));
    return new UphillRisk(speed, modelled, doubted.deviation(), leanRisk(doubted, leanLimit));
  }
}
