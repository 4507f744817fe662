package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is written, and whatever is read, is valid by its schema. */
class JsonSchemasProperties {

  /** A scalar or an empty array or object, after the name of its field. */
  private static final Pattern SCALAR =
      Pattern.compile("(?<=\": )(\"([^\"\\\\]|\\\\.)*\"|[-0-9][^,\\s}\\]]*|\\[]|\\{})");

  @Property(tries = 60)
  void writtenSheet_isValid(@ForAll("sheets") SetupSheet sheet) {
    assertThat(Validators.SHEET.complaints(SheetJson.write(sheet))).isEmpty();
  }

  @Property(tries = 10)
  void writtenReport_isValid(@ForAll("sheets") SetupSheet sheet, @ForAll("files") RuleFile file) {
    Rulebook rulebook = StandardRulebook.rulebook().with(file.rules());
    String report = ReportJson.write(rulebook.evaluate(AssessedSetting.of(sheet)));

    assertThat(Validators.REPORT.complaints(report)).isEmpty();
  }

  @Property(tries = 100)
  void writtenRuleFile_isValid(@ForAll("files") RuleFile file) {
    assertThat(Validators.RULE_FILE.complaints(file.toJson())).isEmpty();
  }

  @Property(tries = 100)
  void sessionWithAnotherScalar_isRefusedOrValid(
      @ForAll("shares") double where, @ForAll("values") String value) {
    assertReadMeansValid(
        replaced(Documents.read("example-session.json"), where, value),
        SessionJson::read,
        Validators.SESSION);
  }

  @Property(tries = 200)
  void sheetWithAnotherScalar_isRefusedOrValid(
      @ForAll("sheets") SetupSheet sheet,
      @ForAll("shares") double where,
      @ForAll("values") String value) {
    assertReadMeansValid(
        replaced(SheetJson.write(sheet), where, value), SheetJson::read, Validators.SHEET);
  }

  @Property(tries = 200)
  void ruleFileWithAnotherScalar_isRefusedOrValid(
      @ForAll("files") RuleFile file,
      @ForAll("shares") double where,
      @ForAll("values") String value) {
    assertReadMeansValid(
        replaced(file.toJson(), where, value), RuleFile::read, Validators.RULE_FILE);
  }

  private static String replaced(String json, double where, String value) {
    List<MatchResult> scalars = SCALAR.matcher(json).results().toList();
    MatchResult scalar = scalars.get((int) (where * scalars.size()));
    return json.substring(0, scalar.start()) + value + json.substring(scalar.end());
  }

  private static void assertReadMeansValid(
      String json, Consumer<String> reader, Validators validator) {
    try {
      reader.accept(json);
    } catch (JsonInputException e) {
      return; // the reader may be stricter
    }
    assertThat(validator.complaints(json)).as(json).isEmpty();
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return SheetArbitraries.sheets();
  }

  @Provide
  Arbitrary<RuleFile> files() {
    return RuleFileArbitraries.files();
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, true, 1, false);
  }

  /** Texts that may be read as one quantity or another. */
  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "\"1.3mm\"",
        "\" 1.5 mm \"",
        "\"130 1/100 mm\"",
        "\"20 tenths\"",
        "\"1\"",
        "1",
        "1.0",
        "1e0",
        "0.5",
        "\"½\"",
        "\"1 1/2 turns\"",
        "\"50 %\"",
        "\"50%\"",
        "\"no oil\"",
        "\"40:1\"",
        "\"2 % oil\"",
        "\"20 °C\"",
        "\"68 °F\"",
        "\"300 K\"",
        "\"30 inHg\"",
        "\"1000 mbar\"",
        "\"200 cc\"",
        "\"4000 1/min\"",
        "\"2 mm2\"",
        "\"5e-4 Pa s\"",
        "\"1 cP\"",
        "\"0.75 g/l\"",
        "\"1000 ft\"",
        "\"2 of 5 from bottom\"",
        "{\"value\": 1.5, \"unit\": \"mm\"}",
        "{\"value\": 0.5, \"unit\": \"%\"}",
        "\"mild\"",
        "\"petrol\"",
        "\"assumed\"",
        "\"mixture\"",
        "[{\"throttle\": 0, \"weight\": 1, \"lambda\": 1}]",
        "[{\"throttle\": 0, \"lambda\": 1}]",
        "[]",
        "{}",
        "null",
        "\"\"",
        "\"setting.mainJet\"",
        "{\"measure\": \"setting.mainJet\"}",
        "{\"measure\": \"riding.acceptedRisk\", \"times\": 2}",
        "\"mean\"",
        "\"danger\"");
  }
}
