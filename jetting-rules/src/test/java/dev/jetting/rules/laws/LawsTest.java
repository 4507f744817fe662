package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.json.SheetEdits;
import dev.jetting.rules.laws.PartChange.Way;
import dev.jetting.rules.risk.MixtureLimits;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.text.Message;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** For each law a candidate that breaks it, caught, with the plainest setting on which it does. */
class LawsTest {

  private static final String MAIN = "main 130 instead of main 118";
  private static final String PILOT = "pilot 48 instead of pilot 51";
  private static final String CUTAWAY = "cutaway 50 instead of cutaway 37.5";
  private static final String CLIP = "clip 3 of 5 from top instead of clip 2 of 5 from top";

  /** A rule that judges the setting of the carburettor alone. */
  private static Rule rule(String id, Function<Setting, Outcome> judge) {
    return Rule.named(id).judging(assessed -> judge.apply(assessed.setting()));
  }

  private static Finding finding(String message, String remedy) {
    return Finding.above(
            "setting.mainJet", new Measure(1.3, "mm"), new Measure(1.28, "mm"), ThrottleBand.WHOLE)
        .says(message, remedy);
  }

  private static Counterexample violation(Law law, Candidate candidate) {
    LawReport report = LawKit.of(List.of(law)).hold(candidate, Odd.trials());
    assertThat(report.holds()).isFalse();
    return report.violation(law.id()).orElseThrow();
  }

  private static boolean bigMain(Setting setting) {
    return setting.mainJet().compareTo(JetBore.ofMillimetres(1.28)) > 0;
  }

  @Test
  void neverBroken_onARuleThatThrows_isViolated() {
    Rule careless =
        rule(
            "careless",
            setting -> {
              if (setting.cutaway().millimetres() > 4.6) {
                throw new IllegalStateException("no slide like that");
              }
              return Outcome.passed();
            });

    Counterexample found = violation(Laws.neverBroken(), Candidate.of(careless));

    assertThat(found.ruleId()).isEqualTo("careless");
    assertThat(found.differences()).containsExactly(CUTAWAY);
    assertThat(found.change()).isEmpty();
    assertThat(found.explanation()).contains("no slide like that");
  }

  @Test
  void neverBroken_onABrokenBranch_isViolated() {
    Rule none = Rule.named("none").judging(setting -> null);
    Rule whole = Rule.not(Rule.named("whole"), none);

    assertThat(violation(Laws.neverBroken(), Candidate.of(whole)).explanation())
        .isEqualTo("rule none is broken: the rule gave no outcome");
  }

  @Test
  @SuppressWarnings("DefaultLocale")
  void pure_onARuleThatAsksTheDefaultLocale_isViolated() {
    Rule local =
        rule(
            "local",
            setting ->
                bigMain(setting)
                    ? Outcome.failed(finding(String.format("%d", 130), "smaller"))
                    : Outcome.passed());

    Counterexample found = violation(Laws.pure(), Candidate.of(local));

    assertThat(found.differences()).containsExactly(MAIN);
    assertThat(found.explanation()).contains("FAILED (130)").contains("default locale");
  }

  @Test
  void pure_onARuleThatAsksTheTimeZone_isViolated() {
    Rule zoned =
        rule("zoned", setting -> Outcome.notApplicable("in " + TimeZone.getDefault().getID()));

    assertThat(violation(Laws.pure(), Candidate.of(zoned)).differences()).isEmpty();
  }

  @Test
  void pure_onARuleThatCounts_isViolated() {
    AtomicInteger count = new AtomicInteger();
    Rule counting =
        rule("counting", setting -> Outcome.notApplicable("time " + count.incrementAndGet()));

    assertThat(violation(Laws.pure(), Candidate.of(counting)).explanation())
        .contains("a second time");
  }

  @Test
  void pure_onAnAssessmentThatCounts_isViolated() {
    AtomicInteger count = new AtomicInteger();
    Candidate moody =
        Candidate.of(rule("fine", setting -> Outcome.passed()))
            .assessedBy(
                sheet -> AssessedSetting.of(sheet.withTitle("time " + count.incrementAndGet())));

    assertThat(violation(Laws.pure(), moody).explanation()).contains("another assessed setting");
  }

