package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.FindingChange.Kind;
import dev.jetting.rules.ReportDifference.Side;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.ThrottleOpening;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReportDifferenceTest {

  private static final SetupSheet PLAIN = LawKit.plainSheet();
  private static final String LIMIT = "biggest main jet";

  /** The plain sheet has a main jet of 1.18 mm. */
  private static Rulebook book(String id, double limit) {
    return Rulebook.of("shop", "1", List.of(rule(Rule.named(id), limit)));
  }

  private static Rule rule(Rule.Draft draft, double limit) {
    return draft
        .severity(Severity.DANGER)
        .limit(LIMIT, Coefficient.assumed(limit, "mm", "by hand"))
        .judgingBy(
            (setting, limits) -> {
              Margin margin =
                  Margin.atMost(
                      "setting.mainJet",
                      new Measure(setting.setting().mainJet().millimetres(), "mm"),
                      new Measure(limits.get(LIMIT).value(), "mm"),
                      ThrottleBand.WHOLE);
              return margin.fails()
                  ? Outcome.failed(margin.finding().says("too big", "smaller"))
                  : Outcome.passed(margin);
            });
  }

  @Test
  void text_inAnotherLanguage() {
    ReportDifference difference =
        ReportDifference.between(report(book("jet", 1.2), PLAIN), report(book("jet", 1.1), PLAIN));
    assertThat(difference.text(Wording.of(Locale.GERMAN)))
        .contains("geändert: das Regelwerk, Grenzen und Annahmen")
        .endsWith("\nNEU jet, setting.mainJet: too big");
    assertThat(difference.text(Wording.of(Locale.ITALIAN)))
        .contains("cambiato: le regole, limiti e ipotesi\nNUOVO jet, ");
  }

  private static SetupSheet main(double millimetres) {
    return PLAIN.withSetup(
        PLAIN
            .setup()
            .withSetting(PLAIN.setup().setting().withMainJet(JetBore.ofMillimetres(millimetres))));
  }

  private static Report report(Rulebook book, SetupSheet sheet) {
    return book.evaluate(AssessedSetting.of(sheet));
  }

  @Test
  void between_aReportAndItself_isNone() {
    Report report = report(book("jet", 1.1), PLAIN);

    ReportDifference none = ReportDifference.between(report, report(book("jet", 1.1), PLAIN));

    assertThat(none.isNone()).isTrue();
    assertThat(none.sides()).isEmpty();
    assertThat(none).hasToString("fails as before");
  }

  @Test
  void between_sheets_findsWhatIsNewWorseBetterAndGone() {
    Rulebook book = book("jet", 1.2);

    assertThat(kinds(report(book, PLAIN), report(book, main(1.3)))).containsExactly(Kind.NEW);
    assertThat(kinds(report(book, main(1.3)), report(book, main(1.4)))).containsExactly(Kind.WORSE);
    assertThat(kinds(report(book, main(1.4)), report(book, main(1.3))))
        .containsExactly(Kind.BETTER);
    assertThat(kinds(report(book, main(1.3)), report(book, PLAIN))).containsExactly(Kind.GONE);
    assertThat(ReportDifference.between(report(book, PLAIN), report(book, main(1.3))).sides())
        .containsExactly(Side.SHEET);
  }

  private static List<Kind> kinds(Report before, Report after) {
    return ReportDifference.between(before, after).changes().stream()
        .map(FindingChange::kind)
        .toList();
  }

  @Test
  void between_limits_namesTheSides() {
    Report before = report(book("jet", 1.2), PLAIN);
    Rulebook stricter =
        book("jet", 1.2).withLimit(LIMIT, Coefficient.assumed(1.1, "mm", "stricter"));

    ReportDifference difference = ReportDifference.between(before, report(stricter, PLAIN));

    assertThat(difference.sides()).containsExactly(Side.RULEBOOK, Side.LIMITS);
    assertThat(difference.of(Kind.NEW)).hasSize(1);
    assertThat(difference.toString())
        .contains("changed: the rulebook, limits and assumptions\nNEW jet, setting.mainJet: too");
  }

  @Test
  void between_aRenamedRule_isTheSameFinding() {
    Rulebook renamed =
        Rulebook.of("shop", "2", List.of(rule(Rule.named("main").formerly("jet"), 1.1)));
    Report before = report(book("jet", 1.1), PLAIN);
    Report after = report(renamed, PLAIN);

    assertThat(ReportDifference.between(before, after, renamed).changes()).isEmpty();
    assertThat(kinds(before, after)).containsExactly(Kind.NEW, Kind.GONE);
  }

  @Test
  void between_aWaivedFindingAndTheSameOneNot_isWorse() {
    Rulebook book = book("jet", 1.1);
    Report plain = report(book, PLAIN);
    Waiver waiver = Waiver.of(plain, plain.findings().get(0)).by("A. Weaver").because("known");
    Report waived =
        book.evaluate(AssessedSetting.of(PLAIN), List.of(waiver), LocalDate.of(2026, 11, 28));

    assertThat(kinds(waived, plain)).containsExactly(Kind.WORSE);
    assertThat(kinds(plain, waived)).containsExactly(Kind.BETTER);
    assertThat(ReportDifference.between(plain, waived).sides()).containsExactly(Side.WAIVERS);
    assertThat(ReportDifference.between(waived, waived).sides()).isEmpty();
  }

  @Test
  void between_reportsBeforeAndAfterAReading_namesTheReadings() {
    RiskModel model = RiskModel.assumed();
    Calibration read =
        PLAIN
            .riskModel(model)
            .untried()
            .with(
                List.of(
                    Reading.measured(
                        PLAIN.setup(),
                        ThrottleOpening.FULL,
                        PLAIN.setup().engine().loadLine().peak(),
                        Lambda.of(0.7),
                        0.02)));
    Report before = report(book("jet", 1.1), PLAIN);
    Report after = book("jet", 1.1).evaluate(AssessedSetting.of(PLAIN, model, read));

    assertThat(ReportDifference.between(before, after).sides()).containsExactly(Side.READINGS);
  }

  @Test
  void over_aStreamWithABadSheet_reportsItsNumberAndGoesOn() {
    RulebookImpact impact = RulebookImpact.of(book("jet", 1.2), book("jet", 1.1));

    List<SheetImpact> all =
        impact
            .over(
                Stream.of(
                    SheetJson.write(main(1.05)), "{\"title\": 3}", SheetJson.write(main(1.15))),
                SheetJson::read)
            .toList();

    assertThat(all).extracting(SheetImpact::number).containsExactly(1L, 2L, 3L);
    assertThat(all).extracting(SheetImpact::differs).containsExactly(false, false, true);
    assertThat(all.get(1).problem()).startsWith("$");
    assertThat(all.get(2).difference().orElseThrow().of(Kind.NEW)).hasSize(1);
  }

  /** The plain sheet has a main jet of 1.18 mm, so that it passes by a limit of 1.2 mm alone. */
  @Test
  void verdict_saysWhetherItPassesNow_andDidBefore() {
    Report passes = report(book("jet", 1.2), PLAIN);
    Report fails = report(book("jet", 1.1), PLAIN);
    assertVerdict(passes, passes, ReportDifference.VerdictChange.PASSES_STILL);
    assertVerdict(fails, fails, ReportDifference.VerdictChange.FAILS_STILL);
    assertVerdict(fails, passes, ReportDifference.VerdictChange.PASSES_NOW);
    assertVerdict(passes, fails, ReportDifference.VerdictChange.FAILS_NOW);
  }

  private static void assertVerdict(
      Report before, Report after, ReportDifference.VerdictChange verdict) {
    ReportDifference difference = ReportDifference.between(before, after);
    assertThat(difference.verdict()).isEqualTo(verdict);
    assertThat(difference.passedBefore()).isEqualTo(before.passes());
    assertThat(difference.passesAfter()).isEqualTo(after.passes());
    assertThat(verdict.isSame()).isEqualTo(before.passes() == after.passes());
  }
}
