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
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** What the renderings of a report say, without their layout. */
final class ReportWords {

  /** A piece of text with what it is about. */
  record Entry(String label, String text) {}

  private final Report report;
  private final RangeTable table;
  private final String assumptions;

  ReportWords(Report report) {
    this.report = report;
    assumptions =
        report.assumptions().entrySet().stream()
            .filter(entry -> entry.getValue().origin() == Origin.ASSUMED)
            .map(entry -> entry.getKey() + " " + number(entry.getValue()))
            .collect(joining("; "));
    table = new RangeTable(report, assumptions.isEmpty() ? "" : "*");
  }

  RangeTable table() {
    return table;
  }

  /** The assumed numbers that the report rests on; empty if there are none. */
  String assumptions() {
    return assumptions.isEmpty() ? "" : assumptions + ".";
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

  static String words(Waiver waiver) {
    return waiver.reason() + waiver.expires().map(day -> " (until " + day + ")").orElse("");
  }

  static String words(UnusedWaiver unused) {
    return words(unused.waiver()) + ": " + unused.why() + ".";
  }

  List<RuleResult> results(Status status) {
    return report.results().stream().filter(r -> r.outcome().status() == status).toList();
  }

  String verdict() {
    return report.passes()
        ? "No rule speaks against a careful first ride from the rich side, with a lean risk of "
            + accepted()
            + " accepted. This is a calculation, no promise of safety: confirm it with plug chops."
        : against();
  }

  private String against() {
    String found = stopping(Status.FAILED);
    String open = stopping(Status.NOT_EVALUATED);
    String broken = stopping(Status.BROKEN);
    boolean lean = report.leanUnwaived();
    boolean leanOverrun = report.overrunUnwaived();
    boolean nothingWrong = found.isEmpty() && !lean && !leanOverrun;
    String start = nothingWrong ? "Do not ride before this is answered" : "Do not ride like this";
    boolean nobodyLooked = nothingWrong && open.isEmpty() && broken.isEmpty();
    return Stream.of(
            nobodyLooked ? "no rule had anything to say" : "",
            found.isEmpty() ? "" : "danger by " + found,
            found.isEmpty() && lean ? "lean risk above what is accepted" : "",
            found.isEmpty() && leanOverrun ? "too lean on the overrun" : "",
            open.isEmpty() ? "" : "could not be evaluated: " + open,
            broken.isEmpty() ? "" : "broken: " + broken)
        .filter(part -> !part.isEmpty())
        .collect(joining("; ", start + ": ", "."));
  }

  String versions() {
    return "Model: " + report.model() + ". Rulebook: " + report.rulebook() + ".";
  }

  private String accepted() {
    return TradeStyle.probability(report.sheet().riding().acceptedRisk());
  }

  private boolean isLean(RiskPoint point) {
    return table.mark(point).equals(RangeTable.LEAN);
  }

  /** Ids of the rules that speak against a ride and came out like this. */
  private String stopping(Status status) {
    return results(status).stream()
        .filter(report::stops)
        .map(RuleResult::ruleId)
        .collect(joining(", "));
  }

  private static String number(Coefficient coefficient) {
    BigDecimal rounded = new BigDecimal(Decimals.fixed(coefficient.value(), 4));
    String number = rounded.stripTrailingZeros().toPlainString();
    return coefficient.unit().equals("1") ? number : number + " " + coefficient.unit();
  }
}
