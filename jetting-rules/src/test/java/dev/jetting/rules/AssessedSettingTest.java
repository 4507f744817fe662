package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.air.Air;
import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.calibration.Reading;
import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.core.mixture.Overrun;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.PilotCircuit;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.Altitude;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssessedSettingTest {

  private static final RiskModel RISK = RiskModel.assumed();
  private static final Air FROST = day(-15);
  private static final Air HEAT = day(35);

  /** The pilot alone feeds the overrun, whatever the day; cold air is the densest. */
  @Test
  void overrun_isThatOfTheLeanestDay() {
    SetupSheet sheet = sheet(ALL_ROUND, FROST, HEAT);
    Overrun found = AssessedSetting.of(sheet).overrun();

    assertThat(found).isEqualTo(MixtureModel.of(sheet.setup().withAir(FROST)).overrun());
    assertThat(found.lambda()).isGreaterThan(MixtureModel.of(sheet.setup()).overrun().lambda());
  }

  @Test
  void overrun_followsWhatReadingsTellOfThePilot() {
    SetupSheet sheet = TwoHundred.sheet(STANDARD, ALL_ROUND);
    MixtureModel engine = MixtureModel.of(sheet.setup()).differing(ErrorSource.PILOT, -0.12);
    List<Reading> readings = new ArrayList<>();
    for (int eighths : new int[] {0, 1, 2, 4, 6, 8}) {
      ThrottleOpening throttle = ThrottleOpening.ofEighths(eighths);
      EngineSpeed speed = STANDARD.loadLine().at(throttle);
      readings.add(
          Reading.measured(
              sheet.setup(), throttle, speed, engine.at(throttle, speed).lambda(), 0.01));
    }
    Calibration read = RISK.untried().with(readings);
    double unread = AssessedSetting.of(sheet).overrun().lambda().value();
    double found = AssessedSetting.of(sheet, RISK, read).overrun().lambda().value();

    // A reading at a shut throttle separates the pilot from the residual only in part.
    assertThat(found).isGreaterThan(unread * 1.03);
    assertThat(found).isLessThan(engine.overrun().lambda().value() * 1.01);
  }

  /** It shows more signal than the model has, and no fuel on the overrun. */
  @Test
  void richReadingOfTheOpenThrottle_acquitsNoPilotJet() {
    SetupSheet sheet =
        TwoHundred.sheet(STANDARD, ALL_ROUND.withPilotJet(JetBore.ofMillimetres(0.52)));
    EngineSpeed speed = STANDARD.loadLine().at(ThrottleOpening.FULL);
    double modelled =
        MixtureModel.of(sheet.setup()).at(ThrottleOpening.FULL, speed).lambda().value();
    Reading rich =
        Reading.measured(
            sheet.setup(), ThrottleOpening.FULL, speed, Lambda.of(modelled * 0.9), 0.02);
    Calibration read = RISK.untried().with(List.of(rich));

    assertThat(AssessedSetting.of(sheet, RISK, read).overrun())
        .isEqualTo(AssessedSetting.of(sheet).overrun());
  }

  /**
   * A hole between pilot and progression hole, a quarter of a millimetre wide, from a search for
   * settings on which thirty-three even openings see nothing.
   */
  @Test
  void openings_seeAHoleBesideTheStop() {
    SetupSheet sheet = TwoHundred.sheet(STANDARD, late(0.75, 65, 4.5, 2.72));
    AssessedSetting assessed = AssessedSetting.of(sheet);
    double finest =
        RISK.profile(MixtureModel.of(sheet.setup()), MixtureModel.evenOpenings(1001))
            .worst()
            .leanRisk()
            .value();

    // A hole that nobody could take for the doubt of the model.
    assertThat(finest).isGreaterThan(4 * sheet.riding().acceptedRisk().value());
    assertThat(assessed.profile().worst().leanRisk().value()).isCloseTo(finest, within(0.05));
    assertThat(StandardRulebook.rulebook().evaluate(assessed).passes()).isFalse();
  }

  @Test
  void days_areEachLookedAtOnce() {
    assertThat(TwoHundred.sheet(STANDARD, ALL_ROUND).days()).containsExactly(TwoHundred.DAY);
    assertThat(sheet(ALL_ROUND, FROST, HEAT).days()).containsExactly(TwoHundred.DAY, FROST, HEAT);
  }

  @Test
  void dayOnWhichTheFuelIsNotKnown_isRefused_andNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sheet(ALL_ROUND, day(-45), HEAT))
        .withMessageContaining("temperature of the fuel on the coldest day -45 °C")
        .withMessageContaining("allowed -40 °C to 80 °C");
  }

  @Test
  void sheetWhoseOwnDayIsColderThanItsFuelIsKnownFor_isRefusedToo() {
    SetupSheet sheet = sheet(ALL_ROUND, FROST, HEAT);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sheet.withSetup(sheet.setup().withAir(day(-45))))
        .withMessageContaining(
            "temperature of the fuel on the day of the setup -45 °C: allowed -40 °C");
  }

  /** The all-round setting in a carburettor whose progression hole is uncovered late. */
  private static Setting late(double turns, int pilot, double cutaway, double needleJet) {
    Carburettor c = ALL_ROUND.carburettor();
    PilotCircuit its = c.pilot();
    PilotCircuit late =
        PilotCircuit.builder()
            .screwKind(its.screwKind())
            .areaPerTurn(its.areaPerTurn())
            .fixedArea(Area.ofSquareMillimetres(0.62))
            .progressionHole(its.progressionHole())
            .uncoversFrom(Length.ofMillimetres(0.5))
            .uncoversTo(Length.ofMillimetres(2.5))
            .head(its.head())
            .mostTurns(its.mostTurns())
            .build();
    Carburettor carburettor =
        Carburettor.builder()
            .id(c.id())
            .bore(c.bore())
            .needleJetLength(c.needleJetLength())
            .needleJetHead(c.needleJetHead())
            .pilot(late)
            .floatValve(c.floatValve())
            .flow(c.flow())
            .build();
    return Setting.builder()
        .carburettor(carburettor)
        .intake(ALL_ROUND.intake())
        .pilotJet(JetBore.ofHundredths(pilot))
        .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(turns)))
        .cutaway(Cutaway.ofMillimetres(cutaway))
        .idleLift(Length.ofMillimetres(0.9))
        .needleJet(TwoHundred.needleJet(needleJet))
        .needle(ALL_ROUND.needle())
        .clip(ALL_ROUND.clip())
        .mainJet(ALL_ROUND.mainJet())
        .build();
  }

  private static SetupSheet sheet(Setting setting, Air coldest, Air hottest) {
    SetupSheet one = TwoHundred.sheet(STANDARD, setting);
    Riding riding = one.riding();
    return one.withRiding(
        Riding.builder()
            .acceptedRisk(riding.acceptedRisk())
            .profile(riding.profile())
            .coldest(coldest)
            .hottest(hottest)
            .build());
  }

  private static Air day(double celsius) {
    return Air.at(
        Altitude.ofMetres(0), Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(50));
  }
}
