package dev.jetting.examples.quickstart;

import dev.jetting.core.parts.Screw;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.json.ShortReportJson;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.WorstSpot;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.NextStep;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.RiderInput;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import java.io.PrintStream;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The steps that WALK.md shows; {@link WalkTest} compares the two and runs each. */
final class Walk {

  private Walk() {}

  static MachineDescription machine() {
    // step
    MachineDescription machine =
        MachineDescription.builder()
            .title("Pump cart")
            .displacement(RiderInput.displacement("123 cc"))
            .tune(StateOfTune.UTILITY)
            .bore(RiderInput.diameter("24 mm"))
            .screw(new Screw(ScrewKind.AIR, RiderInput.turns("1-1/2")))
            .pilotJet(RiderInput.pilotJet("#42"))
            .mainJet(RiderInput.mainJet("#96"))
            .needleJet(RiderInput.diameter("2.15"))
            .needle("the needle")
            .clip(RiderInput.clip("3 from top", 5))
            .cutaway(RiderInput.cutaway("30"))
            .altitude(RiderInput.altitude("900 m"))
            .temperature(RiderInput.temperature("68 F"))
            .usualParts()
            .build();
    // end of step
    return machine;
  }

  static Report report(MachineDescription machine, PrintStream out) {
    // step
    SetupSheet sheet = machine.sheet();
    Rulebook rulebook = StandardRulebook.rulebook();
    Report report = Adviser.of(rulebook).advise(AssessedSetting.of(sheet));
    WorstSpot worst = report.worst();
    out.println("Passes: " + report.passes() + ", unanswered: " + report.verdict().unanswered());
    String where = TradeStyle.throttle(worst.throttle()) + ", " + TradeStyle.speed(worst.speed());
    out.println(TradeStyle.probability(worst.leanRisk()) + " at " + where);
    report.findings().forEach(found -> out.println(found.finding().text()));
    for (Remedy.Change step : report.plan().orElseThrow().steps()) {
      out.println(step.stepMessage().text()); // a change towards lean with its condition
    }
    WrongGuess doubt = machine.wrongGuesses().get(0);
    out.println("Measure first: " + doubt.value() + ". " + doubt.value().measuring());
    // end of step
    return report;
  }

  static void compare(SetupSheet sheet, PrintStream out) {
    // step
    SetupSheet other =
        sheet.withSetup(
            sheet
                .setup()
                .withSetting(sheet.setup().setting().withMainJet(RiderInput.mainJet("#104"))));
    AssessedSetting before = AssessedSetting.of(sheet);
    AssessedSetting after = AssessedSetting.of(other);
    for (int eighths = 0; eighths <= 8; eighths++) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      RiskPoint one = before.profile().nearest(throttle);
      RiskPoint two = after.profile().nearest(throttle);
      String change = TradeStyle.lambda(one.lambda()) + " → " + TradeStyle.lambda(two.lambda());
      out.println(TradeStyle.throttle(throttle) + ": " + change);
    }
    // end of step
  }

  static NextStep session(SetupSheet sheet, PrintStream out) {
    // step
    Tuner tuner = Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL));
    TuningSession session = TuningSession.beginning(sheet);
    if (tuner.next(session) instanceof NextStep.TickOff asked) {
      session = session.checking(Set.copyOf(asked.checks()));
    }
    if (tuner.next(session) instanceof NextStep.Change richer) {
      session = session.changing(session.now().setup().withSetting(richer.change().setting()));
    }
    ThrottleOpening full = ThrottleOpening.FULL;
    var speed = sheet.setup().engine().loadLine().at(full);
    var plug = new Evidence.Colour(PlugColour.BLACK);
    session = session.observing(new Observation(full, speed, plug));

    TuningSession resumed = SessionJson.read(SessionJson.write(session)); // tomorrow
    NextStep next = tuner.next(resumed); // data; the page has it in words
    out.println(SessionText.of(resumed, tuner));
    // end of step
    return next;
  }

  // step
  static final Rule RESERVE =
      Rule.named("shop-reserve")
          .title("Less reserve at full throttle than this shop wants")
          .rationale("Customers ride home from here over a long hill at full throttle.")
          .severity(Severity.WARNING)
          .within(ThrottleBand.at(ThrottleOpening.FULL))
          .judging(Walk::judge);

  private static Outcome judge(AssessedSetting setting) {
    ThrottleOpening full = ThrottleOpening.FULL;
    double lambda = setting.profile().nearest(full).lambda().value();
    double most = 0.9 * setting.setup().engine().need().at(full).value();
    if (lambda <= most) {
      return Outcome.passed();
    }
    ThrottleBand band = ThrottleBand.at(full);
    return Outcome.failed(
        Finding.above("setting.mainJet", Measure.ratio(lambda), Measure.ratio(most), band)
            .says("The reserve at full throttle is small.", "Fit the next bigger main jet."));
  }

  // end of step

  // step
  /** A status of HTTP and a body. */
  record Answer(int status, String body) {}

  static Answer report(String body) {
    Rulebook rulebook = StandardRulebook.rulebook().with(RESERVE);
    try {
      SetupSheet sheet = SheetJson.read(body);
      Report report = rulebook.evaluate(AssessedSetting.of(sheet)); // an adviser adds a plan
      return new Answer(200, ShortReportJson.write(report));
    } catch (JsonInputException e) {
      return new Answer(422, e.getMessage());
    }
  }

  // end of step

  // step
  static String page(Report report) {
    Wording german =
        Wording.of(Locale.GERMAN)
            .with(
                Map.of(
                    "rule.too-rich.title", "Viel zu fett",
                    "rule.shop-reserve.title", "Weniger Reserve, als wir wollen",
                    "shop.reserve", "Bei {throttle} fehlen {by} zu unserer Reserve."));
    return ReportText.of(report, german);
  }

  static Message reserve(double by) {
    return Message.of("shop.reserve", "At {throttle} the mixture is {by} short of our reserve.")
        .with("throttle", Argument.throttle(ThrottleOpening.FULL))
        .with("by", Argument.share(by));
  }
  // end of step
}
