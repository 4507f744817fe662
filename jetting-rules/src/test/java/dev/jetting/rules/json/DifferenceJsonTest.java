package dev.jetting.rules.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.ReportDifference;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.RulebookImpact;
import dev.jetting.rules.SheetImpact;
import dev.jetting.rules.Waiver;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.JetBore;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Differences of reports and impacts on sheets as JSON. */
class DifferenceJsonTest {

  private static final Rulebook STANDARD = StandardRulebook.rulebook();

  /** A smaller main jet: findings are new and worse, and one that was waived is open again. */
  private static final ReportDifference DIFFERENCE = difference();

  private static ReportDifference difference() {
    Report before = STANDARD.evaluate(withMain(1.20));
    List<Waiver> waivers =
        before.findings().stream()
            .map(f -> Waiver.of(before, f).by("A. Weaver").because("Only until Friday."))
            .toList();
    return ReportDifference.between(
        STANDARD.evaluate(withMain(1.20), waivers, LocalDate.of(2026, 11, 28)),
        STANDARD.evaluate(withMain(0.90)));
  }

  private static AssessedSetting withMain(double millimetres) {
    var sheet = LawKit.plainSheet();
    Setting setting = sheet.setup().setting().withMainJet(JetBore.ofMillimetres(millimetres));
    return AssessedSetting.of(sheet.withSetup(sheet.setup().withSetting(setting)));
  }

  @Test
  void difference_isReadAsItWasWritten_andFollowsTheSchema() throws IOException {
    String json = ReportDifferenceJson.write(DIFFERENCE);

    assertThat(DIFFERENCE.changes()).isNotEmpty();
    assertThat(ReportDifferenceJson.read(json)).isEqualTo(DIFFERENCE);
    assertThat(ReportDifferenceJson.read(new StringReader(json))).isEqualTo(DIFFERENCE);
    assertThat(ReportDifferenceJson.read(new ByteArrayInputStream(json.getBytes(UTF_8))))
        .isEqualTo(DIFFERENCE);
    assertThat(Validators.DIFFERENCE.complaints(json)).isEmpty();
    assertThat(ReportDifferenceJson.writeLine(DIFFERENCE)).doesNotContain("\n");
  }

  @Test
  void impacts_standOneToALine_andFollowTheSchema() throws IOException {
    Rulebook other = STANDARD.without("lean-anywhere");
    String good = SheetJson.write(LawKit.plainSheet());

    List<SheetImpact> impacts =
        RulebookImpact.of(STANDARD, other).over(Stream.of(good, "{}"), SheetJson::read).toList();

    assertThat(impacts.get(1).problem()).isNotEmpty();
    for (SheetImpact impact : impacts) {
      String line = SheetImpactJson.writeLine(impact);
      assertThat(line).doesNotContain("\n");
      assertThat(SheetImpactJson.read(line)).isEqualTo(impact);
      assertThat(SheetImpactJson.read(new StringReader(line))).isEqualTo(impact);
      assertThat(SheetImpactJson.read(new ByteArrayInputStream(line.getBytes(UTF_8))))
          .isEqualTo(impact);
      assertThat(Validators.IMPACT.complaints(line)).isEmpty();
      assertThat(SheetImpactJson.write(impact)).startsWith("{\n");
    }
  }

  /** A stream may be longer than an int counts. */
  @Test
  void numberOfASheet_isReadAsAWholeNumberAlone() {
    SheetImpact far = new SheetImpact(5_000_000_000L, "", Optional.empty(), "no sheet");
    String line = SheetImpactJson.writeLine(far);

    assertThat(SheetImpactJson.read(line)).isEqualTo(far);
    for (String other : List.of("\"5\"", "5.5", "99999999999999999999", "true")) {
      assertThatExceptionOfType(JsonInputException.class)
          .isThrownBy(() -> SheetImpactJson.read(line.replace("5000000000", other)))
          .withMessageContaining("$.number")
          .withMessageContaining("a whole number");
    }
  }

  @Test
  void anotherDocument_isRefused() {
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(
            () ->
                ReportDifferenceJson.read(
                    SheetImpactJson.write(new SheetImpact(1, "", Optional.of(DIFFERENCE), ""))))
        .withMessageContaining("jetting report difference");
  }
}
