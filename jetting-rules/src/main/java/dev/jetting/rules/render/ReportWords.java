package dev.jetting.rules.render;

import static java.util.stream.Collectors.joining;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Coefficient.Origin;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Plan;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.RuleResult;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Verdict;
import dev.jetting.rules.WaivedDanger;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.number.Decimals;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the renderings of a report say, in the words of one language, without their layout. */
final class ReportWords {

  /** A piece of text with what it is about. */
  record Entry(String label, String text) {}

  /** How much of what a report rests on is listed. */
  enum Assumptions {
    COUNTED,
    LISTED
  }

  private final Report report;
  private final Wording wording;
  private final RangeTable table;
  private final List<String> assumptions;

  ReportWords(Report report, Wording wording) {
    this.report = report;
    this.wording = Objects.requireNonNull(wording, "wording");
    assumptions =
        report.assumptions().entrySet().stream()
            .filter(entry -> entry.getValue().origin() == Origin.ASSUMED)
            .map(entry -> assumption(entry.getKey(), entry.getValue()))
            .toList();
    table = new RangeTable(report, marksLimits() ? "*" : "", wording);
  }

  String text(Message message) {
    return wording.text(message);
  }

  /** Words of the library that show no value. */
  String say(String key) {
    return text(Message.of(key));
  }

  String title() {
    return text(Message.of("page.title").with("title", Argument.name(report.sheet().title())));
  }

