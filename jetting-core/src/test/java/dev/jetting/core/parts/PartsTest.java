package dev.jetting.core.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** The error of a wrong part names it, its value with the unit, and what is allowed. */
class PartsTest {

  private static final Setting SETTING = ReferenceSetup.setting();
  private static final Carburettor CARBURETTOR = SETTING.carburettor();
  private static final PilotCircuit PILOT = ReferenceSetup.pilot(ScrewKind.MIXTURE);
  private static final Coefficient HALF = Coefficient.assumed(0.5, "1", "for a test");

  @Test
  void carburettor_outOfRange_isRefused() {
    refused(
        () -> carburettor(" ", 30, 3),
        "id of the carburettor is blank: allowed any text with a visible character");
    refused(() -> carburettor("c", 4.9, 3), "bore of carburettor c 4.9 mm: allowed 5 mm to 80 mm");
    refused(
        () -> carburettor("c", 80.1, 3), "bore of carburettor c 80.1 mm: allowed 5 mm to 80 mm");
    refused(
        () -> carburettor("c", 30, 0),
        "needle jet length of carburettor c 0 mm: allowed more than 0 mm");
    assertThat(carburettor("c", 5, 0.1).bore()).isEqualTo(Diameter.ofMillimetres(5));
    assertThat(carburettor("c", 80, 0.1).bore()).isEqualTo(Diameter.ofMillimetres(80));
  }

  @Test
  void pilotCircuit_thatIsShutOrRunsBackwards_isRefused() {
    refused(
        () -> pilot(0, 0.6, 0.5, 2.5),
        "area per turn of the pilot screw 0 mm²: allowed more than 0 mm²");
    refused(
        () -> pilot(0.2, 0, 0.5, 2.5),
        "fixed area of the pilot circuit 0 mm²: allowed more than 0 mm²");
    refused(
        () -> pilot(0.2, 0.6, 2.5, 2.5),
        "lift at which the progression hole is uncovered 2.5 mm: allowed more than the 2.5 mm at"
            + " which it begins to be");
  }

  @Test
  void floatValve_outOfRange_isRefused() {
    Diameter seat = Diameter.ofMillimetres(2);
    Length head = Length.ofMillimetres(100);
    refused(
        () -> new FloatValve(seat, Length.ofMillimetres(0), HALF),
        "supply head of the float valve 0 mm: allowed more than 0 mm");
    for (double wrong : new double[] {0, 1.1}) {
      assertThatThrownBy(
              () -> new FloatValve(seat, head, Coefficient.assumed(wrong, "1", "for a test")))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("discharge coefficient of the float valve ")
          .hasMessageEndingWith(": allowed more than 0 and at most 1");
    }
  }

  @Test
  void flowCoefficients_outOfRange_areRefusedByName() {
    FlowCoefficients f = FlowCoefficients.assumed();
    refused(() -> flow(1.2, f), "flow coefficient upstreamGap 1.2: allowed 0.05 to 1");
    refused(() -> flow(0.01, f), "flow coefficient upstreamGap 0.01: allowed 0.05 to 1");
    // The nozzle's factor may not fall with lift.
    refused(
        () ->
            FlowCoefficients.builder()
                .upstreamGap(f.upstreamGap())
                .downstreamGap(f.downstreamGap())
                .nozzleClosed(Coefficient.assumed(3, "1", "for a test"))
                .nozzleOpen(f.nozzleOpen())
                .nozzleExponent(f.nozzleExponent())
                .neckEffect(f.neckEffect())
                .needleEntryLoss(f.needleEntryLoss())
                .needleEccentricity(f.needleEccentricity())
                .pilotOutlet(f.pilotOutlet())
                .pilotBleed(f.pilotBleed())
                .mainJetLength(f.mainJetLength())
                .pilotJetLength(f.pilotJetLength())
                .build(),
        "flow coefficient nozzleOpen 1.84: allowed 3 to 10");
  }

  @Test
  void flowCoefficients_ofTheLibrary_sayThatTheyAreAssumed() {
    FlowCoefficients f = FlowCoefficients.assumed();
    assertThat(
            List.of(
                f.upstreamGap(),
                f.downstreamGap(),
                f.nozzleClosed(),
                f.nozzleOpen(),
                f.nozzleExponent(),
                f.neckEffect(),
                f.needleEntryLoss(),
                f.needleEccentricity(),
                f.pilotOutlet(),
                f.pilotBleed(),
                f.mainJetLength(),
                f.pilotJetLength()))
        .allSatisfy(
            c -> {
              assertThat(c.origin()).isEqualTo(Coefficient.Origin.ASSUMED);
              assertThat(c.note()).isNotBlank();
            });
  }

  @Test
  void intake_blankOrShut_isRefused() {
    refused(
        () -> Intake.filter("", Area.ofSquareMillimetres(500)),
        "id of the intake is blank: allowed any text with a visible character");
    refused(
        () -> Intake.filter("f", Area.ofSquareMillimetres(0.9)),
        "effective area of an intake 0.9 mm²: allowed 1 mm² or more");
    assertThat(Intake.openMouth().effectiveArea()).isEmpty();
  }

