package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.parts.Coefficient;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.core.typical.StateOfTune;
import dev.jetting.core.typical.WrongGuess;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.Altitude;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.Displacement;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The least that a rider can say, and what becomes of it. */
class MachineDescriptionTest {

  @Test
  void leastThatARiderCanSay_givesAReportWithAWideBand() {
    MachineDescription machine = cart().build();
    RiskProfile wide = AssessedSetting.of(machine.sheet()).profile();
    RiskProfile measured = AssessedSetting.of(machine.sheet().withTypical(Set.of())).profile();
    for (ThrottleOpening opening : WrongGuess.openings()) {
      assertThat(wide.nearest(opening).spread())
          .isGreaterThan(1.3 * measured.nearest(opening).spread());
    }
    Report report = StandardRulebook.rulebook().evaluate(AssessedSetting.of(machine.sheet()));
    assertThat(report.findings()).isNotEmpty();
  }

  @Test
  void assumptions_nameEveryTypicalValueAndSayThatItIsAssumed() {
    MachineDescription machine = cart().build();
    assertThat(machine.typical()).contains(MachineValue.PEAK_SPEED, MachineValue.AREA_PER_TURN);
    for (MachineValue value : machine.typical()) {
      assertThat(machine.assumptions()).containsKey(value.toString());
    }
    assertThat(machine.assumptions().values())
        .allSatisfy(c -> assertThat(c.origin()).isEqualTo(Coefficient.Origin.ASSUMED));
  }

  @Test
  void measuredValue_replacesTheTypicalOneAndNarrowsTheBand() {
    MachineDescription guessed = cart().build();
    WrongGuess most = guessed.wrongGuesses().get(0);
    MachineDescription machine = cart().measured(most.value(), most.guess()).build();
    assertThat(machine.typical()).doesNotContain(most.value());
    assertThat(machine.sheet().setup()).isEqualTo(guessed.sheet().setup());
    assertThat(spreads(machine)).isLessThan(spreads(guessed));
  }

  private static double spreads(MachineDescription machine) {
    RiskProfile profile = AssessedSetting.of(machine.sheet()).profile();
    return profile.points().stream().mapToDouble(p -> p.spread()).sum();
  }

  /** The stop is set for the idle speed: a faster idle needs a slide further up. */
  @Test
  void idleLift_followsTheMeasuredIdleSpeed() {
    MachineDescription faster = cart().measured(MachineValue.IDLE_SPEED, 1800).build();
    assertThat(faster.sheet().setup().setting().idleLift())
        .isGreaterThan(cart().build().sheet().setup().setting().idleLift());
    assertThat(faster.sheet().setup().engine().loadLine().idle().rpm()).isEqualTo(1800);
  }

  @Test
  void statedParts_areNotTypical() {
    MachineDescription machine =
        carburettor()
            .needle("middle", Diameter.ofMillimetres(2.02))
            .intake(Intake.openMouth())
            .engine(TwoHundred.STANDARD)
            .build();
    assertThat(machine.typical()).doesNotContain(MachineValue.FILTER_AREA, MachineValue.PEAK_SPEED);
    assertThat(machine.sheet().setup().engine()).isEqualTo(TwoHundred.STANDARD);
  }

  @Test
  void needleKnownByNameOnly_hasATypicalThickness() {
    MachineDescription machine =
        carburettor()
            .needle("middle")
            .displacement(Displacement.ofCubicCentimetres(123))
            .tune(StateOfTune.UTILITY)
            .build();
    assertThat(machine.typical()).contains(MachineValue.NEEDLE_CYLINDER);
    assertThat(machine.sheet().setup().setting().needle().id()).isEqualTo("middle");
  }

  @Test
  void missingValues_areAllNamed() {
    assertThatThrownBy(() -> MachineDescription.builder().tune(StateOfTune.SPORT).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "machine description without displacement, bore, pilot screw (kind and turns), pilot"
                + " jet, main jet, needle jet, needle (shape, thickness or name), clip, cutaway,"
                + " altitude, temperature: each must be stated")
        .isInstanceOfSatisfying(
            InvalidValueException.class,
            refused -> {
              assertThat(refused.field())
                  .isEqualTo(
                      "displacement, bore, screw, pilotJet, mainJet, needleJet, needle, clip,"
                          + " cutaway, altitude, temperature");
              assertThat(refused.allowed()).isEqualTo("each stated once");
            });
  }

