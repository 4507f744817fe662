package dev.jetting.rules.tuning;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.List;

/**
 * A tuning session as plain text for people: where it stands, what the readings have told of the
 * engine, what to be wary of, and what to do next. Lines end in {@code \n} and are as long as they
 * come; the same bytes in every locale. Characters that would steer a terminal are replaced.
 *
 * <p>Not for programs: they read the values it is made from. Never a promise of safety.
 */
public final class SessionText {

  private final StringBuilder text = new StringBuilder();

  private SessionText() {}

  /**
   * Renders a session.
   *
   * @param session the session so far
   * @param tuner who leads it
   * @return its text
   */
  public static String of(TuningSession session, Tuner tuner) {
    SessionText page = new SessionText();
    Calibration calibration = tuner.calibration(session);
    page.stands(session.now(), tuner.riskModel(), calibration);
    if (!calibration.readings().isEmpty()) {
      page.heading("What the readings tell of the engine");
      Correction.of(calibration).forEach(correction -> page.item(correction.text()));
    }
    List<String> warnings = Warnings.of(session, calibration);
    if (!warnings.isEmpty()) {
      page.heading("Be wary");
      warnings.forEach(page::item);
    }
    page.next(tuner.next(session));
    return page.text.toString();
  }

  private void stands(SetupSheet now, RiskModel riskModel, Calibration calibration) {
    line(now.title());
    line("Setting: " + parts(now.setup().setting()));
    AssessedSetting assessed = AssessedSetting.of(now, riskModel, calibration);
    Probability accepted = now.riding().acceptedRisk();
    RiskPoint worst = assessed.profile().worst();
    line(
        "Lean risk: "
            + at(worst, accepted)
            + ", where it is highest; "
            + TradeStyle.probability(accepted)
            + " accepted.");
    day("coldest", assessed.coldest().worst(), worst, accepted);
    day("hottest", assessed.hottest().worst(), worst, accepted);
  }

  /** A day is told where it is worse than today. */
  private void day(String name, RiskPoint worst, RiskPoint today, Probability accepted) {
    if (worst.leanRisk().isMoreThan(today.leanRisk())) {
      line("On the " + name + " day: " + at(worst, accepted) + ".");
    }
  }

  private static String at(RiskPoint worst, Probability accepted) {
    return TradeStyle.probability(worst.leanRisk(), accepted)
        + " at "
        + TradeStyle.throttle(worst.mixture().throttle());
  }

  private void next(NextStep step) {
    if (step instanceof NextStep.Ride ride) {
      heading("Test next: " + TradeStyle.throttle(ride.test().throttle()));
      if (ride.confirming()) {
        item(
            "Nothing is left to change as far as is known, but no reading of this setting bears it out"
                + " yet: this one is to confirm it, where its lean risk is highest.");
      }
      ride.test().howTo().forEach(this::item);
    } else if (step instanceof NextStep.Change next) {
      NextChange change = next.change();
      heading("Change next: " + change.what());
      item(change.why());
      item("One change, then look again: never two moves towards lean at once.");
      lambdas(change.before(), change.after());
    } else if (step instanceof NextStep.NotToBeRidden) {
      heading("Too lean, and no single part at hand makes it safer");
      item("Do not ride it: get richer parts, the report on this setting names which.");
    } else {
      heading("Nothing to test or change");
      item("No single part at hand is worth changing, and no reading would tell much more.");
    }
  }

  private void lambdas(RiskProfile before, RiskProfile after) {
    for (int i = 0; i < before.points().size(); i++) {
      RiskPoint was = before.points().get(i);
      RiskPoint becomes = after.points().get(i);
      double eighths = was.mixture().throttle().share() * 8;
      if (eighths != Math.rint(eighths)) {
        continue;
      }
      item(
          TradeStyle.throttle(was.mixture().throttle())
              + ": "
              + TradeStyle.lambda(was.lambda())
              + " becomes "
              + TradeStyle.lambda(becomes.lambda())
              + ", lean risk "
              + TradeStyle.probability(was.leanRisk())
              + " becomes "
              + TradeStyle.probability(becomes.leanRisk()));
    }
  }

  private static String parts(Setting setting) {
    return String.join(
        ", ",
        TradeStyle.main(setting.mainJet()),
        TradeStyle.pilot(setting.pilotJet()),
        TradeStyle.screw(setting.screw().kind(), setting.screw().turns()),
        TradeStyle.cutaway(setting.cutaway()),
        "needle jet " + TradeStyle.diameter(setting.needleJet().bore()),
        "needle " + setting.needle().id(),
        TradeStyle.clip(setting.clip()));
  }

  private void heading(String heading) {
    text.append('\n');
    line(heading);
  }

  private void item(String item) {
    line("- " + item);
  }

  private void line(String line) {
    text.append(line.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]", "\uFFFD")).append('\n');
  }
}
