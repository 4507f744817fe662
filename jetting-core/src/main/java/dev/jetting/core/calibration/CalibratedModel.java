package dev.jetting.core.calibration;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.FuelSensitivities;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.MixtureResponse;
import dev.jetting.core.mixture.Setup;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * ln λ of an engine with a setup, by the model and by what readings have taught.
 *
 * <p>In each {@link AirCase} the model is computed with that air, and ln λ is normal: linear in the
 * three errors that act on the fuel alone, which have no kink. In each case, a leaner part raises
 * λ. The probability of a mixture that is too lean rises with it, except where the spread within
 * the case falls.
 */
public final class CalibratedModel {

  private final MixtureModel model;
  private final boolean read;
  private final KnownErrors known;
  private final List<Node> nodes;

  private record Node(AirCase air, MixtureModel model) {}

  CalibratedModel(MixtureModel model, boolean read, KnownErrors known) {
    this.model = model;
    this.read = read;
    this.known = known;
    nodes =
        known.cases().stream()
            .map(
                one ->
                    new Node(one, one.z() == 0 ? model : model.differing(ErrorSource.AIR, one.z())))
            .toList();
  }

  /** {@return the setup that this is about} */
  public Setup setup() {
    return model.setup();
  }

  /** {@return the mixture model that this is about, as it is without readings} */
  public MixtureModel model() {
    return model;
  }

  /** {@return whether readings have taught anything about the engine} */
  public boolean isRead() {
    return read;
  }

  /**
   * ln λ at an operating point.
   *
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @return its distribution
   * @throws IllegalArgumentException if the speed is zero
   */
  public NormalCases lnLambda(ThrottleOpening throttle, EngineSpeed speed) {
    return lnLambda(throttle, speed, none -> 0);
  }

  /**
   * ln λ at an operating point, of an engine whose parts are not quite as they are said to be.
   *
   * @param throttle throttle opening
   * @param speed engine speed, more than zero
   * @param partsVariance variance of ln λ that the parts bring, by how the mixture answers; zero or
   *     more
   * @return its distribution
   * @throws IllegalArgumentException if the speed is zero
   */
  public NormalCases lnLambda(
      ThrottleOpening throttle,
      EngineSpeed speed,
      ToDoubleFunction<FuelSensitivities> partsVariance) {
    return lnLambda(throttle, speed, null, partsVariance);
  }

  /**
   * ln λ at an operating point where the model has been worked out.
   *
   * @param modelled the mixture there by the model of this setup
   * @param partsVariance variance of ln λ that the parts bring
   * @return its distribution, as by throttle and speed
   */
  public NormalCases lnLambda(
      MixtureResponse modelled, ToDoubleFunction<FuelSensitivities> partsVariance) {
    MixturePoint point = modelled.point();
    return lnLambda(point.throttle(), point.speed(), modelled.sensitivities(), partsVariance);
  }

  /**
   * The mixture expected at a throttle opening along the engine's load line, the air as it is
   * expected: that of the {@link NormalCases#middle} case, for less work.
   *
   * @param throttle throttle opening
   * @return the mixture; without readings it is the model's own, except for rounding
   */
  public Lambda expected(ThrottleOpening throttle) {
    int middle = nodes.size() / 2;
    EngineSpeed speed = setup().engine().loadLine().at(throttle);
    FuelSensitivities there = nodes.get(middle).model.fuelSensitivities(throttle, speed);
    return Lambda.of(StrictMath.exp(known.at(throttle).get(middle).lnLambda(there).mean()));
  }

  private NormalCases lnLambda(
      ThrottleOpening throttle,
      EngineSpeed speed,
      @Nullable FuelSensitivities asModelled,
      ToDoubleFunction<FuelSensitivities> partsVariance) {
    List<FuelErrors> errors = known.at(throttle);
    List<NormalCases.Case> cases = new ArrayList<>(nodes.size());
    for (int i = 0; i < nodes.size(); i++) {
      Node node = nodes.get(i);
      FuelSensitivities there =
          asModelled != null && node.air.z() == 0
              ? asModelled
              : node.model.fuelSensitivities(throttle, speed);
      Normal lnLambda = errors.get(i).lnLambda(there).plus(partsVariance.applyAsDouble(there));
      cases.add(new NormalCases.Case(node.air.probability(), lnLambda));
    }
    return new NormalCases(cases);
  }
}
