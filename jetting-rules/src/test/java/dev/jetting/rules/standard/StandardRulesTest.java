package dev.jetting.rules.standard;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.DAY;
import static dev.jetting.rules.TwoHundred.FILTER;
import static dev.jetting.rules.TwoHundred.FUEL;
import static dev.jetting.rules.TwoHundred.LEANER_NEEDLE;
import static dev.jetting.rules.TwoHundred.NEEDLE;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static dev.jetting.rules.TwoHundred.needleJet;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.NeedleWear;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.ProvenCylinder;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.AirFuelRatio;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule on settings whose outcome follows from something else than the code: a fact of the
 * trade (common practice, no source) or plain physics. The case's name says which.
 */
class StandardRulesTest {

  private static final ProvenCylinder SMALL =
      new ProvenCylinder(Displacement.ofCubicCentimetres(150), STANDARD.deliveryRatio());

  private static final SetupSheet SHEET = TwoHundred.sheet(STANDARD, ALL_ROUND);

  private record Case(String rule, String because, SetupSheet sheet, Status status, String remedy) {
    @Override
    public String toString() {
      return rule + ": " + because;
    }
  }

  /** Cases of one rule. */
  private static final class Cases {
    private final String rule;
    private final List<Case> cases = new ArrayList<>();

    Cases(String rule) {
      this.rule = rule;
    }

    Cases passes(String because, SetupSheet sheet) {
      return add(because, sheet, Status.PASSED, "");
    }

    /** Fails with a remedy that matches. */
    Cases fails(String because, SetupSheet sheet, String remedy) {
      return add(because, sheet, Status.FAILED, remedy);
    }

    Cases notApplicable(String because, SetupSheet sheet) {
      return add(because, sheet, Status.NOT_APPLICABLE, "");
    }

    Cases notEvaluated(String because, SetupSheet sheet) {
      return add(because, sheet, Status.NOT_EVALUATED, "");
    }

    private Cases add(String because, SetupSheet sheet, Status status, String remedy) {
      cases.add(new Case(rule, because, sheet, status, remedy));
      return this;
    }
  }