  @Test
  void order_onRulesThatTalkToEachOther_isViolated() {
    AtomicReference<String> last = new AtomicReference<>("");
    Rule first =
        rule(
            "first",
            setting -> {
              last.set("first");
              return Outcome.passed();
            });
    Rule second =
        rule(
            "second",
            setting -> {
              boolean after = last.getAndSet("second").equals("first");
              return after && bigMain(setting)
                  ? Outcome.failed(finding("too big", "smaller"))
                  : Outcome.passed();
            });

    Counterexample found = violation(Laws.order(), Candidate.of(first, second));

    assertThat(found.ruleId()).isEqualTo("second");
    assertThat(found.differences()).containsExactly(MAIN);
    assertThat(found.explanation()).contains("[second, first]");
  }

  @Test
  void doubleNegation_onARuleThatPassesWithAFinding_isViolated() {
    Rule unsure =
        rule(
            "unsure",
            setting ->
                new Outcome(
                    Outcome.Status.PASSED,
                    setting.pilotJet().millimetres() < 0.5
                        ? List.of(finding("small", "bigger"))
                        : List.of(),
                    Message.plain(""),
                    List.of(),
                    Optional.empty()));

    assertThat(violation(Laws.doubleNegation(), Candidate.of(unsure)).differences())
        .containsExactly(PILOT);
  }

  /** From the third groove on it comes out the other way each time. */
  private static Candidate turncoat() {
    AtomicInteger times = new AtomicInteger();
    return Candidate.of(
        rule(
            "turncoat",
            setting ->
                setting.clip().grooveFromTop() > 2 && times.incrementAndGet() % 2 == 0
                    ? Outcome.failed()
                    : Outcome.passed()));
  }

  @Test
  void andOr_onARuleThatChangesItsMind_isViolated() {
    Counterexample found = violation(Laws.andOr(), turncoat());

    assertThat(found.differences()).containsExactly(CLIP);
    assertThat(found.explanation()).contains("allOf");
  }

  @Test
  void deMorgan_onARuleThatChangesItsMind_isViolated() {
    assertThat(violation(Laws.deMorgan(), turncoat()).differences()).containsExactly(CLIP);
  }

  @Test
  void whenUnless_onARuleThatChangesItsMind_isViolated() {
    Counterexample found = violation(Laws.whenUnless(), turncoat());

    assertThat(found.differences()).containsExactly(CLIP);
    assertThat(found.explanation()).contains("when true");
  }

  static List<Arguments> malformed() {
    Measure millimetre = new Measure(1, "mm");
    return List.of(
        Arguments.of(Outcome.failed(), "failed without a finding"),
        Arguments.of(Outcome.notApplicable(" "), "NOT_APPLICABLE without a reason"),
        Arguments.of(
            new Outcome(
                Outcome.Status.PASSED,
                List.of(finding("x", "y")),
                Message.plain(""),
                List.of(),
                Optional.empty()),
            "passed with a finding"),
        Arguments.of(Outcome.failed(finding("{main} too big", "y")), "no attribute for {main}"),
        Arguments.of(Outcome.failed(finding(" ", "y")), "without a message"),
        Arguments.of(Outcome.failed(finding("x", "")), "without a remedy"),
        Arguments.of(
            Outcome.failed(raw("setting", millimetre, new Measure(2, "in"), millimetre)),
            "three units"),
        Arguments.of(
            Outcome.failed(raw("setting", millimetre, new Measure(3, "mm"), millimetre)), "margin"),
        Arguments.of(
            Outcome.failed(raw("setting", millimetre, new Measure(3, "mm"), new Measure(2, "mm"))),
            "margin"),
        Arguments.of(
            Outcome.failed(raw("setting.jet", millimetre, millimetre, new Measure(0, "mm"))),
            "setting.jet is no path"),
        Arguments.of(
            Outcome.failed(raw("setting.toString", millimetre, millimetre, new Measure(0, "mm"))),
            "setting.toString is no path"));
  }

  private static Finding raw(String subject, Measure measured, Measure limit, Measure margin) {
    return new Finding(
        subject,
        measured,
        limit,
        margin,
        ThrottleBand.WHOLE,
        Optional.empty(),
        Message.plain("x"),
        new Remedy.Advice("y"));
  }

  @ParameterizedTest
  @MethodSource("malformed")
  void wellFormed_onAMalformedOutcome_isViolated(Outcome outcome, String why) {
    Rule sloppy =
        rule(
            "sloppy",
            setting -> setting.intake().effectiveArea().isPresent() ? outcome : Outcome.passed());

    Counterexample found = violation(Laws.wellFormed(), Candidate.of(sloppy));

    assertThat(found.explanation()).contains(why);
    assertThat(found.differences()).containsExactly("filter of 700 mm² instead of open mouth");
  }

