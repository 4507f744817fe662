package dev.jetting.rules.json;

import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.kit.CornerRisk;
import dev.jetting.rules.kit.KitCoverage;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.rules.risk.WorstSpot;
import java.util.Set;

/**
 * The records whose quantities the library computes. In JSON each of these is a number with its
 * unit, for programs. What people state is a text, such as {@code "2.49 mm"}.
 */
final class Computed {

  private static final Set<Class<?>> RECORDS =
      Set.of(
          CornerRisk.class,
          Finding.Spot.class,
          KitCoverage.class,
          KitCoverage.Extra.class,
          MixturePoint.class,
          MixtureSeries.Row.class,
          Overrun.class,
          Remedy.Aim.class,
          Remedy.Effect.class,
          Remedy.State.class,
          RemedyForm.AimForm.class,
          Report.class,
          ReportForm.class,
          RiskPoint.class,
          ThrottleBand.class,
          UphillRisk.class,
          WorstSpot.class);

  private Computed() {}

  static boolean is(Class<?> record) {
    return RECORDS.contains(record);
  }
}