  private static Stream<Cases> all() {
    return Stream.of(
        new Cases("lean-anywhere")
            .passes("the all-round setting serves", SHEET)
            .fails("cutaway 50 is too lean", cutaway(5), "λ must fall by .* % at .*"),
        new Cases("two-leanest-mid-range-parts")
            .notApplicable(
                "one of the two alone may serve", kit(ALL_ROUND.withNeedleJet(needleJet(2.64))))
            .passes("neither of the two", kit(ALL_ROUND))
            .fails(
                "both together are dangerous",
                kit(leaner(ALL_ROUND.withNeedleJet(needleJet(2.64)))),
                ".*next richer, the needle jet first.*")
            .passes("not lean, so whatever else there is", SHEET)
            .notEvaluated("the leanest of what?", with(ALL_ROUND.withNeedleJet(needleJet(2.60)))),
        new Cases("pilot-on-overrun")
            .passes("pilot 55 serves", SHEET)
            .fails("pilot 50 is too lean", pilot(0.5), "λ must fall by .* % at closed throttle.*"),
        new Cases("screw-kind")
            .passes("mixture screw on mixture screw", SHEET)
            .fails("air screw advice", screw(ScrewKind.AIR, 1.5), ".*rich side.*"),
        new Cases("jet-numbering")
            .notApplicable("no jet is marked as numbered by flow", SHEET)
            .passes("2.5 m/s through 1.26 mm are 187 cm³/min", flows(36, 187))
            .fails("126 cm³/min is no 1.26 mm: too small", flows(36, 126), ".*too small.*")
            .fails("55 cm³/min is no 0.55 mm: too big", flows(55, 187), ".*bigger than meant.*"),
        new Cases("float-valve-flow")
            .passes("a seat of 2.5 mm", SHEET)
            .fails(
                "of 1 mm: a sixth of the area",
                in(TwoHundred.carburettor(ScrewKind.MIXTURE, 1)),
                ".*bigger float valve.*"),
        new Cases("air-density-swing")
            .passes("the same day", SHEET)
            .fails("dense frost is leaner", coldest(-20, 1040), ".*λ must fall by .*"),
        new Cases("too-rich")
            .passes("the all-round setting runs cleanly", SHEET)
            .fails("cutaway 30 is too rich", cutaway(3), "λ must rise by .* % at .*"),
        new Cases("cutaway-balance")
            .passes("cutaway 40 and needle jet 2.66", SHEET)
            .fails(
                "cutaway 30 is rich low down", cutaway(3), "λ must rise by .* % at 1/8 throttle.*")
            .fails(
                "a needle jet far too small is lean low down",
                with(ALL_ROUND.withNeedleJet(needleJet(2.60))),
                "λ must fall by .* % at 1/8 throttle.*"),
        new Cases("main-jet-authority")
            .passes("the ring is the wider passage", SHEET)
            .fails(
                "1.26 mm of main jet has 1.25 mm², a ring of 2.66 round 2.50 has 0.65 mm²",
                hung(straight(2.50), 2),
                ".*bigger needle jet.*thinner tip.*"),
        new Cases("screw-range")
            .passes("one and a half turns", SHEET)
            .fails("hardly off its seat", screw(ScrewKind.MIXTURE, 0.25), ".*pilot jet.*")
            .fails("more than it has", screw(ScrewKind.MIXTURE, 3.5), ".*pilot jet.*"),
        new Cases("clip-at-end")
            .passes("second of five", SHEET)
            .fails(
                "no leaner groove", clip(1), "Leave it .*thicker needle or a smaller needle jet.*")
            .fails("no richer groove", clip(5), ".*thinner needle or a bigger needle jet.*")
            .notApplicable("two grooves, no inner one", hung(twoGrooves(), 1)),
        new Cases("mixture-step")
            .passes("the all-round setting does not stumble", SHEET)
            .fails(
                "nothing feeds between pilot and needle",
                in(progression(0, 0)),
                ".*λ must fall by .*")
            .fails(
                "a progression hole that opens late makes a jump at an eighth",
                in(progression(0.62, 2.5)),
                ".*λ must fall by .*"),
        new Cases("crisp-but-lean-middle")
            .passes("the all-round setting is not crisp", SHEET)
            .fails(
                "a slide and a main jet that lean the middle, where a fifth is accepted",
                crisp(),
                "λ must fall by .* at 1/2 throttle.*")
            .notApplicable("beyond crisp: a needle jet of 2.55", with(narrow())),
        new Cases("lean-uphill")
            .passes("the all-round setting climbs as well", SHEET)
            .fails(
                "little to spare on the level: half a size of main jet and of needle jet",
                with(
                    ALL_ROUND
                        .withNeedleJet(needleJet(2.655))
                        .withMainJet(JetBore.ofHundredths(123))),
                "Change down.*")
            .notApplicable("too lean on the level already", cutaway(4.8)),
        new Cases("needle-in-needle-jet")
            .passes("45 mm of needle in a bore of 30", SHEET)
            .passes("30.9 mm hang at full lift", hung(tip(30.9), 2))
            .fails("30.8 mm do not", hung(tip(30.8), 2), ".*longer needle.*")
            .fails(
                "a hundredth of clearance is what parts as sold vary by",
                hung(straight(2.65), 2),
                ".*bigger needle jet.*"),
        new Cases("float-level")
            .notEvaluated("unknown", SHEET)
            .passes("as meant", floats(20))
            .passes("a millimetre is within what one sets by eye", floats(21))
            .fails("a centimetre low", floats(30), "Set the floats to 20 mm before any jet.*")
            .notApplicable("2 mm high runs over, which is worse", floats(18)),
        new Cases("fuel-over-mouth")
            .notApplicable("unknown", SHEET)
            .passes("as meant", floats(20))
            .passes("up to the pilot's mouth, 1 mm over the fuel", floats(19))
            .fails("2 mm high: it runs out and can burn", floats(18), "Shut the tap.*20 mm.*"),
        new Cases("proven-room")
            .notApplicable("nothing is proven", SHEET)
            .passes("the same mouth", provenBehind(SHEET, Intake.openMouth()))
            .passes(
                "a filter put on is richer",
                provenBehind(with(ALL_ROUND.withIntake(FILTER)), Intake.openMouth()))
            .passes("a mild day's difference", provenIn(air(20, 1005)))
            .fails(
                "filter box off",
                provenBehind(SHEET, FILTER),
                "λ must fall by .*Do not ride on it.*go richer first.")
            .fails("from 2000 m to the sea", provenIn(air(15, 795)), ".*λ must fall by .*")
            .fails("ethanol needs less air", refuelled(Fuel.E85, 50), ".*λ must fall by .*")
            .fails(
                "new needle jet and needle for worn ones pass less fuel",
                worn(0.03, 0.02),
                ".*λ must fall by .*")
            .notEvaluated(
                "a slide cut away by 6 mm does not go into 5 mm", movedFrom(cutaway(6), bore(5))),
        new Cases("engine-change")
            .notApplicable("unknown", SHEET)
            .passes("the same exhaust", having(SHEET, p -> p.exhaust(STANDARD.exhaust())))
            .passes(
                "another mixture needed is the owner's view",
                having(SHEET, p -> p.engine(needing(MixtureNeed.assumedTuned()))))
            .fails(
                "another exhaust on proven jets",
                having(SHEET, p -> p.exhaust(Exhaust.reference("old exhaust"))),
                ".*From the rich side: main 130 or bigger first.*")
            .fails("a cylinder kit", having(SHEET, p -> p.cylinder(SMALL)), ".*main 130.*")
            .fails(
                "a size is not enough",
                having(SHEET, p -> p.cylinder(SMALL).mainJet(JetBore.ofHundredths(124))),
                ".*main 128.*")
            .passes(
                "two sizes up, to be read",
                having(SHEET, p -> p.cylinder(SMALL).mainJet(JetBore.ofHundredths(122)))),
        new Cases("engine-unread")
            .notApplicable("unknown", SHEET)
            .passes("the same exhaust", having(SHEET, p -> p.exhaust(STANDARD.exhaust())))
            .fails(
                "two sizes up, and not read",
                having(SHEET, p -> p.cylinder(SMALL).mainJet(JetBore.ofHundredths(122))),
                ".*full throttle first.*"),
        new Cases("fuel-change")
            .notApplicable("unknown", SHEET)
            .passes("the same fuel", proven(FUEL))
            .fails(
                "ethanol needs less air",
                refuelled(Fuel.E85, 50),
                "λ must fall by .*whole range: main jet and pilot jet first.*")
            .fails("oil takes the petrol's place", refuelled(Fuel.E5, 25), ".*λ must fall by .*")
            .fails("and back from E85", proven(oiled(Fuel.E85, 50)), "It is on the safe side.*")
            .notEvaluated("a blend is not known below −40 °C", arctic()),
        new Cases("intake-change")
            .notApplicable("unknown", SHEET)
            .passes("the same mouth", provenBehind(SHEET, Intake.openMouth()))
            .fails("filter off is leaner", provenBehind(SHEET, FILTER), ".*λ must fall by .*")
            .fails(
                "filter on is richer",
                provenBehind(with(ALL_ROUND.withIntake(FILTER)), Intake.openMouth()),
                "It is on the safe side.*"),
        new Cases("air-change")
            .passes("thinner air then, made good by a fuel that needs more air", madeGood())
            .notApplicable("unknown", SHEET)
            .passes("the same day", provenIn(DAY))
            .fails(
                "down from the mountain is leaner", provenIn(air(35, 700)), ".*λ must fall by .*")
            .fails(
                "out of the frost is richer", provenIn(air(-30, 1080)), "It is on the safe side.*"),
        new Cases("jets-moved-over")
            .notApplicable("unknown", SHEET)
            .passes("the same carburettor", movedFrom(SHEET, ALL_ROUND.carburettor()))
            .fails(
                "a wider bore is leaner on the same jets",
                movedFrom(SHEET, bore(26)),
                ".*λ must fall by .*")
            .fails(
                "a narrower one is richer", movedFrom(SHEET, bore(34)), "It is on the safe side.*")
            .notEvaluated(
                "a slide cut away by 6 mm does not go into 5 mm", movedFrom(cutaway(6), bore(5))),
        new Cases("carburettor-too-big")
            .passes("a 200 on 30 mm", SHEET)
            .fails("a 200 on 39 mm", in(bore(39)), ".*smaller carburettor.*")
            .passes("a peaky 125 on 36 mm, whose rider keeps it on the pipe", peaky())
            .fails(
                "the same with delivery from low down, which is asked to pull",
                even(),
                ".*smaller carburettor.*")
            .notApplicable("no lift, no signal to miss", with(floating(bore(39), 0))),
        new Cases("carburettor-too-small")
            .passes("a 200 on 30 mm", SHEET)
            .fails("a 200 on 18 mm, of a moped", in(bore(18)), ".*bigger carburettor.*"),
        new Cases("main-jet-kit")
            .notEvaluated("which kit?", SHEET)
            .passes("two sizes left", mains(122, 126, 128, 130))
            .fails("one size left, twice", mains(122, 126, 128, 128), ".*bigger main jets.*")
            .fails("none left", mains(122, 126), ".*bigger main jets.*"));
  }

