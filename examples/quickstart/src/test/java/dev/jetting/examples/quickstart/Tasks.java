package dev.jetting.examples.quickstart;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.core.calibration.CalibratedModel;
import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.MachineDescription;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SettingDifference;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.KitJson;
import dev.jetting.rules.json.RuleFile;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.json.ShortReportJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.risk.MixtureSeries;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Wording;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.SessionText;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The snippets that TASKS.md shows; {@link TasksTest} compares the two and runs each. */
final class Tasks {

  private Tasks() {}

  // step
  static String germanPage(String json) {
    Wording german = Wording.of(Locale.GERMAN);
    try {
      AssessedSetting setting = AssessedSetting.of(SheetJson.read(json));
      return ReportText.of(Adviser.of(StandardRulebook.rulebook()).advise(setting), german);
    } catch (JsonInputException e) {
      return german.text(e);
    }
  }

  // end of step

  // step
  static int checkKits(Catalogue catalogue, List<String> lines, PrintStream out) {
    KitValidator validator = KitValidator.of(catalogue);
    int failed = 0;
    for (int i = 0; i < lines.size(); i++) {
      try {
        KitValidation kit = validator.validate(KitJson.read(lines.get(i)), KitDepth.SETTING);
        failed += kit.passes() ? 0 : 1;
        for (RankedFinding found : kit.findings()) {
          out.println(kit.kit() + ": " + found.severity() + ": " + found.finding().text());
        }
      } catch (JsonInputException e) {
        failed++;
        out.println("line " + (i + 1) + ": " + e.getMessage());
      }
    }
    return failed;
  }

  // end of step

  // step
  /** A status of HTTP and a body. */
  record Answer(int status, String body) {}

  static Answer next(String session, String acceptLanguage) {
    List<Locale.LanguageRange> wanted = Locale.LanguageRange.parse(acceptLanguage);
    Locale language = Locale.lookup(wanted, Wording.languages());
    Wording wording = Wording.of(language == null ? Locale.ENGLISH : language);
    Tuner tuner = Tuner.readingWith(EnumSet.of(Instrument.PLUG, Instrument.FEEL));
    try {
      return new Answer(200, SessionText.of(SessionJson.read(session), tuner, wording));
    } catch (JsonInputException e) {
      return new Answer(422, wording.text(e));
    }
  }

  // end of step

  // step
  static String before(SetupSheet sheet) {
    return SessionJson.write(TuningSession.beginning(sheet)); // keep it, or send it
  }

  static String elsewhere(String json, EnumSet<Instrument> instruments) {
    TuningSession session = SessionJson.read(json);
    return SessionText.of(session, Tuner.readingWith(instruments));
  }

  // end of step

  // step
  static Rulebook withFile(String json, PrintStream out) {
    RuleFile file = RuleFile.read(json);
    file.review().forEach(remark -> out.println(remark.message())); // never holds, adds nothing
    return StandardRulebook.rulebook().with(file.rules());
  }

  // end of step

  // step
  static Report waiving(AssessedSetting setting, LocalDate today) {
    Rulebook rulebook = StandardRulebook.rulebook();
    Report report = rulebook.evaluate(setting);
    Waiver waiver =
        Waiver.of(report, report.findings().get(0))
            .by("A. Weaver")
            .because("Ridden below half throttle until the jet arrives.")
            .until(today.plusDays(14));
    return rulebook.evaluate(setting, List.of(waiver), today);
  }

  // end of step

  // step
  static String compare(SetupSheet before, SetupSheet after) {
    Rulebook rulebook = StandardRulebook.rulebook();
    ReportDifference difference =
        ReportDifference.between(
            rulebook.evaluate(AssessedSetting.of(before)),
            rulebook.evaluate(AssessedSetting.of(after)));
    return difference.text(Wording.of(Locale.ITALIAN));
  }

  // end of step

  // step
  static String whatTheJetsDid(AssessedSetting before, AssessedSetting after) {
    SettingDifference difference = SettingDifference.from(before).to(after);
    return difference.text(Wording.of(Locale.GERMAN)) + "\n\n" + difference.csv();
  }

  // end of step

  // step
  static String chart(SetupSheet sheet) {
    AssessedSetting setting = AssessedSetting.of(sheet);
    for (MixtureSeries.Row row : setting.series().rows()) {
      double inTheMiddle = row.shares().getOrDefault(Circuit.NEEDLE, 0.0);
      if (inTheMiddle > 0.5 && row.leanRisk().value() > 0.1) {
        return "Lean on the needle at " + row.throttle() + "\n" + setting.series().csv();
      }
    }
    return setting.series().csv();
  }

  static String map(SetupSheet sheet) {
    RiskModel risk = sheet.riskModel(RiskModel.assumed());
    CalibratedModel engine = risk.untried().on(MixtureModel.of(sheet.setup()));
    List<EngineSpeed> speeds =
        Stream.of(3000, 4500, 6000, 7500).map(rpm -> EngineSpeed.ofRpm(rpm)).toList();
    return MixtureSeries.map(risk, engine, speeds, AssessedSetting.openings()).csv();
  }

  // end of step

  // step
  static String page(Report report, Locale language) {
    return ShortReportJson.write(report, Wording.of(language));
  }

  // end of step

  // step
  static ObjectNode order(int number, SetupSheet sheet) {
    ObjectMapper mapper = new ObjectMapper().findAndRegisterModules(); // finds JettingModule
    JsonNode tree = mapper.valueToTree(sheet);
    return mapper.createObjectNode().put("number", number).set("sheet", tree);
  }

  static SetupSheet sheetOf(JsonNode order) throws JsonProcessingException {
    ObjectMapper mapper = new ObjectMapper().findAndRegisterModules();
    return mapper.treeToValue(order.get("sheet"), SetupSheet.class);
  }

  // end of step

  // step
  static void toSheetFile(MachineDescription machine, Path file) throws IOException {
    Files.writeString(file, SheetJson.write(machine.sheet()));
  }

  // end of step

  // step
  static Rulebook stricter() {
    return StandardRulebook.rulebook()
        .withLimit(
            "float valve capacity by full-throttle flow",
            Coefficient.assumed(1.5, "1", "our hoses are long"));
  }
  // end of step
}
