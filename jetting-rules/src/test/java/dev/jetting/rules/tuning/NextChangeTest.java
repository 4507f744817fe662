package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Circuit;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.rules.search.Standing;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    NextChange change = next(ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.60))).orElseThrow();
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
    Optional<NextChange> change = new ChangeChooser(sheet, RISK, RISK.untried()).choose();
    while (change.isPresent() && changes++ < 30) {
      NextChange next = change.get();
      assertThat(next.after().worst().leanRisk().value()).isLessThanOrEqualTo(0.1);
      for (int i = 0; i < next.before().points().size(); i++) {
        double before = next.before().points().get(i).lambda().value();
        double after = next.after().points().get(i).lambda().value();
        assertThat(after / before).isLessThan(1.13);
      }
      sheet = sheet.withSetup(sheet.setup().withSetting(next.setting()));
      change = new ChangeChooser(sheet, RISK, RISK.untried()).choose();
    }
    assertThat(changes).isBetween(3, 29);
    assertThat(sheet.setup().setting().mainJet()).isLessThan(JetBore.ofMillimetres(1.34));
  }

  @Test
  void of_noPartsAtHand_usesOnlyWhatTheRiderCanTurnAndHang() {
    Setting lean = ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.64));
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, lean);
    assertThat(sheet.parts()).isEqualTo(PartsAtHand.unknown());
    assertThat(new ChangeChooser(sheet, RISK, RISK.untried()).choose().orElseThrow().part())
        .isIn(MeteringPart.CLIP, MeteringPart.SCREW);
  }

  @Test
  void startingSetting_isRicherThanAcceptedAsksForAndNamesTheNextJets() {
    SetupSheet any = Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.16)));
    StartingSetting start = StartFinder.find(any, RISK);
    assertThat(start.profile().worst().leanRisk().value()).isLessThanOrEqualTo(0.02);
    assertThat(start.setting().mainJet()).isGreaterThan(JetBore.ofMillimetres(1.2));
    assertThat(start.haveAtHand()).contains("main " + next(start));
    assertThat(start.safe()).isTrue();
  }

  /** With clip and screw alone no main jet that is far too small can be made good. */
  @Test
  void startingSetting_withNoSafeOneAtHand_saysSo() {
    Setting lean = ALL_ROUND.withMainJet(JetBore.ofMillimetres(0.95));
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, lean);
    assertThat(StartFinder.find(sheet, RISK).safe()).isFalse();
  }

  /** Whatever cannot be changed: where any combination is within a fifth, so is the start. */
  @ParameterizedTest
  @ValueSource(doubles = {3.0, 3.5, 4.0, 4.5, 5.0})
  void startingSetting_isSafe_whereAnyCombinationIs(double cutaway) {
    Setting any =
        ALL_ROUND
            .withCutaway(Cutaway.ofMillimetres(cutaway))
            .withNeedleJet(TwoHundred.needleJet(2.64));
    PartsAtHand parts =
        PartsAtHand.builder()
            .pilotJets(Workshop.PARTS.pilotJets())
            .cutaways(List.of())
            .needleJets(List.of())
            .needles(Workshop.PARTS.needles())
            .mainJets(Workshop.PARTS.mainJets())
            .build();
    SetupSheet sheet = Workshop.sheet(any).withParts(parts);
    Riding riding = sheet.riding();
    SetupSheet cautious =
        SetupSheet.builder()
            .title(sheet.title())
            .setup(sheet.setup())
            .riding(
                Riding.builder()
                    .acceptedRisk(Probability.of(0.02))
                    .profile(riding.profile())
                    .coldest(riding.coldest())
                    .hottest(riding.hottest())
                    .build())
            .parts(parts)
            .build();
    FoundSetting best =
        SettingSearch.of(cautious, Choices.of(sheet), RISK)
            .spending(1)
            .best(1, Run.alone())
            .settings()
            .get(0);

    assertThat(StartFinder.find(sheet, RISK).profile().worst().leanRisk())
        .isLessThanOrEqualTo(
            best.standing() == Standing.TOO_LEAN ? best.leanRisk() : Probability.of(0.02));
  }

  /** The next bigger main of the drawer, in hundredths. */
  private static int next(StartingSetting start) {
    return (int) Math.rint(start.setting().mainJet().hundredths()) + 2;
  }

  private static Optional<NextChange> next(Setting setting) {
    return new ChangeChooser(Workshop.sheet(setting), RISK, RISK.untried()).choose();
  }
}