  @Test
  void setting_ofPartsThatCannotStandTogether_isRefused() {
    refused(
        () -> SETTING.withCutaway(Cutaway.ofMillimetres(28)),
        "cutaway 28 mm: allowed less than the bore of 28 mm");
    refused(
        () -> idle(0), "idle lift 0 mm: allowed 0.01 mm or more and less than the bore of 28 mm");
    refused(
        () -> idle(28), "idle lift 28 mm: allowed 0.01 mm or more and less than the bore of 28 mm");
    refused(
        () -> SETTING.withNeedleJet(NeedleJet.of(Diameter.ofMillimetres(2.33))),
        "cylinder of needle reference needle 2.33 mm: allowed less than the needle jet's 2.33 mm");
    refused(
        () -> SETTING.withClip(ClipPosition.fromTop(2, 4)),
        "clip position 2 of 4 from top: allowed a count on the 5 grooves of needle reference needle");
    assertThat(idle(0.01).idleLift()).isEqualTo(Length.ofMillimetres(0.01));
  }

  @Test
  void setting_with_changesOnePart() {
    assertThat(SETTING.withMainJet(JetBore.ofMillimetres(1.3)).mainJet().millimetres())
        .isEqualTo(1.3);
    assertThat(SETTING.withPilotJet(JetBore.ofMillimetres(0.5)).pilotJet().millimetres())
        .isEqualTo(0.5);
    Intake filter = Intake.filter("box", Area.ofSquareMillimetres(500));
    assertThat(SETTING.withIntake(filter).intake()).isEqualTo(filter);
    Screw screw = new Screw(ScrewKind.MIXTURE, ScrewTurns.of(2));
    assertThat(SETTING.withScrew(screw).screw()).isEqualTo(screw);
    assertThat(SETTING.withScrew(screw).withScrew(SETTING.screw())).isEqualTo(SETTING);
    assertThat(SETTING.withClip(ClipPosition.fromTop(3, 5)).withClip(SETTING.clip()))
        .isEqualTo(SETTING);
    assertThat(SETTING.withCutaway(Cutaway.ofMillimetres(3)).cutaway())
        .isEqualTo(Cutaway.ofMillimetres(3));
  }

  @Test
  void coefficient_withoutNumberUnitOrNote_isRefused() {
    refused(
        () -> Coefficient.assumed(Double.NaN, "1", "n"),
        "coefficient NaN: allowed any finite number");
    refused(
        () -> Coefficient.sourced(Double.POSITIVE_INFINITY, "1", "n"),
        "coefficient Infinity: allowed any finite number");
    refused(
        () -> Coefficient.calculated(1, " ", "n"),
        "unit of a coefficient is blank: allowed any text with a visible character");
    refused(
        () -> Coefficient.calculated(1, "1", ""),
        "note of a coefficient is blank: allowed any text with a visible character");
    refused(
        () -> Coefficient.assumed(1.5, "by hand", "1"),
        "note of a coefficient is a unit: allowed a source or a reason");
  }

  @Test
  void coefficient_tellsWhereItComesFrom() {
    assertThat(Coefficient.sourced(9.80665, "m/s²", "ISO 80000-3"))
        .hasToString("9.80665 m/s² (sourced: ISO 80000-3)");
    assertThat(Coefficient.calculated(0.5, "1", "by hand"))
        .hasToString("0.5 (calculated: by hand)");
    assertThat(Coefficient.assumed(-0.0, "1", "why")).isEqualTo(Coefficient.assumed(0, "1", "why"));
  }

  private static void refused(ThrowingCallable call, String message) {
    assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }

  private static Carburettor carburettor(String id, double bore, double jetLength) {
    return Carburettor.builder()
        .id(id)
        .bore(Diameter.ofMillimetres(bore))
        .needleJetLength(Length.ofMillimetres(jetLength))
        .needleJetHead(Length.ofMillimetres(12))
        .pilot(PILOT)
        .floatValve(CARBURETTOR.floatValve())
        .flow(CARBURETTOR.flow())
        .build();
  }

  private static PilotCircuit pilot(double perTurn, double fixed, double from, double to) {
    return PilotCircuit.builder()
        .screwKind(ScrewKind.AIR)
        .areaPerTurn(Area.ofSquareMillimetres(perTurn))
        .fixedArea(Area.ofSquareMillimetres(fixed))
        .progressionHole(Area.ofSquareMillimetres(0))
        .uncoversFrom(Length.ofMillimetres(from))
        .uncoversTo(Length.ofMillimetres(to))
        .head(Length.ofMillimetres(0))
        .mostTurns(ScrewTurns.of(3))
        .build();
  }

  private static FlowCoefficients flow(double upstream, FlowCoefficients f) {
    return FlowCoefficients.builder()
        .upstreamGap(Coefficient.assumed(upstream, "1", "for a test"))
        .downstreamGap(f.downstreamGap())
        .nozzleClosed(f.nozzleClosed())
        .nozzleOpen(f.nozzleOpen())
        .nozzleExponent(f.nozzleExponent())
        .neckEffect(f.neckEffect())
        .needleEntryLoss(f.needleEntryLoss())
        .needleEccentricity(f.needleEccentricity())
        .pilotOutlet(f.pilotOutlet())
        .pilotBleed(f.pilotBleed())
        .mainJetLength(f.mainJetLength())
        .pilotJetLength(f.pilotJetLength())
        .build();
  }

  private static Setting idle(double millimetres) {
    return Setting.builder()
        .carburettor(CARBURETTOR)
        .intake(SETTING.intake())
        .pilotJet(SETTING.pilotJet())
        .screw(SETTING.screw())
        .cutaway(SETTING.cutaway())
        .idleLift(Length.ofMillimetres(millimetres))
        .needleJet(SETTING.needleJet())
        .needle(SETTING.needle())
        .clip(SETTING.clip())
        .mainJet(SETTING.mainJet())
        .build();
  }
}
