package dev.jetting.rules.standard;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.laws.PartChange;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.units.Altitude;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.JetBore;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemediesTest {

  private static final ThrottleOpening QUARTER = ThrottleOpening.ofEighths(2);

  @ParameterizedTest
  @CsvSource({"4, true", "5, false"})
  void richer_namesAClipOnlyWhereItHasAGrooveLeft(int groove, boolean named) {
    Setting setting = ALL_ROUND.withClip(ClipPosition.fromTop(groove, 5));
    assertThat(Remedies.richer(at(assessed(setting), QUARTER), setting, 0.1).contains("clip"))
        .isEqualTo(named);
  }

  @ParameterizedTest
  @CsvSource({"2.75, true", "3, false"})
  void richer_namesTheScrewOnlyAsFarAsItGoes(double turns, boolean named) {
    Setting setting = ALL_ROUND.withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(turns)));
    RiskPoint idle = at(assessed(setting), ThrottleOpening.CLOSED);
    assertThat(Remedies.richer(idle, setting, 0.1).contains("screw")).isEqualTo(named);
  }

  @Test
  void leaner_ofAVeryRichSetting_isAStep() {
    AssessedSetting rich = assessed(ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.74)));
    assertThat(Remedies.safelyLeaner(at(rich, QUARTER), rich, 0.1)).startsWith("λ must rise by");
  }

  /** Rich in the middle, and at the brink at full throttle: a smaller main jet would be lean. */
  @Test
  void leaner_thatWouldBeLeanElsewhere_isNotNamed() {
    AssessedSetting brink =
        assessed(
            ALL_ROUND
                .withNeedleJet(TwoHundred.needleJet(2.74))
                .withMainJet(JetBore.ofMillimetres(1.2)));
    RiskPoint full = at(brink, ThrottleOpening.FULL);

    assertThat(Remedies.leaner(full, brink.setting(), 0.1)).contains("smaller main jet");
    assertThat(Remedies.safelyLeaner(full, brink, 0.1)).doesNotContain("smaller main jet");
  }

  /** Frost leans what a mild day would leave accepted. */
  @Test
  void leaner_thatWouldBeLeanOnTheColdestDay_isNotNamed() {
    Setting rich = ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.68));
    AssessedSetting mild = assessed(rich);
    AssessedSetting frosty = AssessedSetting.of(withColdest(-20, mild.sheet()));
    List<MeteringPart> onMildDays = leavingRiskAccepted(mild);

    assertThat(onMildDays).isNotEmpty();
    assertThat(leavingRiskAccepted(frosty))
        .isSubsetOf(onMildDays)
        .hasSizeLessThan(onMildDays.size());
  }

  /** A rule that sees the middle alone cannot know what a step does beside it. */
  @Test
  void leaner_withinABand_isLeft() {
    AssessedSetting rich = assessed(ALL_ROUND.withNeedleJet(TwoHundred.needleJet(2.74)));
    AssessedSetting narrowed = rich.within(ThrottleBand.eighths(2, 4));
    assertThat(Remedies.safelyLeaner(at(rich, QUARTER), rich, 0.1)).startsWith("λ must rise by");
    assertThat(Remedies.safelyLeaner(at(rich, QUARTER), narrowed, 0.1)).startsWith("Leave it");
  }

  private static List<MeteringPart> leavingRiskAccepted(AssessedSetting assessed) {
    return Arrays.stream(MeteringPart.values())
        .filter(part -> Moves.leavesRiskAccepted(part, assessed))
        .toList();
  }

  private static SetupSheet withColdest(double celsius, SetupSheet sheet) {
    Air frost =
        Air.at(
            Altitude.ofMetres(0), Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(50));
    Riding riding = sheet.riding();
    return new SetupSheet(
        sheet.title(),
        sheet.setup(),
        new Riding(riding.acceptedRisk(), riding.profile(), frost, riding.hottest()),
        sheet.parts());
  }

  /** What is thought to stay accepted stays so, all but a little, when it is worked out. */
  @Test
  void stepsTowardsLean_thatAreNamed_stayAccepted() {
    int named = 0;
    for (double needleJet : new double[] {2.68, 2.70, 2.72, 2.74}) {
      for (double cutaway : new double[] {3, 3.5, 4}) {
        for (double main : new double[] {1.26, 1.34, 1.42}) {
          AssessedSetting assessed =
              assessed(
                  ALL_ROUND
                      .withNeedleJet(TwoHundred.needleJet(needleJet))
                      .withCutaway(Cutaway.ofMillimetres(cutaway))
                      .withMainJet(JetBore.ofMillimetres(main)));
          for (PartEffect effect : at(assessed, QUARTER).effects()) {
            if (Moves.isPossible(effect.part(), false, assessed.setting())
                && Moves.leavesRiskAccepted(effect.part(), assessed)) {
              AssessedSetting after =
                  PartChange.customary(
                          effect.part(), PartChange.Way.LEANER, assessed.riskModel().steps())
                      .on(assessed.sheet())
                      .map(AssessedSetting::of)
                      .orElseThrow();
              named++;
              assertThat(
                      Stream.of(after.profile(), after.coldest(), after.hottest())
                          .mapToDouble(day -> day.worst().leanRisk().value())
                          .max()
                          .orElseThrow())
                  .as("%s of %s", effect.part(), assessed.setting())
                  .isLessThan(0.12);
            }
          }
        }
      }
    }
    assertThat(named).isGreaterThan(50);
  }

  private static AssessedSetting assessed(Setting setting) {
    return TwoHundred.assessed(TwoHundred.STANDARD, setting);
  }

  private static RiskPoint at(AssessedSetting assessed, ThrottleOpening throttle) {
    return assessed.profile().nearest(throttle);
  }
}
