package dev.jetting.rules.json;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Plan;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.Verdict;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A report in short, in JSON. Its numbers have at most four digits.
 *
 * @param format always {@code jetting short report}
 * @param schemaVersion always 1
 * @param title title of the sheet
 * @param passes whether nothing speaks against a careful first ride; never a promise of safety
 * @param ruling what the verdict is
 * @param verdict the verdict in words
 * @param worst where the lean risk is greatest on each day, climbs included: today, then the
 *     coldest and the hottest day
 * @param findings what was found, the most dangerous first
 * @param plan the way out; left out where no adviser has worked one out
 * @param series the mixture over the throttle, today
 * @param notices what the verdict must be read with
 * @param cautions the usual cautions
 * @param model name and version of the mixture model
 * @param rulebook name and version of the rulebook
 */
record ShortReportForm(
    String format,
    int schemaVersion,
    String title,
    boolean passes,
    Verdict.Ruling ruling,
    String verdict,
    List<WorstSpot> worst,
    List<FoundForm> findings,
    Optional<WayForm> plan,
    SeriesForm series,
    List<String> notices,
    List<String> cautions,
    String model,
    String rulebook) {

  static final String FORMAT = "jetting short report";
  static final int VERSION = 1;

  /** The fields that identify a short report, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  private static final int DIGITS = 4;

  /**
   * A finding in short, in JSON.
   *
   * @param ruleId id of the rule
   * @param severity how much it matters
   * @param waived whether a waiver covers it
   * @param band where in the throttle range
   * @param worst the opening and the engine speed at which it is worst; left out where no single
   *     opening is
   * @param text what is wrong, in a sentence
   * @param remedy what to change, in words
   */
  record FoundForm(
      String ruleId,
      Severity severity,
      boolean waived,
      ThrottleBand band,
      Optional<Finding.Spot> worst,
      String text,
      String remedy) {

    static FoundForm of(RankedFinding ranked, Wording wording) {
      return new FoundForm(
          ranked.ruleId(),
          ranked.severity(),
          ranked.waiver().isPresent(),
          ranked.finding().band(),
          ranked.finding().worst().map(ShortReportForm::rounded),
          wording.text(ranked.finding().words()),
          wording.text(ranked.finding().remedy().message()));
    }
  }

  /**
   * A plan in words, in JSON.
   *
   * @param ending what the last step leaves
   * @param steps the changes, in order
   * @param end what the last step leaves, in words
   */
  record WayForm(Plan.Ending ending, List<String> steps, String end) {

    static WayForm of(Plan plan, Wording wording) {
      return new WayForm(
          plan.ending(),
          plan.steps().stream().map(step -> wording.text(step.stepMessage())).toList(),
          wording.text(plan.message()));
    }
  }

  /**
   * The mixture over the throttle as columns for a chart, in JSON: one number for each opening.
   *
   * @param throttle throttle openings by lift, 0 to 1, rising
   * @param speed engine speeds on the level road
   * @param lambda the mixture expected there
   * @param richEnd λ at the rich end of the band that holds it with 90 % probability
   * @param leanEnd λ at the lean end of that band
   * @param richLimit the richest mixture on which the engine runs cleanly there
   * @param leanLimit the leanest mixture that does no harm there
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   */
  record SeriesForm(
      List<Double> throttle,
      Column speed,
      List<Double> lambda,
      List<Double> richEnd,
      List<Double> leanEnd,
      List<Double> richLimit,
      List<Double> leanLimit,
      List<Double> leanRisk) {

    static SeriesForm of(List<RiskPoint> points) {
      return new SeriesForm(
          Column.numbers(points, point -> point.mixture().throttle().share()),
          new Column("rpm", rounded(points, point -> point.mixture().speed().rpm())),
          rounded(points, point -> point.lambda().value()),
          rounded(points, RiskPoint::richEnd),
          rounded(points, RiskPoint::leanEnd),
          rounded(points, point -> point.richLimit().value()),
          rounded(points, point -> point.leanLimit().value()),
          rounded(points, point -> point.leanRisk().value()));
    }

    private static List<Double> rounded(List<RiskPoint> points, ToDoubleFunction<RiskPoint> of) {
      return Column.numbers(points, point -> ShortReportForm.rounded(of.applyAsDouble(point)));
    }
  }

  static ShortReportForm of(Report report, Wording wording) {
    return new ShortReportForm(
        FORMAT,
        VERSION,
        report.sheet().title(),
        report.passes(),
        report.verdict().ruling(),
        ReportText.verdict(report, wording),
        List.of(
            rounded(WorstSpot.of(WorstSpot.Day.TODAY, report.today())),
            rounded(WorstSpot.of(WorstSpot.Day.COLDEST, report.coldest())),
            rounded(WorstSpot.of(WorstSpot.Day.HOTTEST, report.hottest()))),
        report.findings().stream().map(found -> FoundForm.of(found, wording)).toList(),
        report.plan().map(plan -> WayForm.of(plan, wording)),
        SeriesForm.of(report.today().points()),
        report.notices(wording),
        report.cautions(wording),
        report.model(),
        report.rulebook().name() + " " + report.rulebook().version());
  }

  private static WorstSpot rounded(WorstSpot spot) {
    return new WorstSpot(
        spot.day(),
        spot.throttle(),
        EngineSpeed.ofRpm(rounded(spot.speed().rpm())),
        Lambda.of(rounded(spot.lambda().value())),
        Lambda.of(rounded(spot.leanLimit().value())),
        Probability.of(rounded(spot.leanRisk().value())));
  }

  private static Finding.Spot rounded(Finding.Spot spot) {
    return new Finding.Spot(spot.throttle(), EngineSpeed.ofRpm(rounded(spot.speed().rpm())));
  }

  private static double rounded(double number) {
    return Decimals.rounded(number, DIGITS);
  }
}
