package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.core.SetupArbitraries.Step;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Intake;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.ThrottleOpening;
import java.util.function.UnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** Which way each part works: a part moved towards rich never raises λ at any throttle point. */
@Domain(SetupArbitraries.class)
class PartLawsProperties {

  /**
   * Roots are sought to 2e-15 of themselves; where the suction only just lifts the fuel, its excess
   * over the head keeps fewer digits, but no fewer than a λ of up to 100 allows.
   */
  private static final double ROUNDING = 1e-9;

  @Property
  void biggerMainJet_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(setup, throttle, speed, s -> s.withMainJet(bigger(s.mainJet(), step)));
  }

  @Property
  void biggerPilotJet_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(setup, throttle, speed, s -> s.withPilotJet(bigger(s.pilotJet(), step)));
  }

  @Property
  void biggerNeedleJet_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(
        setup,
        throttle,
        speed,
        s -> {
          double bore = s.needleJet().bore().millimetres() * (1 + step.share());
          return s.withNeedleJet(new NeedleJet(Diameter.ofMillimetres(bore), s.needleJet().neck()));
        });
  }

  @Property
  void shorterNeck_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(
        setup,
        throttle,
        speed,
        s -> {
          double neck = s.needleJet().neck().millimetres() * (1 - step.share());
          return s.withNeedleJet(new NeedleJet(s.needleJet().bore(), Length.ofMillimetres(neck)));
        });
  }

  @Property
  void thinnerNeedle_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(
        setup,
        throttle,
        speed,
        s -> {
          Needle n = s.needle();
          double thinner = n.cylinder().millimetres() * (1 - step.share());
          return s.withNeedle(
              Needle.builder()
                  .id(n.id())
                  .cylinder(Diameter.ofMillimetres(thinner))
                  .tapers(n.tapers())
                  .grooves(n.grooves())
                  .groovePitch(n.groovePitch())
                  .tip(n.tip())
                  .build(),
              s.clip());
        });
  }

  @Property
  void clipInTheNextLowerGroove_isNeverLeaner(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    ClipPosition clip = setup.setting().clip();
    Assume.that(clip.nextTowardsBottom().isPresent());
    neverLeaner(setup, throttle, speed, s -> s.withClip(clip.nextTowardsBottom().orElseThrow()));
  }

  @Property
  void lowerCutaway_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    neverLeaner(
        setup,
        throttle,
        speed,
        s -> s.withCutaway(Cutaway.ofMillimetres(s.cutaway().millimetres() * (1 - step.share()))));
  }

  @Property
  void fuelScrewOutAndAirScrewIn_areNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    boolean out = setup.setting().carburettor().pilot().screwKind() == ScrewKind.MIXTURE;
    neverLeaner(
        setup,
        throttle,
        speed,
        s -> {
          double turns = s.screw().turns().turns();
          double richer = out ? turns + 4 * step.share() : turns * (1 - step.share());
          return s.withScrew(new Screw(s.screw().kind(), ScrewTurns.of(richer)));
        });
  }

  @Property
  void filterOnAnOpenMouth_isNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    double bore = Math.PI / 4 * Math.pow(setup.setting().carburettor().bore().millimetres(), 2);
    Intake filter =
        Intake.filter("some filter", Area.ofSquareMillimetres(bore * (0.05 + 6 * step.share())));
    Setup open = setup.withSetting(setup.setting().withIntake(Intake.openMouth()));
    neverLeaner(open, throttle, speed, s -> s.withIntake(filter));
  }

  @Property
  void floatsSetForMoreFuel_areNeverLeaner(
      @ForAll Setup setup,
      @ForAll ThrottleOpening throttle,
      @ForAll EngineSpeed speed,
      @ForAll Step step) {
    FloatLevel nominal = FloatLevel.ofMillimetres(20);
    double lowest = setup.setting().floats().map(Floats::lowerBy).orElse(0.0);
    double higher = lowest - 10 * step.share();
    neverLeaner(
        setup,
        throttle,
        speed,
        s ->
            s.withFloats(
                Floats.builder()
                    .set(FloatLevel.ofMillimetres(20 + higher))
                    .nominal(nominal)
                    .build()));
  }

  private static JetBore bigger(JetBore jet, Step step) {
    return JetBore.ofMillimetres(jet.millimetres() * (1 + step.share()));
  }

  private static void neverLeaner(
      Setup setup,
      ThrottleOpening throttle,
      EngineSpeed speed,
      UnaryOperator<Setting> towardsRich) {
    MixtureModel before = MixtureModel.of(setup);
    MixtureModel after = MixtureModel.of(setup.withSetting(towardsRich.apply(setup.setting())));
    assertThat(after.at(throttle, speed).lambda().value())
        .isLessThanOrEqualTo(before.at(throttle, speed).lambda().value() * (1 + ROUNDING));
    for (ThrottleOpening point : MixtureModel.evenOpenings(9)) {
      assertThat(after.at(point).lambda().value())
          .as("λ at throttle %s", point)
          .isLessThanOrEqualTo(before.at(point).lambda().value() * (1 + ROUNDING));
    }
  }
}
