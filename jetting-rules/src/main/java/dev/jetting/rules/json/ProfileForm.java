package dev.jetting.rules.json;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.core.mixture.PartEffect;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Lambda;
import dev.jetting.units.Length;
import dev.jetting.units.MassFlow;
import dev.jetting.units.Pressure;
import dev.jetting.units.Probability;
import dev.jetting.units.Sentence;
import dev.jetting.units.ThrottleOpening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lean risk over the throttle range, in JSON: columns of numbers, one for each opening.
 *
 * @param grid the openings, with what is the same on every day
 * @param mixture the mixture by the model
 * @param risk the lean risk
 * @param effects what each part does; empty where that is not stated
 */
record ProfileForm(GridForm grid, MixtureForm mixture, RiskForm risk, List<EffectForm> effects) {

  /**
   * The openings of a profile, in JSON.
   *
   * @param throttle throttle openings by lift, 0 to 1, rising
   * @param speed engine speeds on the level road
   * @param lift lifts of the slide
   * @param leanLimit the leanest mixture that does no harm there
   * @param richLimit the richest mixture on which the engine runs cleanly there
   * @param uphillSpeed engine speeds on a climb
   */
  record GridForm(
      List<Double> throttle,
      Column speed,
      Column lift,
      List<Double> leanLimit,
      List<Double> richLimit,
      Column uphillSpeed) {

    static GridForm of(List<RiskPoint> points) {
      return new GridForm(
          Column.numbers(points, point -> point.mixture().throttle().share()),
          Column.of(points, RPM, point -> point.mixture().speed().rpm()),
          Column.of(points, MM, point -> point.mixture().lift().millimetres()),
          Column.numbers(points, point -> point.leanLimit().value()),
          Column.numbers(points, point -> point.richLimit().value()),
          Column.of(points, RPM, point -> point.uphill().speed().rpm()));
    }

    Stream<List<Double>> columns() {
      return Stream.of(
          throttle, speed.values(), lift.values(), leanLimit, richLimit, uphillSpeed.values());
    }
  }

  /**
   * The mixture at each opening by the model, in JSON.
   *
   * @param chargeShare air by what the engine would draw with nothing before its inlet, 0 to 2
   * @param depression heights of the wave behind the slide
   * @param needleJetSuction heights of the wave at the needle jet's mouth
   * @param wellDepression heights of the wave in the pilot well
   * @param openShare share of the turn for which the wave at the needle jet stands, 0 to 1
   * @param airFlow moist air
   * @param mainFuelFlow fuel and oil through main jet and needle jet
   * @param pilotFuelFlow fuel and oil through the pilot jet
   * @param lambda the mixture
   */
  record MixtureForm(
      List<Double> chargeShare,
      Column depression,
      Column needleJetSuction,
      Column wellDepression,
      List<Double> openShare,
      Column airFlow,
      Column mainFuelFlow,
      Column pilotFuelFlow,
      List<Double> lambda) {

    static MixtureForm of(List<MixturePoint> points) {
      return new MixtureForm(
          Column.numbers(points, MixturePoint::chargeShare),
          Column.of(points, PA, point -> point.depression().pascals()),
          Column.of(points, PA, point -> point.needleJetSuction().pascals()),
          Column.of(points, PA, point -> point.wellDepression().pascals()),
          Column.numbers(points, MixturePoint::openShare),
          Column.of(points, FLOW, point -> point.airFlow().gramsPerSecond()),
          Column.of(points, FLOW, point -> point.mainFuelFlow().gramsPerSecond()),
          Column.of(points, FLOW, point -> point.pilotFuelFlow().gramsPerSecond()),
          Column.numbers(points, point -> point.lambda().value()));
    }

    MixturePoint point(GridForm grid, int i) {
      return new MixturePoint(
          ThrottleOpening.ofShare(grid.throttle.get(i)),
          grid.speed.at(i, RPM, EngineSpeed::ofRpm),
          grid.lift.at(i, MM, Length::ofMillimetres),
          chargeShare.get(i),
          depression.at(i, PA, Pressure::ofPascals),
          needleJetSuction.at(i, PA, Pressure::ofPascals),
          wellDepression.at(i, PA, Pressure::ofPascals),
          openShare.get(i),
          airFlow.at(i, FLOW, MassFlow::ofGramsPerSecond),
          mainFuelFlow.at(i, FLOW, MassFlow::ofGramsPerSecond),
          pilotFuelFlow.at(i, FLOW, MassFlow::ofGramsPerSecond),
          Lambda.of(lambda.get(i)));
    }

    Stream<List<Double>> columns() {
      return Stream.of(
          chargeShare,
          depression.values(),
          needleJetSuction.values(),
          wellDepression.values(),
          openShare,
          airFlow.values(),
          mainFuelFlow.values(),
          pilotFuelFlow.values(),
          lambda);
    }
  }