  @Test
  void wellFormed_onSubjectsOfTheSheet_holds() {
    for (String subject :
        List.of(
            "setting.carburettor.floatValve",
            "setting.intake.effectiveArea",
            "engine.loadLine.peak",
            "air.temperature",
            "fuel.premix",
            "parts.needles",
            "parts.needles[0].tapers[1].rate",
            "riding.acceptedRisk",
            "setup.setting.needle")) {
      assertThat(SubjectPath.exists(subject)).as(subject).isTrue();
    }
  }

  /** What it measures says nothing of how bad it is, so that a waiver of it has no ceiling. */
  @Test
  void waivers_onADangerThatGrowsWhileItsMeasureStays_isViolated() {
    Rule blunt =
        Rule.named("blunt")
            .severity(Severity.DANGER)
            .judging(
                setting ->
                    Outcome.failed(
                        Finding.above(
                                "setting.mainJet",
                                new Measure(9, "mm"),
                                new Measure(3 - setting.setting().mainJet().millimetres(), "mm"),
                                ThrottleBand.WHOLE)
                            .says("x", "y")));

    SetupSheet right = TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);
    LawReport report =
        LawKit.of(List.of(Laws.waivers()))
            .hold(Candidate.of(blunt), Trial.eachPart(right, CustomarySteps.assumed()));

