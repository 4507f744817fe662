package dev.jetting.rules.arbitraries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.calibration.Normal;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.mixture.SizeSensitivities;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** The lean risk against integration over engines that differ in all four ways at once. */
class LeanRiskProperties {

  /**
   * Gauss–Hermite rule of five points for the errors of the fuel, which are smooth (from memory).
   */
  private static final double[] NODES = {
    -2.85697001387281, -1.35562617997427, 0, 1.35562617997427, 2.85697001387281
  };

  private static final double[] WEIGHTS = {
    0.0112574113277207, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.0112574113277207
  };

  /** For the air, which has a kink, many even steps to four deviations on each side. */
  private static final int AIRS = 33;

  private static final double AIR_STEP = 0.25;

  /** Closed and just open, where the main path cuts in, and up to full throttle. */
  private static final List<ThrottleOpening> OPENINGS =
      List.of(0.0, 0.03125, 0.0625, 0.125, 0.25, 0.5, 1.0).stream()
          .map(ThrottleOpening::ofShare)
          .toList();

  private static final RiskModel RISK = RiskModel.assumed();
  private static final ModelUncertainty ASSUMED = ModelUncertainty.assumed();

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void leanRisk_isThatOfAllEngines(@ForAll("plausible") Setup setup) {
    List<RiskPoint> points = RISK.profile(MixtureModel.of(setup), OPENINGS).points();
    double[] risk = new double[OPENINGS.size()];

    for (int a = 0; a < AIRS; a++) {
      double air = (a - AIRS / 2) * AIR_STEP;
      double density = AIR_STEP / Math.sqrt(2 * Math.PI) * StrictMath.exp(-air * air / 2);
      double[] rest = rest(setup, air * ASSUMED.air().value());
      for (int n = 0; n < NODES.length; n++) {
        for (int m = 0; m < NODES.length; m++) {
          Map<ErrorSource, Double> differences =
              Map.of(
                  ErrorSource.AIR, air * ASSUMED.air().value(),
                  ErrorSource.NEEDLE, NODES[n] * ASSUMED.needle().value(),
                  ErrorSource.MAIN, NODES[m] * ASSUMED.main().value());
          add(setup, differences, points, rest, density * WEIGHTS[n] * WEIGHTS[m], risk);
        }
      }
    }

    for (int i = 0; i < risk.length; i++) {
      assertThat(points.get(i).leanRisk().value())
          .as("at %s", OPENINGS.get(i))
          .isCloseTo(risk[i], within(0.02));
    }
  }

  private static void add(
      Setup setup,
      Map<ErrorSource, Double> differences,
      List<RiskPoint> points,
      double[] rest,
      double weight,
      double[] into) {
    Setting s = setup.setting();
    MixtureTable table = MixtureTable.of(setup, OPENINGS, differences);
    MixtureTable.Pilot pilot = table.pilot(s.pilotJet(), s.screw().turns());
    MixtureTable.Ring ring = table.ring(s.needleJet(), s.needle(), s.clip());
    MixtureTable.MainJet jet = table.mainJet(s.mainJet());
    for (int i = 0; i < into.length; i++) {
      double limit = StrictMath.log(points.get(i).leanLimit().value());
      for (int p = 0; p < NODES.length; p++) {
        double factor = StrictMath.exp(NODES[p] * ASSUMED.pilot().value());
        double lambda = table.lambda(i, table.mainFuel(ring, jet, i), pilot.fuel(i) * factor);
        into[i] += weight * WEIGHTS[p] * new Normal(StrictMath.log(lambda), rest[i]).above(limit);
      }
    }
  }

  /** Deviation of what the four sources do not cause: residual and tolerances of the parts. */
  private static double[] rest(Setup setup, double air) {
    MixtureModel engine = MixtureModel.of(setup).differing(ErrorSource.AIR, air);
    double residual = ASSUMED.residual().value();
    return OPENINGS.stream()
        .mapToDouble(
            throttle -> {
              EngineSpeed speed = setup.engine().loadLine().at(throttle);
              SizeSensitivities sizes = engine.fuelSensitivities(throttle, speed).sizes();
              return Math.sqrt(residual * residual + ASSUMED.partsVariance(sizes));
            })
        .toArray();
  }

  @Provide
  Arbitrary<Setup> plausible() {
    return PlausibleArbitraries.setups().withoutEdgeCases();
  }
}
