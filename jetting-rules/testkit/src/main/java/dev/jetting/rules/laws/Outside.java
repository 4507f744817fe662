package dev.jetting.rules.laws;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.LoadLine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.MixturePoint;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.rules.risk.RiskPoint;
import dev.jetting.rules.risk.RiskProfile;
import dev.jetting.rules.risk.UphillRisk;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ThrottleOpening;
import java.util.HashSet;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/** An assessed setting that is another outside of a throttle band, and the same inside. */
final class Outside {

  private static final double CHANGE = 0.75;

  /** The least that {@link MixtureNeed} takes. */
  private static final double RICHEST_WANTED = 0.6;

  private final AssessedSetting setting;
  private final ThrottleBand band;

  Outside(AssessedSetting setting, ThrottleBand band) {
    this.setting = setting;
    this.band = band;
  }

  /**
   * @param speeds whether the engine also fills otherwise at the speeds that the load line has
   *     outside of the band
   */
  AssessedSetting changed(boolean speeds) {
    SetupSheet sheet = setting.sheet();
    Engine engine = needingOtherwise(sheet.setup().engine());
    AssessedSetting inside = setting.within(band);
    return new AssessedSetting(
        sheet.toBuilder()
            .setup(sheet.setup().withEngine(speeds ? fillingOtherwise(engine) : engine))
            .riding(riddenOtherwise(sheet.riding()))
            .build(),
        setting.riskModel(),
        changed(setting.profile(), inside.profile()),
        changed(setting.coldest(), inside.coldest()),
        changed(setting.hottest(), inside.hottest()),
        setting.overrun());
  }

  private static RiskProfile changed(RiskProfile whole, RiskProfile inside) {
    Set<RiskPoint> kept = new HashSet<>(inside.points());
    return new RiskProfile(
        whole.points().stream()
            .map(point -> kept.contains(point) ? point : changed(point))
            .toList());
  }

  private static RiskPoint changed(RiskPoint point) {
    MixturePoint m = point.mixture();
    return new RiskPoint(
        new MixturePoint(
            m.throttle(),
            m.speed(),
            m.lift(),
            m.chargeShare(),
            m.depression(),
            m.needleJetSuction(),
            m.wellDepression(),
            m.openShare(),
            m.airFlow(),
            m.mainFuelFlow(),
            m.pilotFuelFlow(),
            Lambda.of(CHANGE * m.lambda().value())),
        Lambda.of(CHANGE * point.lambda().value()),
        point.spread() * CHANGE,
        Lambda.of(CHANGE * point.leanLimit().value()),
        Lambda.of(CHANGE * CHANGE * point.richLimit().value()),
        Probability.of(1 - point.leanRisk().value()),
        new UphillRisk(
            point.uphill().speed(),
            Lambda.of(CHANGE * point.uphill().modelled().value()),
            point.uphill().spread() * CHANGE,
            Probability.of(1 - point.uphill().leanRisk().value())),
        point.effects());
  }

  private Engine needingOtherwise(Engine e) {
    TreeMap<Double, Double> need = new TreeMap<>();
    e.need().points().forEach(p -> need.put(p.throttle().share(), p.lambda().value()));
    change(
        need,
        band.from().share(),
        band.to().share(),
        1,
        share -> e.need().at(ThrottleOpening.ofShare(share)).value());
    return with(
        e,
        e.deliveryRatio(),
        new MixtureNeed(
            need.entrySet().stream()
                .map(
                    point ->
                        new MixtureNeed.Point(
                            ThrottleOpening.ofShare(point.getKey()), wanted(point.getValue())))
                .toList()));
  }

  /** What scaling made richer than any engine wants is made leaner instead. */
  private static Lambda wanted(double lambda) {
    return Lambda.of(lambda < RICHEST_WANTED ? lambda / (CHANGE * CHANGE) : lambda);
  }

  private Engine fillingOtherwise(Engine e) {
    LoadLine line = e.loadLine();
    TreeMap<Double, Double> filling = new TreeMap<>();
    e.deliveryRatio().points().forEach(p -> filling.put(p.speed().rpm(), p.value()));
    change(
        filling,
        line.at(band.from()).rpm(),
        line.at(band.to()).rpm(),
        line.peak().rpm(),
        rpm -> e.deliveryRatio().at(EngineSpeed.ofRpm(rpm)));
    return with(
        e,
        new RpmCurve(
            filling.entrySet().stream()
                .map(point -> RpmCurve.Point.of(point.getKey(), point.getValue()))
                .toList()),
        e.need());
  }

  private Riding riddenOtherwise(Riding riding) {
    TreeMap<Double, Double> weights = new TreeMap<>();
    riding.profile().points().forEach(p -> weights.put(p.throttle().share(), p.weight()));
    change(
        weights,
        band.from().share(),
        band.to().share(),
        1,
        share -> riding.profile().weightAt(ThrottleOpening.ofShare(share)));
    return riding.withProfile(
        new RidingProfile(
            weights.entrySet().stream()
                .map(
                    point ->
                        new RidingProfile.Point(
                            ThrottleOpening.ofShare(point.getKey()), point.getValue()))
                .toList()));
  }

  /** Keeps a curve between two places and scales it outside, to the ends 0 and {@code end}. */
  private static void change(
      NavigableMap<Double, Double> curve,
      double from,
      double to,
      double end,
      DoubleUnaryOperator at) {
    TreeMap<Double, Double> fixed = new TreeMap<>(curve.subMap(from, true, to, true));
    for (double place : new double[] {0, from, to, end}) {
      curve.putIfAbsent(place, at.applyAsDouble(place));
    }
    fixed.put(from, curve.get(from));
    fixed.put(to, curve.get(to));
    curve.replaceAll((place, value) -> CHANGE * value);
    curve.putAll(fixed);
  }

  private static Engine with(Engine e, RpmCurve deliveryRatio, MixtureNeed need) {
    return e.toBuilder().deliveryRatio(deliveryRatio).need(need).build();
  }
}