    Counterexample found = report.violation("waivers").orElseThrow();
    assertThat(found.ruleId()).isEqualTo("blunt");
    assertThat(found.explanation()).contains("beyond its limit passes at");
  }

  private static final ThrottleBand LOW = ThrottleBand.eighths(0, 2);

  private static Counterexample looksElsewhere(Function<AssessedSetting, Double> measured) {
    Rule curious =
        Rule.named("curious")
            .within(LOW)
            .judging(
                setting ->
                    bigMain(setting.setting())
                        ? Outcome.failed(
                            Finding.above(
                                    "setting",
                                    Measure.ratio(measured.apply(setting)),
                                    Measure.ratio(0.1),
                                    LOW)
                                .says("x", "y"))
                        : Outcome.passed());
    return violation(Laws.band(), Candidate.of(curious));
  }

  @Test
  void band_onARuleThatComputesTheMixtureElsewhere_isViolated() {
    Counterexample found =
        looksElsewhere(s -> MixtureModel.of(s.setup()).at(ThrottleOpening.FULL).lambda().value());

    assertThat(found.differences()).containsExactly(MAIN);
  }

  @Test
  void band_onARuleThatAsksTheNeedElsewhere_isViolated() {
    assertThat(
            looksElsewhere(s -> s.setup().engine().need().at(ThrottleOpening.FULL).value())
                .differences())
        .containsExactly(MAIN);
  }

  @Test
  void band_onARuleThatAsksTheRidingElsewhere_isViolated() {
    assertThat(
            looksElsewhere(s -> s.sheet().riding().profile().weightAt(ThrottleOpening.FULL))
                .differences())
        .containsExactly(MAIN);
  }

  @Test
  void band_onAFindingThatNamesAnotherBand_isViolated() {
    Rule boastful =
        Rule.named("boastful").within(LOW).judging(s -> Outcome.failed(finding("x", "y")));

    assertThat(violation(Laws.band(), Candidate.of(boastful)).explanation())
        .contains("a finding names closed throttle to full throttle");
  }

  @Test
  void band_onARuleAtOtherSpeeds_holdsIfItIsDeclared() {
    Rule laden =
        Rule.named("laden")
            .within(ThrottleBand.at(ThrottleOpening.FULL))
            .judging(
                s ->
                    Outcome.failed(
                        Finding.above(
                                "setting",
                                Measure.ratio(
                                    MixtureModel.of(s.setup())
                                        .at(
                                            ThrottleOpening.FULL,
                                            s.setup().engine().loadLine().idle())
                                        .lambda()
                                        .value()),
                                Measure.ratio(0.1),
                                ThrottleBand.at(ThrottleOpening.FULL))
                            .says("x", "y")));
    LawKit kit = LawKit.of(List.of(Laws.band()));

    assertThat(kit.hold(Candidate.of(laden), Odd.trials()).holds()).isFalse();
    assertThat(
            kit.hold(Candidate.of(laden).declaringOtherSpeeds("laden"), Odd.trials())
                .results()
                .get(0)
                .wasTriedAndHeld())
        .isTrue();
  }

  /** Fails where the main jet is bigger than 1.29 mm; measured is its bore. */
  private static final Rule BIG_MAIN =
      rule(
          "big-main",
          setting -> mainOrPilot(setting.mainJet(), setting.mainJet(), setting.mainJet()));

  @Test
  void monotone_onARuleOfTheOtherSide_isViolated() {
    Candidate lean = Candidate.of(BIG_MAIN).declaring("big-main", Monotone.leanSide(0));

    Counterexample found = violation(Laws.monotone(), lean);

    assertThat(found.ruleId()).isEqualTo("big-main");
    assertThat(found.differences()).containsExactly(MAIN);
    assertThat(found.change()).isEqualTo("main 130 to main 132 (richer)");
    assertThat(found.explanation()).contains("moves the wrong way by 0.02").contains(" mm");
  }

  @Test
  void monotone_onARuleAsDeclared_holds() {
    Candidate rich = Candidate.of(BIG_MAIN).declaring("big-main", Monotone.richSide(0));

    LawReport report = LawKit.of(List.of(Laws.monotone())).hold(rich, Odd.trials());

    assertThat(report.results().get(0).wasTriedAndHeld()).as(report.toString()).isTrue();
  }

  @Test
  void monotone_onARuleThatTurnsFromPassedToFailed_isViolated() {
    Rule parity =
        rule(
            "parity",
            setting -> setting.clip().grooveFromTop() == 4 ? Outcome.failed() : Outcome.passed());
    Candidate lean = Candidate.of(parity).declaring("parity", Monotone.leanSide(0));

    Counterexample found = violation(Laws.monotone(), lean);

    assertThat(found.differences()).containsExactly(CLIP);
    assertThat(found.change()).isEqualTo("clip 3 of 5 from top to clip 4 of 5 from top (richer)");
  }

  @Test
  void monotone_withinItsTolerance_holds() {
    Candidate lean = Candidate.of(BIG_MAIN).declaring("big-main", Monotone.leanSide(0.03));

    assertThat(LawKit.of(List.of(Laws.monotone())).hold(lean, Odd.trials()).holds()).isTrue();
  }

  @Test
  void monotone_ofWhatIsNotDeclared_isNotTried() {
    LawReport report =
        LawKit.of(List.of(Laws.monotone())).hold(Candidate.of(BIG_MAIN), Odd.trials());

    assertThat(report.holds()).isTrue();
    assertThat(report.neverTried()).containsExactly("monotone");
  }

  /** Takes every main jet for one as much smaller as it is bigger than 1.28 mm. */
  private static AssessedSetting upsideDown(SetupSheet sheet) {
    Setting setting = sheet.setup().setting();
    JetBore mirrored = JetBore.ofMillimetres(2.56 - setting.mainJet().millimetres());
    return AssessedSetting.of(
        sheet.withSetup(sheet.setup().withSetting(setting.withMainJet(mirrored))));
  }

  @Test
  void lambda_onAModelThatTakesAPartTheWrongWayRound_isViolated() {
    Candidate model =
        Candidate.of(rule("fine", setting -> Outcome.passed())).assessedBy(LawsTest::upsideDown);

    Counterexample found = violation(Laws.lambda(), model);

    assertThat(found.ruleId()).isEmpty();
    assertThat(found.differences()).isEmpty();
    assertThat(found.change()).isEqualTo("main 118 to main 120 (richer)");
    assertThat(found.explanation()).contains("λ goes from");
  }

  /** A risk model that trusts big main jets less than small ones. */
  private static AssessedSetting distrustful(SetupSheet sheet) {
    boolean big = sheet.setup().setting().mainJet().millimetres() > 1.31;
    Coefficient wide = Coefficient.assumed(0.2, "1", "for this test");
    ModelUncertainty u = ModelUncertainty.assumed();
    ModelUncertainty wider =
        ModelUncertainty.builder()
            .pilot(u.pilot())
            .needle(u.needle())
            .main(u.main())
            .air(u.air())
            .residual(wide)
            .residualLength(u.residualLength())
            .pilotJetTolerance(u.pilotJetTolerance())
            .mainJetTolerance(u.mainJetTolerance())
            .needleJetTolerance(u.needleJetTolerance())
            .needleTolerance(u.needleTolerance())
            .guessed(Set.of())
            .build();
    return AssessedSetting.of(
        sheet,
        new RiskModel(MixtureLimits.assumed(), big ? wider : u, RiskModel.assumed().steps()));
  }

  @Test
  void leanRisk_onARiskModelThatTrustsBigJetsLess_isViolated() {
    Candidate model =
        Candidate.of(rule("fine", setting -> Outcome.passed())).assessedBy(LawsTest::distrustful);

    Counterexample found = violation(Laws.leanRisk(Laws.RISK_TOLERANCE), model);

    assertThat(found.differences()).containsExactly(MAIN);
    assertThat(found.change()).isEqualTo("main 130 to main 132 (richer)");
    assertThat(found.explanation()).contains("the lean risk goes from");
  }

  /**
   * Here the mean suction comes to lift more fuel than the waves do. The flow had an edge there:
   * the spread jumped, and the lean risk with it, by more than 1e-4 the wrong way.
   */
  @Test
  void leanRisk_whereTheLimitsOfTheFlowMeet_movesTheRightWay() {
    SetupSheet bending =
        SheetEdits.edited(
            LawKit.plainSheet(),
            Map.ofEntries(
                text("/air/pressure", "788 hPa"),
                text("/air/temperature", "16 °C"),
                text("/air/humidity", "66 %"),
                Map.entry("/fuel", "{\"blend\": \"petrol\", \"premix\": \"57:1\"}"),
                text("/engine/displacement", "113 cm³"),
                Map.entry(
                    "/engine/deliveryRatio",
                    "{\"points\": [{\"speed\": \"1400 rpm\", \"value\": 0.42},"
                        + " {\"speed\": \"4500 rpm\", \"value\": 0.74},"
                        + " {\"speed\": \"8000 rpm\", \"value\": 0.88}]}"),
                Map.entry(
                    "/engine/induction",
                    "{\"id\": \"port\", \"kind\": \"piston-port\", \"opens\":"
                        + " {\"value\": 75, \"unit\": \"°\", \"origin\": \"assumed\","
                        + " \"note\": \"invented\"}}"),
                text("/engine/loadLine/idle", "1300 rpm"),
                text("/engine/loadLine/peak", "9400 rpm"),
                text("/engine/need", "tuned"),
                text("/setting/carburettor/bore", "21 mm"),
                text("/setting/carburettor/needleJetLength", "3 mm"),
                text("/setting/carburettor/needleJetHead", "12 mm"),
                text("/setting/carburettor/pilot/areaPerTurn", "0.09 mm²"),
                text("/setting/carburettor/pilot/fixedArea", "0.21 mm²"),
                text("/setting/carburettor/pilot/progressionHole", "0.39 mm²"),
                text("/setting/carburettor/pilot/uncoversFrom", "0.2 mm"),
                text("/setting/carburettor/pilot/uncoversTo", "2.2 mm"),
                text("/setting/carburettor/pilot/mostTurns", "4 turns"),
                text("/setting/pilotJet", "0.44 mm"),
                text("/setting/screw/turns", "1.17 turns"),
                text("/setting/cutaway", "3 mm"),
                text("/setting/idleLift", "1.3 mm"),
                text("/setting/needleJet/bore", "2.6 mm"),
                text("/setting/needleJet/neck", "1.3 mm"),
                text("/setting/needle/cylinder", "2.48 mm"),
                Map.entry("/setting/needle/tapers", "[{\"start\": \"7 mm\", \"rate\": 0.029}]"),
                text("/setting/mainJet", "0.97 mm")));
    Trial trial = Trial.of(bending, new PartChange(MeteringPart.MAIN_JET, Way.LEANER, 0.002));
    Candidate any = Candidate.of(rule("fine", setting -> Outcome.passed()));

    assertThat(Laws.leanRisk(1e-12).check(any, trial).isViolated()).isFalse();
  }

  private static Map.Entry<String, String> text(String pointer, String text) {
    return Map.entry(pointer, SheetEdits.text(text));
  }

  /** Each finding can be read; all of them are more than a reader of reports takes. */
  @Test
  void json_onMoreFindingsThanAReaderTakes_isViolated() {
    Finding finding =
        Finding.above("setting.mainJet", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
            .says("x".repeat(9_000), "y");
    Finding[] many = Collections.nCopies(1_000, finding).toArray(Finding[]::new);
    Rule endless =
        rule("endless", setting -> bigMain(setting) ? Outcome.failed(many) : Outcome.passed());

    assertThat(violation(Laws.json(), Candidate.of(endless)).differences()).containsExactly(MAIN);
  }

  @Test
  void allLaws_onARuleThatKeepsThem_hold() {
    Rule good =
        Rule.named("lean-at-the-top")
            .within(ThrottleBand.eighths(6, 8))
            .judging(LawsTest::leanAtTheTop);
    Candidate candidate =
        Candidate.of(good, BIG_MAIN)
            .declaring(good.id(), Monotone.leanSide(0))
            .declaring(BIG_MAIN.id(), Monotone.richSide(0));

    LawReport report = LawKit.allLaws().hold(candidate, Odd.trials());

    assertThat(report.holds()).as(report.toString()).isTrue();
    assertThat(report.neverTried()).isEmpty();
    assertThat(report.results()).hasSize(Laws.all().size());
  }

  private static Outcome leanAtTheTop(AssessedSetting setting) {
    return Outcome.of(
        setting.profile().points().stream()
            .filter(point -> point.mixture().lambda().value() > 0.8)
            .map(LawsTest::lean)
            .toList());
  }

  private static Finding lean(RiskPoint point) {
    return Finding.above(
            "setting.mainJet",
            Measure.ratio(point.mixture().lambda().value()),
            Measure.ratio(0.8),
            ThrottleBand.at(point.mixture().throttle()))
        .with("lambda", point.mixture().lambda())
        .says("{lambda}", "a bigger main jet");
  }

  /** It fails by the bore of the main jet, and passes by that of the pilot jet. */
  @Test
  void margins_onARuleThatPassesByAnotherNumber_isViolated() {
    Rule twofold =
        rule(
            "twofold",
            setting -> mainOrPilot(setting.mainJet(), setting.mainJet(), setting.pilotJet()));

    Counterexample found = violation(Laws.margins(), Candidate.of(twofold));

    assertThat(found.explanation()).contains("passes with").contains("not the same number");
    assertThat(found.change()).contains("main");
  }

  @Test
  void margins_onARuleThatFailsByAnotherNumber_isViolated() {
    Rule twofold =
        rule(
            "twofold",
            setting -> mainOrPilot(setting.mainJet(), setting.pilotJet(), setting.mainJet()));

    assertThat(violation(Laws.margins(), Candidate.of(twofold)).explanation())
        .contains("fails with");
  }

  @Test
  void margins_onARuleThatPassesWithoutANumber_isViolated() {
    Rule silent =
        rule(
            "silent",
            setting ->
                bigMain(setting)
                    ? Outcome.failed(margin(setting.mainJet()).finding().says("x", "y"))
                    : Outcome.passed());

    assertThat(violation(Laws.margins(), Candidate.of(silent)).explanation())
        .contains("states no number where it passes");
  }

  @Test
  void margins_onARuleOfOneNumber_hold() {
    LawResult result =
        LawKit.of(List.of(Laws.margins()))
            .hold(Candidate.of(BIG_MAIN), Odd.trials())
            .results()
            .get(0);

    assertThat(result.wasTriedAndHeld()).isTrue();
  }

  private static Outcome mainOrPilot(JetBore judged, JetBore failing, JetBore passing) {
    boolean fails = margin(judged).fails();
    Margin margin = margin(fails ? failing : passing);
    return fails ? Outcome.failed(margin.finding().says("x", "y")) : Outcome.passed(margin);
  }

  private static Margin margin(JetBore jet) {
    return Margin.atMost(
        "setting.mainJet",
        new Measure(jet.millimetres(), "mm"),
        new Measure(1.29, "mm"),
        ThrottleBand.WHOLE);
  }

  @Test
  void check_ofASingleLaw_tellsHowItCameOut() {
    PartChange change = new PartChange(MeteringPart.MAIN_JET, Way.RICHER, 0.02);
    Candidate lean = Candidate.of(BIG_MAIN).declaring("big-main", Monotone.leanSide(0));

    assertThat(Laws.monotone().check(lean, Trial.of(Odd.SHEET, change)).status())
        .isEqualTo(LawVerdict.Status.VIOLATED);
    assertThat(Laws.monotone().check(lean, Trial.of(Odd.SHEET)).status())
        .isEqualTo(LawVerdict.Status.NOT_TRIED);
    assertThat(Laws.neverBroken().check(lean, Trial.of(Odd.SHEET)).status())
        .isEqualTo(LawVerdict.Status.HELD);
  }
}
