package dev.jetting.rules;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Coefficient.Origin;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the renderings of a report say, without their layout. */
final class ReportWords {

  /** A piece of text with what it is about. */
  record Entry(String label, String text) {}

  /** How much of what a report rests on is listed. */
  enum Assumptions {
    COUNTED,
    LISTED
  }

  private final Report report;
  private final RangeTable table;
  private final List<String> assumptions;

  ReportWords(Report report) {
    this.report = report;
    assumptions =
        report.assumptions().entrySet().stream()
            .filter(entry -> entry.getValue().origin() == Origin.ASSUMED)
            .map(entry -> entry.getKey() + " " + number(entry.getValue()))
            .toList();
    table = new RangeTable(report, marksLimits() ? "*" : "");
  }

  /** Whether anything assumed but the ridden speeds, which are no part of a limit, is in it. */
  boolean marksLimits() {
    Set<String> speeds = report.sheet().riding().speeds().basis().keySet();
    return report.assumptions().entrySet().stream()
        .anyMatch(
            entry ->
                entry.getValue().origin() == Origin.ASSUMED && !speeds.contains(entry.getKey()));
  }

  RangeTable table() {
    return table;
  }

  /** What the report rests on, their number or each; empty if nothing is assumed. */
  String assumptions(Assumptions extent) {
    if (assumptions.isEmpty()) {
      return "";
    }
    return extent == Assumptions.LISTED
        ? "Assumed, neither measured nor published: " + String.join("; ", assumptions) + "."
        : "The report rests on "
            + assumptions.size()
            + " assumed values, neither measured nor published. The full form lists them.";
  }

  List<Entry> what() {
    Engine engine = report.sheet().setup().engine();
    Setting setting = report.sheet().setup().setting();
    return List.of(
        new Entry(
            "engine", engine.id() + ", " + engine.displacement() + "; " + engine.exhaust().id()),
        new Entry("carburettor", setting.carburettor().id() + "; intake: " + setting.intake().id()),
        new Entry("setting", trade(setting)),
        new Entry("air", air(report.sheet().setup().air())),
        new Entry("fuel", fuel(report.sheet().setup())));
  }

  private static String fuel(Setup setup) {
    double kelvin = setup.fuelWarmerBy().kelvin();
    String side = kelvin < 0 ? " K colder than the air" : " K warmer than the air";
    return setup.fuel()
        + (kelvin == 0
            ? ""
            : ", in the float chamber " + Decimals.fixed(Math.abs(kelvin), 0) + side);
  }

  private static String trade(Setting setting) {
    return Stream.of(
            TradeStyle.main(setting.mainJet()),
            TradeStyle.pilot(setting.pilotJet()),
            TradeStyle.screw(setting.screw().kind(), setting.screw().turns()),
            TradeStyle.cutaway(setting.cutaway()),
            "needle jet " + TradeStyle.diameter(setting.needleJet().bore()),
            "needle " + setting.needle().id(),
            TradeStyle.clip(setting.clip()))
        .map(TextPage::unbroken)
        .collect(joining(", "));
  }

  private static String air(Air air) {
    return place(air) + ", " + TradeStyle.humidity(air.humidity()) + " humidity";
  }

  private static String place(Air air) {
    return TradeStyle.temperature(air.temperature()) + ", " + TradeStyle.pressure(air.pressure());
  }

  /** What is looked at beside the throttle range in the air of the day. */
  List<Entry> besides() {
    Overrun overrun = report.overrun();
    return List.of(
        new Entry(
            "overrun",
            "throttle shut at "
                + Decimals.fixed(overrun.speed().rpm(), 0)
                + " rpm: λ "
                + RangeTable.lambda(overrun.lambda().value())
                + " on the pilot's fuel alone, on the day when it is leanest; fuel and oil a turn "
                + Decimals.fixed(overrun.fuelShareOfOpen() * 100, 0)
                + " % of full throttle's"),
        new Entry("coldest", day(report.sheet().riding().coldest(), report.coldestDay().worst())),
        new Entry("hottest", day(report.sheet().riding().hottest(), report.hottestDay().worst())),
        new Entry(
            "riding",
            "mean lean risk "
                + TradeStyle.probability(report.meanRisk())
                + "; accepted at any opening "
                + accepted()));
  }

  /** The highest lean risk over all days and at all ridden speeds. */
  Entry worst() {
    return new Entry("worst", worst(report.worst()));
  }

  private String worst(WorstSpot worst) {
    return "lean risk "
        + TradeStyle.probability(worst.leanRisk(), report.sheet().riding().acceptedRisk())
        + " at "
        + TradeStyle.throttle(worst.throttle())
        + " and "
        + Decimals.fixed(worst.speed().rpm(), 0)
        + " rpm, "
        + (worst.day() == WorstSpot.Day.TODAY
            ? "today"
            : worst.day().name().toLowerCase(Locale.ROOT) + " day")
        + (onLevelRoad(worst) ? "" : ", uphill");
  }

  private boolean onLevelRoad(WorstSpot worst) {
    return report.today().points().stream()
        .map(RiskPoint::mixture)
        .anyMatch(m -> m.throttle().equals(worst.throttle()) && m.speed().equals(worst.speed()));
  }

