package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.rules.NeedleWear;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.ProvenObservation;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LawKitTest {

  private static final Rule FINE = Rule.named("fine").judging(setting -> Outcome.passed());

  private static final Law BIG_MAIN =
      Law.of(
          "no-big-main",
          "No big main jets",
          "No main jet over 128.",
          experiment ->
              experiment.before().setting().mainJet().millimetres() > 1.28
                  ? LawVerdict.violated("", "a big main jet")
                  : LawVerdict.held());

  @Test
  void hold_aLawOfTheTestersOwn_isTriedAsTheOthersAre() {
    LawReport report = LawKit.of(List.of(BIG_MAIN)).hold(Candidate.of(FINE), Odd.trials());

    assertThat(report.toString())
        .isEqualTo(
            """
            no-big-main: violated after it held on 0 trials, not tried on 0
              setting: the plain one except for main 130 instead of main 118
              a big main jet
            rule fine: PASSED 2 (not tested)
            """);
  }

  @Test
  void hold_isLazyAndStops_onceEachLawIsViolated() {
    Stream<Trial> endless = Stream.generate(() -> Trial.of(Odd.SHEET));

    assertThat(LawKit.of(List.of(BIG_MAIN)).hold(Candidate.of(FINE), endless).holds()).isFalse();
  }

  @Test
  void hold_twice_givesEqualReports() {
    LawKit kit = LawKit.of(List.of(BIG_MAIN, Laws.neverBroken()));

    assertThat(kit.hold(Candidate.of(FINE), Odd.trials()))
        .isEqualTo(kit.hold(Candidate.of(FINE), Odd.trials()));
  }

  @Test
  void hold_aSheetThatCannotBeAssessed_isNotTried() {
    Candidate choosy =
        Candidate.of(FINE)
            .assessedBy(
                sheet -> {
                  throw new IllegalArgumentException("beyond what this assessment takes");
                });

    LawReport report = LawKit.allLaws().hold(choosy, Stream.of(Trial.of(Odd.SHEET)));

    assertThat(report.holds()).isTrue();
    assertThat(report.neverTried()).hasSize(Laws.all().size());
  }

  @Test
  void hold_aLawWhoseAssertionFails_isViolated() {
    Law asserting =
        Law.of(
            "asserting",
            "asserting",
            "",
            experiment -> {
              throw new AssertionError("expected 1 but was 2");
            });

    assertThat(
            LawKit.of(List.of(asserting))
                .hold(Candidate.of(FINE), Odd.trials())
                .violation("asserting")
                .orElseThrow()
                .explanation())
        .contains("expected 1 but was 2");
  }

  @Test
  void hold_aLawThatThrows_isViolated() {
    Law careless =
        Law.of(
            "careless",
            "careless",
            "",
            experiment -> {
              throw new IllegalStateException("oops");
            });

    assertThat(
            LawKit.of(List.of(careless))
                .hold(Candidate.of(FINE), Odd.trials())
                .violation("careless")
                .orElseThrow()
                .explanation())
        .contains("oops");
  }

  @Test
  void hold_leavesLocaleAndTimeZone_asTheyWere() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();

    LawKit.of(List.of(Laws.pure())).hold(Candidate.of(FINE), Stream.of(Trial.of(Odd.SHEET)));

    assertThat(Locale.getDefault()).isEqualTo(locale);
    assertThat(TimeZone.getDefault()).isEqualTo(zone);
  }

  @Test
  void shrinkingTowards_anotherSheet_tellsByIt() {
    LawKit kit = LawKit.of(List.of(BIG_MAIN)).shrinkingTowards(Odd.SHEET);

    assertThat(
            kit.hold(Candidate.of(FINE), Odd.trials())
                .violation("no-big-main")
                .orElseThrow()
                .differences())
        .isEmpty();
  }

  private static final Provenance PROVEN =
      Provenance.builder()
          .engine(Odd.SHEET.setup().engine())
          .setting(Odd.SETTING)
          .fuel(Odd.SHEET.setup().fuel())
          .air(Odd.SHEET.setup().air())
          .needleWear(
              NeedleWear.builder()
                  .needleJet(Length.ofMillimetres(0.02))
                  .needle(Length.ofMillimetres(0.01))
                  .build())
          .observed(new ProvenObservation(ThrottleOpening.FULL, new Evidence.Proven()))
          .pilotJetFlow(JetFlow.ofCubicCentimetresPerMinute(36))
          .mainJetFlow(JetFlow.ofCubicCentimetresPerMinute(190))
          .build();

  @Test
  void differences_ofASheetThatDiffersEverywhere_tellEveryPiece() {
    Shrinker shrinker = new Shrinker(LawKit.plainSheet());
    SetupSheet odd = Odd.SHEET.withProvenance(PROVEN);

    assertThat(shrinker.differences(LawKit.plainSheet())).isEmpty();
    // The odd sheet shares only the flow coefficients, the unknown float level and that no value is
    // typical, and six parts that its proven engine and setting have in them.
    assertThat(SheetPropertyTable.ALL.size() - shrinker.differences(odd).size()).isEqualTo(3 + 6);
    Trial shrunk = shrinker.shrunk(Trial.of(odd), trial -> true);
    assertThat(shrunk.sheet()).isEqualTo(LawKit.plainSheet());
  }

  @Test
  void with_andWithout_changeTheLaws() {
    LawKit kit = LawKit.allLaws();

    assertThat(kit.without("json", "pure").laws()).hasSize(Laws.all().size() - 2);
    assertThat(kit.with(BIG_MAIN).laws()).hasSize(Laws.all().size() + 1).contains(BIG_MAIN);
    Law strict = Laws.leanRisk(0);
    assertThat(kit.with(strict).laws()).hasSize(Laws.all().size()).contains(strict);
  }

  @Test
  void kit_withAnUnknownOrADoubleLaw_isRefused() {
    assertThatThrownBy(() -> LawKit.allLaws().without("gravity"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("law id gravity: allowed one of [never-broken, pure");
    assertThatThrownBy(() -> LawKit.of(List.of(BIG_MAIN, BIG_MAIN)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("law id no-big-main twice");
  }

  @Test
  void declaring_ofAnUnknownRuleOrABadTolerance_isRefused() {
    assertThatThrownBy(() -> Candidate.of(FINE).declaring("other", Monotone.leanSide(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("rule id other: allowed one of [fine]");
    assertThatThrownBy(() -> Monotone.richSide(-0.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-0.5: allowed a finite number, 0 or more");
    assertThatThrownBy(() -> Laws.leanRisk(2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("tolerance of the lean risk 2: allowed 0 to 1");
  }
}
