package dev.example.ruleauthor;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookImpact;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.SheetImpact;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.json.RuleFile;
import dev.jetting.rules.json.RuleRemark;
import dev.jetting.rules.json.SheetImpactJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.RuleCheck;
import dev.jetting.rules.laws.Trial;
import dev.jetting.rules.standard.StandardRulebook;
import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The steps of WALK.md, between the markers as they stand there. */
final class Walk {

  private Walk() {}

  static List<RuleRemark> look(String json) {
    // step
    RuleFile file = RuleFile.read(json);
    List<RuleRemark> remarks = new ArrayList<>(file.review());
    remarks.addAll(file.check(Map.of("plain", LawKit.plainSheet())));
    // end of step
    return remarks;
  }

  static Rulebook join(String json, SetupSheet sheet, PrintStream out) {
    // step
    Rulebook standard = StandardRulebook.rulebook();
    Rulebook shop = standard.with(RuleFile.read(json).rules());
    Report report = shop.evaluate(AssessedSetting.of(sheet));
    report.margins().stream().limit(3).forEach(out::println);
    // end of step
    return shop;
  }

  static void check(Rule rule) {
    // step
    RuleCheck check = RuleCheck.of(rule).on(LawKit.plainSheet());
    check.edited("/setting/mainJet", "1.50 mm").passes();
    check.edited("/setting/mainJet", "1.10 mm").failsOn("setting.mainJet");
    // end of step
  }

  static LawReport laws(Rulebook shop, Stream<Trial> trials, PrintStream out) {
    // step
    LawReport laws = LawKit.allLaws().hold(Candidate.of(shop), trials);
    laws.untestedRules().forEach(id -> out.println("never passed or never failed: " + id));
    // end of step
    return laws;
  }

  static Rulebook impact(Rulebook shop, Stream<String> sheets, PrintStream out) {
    // step
    Rulebook stricter =
        shop.withLimit(
            "float valve capacity by full-throttle flow",
            Coefficient.assumed(1.5, "1", "our hoses are long"));
    RulebookImpact.of(shop, stricter)
        .over(sheets, SheetJson::read)
        .filter(SheetImpact::differs)
        .map(SheetImpactJson::writeLine)
        .forEach(out::println);
    // end of step
    return stricter;
  }

  static Report waive(Rulebook shop, AssessedSetting setting, LocalDate today) {
    // step
    Report report = shop.evaluate(setting);
    RankedFinding finding = report.findings().get(0);
    Waiver waiver =
        Waiver.of(report, finding).by("A. Weaver").because("Only until the jet arrives.");
    Report waived = shop.evaluate(setting, List.of(waiver.until(today.plusDays(14))), today);
    // end of step
    return waived;
  }
}
