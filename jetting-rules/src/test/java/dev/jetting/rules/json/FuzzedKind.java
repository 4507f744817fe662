package dev.jetting.rules.json;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookImpact;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Shop;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.JetBore;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Every kind of document that the library reads, with documents to start from. */
@SuppressWarnings("ImmutableEnumChecker") // functions without state
enum FuzzedKind {
  SHEET(
      SheetJson::read,
      SheetJson::write,
      () -> named("example-sheet.json", "bare-sheet.json", "example-sheet.golden.json")),
  SESSION(SessionJson::read, SessionJson::write, () -> named("example-session.json")),
  KIT(KitJson::read, KitJson::writeLine, () -> named("example-kit.json")),
  CATALOGUE(CatalogueJson::read, CatalogueJson::write, () -> named("example-catalogue.json")),
  RULES(
      RuleFile::read,
      RuleFile::toJson,
      () -> Stream.concat(named("example-rules.json"), RuleFileFuzzTest.drawn(20))),
  REPORT(
      ReportJson::read,
      ReportJson::write,
      () ->
          Stream.concat(
              named("report.golden.json"), Stream.of(ReportJson.write(Reports.handmade())))),
  LIMITS(
      LimitsJson::read,
      LimitsJson::write,
      () -> Stream.of(LimitsJson.write(StandardRulebook.rulebook().assumptions()))),
  WAIVERS(WaiversJson::read, WaiversJson::write, () -> Stream.of(WaiversJsonTest.DOCUMENT)),
  KIT_WAIVERS(
      KitWaiversJson::read, KitWaiversJson::write, () -> Stream.of(KitWaiversJsonTest.DOCUMENT)),
  KIT_VALIDATION(
      KitValidationJson::read,
      KitValidationJson::writeLine,
      () ->
          Arrays.stream(KitDepth.values())
              .map(depth -> KitValidator.of(Shop.CATALOGUE).validate(Shop.kit(), depth))
              .map(KitValidationJson::write)),
  DIFFERENCE(
      ReportDifferenceJson::read,
      ReportDifferenceJson::write,
      () -> Stream.of(ReportDifferenceJson.write(difference()))),
  IMPACT(SheetImpactJson::read, SheetImpactJson::writeLine, FuzzedKind::impacts);

  private final Check check;
  private final Supplier<Stream<String>> examples;

  private interface Check {
    Optional<?> of(byte[] json);
  }

  <T> FuzzedKind(
      Fuzzed.DocumentReader<T> reader,
      Function<T, String> writer,
      Supplier<Stream<String>> examples) {
    this.check = json -> Fuzzed.read(json, reader, writer);
    this.examples = examples;
  }

  /** Holds the reader against what holds of any bytes. */
  Optional<?> read(byte[] json) {
    return check.of(json);
  }

  Stream<String> examples() {
    return examples.get();
  }

  private static Stream<String> named(String... names) {
    return Stream.of(names).map(Documents::read);
  }

  private static SetupSheet withMain(double millimetres) {
    SetupSheet sheet = LawKit.plainSheet();
    return sheet.withSetup(
        sheet
            .setup()
            .withSetting(sheet.setup().setting().withMainJet(JetBore.ofMillimetres(millimetres))));
  }

  private static ReportDifference difference() {
    Rulebook standard = StandardRulebook.rulebook();
    return ReportDifference.between(
        standard.evaluate(AssessedSetting.of(withMain(1.2))),
        standard.evaluate(AssessedSetting.of(withMain(0.9))));
  }

  private static Stream<String> impacts() {
    Rulebook standard = StandardRulebook.rulebook();
    return RulebookImpact.of(standard, standard.without("lean-anywhere"))
        .over(Stream.of(SheetJson.write(withMain(0.9)), "{}"), SheetJson::read)
        .map(SheetImpactJson::write);
  }
}
