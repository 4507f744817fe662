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
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A report as plain text for people: eighty columns, lines that end in {@code \n}, no colour, the
 * same bytes in every locale.
 *
 * <p>Not for programs: they read {@link Report} or its JSON, and the layout may change.
 */
public final class ReportText {

  private static final String MARGIN = "             ";

  private final Report report;
  private final List<Map.Entry<String, Coefficient>> assumed;
  private final RangeTable table;
  private final TextPage page = new TextPage();

  private ReportText(Report report) {
    this.report = report;
    assumed =
        report.assumptions().entrySet().stream()
            .filter(entry -> entry.getValue().origin() == Origin.ASSUMED)
            .toList();
    table = new RangeTable(report, assumed.isEmpty() ? "" : "*");
  }

  /**
   * Renders a report.
   *
   * @param report the report; not null
   * @return its text, ending with the verdict; never a promise of safety
   */
  public static String of(Report report) {
    return new ReportText(Objects.requireNonNull(report, "report")).render();
  }

  private String render() {
    what();
    throttleRange();
    otherPoints();
    findings();
    unusedWaivers();
    unanswered();
    assumptions();
    cautions();
    verdict();
    return page.toString();
  }

  private void what() {
    Setup setup = report.sheet().setup();
    Engine engine = setup.engine();
    Setting setting = setup.setting();
    page.wrapped(report.sheet().title());
    page.doubleRule();
    entry("engine", engine.id() + ", " + engine.displacement() + "; " + engine.exhaust().id());
    entry("carburettor", setting.carburettor().id() + "; intake: " + setting.intake().id());
    entry("setting", trade(setting));
    entry("air", air(setup.air()));
    entry("fuel", setup.fuel().toString());
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
    return TradeStyle.temperature(air.temperature())
        + ", "
        + TradeStyle.pressure(air.pressure())
        + ", "
        + TradeStyle.humidity(air.humidity())
        + " humidity";
  }

  private void throttleRange() {
    page.heading("Over the throttle range");
    table.lines().forEach(page::line);
    if (!assumed.isEmpty()) {
      page.line("* an assumption, neither measured nor published; see below");
    }
  }

  private void otherPoints() {
    Overrun overrun = report.overrun();
    page.blank();
    entry(
        "overrun",
        "throttle shut at "
            + Decimals.fixed(overrun.speed().rpm(), 0)
            + " rpm: λ "
            + RangeTable.lambda(overrun.lambda().value())
            + " on the pilot's fuel alone; fuel and oil a turn "
            + Decimals.fixed(overrun.fuelShareOfOpen() * 100, 0)
            + " % of full throttle's");
    day("coldest", report.sheet().riding().coldest(), report.coldestDay());
    day("hottest", report.sheet().riding().hottest(), report.hottestDay());
    entry(
        "riding",
        "mean lean risk "
            + TradeStyle.probability(report.meanRisk())
            + "; accepted at any opening "
            + TradeStyle.probability(report.sheet().riding().acceptedRisk()));
  }

  private void day(String label, Air air, RiskPoint riskiest) {
    boolean lean = table.mark(riskiest).equals(RangeTable.LEAN);
    entry(
        label,
        TradeStyle.temperature(air.temperature())
            + ", "
            + TradeStyle.pressure(air.pressure())
            + (lean ? ": LEAN at " : ": riskiest at ")
            + TradeStyle.throttle(riskiest.mixture().throttle())
            + ", λ "
            + RangeTable.lambda(riskiest.lambda().value())
            + ", lean risk "
            + TradeStyle.probability(riskiest.leanRisk()));
  }

  private void findings() {
    page.heading("Findings, the most dangerous first");
    if (report.findings().isEmpty()) {
      page.line("none");
    }
    int number = 0;
    for (RankedFinding ranked : report.findings()) {
      if (number++ > 0) {
        page.blank();
      }
      Finding finding = ranked.finding();
      page.line(number + ". " + ranked.severity() + ", " + where(finding.band()));
      page.wrapped("   ", finding.text(), "   ");
      page.wrapped("   What to do: ", finding.remedy(), "   ");
      ranked.waiver().ifPresent(waiver -> page.wrapped("   Waived: ", words(waiver), "   "));
      page.line("   [" + ranked.ruleId() + ", " + finding.subject() + "]");
    }
  }

