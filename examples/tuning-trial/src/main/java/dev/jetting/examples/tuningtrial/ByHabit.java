package dev.jetting.examples.tuningtrial;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Optional;

/**
 * Tuning by habit: from rich, one main size smaller at a time, by the colour of the plug after full
 * throttle. It stops where the colour is right, and takes a step back where it has become too
 * light. Nothing else is touched.
 */
final class ByHabit {

  private ByHabit() {}

  static Course tune(TrueEngine engine, SetupSheet sheet, Rider rider, RiskModel riskModel) {
    List<JetBore> mains = sheet.parts().mainJets().stream().sorted().toList();
    Setting setting = sheet.setup().setting();
    int tests = 0;
    int changes = 0;
    Optional<JetBore> next = Optional.of(setting.mainJet());
    while (next.isPresent()) {
      setting = setting.withMainJet(next.get());
      PlugColour colour = colour(engine, sheet, setting, rider);
      tests++;
      next = next(colour, mains, setting.mainJet());
      changes += next.isPresent() ? 1 : 0;
      if (next.isPresent() && next.get().compareTo(setting.mainJet()) > 0) {
        setting = setting.withMainJet(next.get());
        next = Optional.empty();
      }
    }
    return Course.byHabit(
        tests,
        changes,
        Truth.of(engine, sheet, sheet.setup().setting(), riskModel.limits()),
        Truth.of(engine, sheet, setting, riskModel.limits()));
  }

  private static Optional<JetBore> next(PlugColour colour, List<JetBore> mains, JetBore now) {
    if (colour == PlugColour.BROWN) {
      return Optional.empty();
    }
    boolean smaller = colour == PlugColour.DARK || colour == PlugColour.BLACK;
    return smaller
        ? mains.stream().filter(main -> main.compareTo(now) < 0).reduce((a, b) -> b)
        : mains.stream().filter(main -> main.compareTo(now) > 0).findFirst();
  }

  private static PlugColour colour(
      TrueEngine engine, SetupSheet sheet, Setting setting, Rider rider) {
    EngineSpeed speed = sheet.setup().engine().loadLine().at(ThrottleOpening.FULL);
    double lnLambda = engine.lnLambda(setting, ThrottleOpening.FULL, speed);
    double needed = sheet.setup().engine().need().at(ThrottleOpening.FULL).value();
    return rider.colour(lnLambda - StrictMath.log(needed));
  }
}