  private String day(Air air, RiskPoint riskiest) {
    return place(air)
        + (isLean(riskiest) ? ": LEAN at " : ": riskiest at ")
        + TradeStyle.throttle(riskiest.mixture().throttle())
        + ", λ "
        + RangeTable.lambda(riskiest.lambda().value())
        + ", lean risk "
        + TradeStyle.probability(riskiest.leanRisk(), report.sheet().riding().acceptedRisk());
  }

  static String where(ThrottleBand band) {
    if (band.equals(ThrottleBand.WHOLE)) {
      return "whole throttle range";
    }
    String to = TradeStyle.throttle(band.to());
    return band.from().equals(band.to())
        ? to
        : TradeStyle.throttle(band.from()).replace(" throttle", "") + " to " + to;
  }

  /** The plan, unless there is neither a finding nor a step to show. */
  Optional<Plan> plan() {
    return report.plan().filter(plan -> !plan.steps().isEmpty() || !report.findings().isEmpty());
  }

  /** What to do about a finding; a step of the plan is named by its number. */
  String remedy(Finding finding) {
    if (finding.remedy() instanceof Remedy.Change change) {
      List<Remedy.Change> steps = report.plan().map(Plan::steps).orElse(List.of());
      for (int i = 0; i < steps.size(); i++) {
        if (steps.get(i).part() == change.part() && steps.get(i).to().equals(change.to())) {
          return "step " + (i + 1) + (change.enough() ? "." : ", which is not enough alone.");
        }
      }
    }
    return finding.remedy().text();
  }

  /** Who waived it, up to what, until when and why. */
  static String words(Waiver waiver) {
    return waiver.accepted().map(ceiling -> "up to " + words(ceiling) + " ").orElse("")
        + "by "
        + waiver.author()
        + waiver.expires().map(day -> " (until " + day + ")").orElse("")
        + ": "
        + waiver.reason();
  }

  static String words(Ceiling ceiling) {
    return ceiling.measured() + " at " + where(ceiling.band());
  }

  static String words(UnusedWaiver unused) {
    return "Not in force, " + unused.why() + ". Waived " + words(unused.waiver());
  }

  List<RuleResult> results(Status status) {
    return report.results().stream().filter(r -> r.outcome().status() == status).toList();
  }

  String verdict() {
    Verdict verdict = report.verdict();
    return switch (verdict.ruling()) {
          case PASSES -> "No rule speaks against a careful first ride" + terms();
          case PASSES_BY_WAIVER ->
              "Passes only by waiver"
                  + waived(verdict)
                  + " No other rule speaks against a careful first ride"
                  + terms();
          case UNANSWERED, FAILS -> against(verdict);
        }
        + report.notices().stream().map(notice -> " " + notice).collect(joining())
        + (report.rulebook().changed()
            ? " The rulebook was changed: " + report.rulebook().changesInWords() + "."
            : "");
  }

  private static String waived(Verdict verdict) {
    return verdict.waived().stream()
        .map(
            danger ->
                danger.ruleId()
                    + " on "
                    + danger.subject()
                    + ", now "
                    + danger.measured()
                    + ", accepted "
                    + TextPage.sentence(words(danger.waiver())))
        .collect(
            joining(
                " ", verdict.waiversJudgedOn().map(day -> " as of " + day).orElse("") + ": ", ""));
  }

  private static String against(Verdict verdict) {
    boolean nothingWrong = verdict.ruling() == Verdict.Ruling.UNANSWERED;
    String start = nothingWrong ? "Do not ride before this is answered" : "Do not ride like this";
    boolean found = !verdict.dangers().isEmpty();
    boolean nobodyLooked =
        nothingWrong && verdict.unanswered().isEmpty() && verdict.broken().isEmpty();
    String why =
        Stream.of(
                nobodyLooked ? "no rule had anything to say" : "",
                found ? "danger by " + String.join(", ", verdict.dangers()) : "",
                !found && verdict.tooLean() ? "lean risk above what is accepted" : "",
                !found && verdict.tooLeanOnOverrun() ? "too lean on the overrun" : "",
                listed("could not be evaluated: ", verdict.unanswered()),
                listed("broken: ", verdict.broken()))
            .filter(part -> !part.isEmpty())
            .collect(joining("; ", start + ": ", "."));
    return verdict.waived().isEmpty() ? why : why + " Waived" + waived(verdict);
  }

  private static String listed(String what, List<String> ids) {
    return ids.isEmpty() ? "" : what + String.join(", ", ids);
  }

  private String terms() {
    return " from the rich side, with a lean risk of "
        + accepted()
        + " accepted. This is a calculation, no promise of safety: confirm it with plug chops.";
  }

  String versions() {
    return "Model: "
        + report.model()
        + ". Rulebook: "
        + report.rulebook()
        + "; digest "
        + report.rulebook().shortDigest()
        + "."
        + report
            .verdict()
            .waiversJudgedOn()
            .map(day -> " Waivers judged by the day " + day + ".")
            .orElse("");
  }

  private String accepted() {
    return TradeStyle.probability(report.sheet().riding().acceptedRisk());
  }

  private boolean isLean(RiskPoint point) {
    return table.mark(point).equals(RangeTable.LEAN);
  }

  private static String number(Coefficient coefficient) {
    BigDecimal rounded = new BigDecimal(Decimals.fixed(coefficient.value(), 4));
    String number = rounded.stripTrailingZeros().toPlainString();
    return coefficient.unit().equals("1") ? number : number + " " + coefficient.unit();
  }
}