  @Test
  void oneThingStatedTwice_isRefused() {
    assertThatThrownBy(() -> cart().engine(TwoHundred.STANDARD).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("an engine, and displacement, tune, cooling or induction")
        .hasMessageContaining("state one of the two")
        .isInstanceOfSatisfying(
            InvalidValueException.class,
            refused -> assertThat(refused.field()).isEqualTo("engine"));
  }

  @Test
  void usualParts_standAroundTheSettingAndHoldItsOwn() {
    SetupSheet sheet = cart().usualParts().build().sheet();
    PartsAtHand parts = sheet.parts();
    assertThat(parts.mainJets()).contains(sheet.setup().setting().mainJet()).isSorted();
    assertThat(parts.pilotJets()).contains(sheet.setup().setting().pilotJet()).isSorted();
    assertThat(parts.cutaways()).contains(sheet.setup().setting().cutaway()).isSorted();
    assertThat(parts.needleJets()).contains(sheet.setup().setting().needleJet());
    assertThat(parts.mainJets().get(0).millimetres()).isLessThan(0.8);
    assertThat(List.copyOf(parts.needles())).isEmpty();
  }

  /** Beside a jet that is as big as any, a part beyond what a sheet takes is none to own. */
  @Test
  void usualParts_goNoFurtherThanASheet() {
    SetupSheet sheet =
        cart()
            .pilotJet(JetBore.ofMillimetres(3))
            .mainJet(JetBore.ofMillimetres(5))
            .usualParts()
            .build()
            .sheet();
    assertThat(sheet.parts().mainJets()).endsWith(JetBore.ofMillimetres(5)).hasSizeGreaterThan(5);
    assertThat(sheet.parts().pilotJets()).endsWith(JetBore.ofMillimetres(3));
    sheet = cart().pilotJet(JetBore.ofMillimetres(0.1)).usualParts().build().sheet();
    assertThat(sheet.parts().pilotJets()).startsWith(JetBore.ofMillimetres(0.1));
  }

  @Test
  void measuredValueOutOfRange_isNamedInTheError() {
    assertThatThrownBy(() -> cart().measured(MachineValue.NEEDLE_JET_LENGTH, -1).build())
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "measured length of the needle jet's bore: length -1 mm: allowed from 0 to 100000 mm");
    assertThatThrownBy(() -> cart().measured(MachineValue.PEAK_SPEED, 1).build())
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith("measured peak speed: idle speed 1300 rpm: allowed ");
  }

  /** Its rider never said anything of tapers. */
  @Test
  void typicalNeedleThatATinyNeedleJetCannotHave_namesTheNeedleJet() {
    assertThatThrownBy(
            () ->
                carburettor()
                    .needleJet(Diameter.ofMillimetres(0.6))
                    .needle("thin")
                    .displacement(Displacement.ofCubicCentimetres(123))
                    .tune(StateOfTune.UTILITY)
                    .build())
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith("needle jet 0.6 mm: tapers of needle thin ");
    assertThatThrownBy(() -> cart().needle("thin", Diameter.ofMillimetres(0.5)).build())
        .hasMessageStartingWith("needle cylinder 0.5 mm: tapers of needle thin ");
  }

  /** An invented utility cart, by what its owner knows. */
  private static MachineDescription.Builder cart() {
    return carburettor()
        .needle("middle", Diameter.ofMillimetres(2.02))
        .displacement(Displacement.ofCubicCentimetres(123))
        .tune(StateOfTune.UTILITY);
  }

  /** Its carburettor without the needle, and the day. */
  private static MachineDescription.Builder carburettor() {
    return MachineDescription.builder()
        .bore(Diameter.ofMillimetres(24))
        .screw(new Screw(ScrewKind.AIR, ScrewTurns.of(1.5)))
        .pilotJet(JetBore.ofHundredths(42))
        .mainJet(JetBore.ofHundredths(96))
        .needleJet(Diameter.ofMillimetres(2.15))
        .clip(ClipPosition.fromTop(3, 5))
        .cutaway(Cutaway.ofTenths(30))
        .altitude(Altitude.ofMetres(900))
        .temperature(Temperature.ofCelsius(20));
  }
}
