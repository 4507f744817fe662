package dev.jetting.rules;

import dev.jetting.rules.risk.Riding;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.ArrayList;
import java.util.List;

/** What of a sheet is allowed, and yet so unusual that a verdict resting on it must say so. */
final class Premises {

  /** Above a tenth a setting is a gamble (assumed). */
  private static final Probability BOLD = Probability.of(0.1);

  /** Richer or leaner is wanted by few engines (assumed). */
  private static final Lambda RICH = Lambda.of(0.7);

  private static final Lambda LEAN = Lambda.of(1.05);

  private Premises() {}

  static List<String> of(SetupSheet sheet) {
    List<String> notices = new ArrayList<>();
    Riding riding = sheet.riding();
    if (riding.acceptedRisk().isMoreThan(BOLD)) {
      notices.add(
          "A lean risk of "
              + TradeStyle.probability(riding.acceptedRisk())
              + " is accepted at every opening, more than "
              + TradeStyle.probability(BOLD)
              + ".");
    }
    sheet.setup().engine().need().points().stream()
        .filter(p -> p.lambda().isMoreThan(LEAN) || p.lambda().isLessThan(RICH))
        .findFirst()
        .ifPresent(
            p ->
                notices.add(
                    "The sheet wants "
                        + TradeStyle.lambda(p.lambda())
                        + " at "
                        + TradeStyle.throttle(p.throttle())
                        + ", beyond the usual λ 0.7 to 1.05: limits and verdict rest on it."));
    if (sheet.days().size() == 1) {
      notices.add("Only one day was assessed: coldest and hottest day are stated as today's air.");
    }
    int typical = Caution.typical(sheet).size();
    if (typical > 0) {
      notices.add(
          (typical == 1 ? "One value of this machine is" : typical + " values of this machine are")
              + " typical, not measured, and the band is wider for it; see the first caution.");
    }
    return List.copyOf(notices);
  }
}