  private static String words(Waiver waiver) {
    return waiver.reason() + waiver.expires().map(day -> " (until " + day + ")").orElse("");
  }

  private void unusedWaivers() {
    if (report.unusedWaivers().isEmpty()) {
      return;
    }
    page.heading("Waivers that waived nothing");
    for (UnusedWaiver unused : report.unusedWaivers()) {
      page.wrapped("- ", words(unused.waiver()) + ": " + unused.why() + ".", "  ");
      page.line("  [" + unused.waiver().ruleId() + ", " + unused.waiver().subject() + "]");
    }
  }

  private static String where(ThrottleBand band) {
    if (band.equals(ThrottleBand.WHOLE)) {
      return "whole throttle range";
    }
    String to = TradeStyle.throttle(band.to());
    return band.from().equals(band.to())
        ? to
        : TradeStyle.throttle(band.from()).replace(" throttle", "") + " to " + to;
  }

  private void unanswered() {
    unanswered("Could not be evaluated", "missing: ", Status.NOT_EVALUATED);
    unanswered("Broken rules", "broke with: ", Status.BROKEN);
  }

  private void unanswered(String heading, String reason, Status status) {
    List<RuleResult> results =
        report.results().stream().filter(r -> r.outcome().status() == status).toList();
    if (results.isEmpty()) {
      return;
    }
    page.heading(heading);
    for (RuleResult result : results) {
      page.wrapped(result.severity() + " rule: " + result.title());
      page.wrapped("   " + reason, result.outcome().reason(), "   ");
      page.line("   [" + result.ruleId() + "]");
    }
  }

  private void assumptions() {
    if (assumed.isEmpty()) {
      return;
    }
    page.heading("Assumed, neither measured nor published");
    page.wrapped(
        assumed.stream()
            .map(entry -> entry.getKey() + " " + number(entry.getValue()))
            .collect(joining("; ", "", ".")));
  }

  private static String number(Coefficient coefficient) {
    String number = Decimals.shortest(coefficient.value());
    return coefficient.unit().equals("1") ? number : number + " " + coefficient.unit();
  }

  private void cautions() {
    page.heading("Cautions");
    report.cautions().forEach(caution -> page.wrapped("- ", caution, "  "));
  }

  private void verdict() {
    page.blank();
    page.doubleRule();
    entry(
        "VERDICT",
        report.passes() && !lean()
            ? "No rule speaks against a careful first ride from the rich side. This is a"
                + " calculation, no promise of safety: confirm it with plug chops."
            : against());
    page.line("Model: " + report.model() + ". Rulebook: " + report.rulebook() + ".");
  }

  private String against() {
    String found = danger(Status.FAILED);
    String open = danger(Status.NOT_EVALUATED);
    String broken = ids(result -> result.outcome().status() == Status.BROKEN);
    String start =
        found.isEmpty() && !lean()
            ? "Do not ride before this is answered"
            : "Do not ride like this";
    boolean nobodyLooked = found.isEmpty() && open.isEmpty() && broken.isEmpty() && !lean();
    return Stream.of(
            nobodyLooked ? "no rule had anything to say" : "",
            found.isEmpty() ? "" : "danger by " + found,
            found.isEmpty() && lean() ? "lean risk above what is accepted" : "",
            open.isEmpty() ? "" : "could not be evaluated: " + open,
            broken.isEmpty() ? "" : "broken: " + broken)
        .filter(part -> !part.isEmpty())
        .collect(joining("; ", start + ": ", "."));
  }

  /** Whatever the rules say: a caller's rulebook may have none that looks at the mixture. */
  private boolean lean() {
    return Stream.concat(
            report.profile().points().stream(), Stream.of(report.coldestDay(), report.hottestDay()))
        .anyMatch(point -> table.mark(point).equals(RangeTable.LEAN));
  }

  private String danger(Status status) {
    return ids(
        result -> result.outcome().status() == status && result.severity() == Severity.DANGER);
  }

  private String ids(Predicate<RuleResult> wanted) {
    return report.results().stream().filter(wanted).map(RuleResult::ruleId).collect(joining(", "));
  }

  private void entry(String label, String text) {
    page.wrapped((label + MARGIN).substring(0, MARGIN.length()), text, MARGIN);
  }
}