  String severity(Severity severity) {
    return say("severity." + lower(severity));
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** "DANGER rule:" of a result. */
  String rule(RuleResult result) {
    return text(
        Message.of("page.rule").with("severity", Argument.name(severity(result.severity()))));
  }

  String title(RuleResult result) {
    return result.title(wording);
  }

  List<String> cautions() {
    return report.cautions(wording);
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
    return text(
        extent == Assumptions.LISTED
            ? Message.of("assumptions.listed")
                .with("assumptions", Argument.name(String.join("; ", assumptions)))
            : Message.of("assumptions.counted")
                .with(Message.COUNT, Argument.count(assumptions.size())));
  }

  private String assumption(String name, Coefficient coefficient) {
    double value = coefficient.value();
    // To the fourth decimal, which is finer than any of them is known.
    double rounded = Double.parseDouble(Decimals.fixed(value, 4));
    return text(Message.named("assumption", name))
        + " "
        + wording.text(Argument.exact(rounded, coefficient.unit()));
  }

  List<Entry> what() {
    Engine engine = report.sheet().setup().engine();
    Setting setting = report.sheet().setup().setting();
    return List.of(
        entry(
            "label.engine",
            Message.of("engine")
                .with("engine", Argument.name(engine.id()))
                .with(
                    "displacement", Argument.exact(engine.displacement().cubicCentimetres(), "cm³"))
                .with("exhaust", Argument.name(engine.exhaust().id()))),
        entry(
            "label.carburettor",
            Message.of("carburettor")
                .with("carburettor", Argument.name(setting.carburettor().id()))
                .with("intake", Argument.name(setting.intake().id()))),
        new Entry(say("label.setting"), trade(setting)),
        entry("label.air", air(report.sheet().setup().air())),
        entry("label.fuel", fuel(report.sheet().setup())));
  }

  private Entry entry(String label, Message text) {
    return new Entry(say(label), text(text));
  }

  private static Message fuel(Setup setup) {
    double kelvin = setup.fuelWarmerBy().kelvin();
    Argument fuel = Argument.fuel(setup.fuel());
    return kelvin == 0
        ? Message.plain("{fuel}").with("fuel", fuel)
        : Message.of(kelvin < 0 ? "fuel.colder" : "fuel.warmer")
            .with("fuel", fuel)
            .with("difference", RangeTable.whole(Math.abs(kelvin)));
  }

  private String trade(Setting setting) {
    return Stream.of(
            Argument.mainJet(setting.mainJet()),
            Argument.pilotJet(setting.pilotJet()),
            Argument.screw(setting.screw().kind(), setting.screw().turns()),
            Argument.cutaway(setting.cutaway()),
            Argument.needleJet(setting.needleJet().bore()),
            Argument.needle(setting.needle().id()),
            Argument.clip(setting.clip()))
        .map(wording::text)
        .map(TextPage::unbroken)
        .collect(joining(", "));
  }

  private static Message air(Air air) {
    return place(Message.of("air"), air).with("humidity", Argument.humidity(air.humidity()));
  }

  private static Message place(Message message, Air air) {
    return message
        .with("temperature", Argument.temperature(air.temperature()))
        .with("pressure", Argument.pressure(air.pressure()));
  }

  /** What is looked at beside the throttle range in the air of the day. */
  List<Entry> besides() {
    Overrun overrun = report.overrun();
    return List.of(
        entry(
            "label.overrun",
            Message.of("overrun")
                .with("speed", Argument.speed(overrun.speed()))
                .with("lambda", RangeTable.lambda(overrun.lambda().value()))
                .with("share", Argument.share(overrun.fuelShareOfOpen()))),
        entry("label.coldest", day(report.sheet().riding().coldest(), report.coldestDay().worst())),
        entry("label.hottest", day(report.sheet().riding().hottest(), report.hottestDay().worst())),
        entry(
            "label.riding",
            Message.of("riding")
                .with("mean", Argument.risk(report.meanRisk()))
                .with("accepted", accepted())));
  }

  /** The highest lean risk over all days and at all ridden speeds. */
  Entry worst() {
    WorstSpot worst = report.worst();
    return entry(
        "label.worst",
        Message.of(onLevelRoad(worst) ? "worst" : "worst.uphill")
            .with("risk", Argument.risk(worst.leanRisk(), report.sheet().riding().acceptedRisk()))
            .with("throttle", Argument.throttle(worst.throttle()))
            .with("speed", Argument.speed(worst.speed()))
            .with("day", Argument.word("worst." + lower(worst.day()))));
  }

  private boolean onLevelRoad(WorstSpot worst) {
    return report.today().points().stream()
        .map(RiskPoint::mixture)
        .anyMatch(m -> m.throttle().equals(worst.throttle()) && m.speed().equals(worst.speed()));
  }

  private Message day(Air air, RiskPoint riskiest) {
    return place(Message.of(table.isLean(riskiest) ? "day.lean" : "day.good"), air)
        .with("throttle", Argument.throttle(riskiest.mixture().throttle()))
        .with("lambda", RangeTable.lambda(riskiest.lambda().value()))
        .with("risk", Argument.risk(riskiest.leanRisk(), report.sheet().riding().acceptedRisk()));
  }

  String where(ThrottleBand band) {
    return text(band.words());
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
          return text(
              Message.of(change.enough() ? "remedy.step" : "remedy.step.not-enough")
                  .with("number", Argument.count(i + 1)));
        }
      }
    }
    return text(finding.remedy().message());
  }

  /** Who waived it, up to what, until when and why. */
  String words(Waiver waiver) {
    return text(waiver(waiver));
  }

  /** The same after the word that says so. */
  String waived(Waiver waiver) {
    return say("page.waived") + " " + words(waiver);
  }

  private static Message waiver(Waiver waiver) {
    Message words =
        Message.of(waiver.accepted().isEmpty() ? "waiver" : "waiver.up-to")
            .with("author", Argument.name(waiver.author()))
            .with("until", waiver.expires().map(ReportWords::until).orElse(Argument.name("")))
            .with("reason", Argument.name(waiver.reason()));
    return waiver
        .accepted()
        .map(ceiling -> words.with("ceiling", Argument.words(ceiling.words())))
        .orElse(words);
  }

  private static Argument until(LocalDate day) {
    return Argument.words(Message.of("waiver.until").with("day", Argument.name(day.toString())));
  }

  String unused(UnusedWaiver unused) {
    return text(
        Message.of("waiver.unused")
            .with("why", Argument.words(unused.reason()))
            .with("waiver", Argument.words(waiver(unused.waiver()))));
  }

  List<RuleResult> results(Status status) {
    return report.results().stream().filter(r -> r.outcome().status() == status).toList();
  }

  String verdict() {
    Verdict verdict = report.verdict();
    Stream<String> ruling =
        switch (verdict.ruling()) {
          case PASSES -> Stream.of(text(Message.of("verdict.passes").with("accepted", accepted())));
          case PASSES_BY_WAIVER ->
              Stream.of(
                  text(
                      Message.of("verdict.by-waiver")
                          .with("waived", dangers(verdict))
                          .with("accepted", accepted())));
          case UNANSWERED, FAILS -> against(verdict);
        };
    Stream<String> changed =
        report.rulebook().changed()
            ? Stream.of(
                text(
                    Message.of("verdict.rulebook")
                        .with("changes", Argument.name(changes(report.rulebook())))))
            : Stream.of();
    return Stream.of(ruling, report.notices(wording).stream(), changed)
        .flatMap(sentences -> sentences)
        .collect(joining(" "));
  }

  private Argument dangers(Verdict verdict) {
    String dangers =
        verdict.waived().stream().map(this::danger).map(this::text).collect(joining(" "));
    Message waived =
        verdict
            .waiversJudgedOn()
            .map(day -> Message.of("verdict.as-of").with("day", Argument.name(day.toString())))
            .orElse(Message.of("verdict.as-of-none"));
    return Argument.name(text(waived.with("dangers", Argument.name(dangers))));
  }

  private Message danger(WaivedDanger danger) {
    return Message.of("verdict.danger-accepted")
        .with("rule", Argument.name(danger.ruleId()))
        .with("subject", Argument.name(danger.subject()))
        .with("measured", danger.measured().argument())
        .with("waiver", Argument.name(TextPage.sentence(words(danger.waiver()))));
  }

  private Stream<String> against(Verdict verdict) {
    boolean nothingWrong = verdict.ruling() == Verdict.Ruling.UNANSWERED;
    boolean found = !verdict.dangers().isEmpty();
    boolean nobodyLooked =
        nothingWrong && verdict.unanswered().isEmpty() && verdict.broken().isEmpty();
    String why =
        Stream.of(
                nobodyLooked ? say("verdict.why.nothing") : "",
                listed("verdict.why.danger", verdict.dangers()),
                !found && verdict.tooLean() ? say("verdict.why.lean") : "",
                !found && verdict.tooLeanOnOverrun() ? say("verdict.why.overrun") : "",
                listed("verdict.why.unanswered", verdict.unanswered()),
                listed("verdict.why.broken", verdict.broken()))
            .filter(part -> !part.isEmpty())
            .collect(joining("; "));
    String against =
        text(
            Message.of(nothingWrong ? "verdict.unanswered" : "verdict.fails")
                .with("why", Argument.name(why)));
    return verdict.waived().isEmpty()
        ? Stream.of(against)
        : Stream.of(against, text(Message.of("verdict.waived").with("waived", dangers(verdict))));
  }

  private String listed(String key, List<String> ids) {
    return ids.isEmpty()
        ? ""
        : text(
            Message.of(key).with("rules", Argument.items(ids.stream().map(this::titled).toList())));
  }

  /** A rule by its title, which a rider understands; the findings below have its id. */
  private Argument titled(String id) {
    return report.results().stream()
        .filter(result -> result.ruleId().equals(id))
        .findFirst()
        .map(result -> Message.of("verdict.rule").with("title", Argument.name(title(result))))
        .map(Argument::words)
        .orElseGet(() -> Argument.name(id));
  }

  String versions() {
    RulebookEdition edition = report.rulebook();
    Argument plain = Argument.name(edition.name() + " " + edition.version());
    Argument rulebook =
        edition.changed()
            ? Argument.words(
                Message.of("rulebook.changed")
                    .with("rulebook", plain)
                    .with("changes", Argument.name(changes(edition))))
            : plain;
    Message versions =
        Message.of("versions")
            .with("model", Argument.name(report.model()))
            .with("rulebook", rulebook)
            .with("digest", Argument.name(edition.shortDigest()));
    return Stream.concat(
            Stream.of(versions),
            report.verdict().waiversJudgedOn().stream()
                .map(
                    day ->
                        Message.of("versions.waivers").with("day", Argument.name(day.toString()))))
        .map(this::text)
        .collect(joining(" "));
  }

  private String changes(RulebookEdition edition) {
    return edition.changesInWords().stream().map(this::text).collect(joining("; "));
  }

  private Argument accepted() {
    return Argument.risk(report.sheet().riding().acceptedRisk());
  }
}
