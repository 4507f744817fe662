package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.JetBore;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NextChangeTest {

  private static final RiskModel RISK = RiskModel.assumed();

  @Test
  void of_smallMain_isABiggerMain() {
    NextChange change = next(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.16))).orElseThrow();
    assertThat(change.part()).isEqualTo(MeteringPart.MAIN_JET);
    assertThat(change.setting().mainJet()).isGreaterThan(JetBore.ofMillimetres(1.16));
    assertThat(change.after().worst().leanRisk()).isLessThan(change.before().worst().leanRisk());
  }

  @Test
  void of_leanNeedleJet_isInTheNeedlesField() {
    NextChange change = next(ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.64))).orElseThrow();
    assertThat(change.part().circuit()).isIn(Circuit.NEEDLE, Circuit.CUTAWAY);
    assertThat(change.after().worst().leanRisk().value()).isLessThanOrEqualTo(0.1);
  }

  /** A pilot jet that only the overrun shows to be too small. */
  @Test
  void of_smallPilot_isABiggerPilotOrTheScrew() {
    NextChange change = next(ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.50))).orElseThrow();
    assertThat(change.part().circuit()).isEqualTo(Circuit.PILOT);
  }

  @Test
  void of_farTooRich_comesDownInSmallMovesThatStaySafe() {
    SetupSheet sheet = Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.58)));
    int changes = 0;
    Optional<NextChange> change = NextChange.of(sheet, RISK, RISK.untried());
    while (change.isPresent() && changes++ < 30) {
      NextChange next = change.get();
      assertThat(next.after().worst().leanRisk().value()).isLessThanOrEqualTo(0.1);
      for (int i = 0; i < next.before().points().size(); i++) {
        double before = next.before().points().get(i).lambda().value();
        double after = next.after().points().get(i).lambda().value();
        assertThat(after / before).isLessThan(1.13);
      }
      sheet = sheet.withSetup(sheet.setup().withSetting(next.setting()));
      change = NextChange.of(sheet, RISK, RISK.untried());
    }
    assertThat(changes).isBetween(3, 29);
    assertThat(sheet.setup().setting().mainJet()).isLessThan(JetBore.ofMillimetres(1.34));
  }

  @Test
  void of_noPartsAtHand_usesOnlyWhatTheRiderCanTurnAndHang() {
    Setting lean = ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.64));
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, lean);
    assertThat(sheet.parts()).isEqualTo(PartsAtHand.unknown());
    assertThat(NextChange.of(sheet, RISK, RISK.untried()).orElseThrow().part())
        .isIn(MeteringPart.CLIP, MeteringPart.SCREW);
  }

  @Test
  void startingSetting_isRicherThanAcceptedAsksForAndNamesTheNextJets() {
    SetupSheet any = Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.16)));
    StartingSetting start = StartingSetting.of(any, RISK);
    assertThat(start.profile().worst().leanRisk().value()).isLessThanOrEqualTo(0.02);
    assertThat(start.setting().mainJet()).isGreaterThan(JetBore.ofMillimetres(1.2));
    assertThat(start.haveAtHand()).contains("main " + next(start));
  }

  /** The next bigger main of the drawer, in hundredths. */
  private static int next(StartingSetting start) {
    return (int) Math.rint(start.setting().mainJet().hundredths()) + 2;
  }

  private static Optional<NextChange> next(Setting setting) {
    return NextChange.of(Workshop.sheet(setting), RISK, RISK.untried());
  }
}
