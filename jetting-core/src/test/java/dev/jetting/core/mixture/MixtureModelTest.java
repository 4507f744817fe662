package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.core.air.Air;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.PremixRatio;
import dev.jetting.units.Pressure;
import dev.jetting.units.RelativeHumidity;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Temperature;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MixtureModelTest {

  private static final Setup REFERENCE = ReferenceSetup.setup();
  private static final MixtureModel MODEL = MixtureModel.of(REFERENCE);
  private static final ThrottleOpening QUARTER = ThrottleOpening.ofEighths(2);
  private static final EngineSpeed MIDDLE = EngineSpeed.ofRpm(4200);

  /** As tuners have it. No law: no argument of the equations shows it for every setup. */
  @Test
  void denserAir_isLeanerOnTheReferenceSetting() {
    MixtureModel dense = MixtureModel.of(REFERENCE.withAir(ReferenceSetup.air(278.15)));
    MixtureModel thin = MixtureModel.of(REFERENCE.withAir(ReferenceSetup.air(308.15)));

    for (ThrottleOpening throttle : MixtureModel.evenOpenings(65)) {
      assertThat(dense.at(throttle).lambda()).isGreaterThan(thin.at(throttle).lambda());
    }
  }

  @Test
  void evenOpenings_runFromClosedToFull() {
    assertThat(MixtureModel.evenOpenings(5))
        .containsExactly(
            ThrottleOpening.CLOSED,
            QUARTER,
            ThrottleOpening.ofEighths(4),
            ThrottleOpening.ofEighths(6),
            ThrottleOpening.FULL);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1, 1002})
  void evenOpenings_ofAnotherCount_areRefused(int count) {
    assertThatThrownBy(() -> MixtureModel.evenOpenings(count))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of throttle openings " + count + ": allowed 2 to 1001");
  }

  @Test
  void standstill_isRefusedByEveryQuestion() {
    EngineSpeed none = EngineSpeed.ofRpm(0);
    String message = "engine speed 0 rpm: allowed more than 0 rpm";

    assertThatThrownBy(() -> MODEL.at(QUARTER, none)).hasMessage(message);
    assertThatThrownBy(() -> MODEL.sweep(List.of(QUARTER), none)).hasMessage(message);
    assertThatThrownBy(() -> MODEL.map(List.of(MIDDLE, none), List.of(QUARTER)))
        .hasMessage(message);
    assertThatThrownBy(() -> MODEL.effects(QUARTER, none, CustomarySteps.assumed()))
        .hasMessage(message);
    assertThatThrownBy(() -> MODEL.sensitivities(QUARTER, none))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void airColderThanTheFuelIsKnownFor_isRefused() {
    Setup arctic =
        REFERENCE
            .withFuel(Fuel.PETROL)
            .withAir(Air.dry(Pressure.ofPascals(101_325), Temperature.ofCelsius(-50)));

    assertThatThrownBy(() -> MixtureModel.of(arctic))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll("fuel temperature", "°C", "-50", "allowed -40 to 80");
  }

  @Test
  void sweepsAndMaps_keepTheOrderOfTheQuestion() {
    List<ThrottleOpening> backwards = List.of(ThrottleOpening.FULL, QUARTER);
    EngineSpeed fast = EngineSpeed.ofRpm(9000);

    assertThat(MODEL.sweep(backwards))
        .containsExactly(MODEL.at(ThrottleOpening.FULL), MODEL.at(QUARTER));
    assertThat(MODEL.sweep(backwards, fast))
        .containsExactly(MODEL.at(ThrottleOpening.FULL, fast), MODEL.at(QUARTER, fast));
    assertThat(MODEL.map(List.of(fast, MIDDLE), backwards))
        .containsExactly(MODEL.sweep(backwards, fast), MODEL.sweep(backwards, MIDDLE));
    assertThat(MODEL.setup()).isEqualTo(REFERENCE);
  }

  @Test
  void overrun_countsThePilotsFuelOnly() {
    double peak = 7200;
    SecondImplementation shut = new SecondImplementation(REFERENCE, 0, peak);
    SecondImplementation open = new SecondImplementation(REFERENCE, 1, peak);
    Overrun overrun = MODEL.overrun();

    assertThat(overrun.speed()).isEqualTo(EngineSpeed.ofRpm(peak));
    assertThat(overrun.pilotFuelFlow().kilogramsPerSecond() / shut.pilot)
        .isCloseTo(1, within(1e-9));
    assertThat(overrun.lambda().value()).isCloseTo(shut.air / (shut.pilot * 14.5), within(1e-9));
    assertThat(overrun.fuelShareOfOpen())
        .isCloseTo(shut.pilot / (open.main + open.pilot), within(1e-9));
  }

  @Test
  void noFuelAtAll_standsAsTheLeanestMixture() {
    Setup dry =
        REFERENCE.withSetting(
            REFERENCE
                .setting()
                .withScrew(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(0)))
                .withMainJet(JetBore.ofMillimetres(1e-6)));
    MixtureModel model = MixtureModel.of(dry);

    assertThat(model.at(ThrottleOpening.CLOSED).lambda()).isEqualTo(MixturePoint.LEANEST);
    assertThat(model.at(ThrottleOpening.CLOSED).pilotFuelShare()).isZero();
    assertThat(model.overrun().lambda()).isEqualTo(MixturePoint.LEANEST);
  }

  @Test
  void overrun_ofAnEngineThatLiftsNoFuelWideOpen_hasNoShareToTell() {
    Setting setting = REFERENCE.setting();
    Setup blind =
        REFERENCE.withSetting(
            setting
                .withMainJet(JetBore.ofMillimetres(1e-160))
                .withPilotJet(JetBore.ofMillimetres(1e-160)));

    assertThat(MixtureModel.of(blind).overrun().fuelShareOfOpen()).isZero();
    assertThat(MixtureModel.of(blind).effects(QUARTER, MIDDLE, CustomarySteps.assumed()))
        .filteredOn(effect -> effect.part().circuit() == Circuit.NEEDLE)
        .allSatisfy(effect -> assertThat(effect.authority()).isZero());
  }

  @Test
  void needleThatEndsInTheJet_opensIt_andItsShapeHasNoMoreSay() {
    Setup shortNeedle =
        REFERENCE.withSetting(
            REFERENCE.setting().withNeedle(ReferenceSetup.needle(20), REFERENCE.setting().clip()));
    MixtureModel model = MixtureModel.of(shortNeedle);
    EngineSpeed peak = EngineSpeed.ofRpm(7200);

    assertThat(model.at(QUARTER)).isEqualTo(MODEL.at(QUARTER));
    assertThat(model.at(ThrottleOpening.FULL).lambda())
        .isLessThan(MODEL.at(ThrottleOpening.FULL).lambda());
    assertThat(model.effects(ThrottleOpening.FULL, peak, CustomarySteps.assumed()))
        .filteredOn(
            e ->
                e.part() == MeteringPart.NEEDLE_DIAMETER
                    || e.part() == MeteringPart.NEEDLE_TAPER
                    || e.part() == MeteringPart.CLIP)
        .hasSize(3)
        .allSatisfy(
            e -> {
              assertThat(e.richer()).isZero();
              assertThat(e.leaner()).isZero();
            });
  }

  @Test
  void effects_areWhatTheChangedSettingGives() {
    double before = Math.log(MODEL.at(QUARTER, MIDDLE).lambda().value());
    Setting bigger = REFERENCE.setting().withMainJet(JetBore.ofMillimetres(1.2));
    Setting smaller = REFERENCE.setting().withMainJet(JetBore.ofMillimetres(1.16));
    PartEffect main = effect(MODEL, MeteringPart.MAIN_JET);

    assertThat(main.richer()).isCloseTo(lnLambda(bigger) - before, within(1e-12));
    assertThat(main.leaner()).isCloseTo(lnLambda(smaller) - before, within(1e-12));
  }

  @Test
  void effectOfTheScrew_goesByTheKindThatTheCarburettorHas() {
    Setting air = ReferenceSetup.airScrewSetting();
    MixtureModel model = MixtureModel.of(REFERENCE.withSetting(air));
    double before = lnLambda(air);
    double in = lnLambda(air.withScrew(new Screw(ScrewKind.AIR, ScrewTurns.of(1.5))));
    double out = lnLambda(air.withScrew(new Screw(ScrewKind.AIR, ScrewTurns.of(2))));

    assertThat(in).isLessThan(before);
    assertThat(out).isGreaterThan(before);
    PartEffect screw = effect(model, MeteringPart.SCREW);
    assertThat(screw.richer()).isCloseTo(in - before, within(1e-12));
    assertThat(screw.leaner()).isCloseTo(out - before, within(1e-12));
  }

  @Test
  void premixOil_takesThePlaceOfFuel() {
    // 25:1 by volume at equal flow leans by about 1/25 (calculated); the oil's viscosity adds.
    Setup petrol = REFERENCE.withFuel(Fuel.PETROL);
    Setup oiled = REFERENCE.withFuel(Fuel.PETROL.withPremix(PremixRatio.ofPetrolToOil(25)));

    for (ThrottleOpening throttle : MixtureModel.evenOpenings(9)) {
      double without = MixtureModel.of(petrol).at(throttle).lambda().value();
      double with = MixtureModel.of(oiled).at(throttle).lambda().value();
      assertThat(with / without).isBetween(1.03, 1.15);
    }
  }

  @Test
  void waterInTheAir_isNoAirForTheFuel() {
    Pressure pressure = Pressure.ofPascals(101_325);
    Air dry = Air.dry(pressure, Temperature.ofCelsius(35));
    Air damp = Air.of(pressure, Temperature.ofCelsius(35), RelativeHumidity.ofShare(1));
    MixtureModel inDry = MixtureModel.of(REFERENCE.withAir(dry));
    MixtureModel inDamp = MixtureModel.of(REFERENCE.withAir(damp));

    // Vapour of 35 °C takes 3.5 % of the mass; the lighter air draws a little less fuel.
    double ratio =
        inDamp.at(ThrottleOpening.FULL).lambda().value()
            / inDry.at(ThrottleOpening.FULL).lambda().value();
    assertThat(ratio).isBetween(damp.dryAirMassFraction() - 0.02, damp.dryAirMassFraction() + 0.01);
  }

  private static PartEffect effect(MixtureModel model, MeteringPart part) {
    return model.effects(QUARTER, MIDDLE, CustomarySteps.assumed()).stream()
        .filter(e -> e.part() == part)
        .findFirst()
        .orElseThrow();
  }

  private static double lnLambda(Setting setting) {
    return Math.log(
        MixtureModel.of(REFERENCE.withSetting(setting)).at(QUARTER, MIDDLE).lambda().value());
  }
}
