package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.FILTER;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.Exhaust;
import dev.jetting.core.engine.Induction;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.units.Displacement;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.ThrottleOpening;
import org.junit.jupiter.api.Test;

class ProvenanceTest {

  private static final SetupSheet SHEET = TwoHundred.sheet(STANDARD, ALL_ROUND);
  private static final Setup NOW = SHEET.setup();
  private static final Exhaust OTHER = Exhaust.reference("another exhaust");
  private static final ProvenCylinder CYLINDER =
      new ProvenCylinder(Displacement.ofCubicCentimetres(125), RpmCurve.constant(0.6));
  private static final JetBore MAIN = JetBore.ofMillimetres(1.2);

  @Test
  void provenSetup_ofWhatIsUnset_isTheSheets() {
    assertThat(Provenance.unknown().provenSetup(NOW)).isEqualTo(NOW);
  }

  @Test
  void provenSetup_hasThePartsThatAreSet() {
    Setup then =
        Provenance.builder()
            .exhaust(OTHER)
            .cylinder(CYLINDER)
            .induction(Induction.assumedTuned())
            .intake(FILTER)
            .mainJet(MAIN)
            .build()
            .provenSetup(NOW);

    assertThat(then.engine().exhaust()).isEqualTo(OTHER);
    assertThat(then.engine().displacement()).isEqualTo(CYLINDER.displacement());
    assertThat(then.engine().deliveryRatio()).isEqualTo(CYLINDER.deliveryRatio());
    assertThat(then.engine().induction()).isEqualTo(Induction.assumedTuned());
    assertThat(then.engine().need()).isEqualTo(NOW.engine().need());
    assertThat(then.setting()).isEqualTo(ALL_ROUND.withIntake(FILTER).withMainJet(MAIN));
    assertThat(then.air()).isEqualTo(NOW.air());
  }

  @Test
  void provenSetup_withWear_hasTheWiderJetAndTheThinnerNeedle() {
    Setting then =
        Provenance.builder()
            .needleWear(
                NeedleWear.builder()
                    .needleJet(Length.ofMillimetres(0.02))
                    .needle(Length.ofMillimetres(0.01))
                    .build())
            .build()
            .provenSetup(NOW)
            .setting();

    assertThat(then.needleJet().bore().millimetres())
        .isEqualTo(ALL_ROUND.needleJet().bore().millimetres() + 0.02);
    assertThat(then.needle().cylinder().millimetres())
        .isEqualTo(ALL_ROUND.needle().cylinder().millimetres() - 0.01);
    assertThat(then.needle().tapers()).isEqualTo(ALL_ROUND.needle().tapers());
  }

  /** A changed jet is not proven. */
  @Test
  void withSetup_leavesTheProofWhereItWas() {
    SetupSheet proven = SHEET.withProvenance(Provenance.builder().intake(FILTER).build());
    Setup then = proven.provenance().provenSetup(NOW);

    SetupSheet changed = proven.withSetup(NOW.withSetting(ALL_ROUND.withMainJet(MAIN)));

    assertThat(changed.provenance().provenSetup(changed.setup())).isEqualTo(then);
    SetupSheet again = changed.withSetup(NOW.withEngine(NOW.engine().withExhaust(OTHER)));
    assertThat(again.provenance()).isEqualTo(changed.provenance());
    assertThat(again.provenance().provenSetup(again.setup())).isEqualTo(then);
  }

  @Test
  void withSetup_keepsWearAndObservationsAndNumbers() {
    Provenance provenance =
        Provenance.builder()
            .needleWear(
                NeedleWear.builder()
                    .needleJet(Length.ofMillimetres(0.02))
                    .needle(Length.ofMillimetres(0))
                    .build())
            .observed(new ProvenObservation(ThrottleOpening.FULL, new Evidence.Proven()))
            .mainJetFlow(JetFlow.ofCubicCentimetresPerMinute(187))
            .build();
    SetupSheet changed =
        SHEET.withProvenance(provenance).withSetup(NOW.withSetting(ALL_ROUND.withMainJet(MAIN)));

    assertThat(changed.provenance().needleWear()).isEqualTo(provenance.needleWear());
    assertThat(changed.provenance().observed()).isEqualTo(provenance.observed());
    assertThat(changed.provenance().mainJetFlow()).isEqualTo(provenance.mainJetFlow());
    assertThat(changed.provenance().provenSetup(changed.setup()))
        .isEqualTo(provenance.provenSetup(NOW));
  }

  @Test
  void withSetup_ofASheetThatProvesNothing_keepsItsProvenance() {
    Provenance numbers =
        Provenance.builder().pilotJetFlow(JetFlow.ofCubicCentimetresPerMinute(36)).build();
    Setup other = NOW.withSetting(ALL_ROUND.withMainJet(MAIN));

    assertThat(numbers.isProof()).isFalse();
    assertThat(SHEET.withProvenance(numbers).withSetup(other).provenance()).isEqualTo(numbers);
    assertThat(SHEET.withSetup(other).provenance()).isEqualTo(Provenance.unknown());
  }

  @Test
  void toBuilder_keepsEverythingAndLeavesTheFirstAsItWas() {
    Provenance first = Provenance.builder().intake(FILTER).air(NOW.air()).build();
    Provenance second = first.toBuilder().fuel(NOW.fuel()).build();

    assertThat(first.toBuilder().build()).isEqualTo(first).hasSameHashCodeAs(first);
    assertThat(second.intake()).contains(FILTER);
    assertThat(first.fuel()).isEmpty();
    assertThat(second).isNotEqualTo(first);
  }

  @Test
  void build_ofAWholeAndItsParts_isRefused() {
    Engine engine = NOW.engine();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Provenance.builder().engine(engine).exhaust(OTHER).build())
        .withMessageContaining("allowed engine, or any of exhaust, cylinder and induction");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Provenance.builder().setting(ALL_ROUND).intake(FILTER).build())
        .withMessageContaining("allowed setting, or any of carburettor, intake and mainJet");
  }

  @Test
  void build_ofOneKindOfObservationTwiceNearAnOpening_isRefused() {
    ProvenObservation brown =
        new ProvenObservation(ThrottleOpening.FULL, new Evidence.Colour(PlugColour.BROWN));
    ProvenObservation pale =
        new ProvenObservation(ThrottleOpening.FULL, new Evidence.Colour(PlugColour.PALE));
    ProvenObservation well = new ProvenObservation(ThrottleOpening.FULL, new Evidence.Proven());

    assertThat(Provenance.builder().observed(brown, well).build().observed())
        .containsExactly(brown, well);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Provenance.builder().observed(brown, pale).build())
        .withMessageContaining("allowed those of one kind at least 1/8 of the throttle apart");
  }

  @Test
  void needleWear_outOfRange_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                NeedleWear.builder()
                    .needleJet(Length.ofMillimetres(0.3))
                    .needle(Length.ofMillimetres(0))
                    .build())
        .withMessage("wear of the needle jet 0.3 mm: allowed 0 mm to 0.2 mm");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                NeedleWear.builder()
                    .needleJet(Length.ofMillimetres(0))
                    .needle(Length.ofMillimetres(0.21))
                    .build())
        .withMessageStartingWith("wear of the needle 0.21 mm");
  }
}
