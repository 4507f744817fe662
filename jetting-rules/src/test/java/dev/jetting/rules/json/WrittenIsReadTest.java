package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.rules.kit.Shop;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.rules.tuning.TuningStep;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What the library writes it reads, at the ends of what each kind of document may hold; what it
 * could not read it does not write. Ordinary documents are drawn by the properties of each kind.
 */
class WrittenIsReadTest {

  /** Letters that JSON escapes or that take two units, as many as are allowed. */
  private static String text(int length) {
    return ("\"\\𝄞é/" + "x".repeat(length)).substring(0, length);
  }

  private static final AssessedSetting SETTING =
      TwoHundred.assessed(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);

  private static SetupSheet sheet(int jets) {
    SetupSheet sheet = SheetJson.read(Documents.read("example-sheet.json"));
    Setting setting = sheet.setup().setting();
    Coefficient noted = Coefficient.assumed(0.8, text(30), text(500));
    return sheet
        .withTitle(text(200))
        .withSetup(
            sheet
                .setup()
                .withEngine(sheet.setup().engine().withId(text(60)))
                .withSetting(
                    setting.withCarburettor(
                        setting
                            .carburettor()
                            .withId(text(60))
                            .withFlow(setting.carburettor().flow().withUpstreamGap(noted)))))
        .withParts(
            PartsAtHand.builder()
                .pilotJets(
                    IntStream.range(0, jets)
                        .mapToObj(i -> JetBore.ofMillimetres(0.3 + i / 1e5))
                        .toList())
                .cutaways(List.of())
                .needleJets(List.of())
                .needles(List.of())
                .mainJets(List.of())
                .build());
  }

  @Test
  void sheet_ofLongestTextsAndManyParts() {
    SetupSheet sheet = sheet(500);
    assertThat(SheetJson.read(SheetJson.write(sheet))).isEqualTo(sheet);
  }

  @Test
  void sheet_largerThanItsReaderTakes_isNotWritten() {
    SetupSheet few = sheet(0);
    Needle needle = few.setup().setting().needle();
    Needle stepped =
        needle.withTapers(
            IntStream.range(0, 20)
                .mapToObj(i -> new Taper(Length.ofMillimetres(i + 1 / 3.0), (1 + i / 3.0) / 1000))
                .toList());
    SetupSheet sheet = few.withParts(few.parts().withNeedles(Collections.nCopies(500, stepped)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheetJson.write(sheet))
        .withMessageStartingWith(
            "too large a document, at $: allowed at most 1000000 characters, nested 32 deep");
  }

  @Test
  void session_ofMostSteps() {
    SetupSheet sheet = sheet(10);
    TuningSession session = SessionJson.read(Documents.read("example-session.json"));
    var observation =
        session.steps().stream()
            .flatMap(step -> step.observations().stream())
            .findFirst()
            .orElseThrow();
    TuningSession longest =
        new TuningSession(
            sheet,
            Set.of(),
            Collections.nCopies(80, new TuningStep(sheet.setup(), List.of(observation), Set.of())));
    assertThat(SessionJson.read(SessionJson.write(longest))).isEqualTo(longest);
  }

  @Test
  void catalogueAndKit_ofLongestTextsAndManyParts() {
    List<Part> more = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      String id = text(60 - 5) + (10_000 + i);
      more.add(
          Part.builder()
              .id(id)
              .description(text(200))
              .series("mains")
              .shape(new PartShape.JetByBore(JetBore.ofMillimetres(1 + i / 1e5)))
              .build());
    }
    Catalogue catalogue = Shop.CATALOGUE.withParts(more);
    assertThat(CatalogueJson.read(CatalogueJson.write(catalogue))).isEqualTo(catalogue);

    Kit shops = Shop.kit();
    Kit kit =
        Kit.builder()
            .id(text(60))
            .description(text(200))
            .family(shops.family())
            .parts(more.stream().limit(500).map(Part::id).toList())
            .market(shops.market())
            .recommendations(shops.recommendations())
            .build();
    assertThat(KitJson.read(KitJson.write(kit))).isEqualTo(kit);
    assertThat(KitJson.read(KitJson.writeLine(kit))).isEqualTo(kit);
    KitValidation validation = KitValidator.of(catalogue).validate(kit, KitDepth.FIT);
    assertThat(KitValidationJson.read(KitValidationJson.write(validation))).isEqualTo(validation);
  }

  private static Report report(int findings, int length) {
    String text = text(length);
    Rule wordy =
        Rule.named("wordy")
            .title(text)
            .rationale(text)
            .judging(
                setting ->
                    Outcome.failed(
                        IntStream.range(0, findings)
                            .mapToObj(
                                i ->
                                    Finding.above(
                                            "setting",
                                            Measure.ratio(2 + i),
                                            Measure.ratio(1),
                                            ThrottleBand.WHOLE)
                                        .says(text, text))
                            .toArray(Finding[]::new)));
    return Rulebook.of(text(200), text(200), List.of(wordy)).evaluate(SETTING);
  }

  @Test
  void report_ofManyLongFindings() {
    Report report = report(100, 10_000);
    assertThat(ReportJson.read(ReportJson.write(report))).isEqualTo(report);
  }

  @Test
  void report_largerThanItsReaderTakes_isNotWritten() {
    Report report = report(1000, 10_000);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ReportJson.write(report))
        .withMessageStartingWith("too large a document, at $: allowed at most 8000000 characters");
  }
}