  static Stream<Case> cases() {
    return all().flatMap(cases -> cases.cases.stream());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void rule_comesOutAsTheCaseSays(Case each) {
    Outcome outcome = rule(each.rule).evaluate(AssessedSetting.of(each.sheet));
    assertThat(outcome.status()).as(outcome.reason()).isEqualTo(each.status);
    if (each.status == Status.FAILED) {
      assertThat(outcome.findings())
          .isNotEmpty()
          .anySatisfy(finding -> assertThat(finding.remedy().text()).matches(each.remedy))
          .allSatisfy(StandardRulesTest::wellFormed);
    } else {
      assertThat(outcome.reason().isEmpty()).isEqualTo(each.status == Status.PASSED);
    }
  }

  /** What a case says in English, German and Italian say too, and show typed values only. */
  @ParameterizedTest
  @MethodSource("cases")
  void rule_speaksEachLanguage(Case each) {
    Outcome outcome = rule(each.rule).evaluate(AssessedSetting.of(each.sheet));
    List<Message> messages =
        Stream.concat(
                Stream.of(outcome.why()),
                outcome.findings().stream()
                    .flatMap(found -> Stream.of(found.words(), found.remedy().message())))
            .filter(message -> !message.isEmpty())
            .toList();
    for (Locale locale : Wording.languages()) {
      Wording wording = Wording.of(locale);
      assertThat(messages).allMatch(wording::has);
      assertThat(messages).extracting(wording::text).noneMatch(text -> text.contains("{"));
    }
    assertThat(messages).allSatisfy(StandardRulesTest::isTyped);
  }

  private static final Set<String> NAMES = Set.of("needle", "intake", "id", "name", "oil");

  /** A value that is a name would be printed in English everywhere, unless it is somebody's own. */
  private static void isTyped(Message message) {
    if (!message.key().startsWith("error.")) { // an error shows values as they are to be typed
      message.arguments().forEach(StandardRulesTest::isTyped);
    }
  }

  private static void isTyped(String name, Argument value) {
    if (value instanceof Argument.Name) {
      assertThat(NAMES).contains(name);
    } else if (value instanceof Argument.Words words) {
      isTyped(words.message());
    } else if (value instanceof Argument.Items items) {
      items.items().forEach(item -> isTyped(name, item));
    }
  }

  /** A finding is beyond its limit, in one unit, and its message is filled in. */
  private static void wellFormed(Finding finding) {
    assertThat(finding.margin().value()).isNegative();
    assertThat(finding.measured().unit()).isEqualTo(finding.limit().unit());
    assertThat(finding.text()).doesNotContain("{", "}");
  }

  @Test
  void everyStandardRule_hasACaseThatPassesAndOneThatFails() {
    for (Status status : List.of(Status.PASSED, Status.FAILED)) {
      assertThat(
              cases()
                  .filter(each -> each.status == status)
                  .map(each -> each.rule)
                  .collect(Collectors.toSet()))
          .containsExactlyInAnyOrderElementsOf(
              StandardRulebook.rulebook().rules().stream().map(Rule::id).toList());
    }
  }

  private static Rule rule(String id) {
    return StandardRulebook.rulebook().rule(id).orElseThrow();
  }

  private static SetupSheet with(Setting setting) {
    return TwoHundred.sheet(STANDARD, setting);
  }

  private static SetupSheet peaky() {
    return on36(RpmCurve.of(RpmCurve.Point.of(6000, 0.5), RpmCurve.Point.of(11_000, 0.95)));
  }

  private static SetupSheet even() {
    return on36(RpmCurve.of(RpmCurve.Point.of(1500, 0.7), RpmCurve.Point.of(11_000, 0.95)));
  }

  /** 36 mm on 125 cm³: common practice on a race engine, no source. */
  private static SetupSheet on36(RpmCurve delivery) {
    Engine tuned = TwoHundred.tuned(125);
    Engine engine =
        Engine.builder()
            .id("125")
            .displacement(tuned.displacement())
            .deliveryRatio(delivery)
            .induction(tuned.induction())
            .exhaust(tuned.exhaust())
            .loadLine(new LoadLine(EngineSpeed.ofRpm(1500), EngineSpeed.ofRpm(11_000)))
            .need(tuned.need())
            .build();
    return TwoHundred.sheet(engine, ALL_ROUND.withCarburettor(bore(36)));
  }

  private static SetupSheet crisp() {
    SetupSheet sheet =
        with(
            ALL_ROUND
                .withCutaway(Cutaway.ofMillimetres(4.5))
                .withMainJet(JetBore.ofHundredths(121)));
    return sheet.withRiding(sheet.riding().withAcceptedRisk(Probability.of(0.2)));
  }

  private static SetupSheet cutaway(double millimetres) {
    return with(ALL_ROUND.withCutaway(Cutaway.ofMillimetres(millimetres)));
  }

  private static SetupSheet pilot(double millimetres) {
    return with(ALL_ROUND.withPilotJet(JetBore.ofMillimetres(millimetres)));
  }

  private static SetupSheet screw(ScrewKind kind, double turns) {
    return with(ALL_ROUND.withScrew(new Screw(kind, ScrewTurns.of(turns))));
  }

  private static SetupSheet clip(int groove) {
    return with(ALL_ROUND.withClip(ClipPosition.fromTop(groove, 5)));
  }

  private static SetupSheet floats(double set) {
    return with(ALL_ROUND.withFloats(at(set)));
  }

  private static Floats at(double set) {
    return Floats.builder()
        .set(FloatLevel.ofMillimetres(set))
        .nominal(FloatLevel.ofMillimetres(20))
        .build();
  }

  private static SetupSheet in(Carburettor carburettor) {
    return with(ALL_ROUND.withCarburettor(carburettor));
  }

  private static Setting floating(Carburettor carburettor, double set) {
    return ALL_ROUND.withCarburettor(carburettor).withFloats(at(set));
  }

  private static Carburettor bore(double millimetres) {
    return TwoHundred.carburettor(Diameter.ofMillimetres(millimetres));
  }

  private static Carburettor progression(double hole, double from) {
    Carburettor c = ALL_ROUND.carburettor();
    PilotCircuit p = c.pilot();
    PilotCircuit plain =
        PilotCircuit.builder()
            .screwKind(p.screwKind())
            .areaPerTurn(p.areaPerTurn())
            .fixedArea(p.fixedArea())
            .progressionHole(Area.ofSquareMillimetres(hole))
            .uncoversFrom(Length.ofMillimetres(from))
            .uncoversTo(Length.ofMillimetres(from + 2))
            .head(p.head())
            .mostTurns(p.mostTurns())
            .build();
    return Carburettor.builder()
        .id(c.id())
        .bore(c.bore())
        .needleJetLength(c.needleJetLength())
        .needleJetHead(c.needleJetHead())
        .pilot(plain)
        .floatValve(c.floatValve())
        .flow(c.flow())
        .build();
  }

  private static SetupSheet hung(Needle needle, int groove) {
    return with(ALL_ROUND.withNeedle(needle, ClipPosition.fromTop(groove, needle.grooves())));
  }

  private static Needle straight(double cylinder) {
    return needle(Diameter.ofMillimetres(cylinder), List.of(), 5, 45);
  }

  private static Needle twoGrooves() {
    return needle(NEEDLE.cylinder(), NEEDLE.tapers(), 2, 45);
  }

  private static Needle tip(double millimetres) {
    return needle(NEEDLE.cylinder(), NEEDLE.tapers(), 5, millimetres);
  }

  private static Needle needle(Diameter cylinder, List<Taper> tapers, int grooves, double tip) {
    return Needle.builder()
        .id("another needle")
        .cylinder(cylinder)
        .tapers(tapers)
        .grooves(grooves)
        .groovePitch(NEEDLE.groovePitch())
        .tip(Length.ofMillimetres(tip))
        .build();
  }

  private static Setting leaner(Setting setting) {
    return setting.withNeedle(LEANER_NEEDLE, setting.clip());
  }

  private static Setting narrow() {
    return ALL_ROUND.withNeedleJet(needleJet(2.55));
  }

  private static SetupSheet kit(Setting setting) {
    return with(setting)
        .withParts(
            PartsAtHand.builder()
                .pilotJets(List.of())
                .cutaways(List.of())
                .needleJets(List.of(needleJet(2.64), needleJet(2.66)))
                .needles(List.of(NEEDLE, LEANER_NEEDLE))
                .mainJets(List.of())
                .build());
  }

  private static SetupSheet mains(Integer... hundredths) {
    List<JetBore> mains = Stream.of(hundredths).map(JetBore::ofHundredths).toList();
    return SHEET.withParts(
        PartsAtHand.builder()
            .pilotJets(List.of())
            .cutaways(List.of())
            .needleJets(List.of())
            .needles(List.of())
            .mainJets(mains)
            .build());
  }

  private static SetupSheet flows(double pilot, double main) {
    return having(
        SHEET,
        p ->
            p.pilotJetFlow(JetFlow.ofCubicCentimetresPerMinute(pilot))
                .mainJetFlow(JetFlow.ofCubicCentimetresPerMinute(main)));
  }

  private static SetupSheet having(SetupSheet sheet, UnaryOperator<Provenance.Builder> change) {
    return sheet.withProvenance(change.apply(sheet.provenance().toBuilder()).build());
  }

  private static SetupSheet proven(Fuel fuel) {
    return provenWith(SHEET, fuel);
  }

  private static SetupSheet refuelled(Fuel fuel, double petrolToOil) {
    return provenWith(SHEET.withSetup(SHEET.setup().withFuel(oiled(fuel, petrolToOil))), FUEL);
  }

  private static Fuel oiled(Fuel fuel, double petrolToOil) {
    return fuel.withPremix(PremixRatio.ofPetrolToOil(petrolToOil));
  }

  private static SetupSheet arctic() {
    Fuel stated =
        Fuel.ofProperties(
            Density.ofKilogramsPerCubicMetre(780),
            DynamicViscosity.ofPascalSeconds(0.001),
            AirFuelRatio.of(14.5));
    Air cold = air(-50, 1013);
    Setup setup = SHEET.setup().withFuel(stated).withAir(cold);
    Riding riding = SHEET.riding();
    SetupSheet sheet =
        SetupSheet.builder()
            .title("arctic")
            .setup(setup)
            .riding(
                Riding.builder()
                    .acceptedRisk(riding.acceptedRisk())
                    .profile(riding.profile())
                    .coldest(cold)
                    .hottest(cold)
                    .build())
            .parts(SHEET.parts())
            .build();
    return provenWith(sheet, FUEL);
  }

  private static SetupSheet provenWith(SetupSheet sheet, Fuel fuel) {
    return having(sheet, p -> p.fuel(fuel));
  }

  private static SetupSheet provenBehind(SetupSheet sheet, Intake intake) {
    return having(sheet, p -> p.intake(intake));
  }

  private static SetupSheet provenIn(Air air) {
    return having(SHEET, p -> p.air(air));
  }

  private static Engine needing(MixtureNeed need) {
    return Engine.builder()
        .id(STANDARD.id())
        .displacement(STANDARD.displacement())
        .deliveryRatio(STANDARD.deliveryRatio())
        .induction(STANDARD.induction())
        .exhaust(STANDARD.exhaust())
        .loadLine(STANDARD.loadLine())
        .need(need)
        .build();
  }

  /** The root of the density and the air that the fuel needs both rise by 5 %. */
  private static SetupSheet madeGood() {
    SetupSheet now = SHEET.withSetup(SHEET.setup().withFuel(needing(15.25)));
    return having(now, p -> p.fuel(needing(14.5)).air(air(15, 916)));
  }

  private static Fuel needing(double airToFuel) {
    return Fuel.ofProperties(
        Density.ofKilogramsPerCubicMetre(745),
        DynamicViscosity.ofPascalSeconds(0.0005),
        AirFuelRatio.of(airToFuel));
  }

  private static SetupSheet worn(double needleJet, double needle) {
    NeedleWear wear =
        NeedleWear.builder()
            .needleJet(Length.ofMillimetres(needleJet))
            .needle(Length.ofMillimetres(needle))
            .build();
    return having(SHEET, p -> p.needleWear(wear));
  }

  private static SetupSheet movedFrom(SetupSheet sheet, Carburettor carburettor) {
    return having(sheet, p -> p.carburettor(carburettor));
  }

  private static SetupSheet coldest(double celsius, double hectopascals) {
    Riding riding = SHEET.riding();
    return SetupSheet.builder()
        .title("frost")
        .setup(SHEET.setup())
        .riding(
            Riding.builder()
                .acceptedRisk(riding.acceptedRisk())
                .profile(riding.profile())
                .coldest(air(celsius, hectopascals))
                .hottest(DAY)
                .build())
        .parts(SHEET.parts())
        .build();
  }

  private static Air air(double celsius, double hectopascals) {
    return Air.of(
        Pressure.ofHectopascals(hectopascals),
        Temperature.ofCelsius(celsius),
        RelativeHumidity.ofPercent(60));
  }

  @Test
  void cutawayBalance_narrowedToOneOfTheTwo_hasNothingToCompare() {
    AssessedSetting setting = TwoHundred.assessed(STANDARD, ALL_ROUND);
    Rule balance = StandardRulebook.rulebook().rule("cutaway-balance").orElseThrow();

    assertThat(balance.within(ThrottleBand.eighths(0, 2)).evaluate(setting).status())
        .isEqualTo(Status.NOT_APPLICABLE);
  }
}
