package dev.jetting.rules.tuning;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A finished setting moved to another day, another place or another fuel. In other air it is judged
 * on that day alone, for the coldest and hottest day of the sheet belong to the place it came from;
 * with another fuel in the same air, on all days of the sheet.
 *
 * @param setup the setup after the changes
 * @param changes what to change, in order; none if the setting holds as it is
 * @param safe whether the lean risk is within what is accepted after them, and the overrun not too
 *     lean, on the days it is judged on
 */
public record MovedSetting(Setup setup, List<NextChange> changes, boolean safe) {

  private static final int MOST_CHANGES = 20;

  /**
   * Copies the changes.
   *
   * @param setup the setup after the changes
   * @param changes what to change, in order; none if the setting holds as it is
   * @param safe whether the lean risk is within what is accepted after them
   */
  public MovedSetting {
    Objects.requireNonNull(setup, "setup");
    changes = List.copyOf(changes);
  }

  /**
   * Moves a setting.
   *
   * @param sheet the finished setting, the riding and the parts at hand
   * @param there the same setup in the other air, or with the other fuel
   * @param riskModel limits, spreads and steps
   * @param calibration what is known of the engine
   * @return the setting there; not safe where no parts at hand make it so
   */
  public static MovedSetting of(
      SetupSheet sheet, Setup there, RiskModel riskModel, Calibration calibration) {
    SetupSheet now =
        there.air().equals(sheet.setup().air())
            ? sheet.withSetup(there)
            : new SetupSheet(
                sheet.title(),
                there,
                onlyIn(there.air(), sheet.riding()),
                sheet.parts(),
                sheet.provenance());
    List<NextChange> changes = new ArrayList<>();
    Optional<NextChange> next = NextChange.of(now, riskModel, calibration);
    while (next.isPresent() && changes.size() < MOST_CHANGES) {
      changes.add(next.get());
      now = now.withSetup(now.setup().withSetting(next.get().setting()));
      next = NextChange.of(now, riskModel, calibration);
    }
    return new MovedSetting(now.setup(), changes, NextChange.isSafe(now, riskModel, calibration));
  }

  private static Riding onlyIn(Air air, Riding riding) {
    return new Riding(riding.acceptedRisk(), riding.profile(), air, air);
  }
}
