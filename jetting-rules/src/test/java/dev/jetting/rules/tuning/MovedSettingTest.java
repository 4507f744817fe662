package dev.jetting.rules.tuning;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Altitude;
import dev.jetting.units.JetBore;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MovedSettingTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final Tuner TUNER = Tuner.readingWith(Set.of(Instrument.PLUG));
  private static final SetupSheet SHEET = Workshop.sheet(ALL_ROUND);

  /** Thin air makes any carburettor richer: a smaller main jet in the mountains. */
  @Test
  void of_highPlace_isASmallerMain() {
    MovedSetting moved = moved(SHEET.setup().withAir(air(2500, 15)));
    assertThat(moved.safe()).isTrue();
    assertThat(moved.changes())
        .anySatisfy(change -> assertThat(change.part()).isEqualTo(MeteringPart.MAIN_JET));
    assertThat(moved.setup().setting().mainJet()).isLessThan(ALL_ROUND.mainJet());
  }

  /** Frost at the sea leans the mixture. */
  @Test
  void of_frost_isMadeSafeAgain() {
    MovedSetting moved = moved(SHEET.setup().withAir(air(0, -15)));
    assertThat(moved.changes()).isNotEmpty();
    assertThat(moved.safe()).isTrue();
  }

  /** Ethanol asks for more fuel: a bigger main jet. */
  @Test
  void of_fuelWithMuchEthanol_isBiggerJets() {
    Fuel fuel = Fuel.E85.withPremix(PremixRatio.ofPetrolToOil(50));
    MovedSetting moved = moved(SHEET.setup().withFuel(fuel));
    assertThat(moved.setup().setting().mainJet()).isGreaterThan(ALL_ROUND.mainJet());
  }

  /** What no part at hand makes as rich as it was is named, however small the risk. */
  @Test
  void of_eachMove_namesEachOpeningThatStaysLeaner() {
    Fuel fuel = Fuel.E85.withPremix(PremixRatio.ofPetrolToOil(50));
    SetupSheet bare = SHEET.withParts(PartsAtHand.unknown());
    int named = 0;
    for (SetupSheet sheet : List.of(SHEET, bare)) {
      for (Setup there :
          List.of(
              sheet.setup().withFuel(fuel),
              sheet.setup().withAir(air(0, -15)),
              sheet.setup().withAir(air(1500, 25)))) {
        MovedSetting moved = TUNER.move(sheet, there, RISK.untried());
        for (ThrottleOpening mark : Held.MARKS) {
          double leaner = leaner(moved.setup(), mark);
          named += leaner > 0.04 ? 1 : 0;
          assertThat(moved.leftLeaner())
              .filteredOn(left -> left.throttle().equals(mark))
              .hasSize(leaner > 0.04 ? 1 : 0)
              .allSatisfy(left -> assertThat(left.lnLambda()).isCloseTo(leaner, within(1e-12)));
        }
        assertThat(moved.leftLeaner())
            .isSortedAccordingTo(
                Comparator.comparingDouble(MovedSetting.LeftLeaner::lnLambda).reversed());
      }
    }
    assertThat(named).isPositive();
  }

  @Test
  void of_fuelWithMuchEthanolAndTooNarrowNeedleJets_saysWhichOpeningToReadFirst() {
    Fuel fuel = Fuel.E85.withPremix(PremixRatio.ofPetrolToOil(50));
    assertThat(moved(SHEET.setup().withFuel(fuel)).leftLeaner().get(0).message().text())
        .matches(
            "At 1/4 throttle it stays \\d+ % leaner than where it was finished. Read that opening first\\.");
  }

  /** Of two grooves that serve at half the lower: the higher drowns an eighth. */
  @Test
  void of_frost_leavesAnEighthThatRuns() {
    Setup there = SHEET.setup().withAir(air(0, -15));
    assertThat(leaner(moved(there).setup(), ThrottleOpening.ofEighths(1))).isBetween(-0.05, 0.04);
  }

  /** Nobody makes an engine safe on which it does not run. */
  @Test
  void of_frostWithoutParts_doesNotDrownTheIdle() {
    SetupSheet bare = SHEET.withParts(PartsAtHand.unknown());
    for (int celsius = -25; celsius <= 10; celsius += 5) {
      Setup there = bare.setup().withAir(air(0, celsius));
      Setup moved = TUNER.move(bare, there, RISK.untried()).setup();
      double rich = RISK.limits().rich(ThrottleOpening.CLOSED, moved.engine().need()).value();
      assertThat(MixtureModel.of(moved).at(ThrottleOpening.CLOSED).lambda().value())
          .isGreaterThanOrEqualTo(
              Math.min(rich, MixtureModel.of(there).at(ThrottleOpening.CLOSED).lambda().value()));
    }
  }

  /** The coldest day of the place stays where it is, whatever is in the tank. */
  @Test
  void of_anotherFuelInTheSameAir_isJudgedOnAllDaysOfTheSheet() {
    SetupSheet days = Workshop.sheet(ALL_ROUND, air(0, -15), air(0, 35));
    Fuel fuel = Fuel.E10.withPremix(PremixRatio.ofPetrolToOil(50));
    MovedSetting moved = TUNER.move(days, days.setup().withFuel(fuel), RISK.untried());
    AssessedSetting there = AssessedSetting.of(days.withSetup(moved.setup()));

    assertThat(moved.safe()).isTrue();
    assertThat(there.coldest().worst().leanRisk().value()).isLessThanOrEqualTo(0.1);
  }

  /** And of another place a sheet knows no other day than the one it is moved to. */
  @Test
  void of_otherAir_isJudgedInIt_andDoesNotSpeakOfOtherDays() {
    SetupSheet days =
        Workshop.sheet(ALL_ROUND.withMainJet(JetBore.ofMillimetres(1.5)), air(0, -15), air(0, 35));
    MovedSetting moved = TUNER.move(days, days.setup().withAir(air(1500, 20)), RISK.untried());

    assertThat(moved.changes()).isNotEmpty();
    assertThat(moved.changes())
        .allSatisfy(
            change ->
                assertThat(change.reason())
                    .isIn(
                        NextChange.Reason.AS_RICH,
                        NextChange.Reason.SAFE,
                        NextChange.Reason.SAFER));
  }

  /** A move is no tuning: what is safe stays, though another part would come nearer to need. */
  @Test
  void of_theSameDay_isNothing() {
    Setup finished = SHEET.setup();
    assertThat(moved(finished).changes()).isEmpty();
    assertThat(moved(finished).setup()).isEqualTo(finished);
  }

  /** Sizes so close that the next one is as good: moves to and fro must not add up. */
  @Test
  void of_airToAndFro_comesBackToWhatWasFinished() {
    PartsAtHand close =
        SHEET.parts().toBuilder()
            .mainJets(
                IntStream.rangeClosed(0, 58)
                    .mapToObj(i -> JetBore.ofMillimetres(1.16 + i * 0.005))
                    .toList())
            .build();
    SetupSheet home = SHEET.withParts(close);
    assertThat(TUNER.move(home, home.setup(), RISK.untried()).changes()).isEmpty();
    SetupSheet now = home;
    for (int i = 0; i < 6; i++) {
      Setup there = now.setup().withAir(i % 2 == 0 ? air(0, 16) : home.setup().air());
      now = now.withSetup(TUNER.move(now, there, RISK.untried()).setup());
    }
    double atHome = MixtureModel.of(home.setup()).at(ThrottleOpening.FULL).lambda().value();
    assertThat(MixtureModel.of(now.setup()).at(ThrottleOpening.FULL).lambda().value())
        .isLessThanOrEqualTo(atHome * 1.0001);
  }

  /** Without a bigger main jet at hand the needle makes up for it as far as it can. */
  @Test
  void of_frostWithoutParts_raisesTheNeedle() {
    SetupSheet bare = SHEET.withParts(PartsAtHand.unknown());
    MovedSetting moved = TUNER.move(bare, bare.setup().withAir(air(0, 0)), RISK.untried());
    assertThat(moved.setup().setting().clip().grooveFromTop())
        .isGreaterThan(ALL_ROUND.clip().grooveFromTop());
    Setup there = moved.setup();
    assertThat(leaner(there, ThrottleOpening.ofEighths(4))).isLessThanOrEqualTo(0.02);
  }

  /** What stays unsafe gets no list of screw turns that do not help. */
  @Test
  void of_bitterFrostWithoutParts_isNotSafeAndSaysNoMore() {
    SetupSheet bare = SHEET.withParts(PartsAtHand.unknown());
    MovedSetting moved = TUNER.move(bare, bare.setup().withAir(air(0, -30)), RISK.untried());
    assertThat(moved.safe()).isFalse();
    assertThat(moved.changes())
        .extracting(NextChange::reason)
        .containsOnly(NextChange.Reason.AS_RICH);
  }

  /**
   * A card of the weather, as a tuner reads it: colder or lower asks for no smaller main jet and no
   * lower needle.
   */
  @Test
  void of_denserAir_isNoLeanerPart() {
    int changed = 0;
    for (int height = 0; height <= 2500; height += 500) {
      for (int celsius = -10; celsius <= 40; celsius += 10) {
        Setting here = moved(air(height, celsius));
        changed += here.equals(ALL_ROUND) ? 0 : 1;
        assertNoLeaner(moved(air(height + 500.0, celsius)), here);
        assertNoLeaner(moved(air(height, celsius + 10.0)), here);
      }
    }
    assertThat(changed).isGreaterThan(15);
  }

  private static void assertNoLeaner(Setting inThinner, Setting inDenser) {
    assertThat(inDenser.mainJet()).isGreaterThanOrEqualTo(inThinner.mainJet());
    assertThat(inDenser.clip().grooveFromTop())
        .isGreaterThanOrEqualTo(inThinner.clip().grooveFromTop());
  }

  /** By the part that acts there; its next leaner size would be too lean for that. */
  @Test
  void of_otherAir_isAsRichAsAtHome() {
    for (Air air : List.of(air(0, -15), air(300, 35), air(1500, 5), air(1500, 25))) {
      Setting moved = moved(air);
      Setup there = SHEET.setup().withAir(air).withSetting(moved);
      JetBore smaller =
          SHEET.parts().mainJets().stream()
              .filter(jet -> jet.compareTo(moved.mainJet()) < 0)
              .max(Comparator.naturalOrder())
              .orElseThrow();

      assertThat(leaner(there, ThrottleOpening.FULL)).isLessThanOrEqualTo(0.01);
      assertThat(leaner(there.withSetting(moved.withMainJet(smaller)), ThrottleOpening.FULL))
          .isGreaterThan(0);
      assertThat(leaner(there, ThrottleOpening.ofEighths(4))).isLessThanOrEqualTo(0.02);
      assertThat(leaner(there, ThrottleOpening.CLOSED)).isLessThanOrEqualTo(0.03);
    }
  }

  private static double leaner(Setup there, ThrottleOpening throttle) {
    double home = MixtureModel.of(SHEET.setup()).at(throttle).lambda().value();
    return StrictMath.log(MixtureModel.of(there).at(throttle).lambda().value() / home);
  }

  private static Setting moved(Air air) {
    return moved(SHEET.setup().withAir(air)).setup().setting();
  }

  /**
   * Of changes that are as near and as safe, the one that keeps more of what was ridden: with
   * another setting ridden before, another of them is chosen.
   */
  @Test
  void choose_amongChangesThatAreAsGood_keepsMoreOfWhatWasRidden() {
    Setting now = ALL_ROUND.withMainJet(JetBore.ofHundredths(128));
    SetupSheet frost = SHEET.withSetup(SHEET.setup().withAir(air(1000, -9)).withSetting(now));
    Setting without = chosen(frost, now);
    int better = 0;
    for (Alternatives.Alternative ridden : Alternatives.to(now, frost.parts())) {
      Setting with = chosen(frost, ridden.setting());
      long changed = Alternatives.partsChanged(ridden.setting(), with);
      long otherwise = Alternatives.partsChanged(ridden.setting(), without);
      assertThat(changed).isLessThanOrEqualTo(otherwise);
      better += changed < otherwise ? 1 : 0;
    }
    assertThat(better).isPositive();
  }

  private static Setting chosen(SetupSheet sheet, Setting ridden) {
    return new ChangeChooser(sheet, ridden, RISK, RISK.untried()).choose().orElseThrow().setting();
  }

  private static MovedSetting moved(Setup there) {
    return TUNER.move(SHEET, there, RISK.untried());
  }

  private static Air air(double metres, double celsius) {
    return Air.at(
        Altitude.ofMetres(metres), Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(50));
  }
}
