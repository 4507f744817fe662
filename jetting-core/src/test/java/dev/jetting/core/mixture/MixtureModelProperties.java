package dev.jetting.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.SetupArbitraries;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.units.Diameter;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** What holds of every answer of the model. */
@Domain(SetupArbitraries.class)
class MixtureModelProperties {

  /** Effects are differences of two logarithms whose λ carry the rounding of the roots. */
  private static final double ROUNDING = 1e-9;

  @Property
  void fuelShares_sumToOne_whereverFuelFlows(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    MixturePoint point = MixtureModel.of(setup).at(throttle, speed);
    boolean flows =
        point.mainFuelFlow().gramsPerSecond() + point.pilotFuelFlow().gramsPerSecond() > 0;

    assertThat(point.mainFuelShare() + point.pilotFuelShare())
        .isCloseTo(flows ? 1 : 0, within(1e-15));
    assertThat(point.mainFuelShare()).isBetween(0.0, 1.0);
  }

  @Property
  void effects_haveTheirSigns_andAuthoritySumsToOne(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    MixtureModel model = MixtureModel.of(setup);
    List<PartEffect> effects = model.effects(throttle, speed, CustomarySteps.assumed());

    assertThat(effects).extracting(PartEffect::part).containsExactly(MeteringPart.values());
    assertThat(effects)
        .allSatisfy(
            effect -> {
              assertThat(effect.richer()).isLessThanOrEqualTo(ROUNDING);
              assertThat(effect.leaner()).isGreaterThanOrEqualTo(-ROUNDING);
              assertThat(effect.authority()).isBetween(0.0, 1.0);
            });
    double authority = effects.stream().mapToDouble(PartEffect::authority).sum();
    boolean fuelFlows = model.at(throttle, speed).lambda().isLessThan(MixturePoint.LEANEST);
    if (fuelFlows) {
      assertThat(authority).isCloseTo(1, within(1e-12));
    } else {
      assertThat(authority).isBetween(0.0, 1 + 1e-12);
    }
  }

  /** To the last bit: a report must not depend on which of the two it was made with. */
  @Property
  void responses_arePointEffectsAndSensitivitiesTogether(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle) {
    MixtureModel model = MixtureModel.of(setup);
    MixturePoint point = model.at(throttle);

    assertThat(model.responses(List.of(throttle), CustomarySteps.assumed()))
        .containsExactly(
            new MixtureResponse(
                point,
                model.effects(throttle, point.speed(), CustomarySteps.assumed()),
                model.fuelSensitivities(throttle, point.speed())));
  }

  @Property
  void sensitivities_haveTheirSigns(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    Sensitivities slopes = MixtureModel.of(setup).sensitivities(throttle, speed);

    assertThat(slopes.pilot()).isBetween(-1.0, 0.0);
    assertThat(slopes.needle()).isBetween(-1.5, 0.0);
    assertThat(slopes.main()).isBetween(-1.5, 0.0);
    // All fuel is the pilot's or the main path's, which ring and main jet share between them. A
    // column that finds more room feels its inertia more, and flows nearer to the mean suction.
    // Where that is the weaker limit it loses: of the flow at most k w (1 − w) 2, with w (1 − w) a
    // quarter at most and k a twentieth (PulsedFlow).
    assertThat(slopes.pilot() + slopes.needle() + slopes.main())
        .satisfiesAnyOf(
            sum -> assertThat(sum).isBetween(-1.5, -0.975), sum -> assertThat(sum).isZero());
    // A difference over the width of the step in z.
    assertThat(slopes.air()).isGreaterThanOrEqualTo(-ROUNDING / 1e-3);
  }

