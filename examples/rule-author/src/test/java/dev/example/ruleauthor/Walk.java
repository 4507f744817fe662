package dev.example.ruleauthor;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookImpact;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.SheetImpact;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.json.LimitsJson;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.RuleFile;
import dev.jetting.rules.json.RuleRemark;
import dev.jetting.rules.json.SheetImpactJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.json.WaiversJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.KitWaiver;
import dev.jetting.rules.kit.MachineResult;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Laws;
import dev.jetting.rules.laws.RuleCheck;
import dev.jetting.rules.laws.Trial;
import dev.jetting.rules.standard.StandardRulebook;
import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The steps of WALK.md and of the pages of the guide, between the markers as they stand there. */
final class Walk {

  private Walk() {}

  static List<RuleRemark> review(String json, Catalogue catalogue) {
    // step
    RuleFile file = RuleFile.read(json);
    List<RuleRemark> remarks = new ArrayList<>(file.review(catalogue));
    // end of step
    return remarks;
  }

  static List<RuleRemark> examples(RuleFile file) {
    // step
    List<RuleRemark> remarks = file.check(Map.of("plain", LawKit.plainSheet()));
    // end of step
    return remarks;
  }

  static void check(Rule rule) {
    // step
    RuleCheck check = RuleCheck.of(rule).on(LawKit.plainSheet());
    check.edited("/setting/mainJet", "1.40 mm").passes().withMeasured(1.40);
    check.edited("/setting/mainJet", "1.41 mm").failsOn("setting.mainJet").withLimit(1.40);
    // end of step
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

  static LawReport laws(Rulebook shop, Stream<Trial> trials, PrintStream out) {
    // step
    LawReport laws = LawKit.allLaws().hold(Candidate.of(shop), trials);
    laws.untestedRules().forEach(id -> out.println("never passed or never failed: " + id));
    laws.neverTried().forEach(id -> out.println("never tried: " + id));
    // end of step
    return laws;
  }

  static LawReport remedies(Rulebook shop, Stream<Trial> trials) {
    // step
    LawReport remedies = LawKit.of(List.of(Laws.remedies())).hold(Candidate.of(shop), trials);
    // end of step
    return remedies;
  }

  static Rulebook limits(Rulebook shop, String json, AssessedSetting setting, PrintStream out) {
    // step
    Rulebook stricter = shop.withLimits(LimitsJson.read(json));
    Report report = stricter.evaluate(setting);
    Coefficient reserve = report.assumptions().get("float valve capacity by full-throttle flow");
    out.println(reserve + ", " + report.rulebook());
    // end of step
    return stricter;
  }

  static Rulebook tags(Rulebook shop, Report kept, AssessedSetting setting, PrintStream out) {
    // step
    Rulebook changes = shop.tagged("change", "weather");
    changes.evaluate(setting).results().forEach(each -> out.println(each.link()));
    boolean sameRules = kept.rulebook().digest().equals(changes.edition().digest());
    // end of step
    out.println(sameRules);
    return changes;
  }

  static void impact(Rulebook shop, Rulebook stricter, Stream<String> sheets, PrintStream out) {
    // step
    RulebookImpact.of(shop, stricter)
        .over(sheets, SheetJson::read)
        .filter(SheetImpact::differs)
        .map(SheetImpactJson::writeLine)
        .forEach(out::println);
    // end of step
  }

  static ReportDifference difference(String json, Rulebook shop, PrintStream out) {
    // step
    Report kept = ReportJson.read(json);
    Report now = shop.evaluate(AssessedSetting.of(kept.sheet()));
    ReportDifference difference = ReportDifference.between(kept, now, shop);
    out.println(difference.sides() + "\n" + difference);
    // end of step
    return difference;
  }

  static String waive(Rulebook shop, AssessedSetting setting, LocalDate today) {
    // step
    Report report = shop.evaluate(setting);
    RankedFinding finding = report.findings().get(0);
    Waiver waiver =
        Waiver.of(report, finding).by("A. Weaver").because("Only until the jet arrives.");
    String kept = WaiversJson.write(List.of(waiver.until(today.plusDays(14))));
    // end of step
    return kept;
  }

  static Report waived(
      Rulebook shop, AssessedSetting leaner, String kept, LocalDate today, PrintStream out) {
    // step
    Report later = shop.evaluate(leaner, WaiversJson.read(kept), today);
    later.unusedWaivers().forEach(unused -> out.println(unused.why()));
    // end of step
    return later;
  }

  static KitValidation waiveKit(KitValidator validator, Kit kit, LocalDate today) {
    // step
    KitValidation open = validator.validate(kit, KitDepth.SETTING);
    MachineResult machine = open.machines().get(0);
    List<KitWaiver> waivers =
        machine.findings().stream()
            .map(found -> KitWaiver.of(open, machine, found).by("A. Weaver").because("Short runs."))
            .toList();
    KitValidation waived = validator.waiving(waivers, today).validate(kit, KitDepth.SETTING);
    // end of step
    return waived;
  }
}
