package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Severity;
import dev.jetting.rules.json.KitValidationJson;
import dev.jetting.rules.json.KitWaiversJson;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Waivers of kits: by machine, up to what was accepted. */
class KitWaiverTest {

  private static final KitValidator VALIDATOR = KitValidator.of(Shop.CATALOGUE);
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);

  /** A standard engine's main jet in a tuned engine, which is lean there (see KitValidatorTest). */
  private static final Kit LEAN = recommending(on("tuned", "main 126"));

  @Test
  void waivedDangers_letTheKitPass_andStayInTheResult() {
    KitValidation open = VALIDATOR.validate(LEAN, KitDepth.SETTING);
    List<KitWaiver> waivers = ofAll(open);

    KitValidation waived = waiving(waivers).validate(LEAN, KitDepth.SETTING);

    assertThat(open.passes()).isFalse();
    assertThat(waived.passes()).isTrue();
    assertThat(waived.machines().get(0).findings())
        .extracting(RankedFinding::finding)
        .isEqualTo(open.machines().get(0).findings().stream().map(RankedFinding::finding).toList());
    assertThat(dangers(waived)).allSatisfy(found -> assertThat(found.waiver()).isPresent());
    assertThat(waived.unusedWaivers()).isEmpty();
  }

  /** The machine moves from the first place to the second. */
  @Test
  void waiver_staysWithItsMachine_notWithItsPlace() {
    List<KitWaiver> waivers = ofAll(VALIDATOR.validate(LEAN, KitDepth.SETTING));
    Kit moved = recommending(on("standard", "main 126"), on("tuned", "main 126"));
    Kit other = recommending(on("standard", "main 96"));

    assertThat(waiving(waivers).validate(moved, KitDepth.SETTING).passes()).isTrue();
    KitValidation elsewhere = waiving(waivers).validate(other, KitDepth.SETTING);
    assertThat(elsewhere.passes()).isFalse();
    assertThat(dangers(elsewhere)).allSatisfy(found -> assertThat(found.waiver()).isEmpty());
    assertThat(elsewhere.unusedWaivers())
        .hasSameSizeAs(waivers)
        .extracting(UnusedKitWaiver::why)
        .containsOnly("no such finding on this machine");
  }

  @Test
  void leanerJet_isNoLongerCovered_andTheResultSaysByHowMuch() {
    List<KitWaiver> waivers = ofAll(VALIDATOR.validate(LEAN, KitDepth.SETTING));
    Kit leaner = recommending(on("tuned", "main 120"));

    KitValidation result = waiving(waivers).validate(leaner, KitDepth.SETTING);

    assertThat(result.passes()).isFalse();
    assertThat(result.unusedWaivers())
        .extracting(UnusedKitWaiver::why)
        .anyMatch(why -> why.matches("fuel 1: accepted to .* %.*, now .* %.*"));
  }

  @Test
  void expiredWaiver_andThatOfAnotherKit_coverNothing() {
    List<KitWaiver> waivers = ofAll(VALIDATOR.validate(LEAN, KitDepth.SETTING));
    List<KitWaiver> old = waivers.stream().map(each -> each.until(TODAY.minusDays(1))).toList();
    List<KitWaiver> last = waivers.stream().map(each -> each.until(TODAY)).toList();
    Kit renamed = kit("another kit", on("tuned", "main 126"));

    KitValidation late = waiving(old).validate(LEAN, KitDepth.SETTING);
    assertThat(late.passes()).isFalse();
    assertThat(late.unusedWaivers())
        .extracting(UnusedKitWaiver::why)
        .allMatch(why -> why.endsWith("expired on 2026-11-27"));
    assertThat(waiving(last).validate(LEAN, KitDepth.SETTING).passes()).isTrue();
    KitValidation another = waiving(waivers).validate(renamed, KitDepth.SETTING);
    assertThat(another.passes()).isFalse();
    assertThat(another.unusedWaivers()).isEmpty();
  }

  @Test
  void coverageBelowTheLeast_canBeAccepted_upToWhatItWas() {
    Kit poor = Shop.kitOf("pilot 55", "slide 40", "tube 266", "needle", "main 126");
    KitValidation open = VALIDATOR.validate(poor, KitDepth.COVERAGE);
    RankedFinding coverage =
        open.findings().stream()
            .filter(found -> found.ruleId().equals("kit-coverage"))
            .findFirst()
            .orElseThrow();
    KitWaiver waiver = waiver(open, open.machines().get(0), coverage);
    KitWaiver proud =
        accepting(waiver, Measure.ratio(coverage.finding().measured().value() + 0.01));
    // Less than any share, but of something else.
    KitWaiver odd = accepting(waiver, new Measure(0, "mm"));

    assertThat(open.passes()).isFalse();
    KitValidation waived = waiving(List.of(waiver)).validate(poor, KitDepth.COVERAGE);
    assertThat(waived.passes()).isTrue();
    assertThat(waived.unusedWaivers()).isEmpty();
    KitValidation short_ = waiving(List.of(proud)).validate(poor, KitDepth.COVERAGE);
    assertThat(short_.passes()).isFalse();
    assertThat(short_.unusedWaivers().get(0).why()).startsWith("fuel 1: accepted to ");
    assertThat(waiving(List.of(odd)).validate(poor, KitDepth.COVERAGE).passes()).isFalse();
    assertThat(waiving(List.of(waiver)).validate(poor, KitDepth.SETTING).unusedWaivers()).isEmpty();
  }

  private static KitWaiver accepting(KitWaiver waiver, Measure measured) {
    return new KitWaiver(
        waiver.kit(),
        waiver.machine(),
        waiver.ruleId(),
        waiver.subject(),
        waiver.author(),
        waiver.reason(),
        waiver.expires(),
        measured,
        waiver.band());
  }

  @Test
  void of_aFindingOfAnotherMachine_isRefused() {
    KitValidation lean = VALIDATOR.validate(LEAN, KitDepth.SETTING);
    KitValidation sound = VALIDATOR.validate(Shop.kit(), KitDepth.SETTING);
    RankedFinding danger = dangers(lean).get(0);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> waiver(sound, sound.machines().get(0), danger))
        .withMessageContaining("allowed one on machine standard");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                KitWaiver.of(lean, lean.machines().get(0), danger)
                    .by("A. Weaver")
                    .because("two\nlines"))
        .withMessageContaining("reason of a waiver");
  }

  @Test
  void waivers_andAResultWithThem_areReadAsTheyWereWritten() {
    KitValidation open = VALIDATOR.validate(LEAN, KitDepth.SETTING);
    List<KitWaiver> waivers = ofAll(open).stream().map(each -> each.until(TODAY)).toList();
    Kit other = recommending(on("standard", "main 126"));
    KitValidation unused = waiving(waivers).validate(other, KitDepth.SETTING);

    assertThat(KitWaiversJson.read(KitWaiversJson.write(waivers))).isEqualTo(waivers);
    assertThat(unused.unusedWaivers()).isNotEmpty();
    assertThat(KitValidationJson.read(KitValidationJson.write(unused))).isEqualTo(unused);
  }

  private static KitValidator waiving(List<KitWaiver> waivers) {
    return VALIDATOR.waiving(waivers, TODAY);
  }

  private static List<KitWaiver> ofAll(KitValidation validation) {
    MachineResult result = validation.machines().get(0);
    return dangers(validation).stream().map(found -> waiver(validation, result, found)).toList();
  }

  private static KitWaiver waiver(
      KitValidation validation, MachineResult result, RankedFinding finding) {
    return KitWaiver.of(validation, result, finding)
        .by("A. Weaver")
        .because("For a short track only.");
  }

  private static List<RankedFinding> dangers(KitValidation validation) {
    return validation.machines().stream()
        .flatMap(machine -> machine.findings().stream())
        .filter(found -> found.severity() == Severity.DANGER)
        .toList();
  }

  private static Recommendation on(String machine, String mainJet) {
    Recommendation r = Shop.recommendation();
    return Recommendation.builder()
        .machine(machine)
        .pilotJet(r.pilotJet())
        .screw(r.screw())
        .slide(r.slide())
        .idleLift(r.idleLift())
        .needleJet(r.needleJet())
        .needle(r.needle())
        .clip(r.clip())
        .mainJet(mainJet)
        .fittedScrew(r.fittedScrew())
        .floatValve(r.floatValve())
        .floats(r.floats())
        .build();
  }

  private static Kit recommending(Recommendation... recommendations) {
    return kit("a kit", recommendations);
  }

  private static Kit kit(String id, Recommendation... recommendations) {
    Kit kit = Shop.kitWith("main 96");
    return Kit.builder()
        .id(id)
        .description(kit.description())
        .family(kit.family())
        .parts(kit.parts())
        .market(kit.market())
        .recommendations(List.of(recommendations))
        .build();
  }
}