  /** The closed form against engines that do differ, up and down. */
  @Property
  void fuelSensitivities_areTheSlopesOfEnginesThatDiffer(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    MixtureModel model = MixtureModel.of(setup);
    FuelSensitivities given = model.fuelSensitivities(throttle, speed);
    double z = 1e-4;

    assertThat(given.lnLambda())
        .isEqualTo(StrictMath.log(model.at(throttle, speed).lambda().value()));
    for (ErrorSource source : List.of(ErrorSource.PILOT, ErrorSource.NEEDLE, ErrorSource.MAIN)) {
      double up = model.differing(source, z).fuelSensitivities(throttle, speed).lnLambda();
      double down = model.differing(source, -z).fuelSensitivities(throttle, speed).lnLambda();
      if (Math.max(up, down) < StrictMath.log(99)) { // beyond it λ is held
        assertThat((up - down) / (2 * z))
            .as("%s", source)
            .isCloseTo(given.with(0).to(source), within(1e-7));
      }
    }
  }

  /** The closed form against setups whose parts are made a little bigger and smaller. */
  @Property
  void sizeSensitivities_areTheSlopesOfPartsThatDiffer(
      @ForAll Setup setup, @ForAll ThrottleOpening throttle, @ForAll EngineSpeed speed) {
    Setting s = setup.setting();
    Needle n = s.needle();
    SizeSensitivities given = MixtureModel.of(setup).fuelSensitivities(throttle, speed).sizes();
    Map<DoubleFunction<Setting>, Double> slopes =
        Map.of(
            off -> s.withPilotJet(bigger(s.pilotJet(), off)), given.pilotJet(),
            off -> s.withMainJet(bigger(s.mainJet(), off)), given.mainJet(),
            off ->
                    s.withNeedleJet(
                        new NeedleJet(bigger(s.needleJet().bore(), off), s.needleJet().neck())),
                given.needleJet(),
            off ->
                    s.withNeedle(
                        Needle.builder()
                            .id(n.id())
                            .cylinder(bigger(n.cylinder(), off))
                            .tapers(n.tapers())
                            .grooves(n.grooves())
                            .groovePitch(n.groovePitch())
                            .tip(n.tip())
                            .build(),
                        s.clip()),
                given.needle());
    double off = 1e-5;
    slopes.forEach(
        (made, slope) -> {
          DoubleUnaryOperator of =
              step -> lnLambda(setup.withSetting(made.apply(step)), throttle, speed);
          if (Math.max(of.applyAsDouble(off), of.applyAsDouble(-off)) < StrictMath.log(99)) {
            double wide = difference(of, off);
            double narrow = difference(of, off / 2);
            // Where the fuel cuts in the slope changes over the step: by what halving it moves.
            assertThat((4 * narrow - wide) / 3)
                .isCloseTo(slope, within(1e-4 * Math.abs(slope) + Math.abs(narrow - wide) + 1e-5));
          } // beyond it λ is held
        });
  }

  private static double difference(DoubleUnaryOperator of, double off) {
    return (of.applyAsDouble(off) - of.applyAsDouble(-off)) / (2 * off);
  }

  private static double lnLambda(Setup setup, ThrottleOpening throttle, EngineSpeed speed) {
    return MixtureModel.of(setup).fuelSensitivities(throttle, speed).lnLambda();
  }

  private static JetBore bigger(JetBore bore, double off) {
    return JetBore.ofMillimetres(bore.millimetres() + off);
  }

  private static Diameter bigger(Diameter diameter, double off) {
    return Diameter.ofMillimetres(diameter.millimetres() + off);
  }

  @Property
  void overrun_isLeanerThanTheClosedThrottleAtThatSpeed(@ForAll Setup setup) {
    MixtureModel model = MixtureModel.of(setup);
    Overrun overrun = model.overrun();
    MixturePoint closed = model.at(ThrottleOpening.CLOSED, overrun.speed());

    assertThat(overrun.lambda()).isGreaterThanOrEqualTo(closed.lambda());
    assertThat(overrun.pilotFuelFlow()).isEqualTo(closed.pilotFuelFlow());
    assertThat(overrun.airFlow()).isEqualTo(closed.airFlow());
    assertThat(overrun.fuelShareOfOpen()).isNotNegative().isFinite();
  }
}
