package dev.jetting.examples.tuningtrial;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * An engine that differs from the model just as the library assumes: in four sources, normally, and
 * by a smooth residual. On these the bands must hold what they say.
 */
final class AssumedEngine implements TrueEngine {

  /** The residual is drawn at this number of even openings, and taken at the nearest. */
  static final int OPENINGS = 33;

  private final Setup setup;
  private final OwnParts parts;
  private final Map<ErrorSource, Double> errors = new EnumMap<>(ErrorSource.class);
  private final double[] residual;

  private AssumedEngine(Setup setup, ModelUncertainty spreads, long seed) {
    this.setup = setup;
    parts = new OwnParts(seed, spreads);
    Chance chance = Chance.of(seed, "assumed engine");
    for (ErrorSource source : ErrorSource.values()) {
      errors.put(source, chance.normal(spreads.spreads().of(source)));
    }
    RealMatrix factor = residualFactor(spreads);
    double[] independent = new double[OPENINGS];
    for (int i = 0; i < OPENINGS; i++) {
      independent[i] = chance.normal(1);
    }
    residual = factor.operate(independent);
  }

  static AssumedEngine draw(Setup setup, ModelUncertainty spreads, long seed) {
    return new AssumedEngine(setup, spreads, seed);
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
    return model(setting, air).fuelSensitivities(throttle, speed).lnLambda()
        + residual[(int) Math.rint(throttle.share() * (OPENINGS - 1))];
  }

  @Override
  public double lnOverrun(Setting setting, Air air) {
    return StrictMath.log(model(setting, air).overrun().lambda().value()) + residual[0];
  }

  private MixtureModel model(Setting setting, Air air) {
    MixtureModel model = MixtureModel.of(setup.withAir(air).withSetting(parts.in(setting)));
    for (Map.Entry<ErrorSource, Double> error : errors.entrySet()) {
      model = model.differing(error.getKey(), error.getValue());
    }
    return model;
  }

  private static RealMatrix residualFactor(ModelUncertainty spreads) {
    double deviation = spreads.residual().value();
    double length = spreads.residualLength().value();
    RealMatrix covariance = MatrixUtils.createRealMatrix(OPENINGS, OPENINGS);
    for (int i = 0; i < OPENINGS; i++) {
      for (int j = 0; j < OPENINGS; j++) {
        double distance = (i - j) / (OPENINGS - 1.0) / length;
        double shared = StrictMath.exp(-distance * distance / 2);
        covariance.setEntry(i, j, deviation * deviation * (shared + (i == j ? 1e-9 : 0)));
      }
    }
    return new CholeskyDecomposition(covariance, 1e-9, 0).getL();
  }
}