  /**
   * The lean risk at each opening, in JSON.
   *
   * @param lambda the mixture expected there, with what readings have taught; left out where it is
   *     the model's own
   * @param spread standard deviation of ln λ
   * @param leanRisk probability that the true mixture is leaner than the lean limit
   * @param uphillModelled the mixture on a climb by the model alone
   * @param uphillSpread standard deviation of ln λ on a climb
   * @param uphillLeanRisk probability that the true mixture is leaner than the lean limit on a
   *     climb
   */
  record RiskForm(
      Optional<List<Double>> lambda,
      List<Double> spread,
      List<Double> leanRisk,
      List<Double> uphillModelled,
      List<Double> uphillSpread,
      List<Double> uphillLeanRisk) {

    static RiskForm of(List<RiskPoint> points) {
      boolean own = points.stream().allMatch(p -> p.lambda().equals(p.mixture().lambda()));
      return new RiskForm(
          own
              ? Optional.empty()
              : Optional.of(Column.numbers(points, point -> point.lambda().value())),
          Column.numbers(points, RiskPoint::spread),
          Column.numbers(points, point -> point.leanRisk().value()),
          Column.numbers(points, point -> point.uphill().modelled().value()),
          Column.numbers(points, point -> point.uphill().spread()),
          Column.numbers(points, point -> point.uphill().leanRisk().value()));
    }

    RiskPoint point(GridForm grid, MixturePoint mixture, List<PartEffect> effects, int i) {
      return new RiskPoint(
          mixture,
          lambda.map(values -> Lambda.of(values.get(i))).orElse(mixture.lambda()),
          spread.get(i),
          Lambda.of(grid.leanLimit.get(i)),
          Lambda.of(grid.richLimit.get(i)),
          Probability.of(leanRisk.get(i)),
          new UphillRisk(
              grid.uphillSpeed.at(i, RPM, EngineSpeed::ofRpm),
              Lambda.of(uphillModelled.get(i)),
              uphillSpread.get(i),
              Probability.of(uphillLeanRisk.get(i))),
          effects);
    }

    Stream<List<Double>> columns() {
      return Stream.concat(
          lambda.stream(),
          Stream.of(spread, leanRisk, uphillModelled, uphillSpread, uphillLeanRisk));
    }
  }

  /**
   * What a part does at each opening, in JSON.
   *
   * @param part the part
   * @param richer change of ln λ by one customary step towards rich, zero or less
   * @param leaner change of ln λ by one customary step towards lean, zero or more
   * @param authority the part's share in what all parts can do there, 0 to 1; left out where it
   *     follows from the two
   */
  record EffectForm(
      MeteringPart part,
      List<Double> richer,
      List<Double> leaner,
      Optional<List<Double>> authority) {

    static List<EffectForm> of(List<RiskPoint> points) {
      boolean follows =
          points.stream().allMatch(p -> PartEffect.sharing(p.effects()).equals(p.effects()));
      return IntStream.range(0, points.get(0).effects().size())
          .mapToObj(i -> of(points.stream().map(p -> p.effects().get(i)).toList(), follows))
          .toList();
    }

    private static EffectForm of(List<PartEffect> effects, boolean follows) {
      return new EffectForm(
          effects.get(0).part(),
          Column.numbers(effects, PartEffect::richer),
          Column.numbers(effects, PartEffect::leaner),
          follows ? Optional.empty() : Optional.of(Column.numbers(effects, PartEffect::authority)));
    }

    static List<PartEffect> at(List<EffectForm> effects, int i) {
      List<PartEffect> shared = PartEffect.sharing(effects.stream().map(e -> e.at(i)).toList());
      List<PartEffect> all = new ArrayList<>();
      for (int part = 0; part < shared.size(); part++) {
        PartEffect effect = effects.get(part).at(i);
        all.add(effects.get(part).authority.isPresent() ? effect : shared.get(part));
      }
      return all;
    }

    private PartEffect at(int i) {
      return new PartEffect(
          part, richer.get(i), leaner.get(i), authority.map(values -> values.get(i)).orElse(0.0));
    }

    Stream<List<Double>> columns() {
      return Stream.concat(Stream.of(richer, leaner), authority.stream());
    }
  }

  private static final String RPM = "rpm";
  private static final String MM = "mm";
  private static final String PA = "Pa";
  private static final String FLOW = "g/s";

  static ProfileForm of(RiskProfile profile) {
    List<RiskPoint> points = profile.points();
    return new ProfileForm(
        GridForm.of(points),
        MixtureForm.of(points.stream().map(RiskPoint::mixture).toList()),
        RiskForm.of(points),
        EffectForm.of(points));
  }

  RiskProfile profile() {
    int size = grid.throttle.size();
    Stream.of(
            grid.columns(),
            mixture.columns(),
            risk.columns(),
            effects.stream().flatMap(EffectForm::columns))
        .flatMap(columns -> columns)
        .filter(column -> column.size() != size)
        .findFirst()
        .ifPresent(
            column -> {
              throw InvalidValueException.worded(
                  Sentence.of("error.column-size").with("size", column.size()).with("count", size),
                  Sentence.of("error.each-opening"));
            });
    return new RiskProfile(IntStream.range(0, size).mapToObj(this::point).toList());
  }

  private RiskPoint point(int i) {
    return risk.point(grid, mixture.point(grid, i), EffectForm.at(effects, i), i);
  }
}
