package dev.jetting.rules.search;

import dev.jetting.core.calibration.Normal;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.search.Space.NeedleGroove;
import dev.jetting.rules.search.Space.Slide;

/**
 * Goes through the settings with one slide and one needle jet, and passes over those that provably
 * do not matter. It computes the others by the steps of {@link dev.jetting.rules.risk.RiskModel},
 * to the last bit. Belongs to one worker.
 *
 * <p>What is passed over rests on these bounds; F is the fuel at which λ is what is needed, f the
 * fuel that flows, f₀ the fuel at the lean limit:
 *
 * <ul>
 *   <li>|ln (F/f)| ≥ 2 |F − f|/(F + f): a setting's distance from below, without a logarithm; over
 *       all pilots at once with the end of their range of fuel that is nearer to F.
 *   <li>ln (f/f₀) ≤ (f/f₀ − f₀/f)/2 where f ≥ f₀: how far the lean limit is at most.
 *   <li>σ² ≥ residual² + (pilot's spread · its share of the fuel)², σ of the middle air case: the
 *       other errors and the tolerances only add. In all cases σ² ≥ residual².
 *   <li>Where the limit is less than q σ away from the middle case, that case's risk is beyond
 *       P(standard normal &gt; q), and the whole risk beyond that by the case's probability. With
 *       more air λ is no less, so the same holds of all cases from the middle on and the residual
 *       alone ({@link RiskLimit}).
 * </ul>
 *
 * <p>Each is taken with a slack for rounding.
 */
final class Sweep implements Sweeping {

  /** Slack of what is compared by its ratio. */
  private static final double SLACK = 1e-9;

  /** Slack of what is compared by its difference. */
  private static final double ROUNDING = 1e-12;

  /** Above this λ the model may hold it at its leanest, and the bounds are left alone. */
  private static final double SAFELY_BELOW_LEANEST = 50;

  private static final Normal STANDARD = new Normal(0, 1);

  private final Space space;
  private final SearchLimits limits;
  private final Bounds bounds;
  private final SettingCollector keeper;
  private final Work work;

  /** The spreads with the tolerances of the jets, by pilot jet and main jet. */
  private final ModelUncertainty[][] parts;

  private final MixtureTable.Ring[] rings;
  private final double[][] main;
  private final double[] lambda;
  private final double[] wantedFuel;
  private final double[] termWeight;
  private final double[] richFuel;
  private final double[][] limitFuel;
  private final MixtureTable.Local local = new MixtureTable.Local();
  private final double[] deviationsAway;
  private boolean allLeanOverrun;
  private int criticalDay;
  private int criticalOpening;
  private long workedOut;

  /** What a search allows: most new parts and highest price, and the costs of each choice. */
  record Bounds(
      int newParts,
      long price,
      Costs.Of pilotJet,
      Costs.Of cutaway,
      Costs.Of needleJet,
      Costs.Of needle,
      Costs.Of mainJet) {}

  Sweep(
      Space space,
      SearchLimits limits,
      ModelUncertainty[][] parts,
      Bounds bounds,
      SettingCollector keeper,
      Work work) {
    this.space = space;
    this.limits = limits;
    this.parts = parts;
    this.bounds = bounds;
    this.keeper = keeper;
    this.work = work;
    deviationsAway = new double[limits.airCases.size()];
    int days = space.days.size();
    rings = new MixtureTable.Ring[days];
    main = new double[days][space.openings];
    lambda = new double[space.openings];
    wantedFuel = new double[space.openings];
    termWeight = new double[space.openings];
    richFuel = new double[space.openings];
    limitFuel = new double[days][space.openings];
  }

  @Override
  public long workedOut() {
    return workedOut;
  }

  @Override
  public void piece(int index) {
    int needleJets = space.choices.needleJets().size();
    int slideIndex = index / needleJets;
    int needleJet = index % needleJets;
    Slide slide = space.slide(slideIndex);
    if (slide != null) {
      prepare(slide);
    }
    for (NeedleGroove h : space.hung) {
      if (work.stopped()) {
        return;
      }
      int mains =
          slide != null && space.fits(needleJet, h)
              ? blocks(slide, slideIndex, needleJet, h)
              : space.mains;
      work.done((long) mains * space.pilots);
    }
  }

  /** Goes through the main jets with one ring; returns how many it came to before the stop. */
  private int blocks(Slide slide, int slideIndex, int needleJet, NeedleGroove h) {
    for (int d = 0; d < rings.length; d++) {
      rings[d] = space.ring(slide, d, needleJet, h);
    }
    int m = 0;
    while (m < space.mains && !work.stopped()) {
      block(slide, slideIndex, needleJet, h, m);
      m++;
    }
    return m;
  }

  private void prepare(Slide slide) {
    double leanest = StrictMath.exp(2) / 100;
    allLeanOverrun = true;
    for (int p = 0; p < space.pilots; p++) {
      allLeanOverrun &= isLeanOverrun(slide, p);
    }
    for (int i = 0; i < space.openings; i++) {
      richFuel[i] = slide.fuelAtOne[0][i] / limits.rich[i] * (1 + SLACK);
      wantedFuel[i] = slide.fuelAtOne[0][i] / limits.need[i];
      boolean bounded = limits.weights > 0 && limits.need[i] * leanest < 1;
      termWeight[i] = bounded ? 2 * limits.weight[i] / limits.weights * (1 - SLACK) : 0;
      for (int d = 0; d < limitFuel.length; d++) {
        boolean below = limits.lean[i] < SAFELY_BELOW_LEANEST;
        limitFuel[d][i] = below ? slide.fuelAtOne[d][i] / limits.lean[i] : 0;
      }
    }
  }

  private boolean isLeanOverrun(Slide slide, int p) {
    return slide.overrunLambda(p) > limits.overrun;
  }

  /** All pilots with one ring and one main jet. */
  private void block(Slide slide, int slideIndex, int needleJet, NeedleGroove h, int m) {
    int newParts =
        bounds.cutaway.newParts()[slideIndex]
            + bounds.needleJet.newParts()[needleJet]
            + bounds.needle.newParts()[h.needle()]
            + bounds.mainJet.newParts()[m];
    long price =
        bounds.cutaway.price()[slideIndex]
            + bounds.needleJet.price()[needleJet]
            + bounds.needle.price()[h.needle()]
            + bounds.mainJet.price()[m];
    if (newParts > bounds.newParts || price > bounds.price) {
      return;
    }
    fillMain(slide, 0, m);
    double least = leastDistance(slide);
    boolean tooRich = isTooRich(slide.leastPilot[0]);
    if (least > keeper.furthest(tooRich)) {
      return;
    }
    RiskLimit limit = keeper.limit(least, newParts, price, tooRich, allLeanOverrun);
    if (limit.isNothing() || isBlockBeyond(slide, 0, limit)) {
      return;
    }
    for (int d = 1; d < rings.length; d++) {
      fillMain(slide, d, m);
      if (isBlockBeyond(slide, d, limit)) {
        return;
      }
    }
    for (int p = 0; p < space.pilots; p++) {
      int withPilot = newParts + bounds.pilotJet.newParts()[p / space.screws];
      long priceWithPilot = price + bounds.pilotJet.price()[p / space.screws];
      if (withPilot <= bounds.newParts && priceWithPilot <= bounds.price) {
        setting(slide, slideIndex, needleJet, h, m, p, withPilot, priceWithPilot);
      }
    }
  }

  private void fillMain(Slide slide, int d, int m) {
    MixtureTable table = slide.day[d];
    MixtureTable.Ring ring = rings[d];
    MixtureTable.MainJet jet = slide.main[d][m];
    double[] into = main[d];
    for (int i = 0; i < into.length; i++) {
      into[i] = table.mainFuel(ring, jet, i);
    }
  }

  /** Whether a setting with at least so much fuel from the pilot is surely too rich today. */
  private boolean isTooRich(double[] pilotFuel) {
    for (int i = 0; i < richFuel.length; i++) {
      if (main[0][i] + pilotFuel[i] > richFuel[i]) {
        return true;
      }
    }
    return false;
  }

  /** No more than the distance of any setting of the block. */
  private double leastDistance(Slide slide) {
    double sum = 0;
    for (int i = 0; i < wantedFuel.length; i++) {
      double wanted = wantedFuel[i];
      double most = main[0][i] + slide.mostPilot[0][i];
      double least = main[0][i] + slide.leastPilot[0][i];
      if (wanted > most) {
        sum += 2 * termWeight[i] * (wanted - most) / (wanted + most);
      } else if (wanted < least) {
        sum += termWeight[i] * (least - wanted) / (wanted + least);
      }
    }
    return sum - ROUNDING;
  }

  /** No more than the distance of a setting; may stop once it is beyond what matters. */
  private double leastDistance(double[] pilotFuel, double furthest) {
    double sum = 0;
    for (int i = 0; i < wantedFuel.length; i++) {
      double wanted = wantedFuel[i];
      double fuel = main[0][i] + pilotFuel[i];
      double off = (wanted - fuel) / (wanted + fuel);
      sum += termWeight[i] * (off > 0 ? 2 * off : -off);
      if (sum - ROUNDING > furthest) {
        break;
      }
    }
    return sum - ROUNDING;
  }

  /** Whether even with the richest pilot the risk is beyond the limit somewhere on a day. */
  private boolean isBlockBeyond(Slide slide, int d, RiskLimit limit) {
    if (!limit.isBounded()) {
      return false;
    }
    double needed = squared(limit.ofRest()) * limits.residualVariance * (1 - SLACK);
    for (int i = 0; i < space.openings; i++) {
      double ratio = (main[d][i] + slide.mostPilot[d][i]) / limitFuel[d][i];
      double away = (ratio - 1 / ratio) / 2 + ROUNDING;
      if (ratio < 1 - SLACK || (away > 0 && away * away < needed)) {
        return true;
      }
    }
    return false;
  }

  /** Of a quantile below zero nothing follows. */
  private static double squared(double quantile) {
    return quantile > 0 ? quantile * quantile : 0;
  }

  /**
   * Whether the risk of a setting is beyond the limit; finds the most critical point on the way.
   */
  private boolean isBeyond(Slide slide, int p, RiskLimit limit) {
    boolean bounded = limit.isBounded();
    double ofMiddle = squared(limit.ofMiddle()) * (1 - SLACK);
    double needed = squared(limit.ofRest()) * limits.residualVariance * (1 - SLACK);
    double pilotVariance = limits.pilotSpread * limits.pilotSpread;
    double closest = Double.POSITIVE_INFINITY;
    for (int d = 0; d < rings.length; d++) {
      double[] pilotFuel = slide.pilotFuel[d][p];
      for (int i = 0; i < space.openings; i++) {
        double fuel = main[d][i] + pilotFuel[i];
        double ratio = fuel / limitFuel[d][i];
        double away = (ratio - 1 / ratio) / 2 + ROUNDING;
        if (bounded) {
          if (ratio < 1 - SLACK) {
            return true;
          }
          double share = pilotFuel[i] / fuel;
          double variance = limits.residualVariance + pilotVariance * share * share;
          if (away > 0 && away * away < Math.max(needed, ofMiddle * variance)) {
            return true;
          }
        }
        if (away < closest) {
          closest = away;
          criticalDay = d;
          criticalOpening = i;
        }
      }
    }
    return false;
  }

  private void setting(
      Slide slide,
      int slideIndex,
      int needleJet,
      NeedleGroove h,
      int m,
      int p,
      int newParts,
      long price) {
    boolean tooRich = isTooRich(slide.pilotFuel[0][p]);
    double furthest = keeper.furthest(tooRich);
    double least = leastDistance(slide.pilotFuel[0][p], furthest);
    if (least > furthest) {
      return;
    }
    boolean leanOverrun = isLeanOverrun(slide, p);
    RiskLimit limit = keeper.limit(least, newParts, price, tooRich, leanOverrun);
    if (limit.isNothing() || isBeyond(slide, p, limit)) {
      return;
    }
    workedOut++;
    double risk = leanRisk(slide, m, p, limit.risk());
    if (risk > limit.risk()) {
      return;
    }
    keeper.offer(
        new SettingCandidate(
            standing(slide, p, risk > limits.accepted || leanOverrun),
            risk,
            distance(slide, p),
            newParts,
            price,
            space.pick(slideIndex, needleJet, h, p, m)));
  }

  /** The highest risk; any number beyond the limit if it is beyond. */
  private double leanRisk(Slide slide, int m, int p, double limit) {
    double highest = riskAt(slide, criticalDay, m, p, criticalOpening, -1);
    for (int d = 0; d < rings.length; d++) {
      for (int i = 0; i < space.openings && highest <= limit; i++) {
        highest = riskAt(slide, d, m, p, i, highest);
      }
    }
    return highest;
  }

  /** The risk at an opening, or the highest so far where it is surely no more. */
  private double riskAt(Slide slide, int d, int m, int p, int i, double highest) {
    MixtureTable table = slide.day[d];
    MixtureTable.Pilot pilot = slide.pilot[d][p];
    MixtureTable.MainJet jet = slide.main[d][m];
    ModelUncertainty sizes = parts[p / space.screws][m];
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < deviationsAway.length; c++) {
      table.local(pilot, rings[d], jet, i, c, local);
      deviationsAway[c] = limits.deviationsAway(local, i, sizes);
      least = Math.min(least, deviationsAway[c]);
    }
    // No case has more risk than the nearest one, except for rounding.
    if (STANDARD.above(least - ROUNDING) * (1 + ROUNDING) <= highest) {
      return highest;
    }
    double risk = 0;
    for (int c = 0; c < deviationsAway.length; c++) {
      risk += limits.airCases.get(c).probability() * STANDARD.above(deviationsAway[c]);
    }
    return Math.max(highest, risk);
  }

  private double distance(Slide slide, int p) {
    for (int i = 0; i < lambda.length; i++) {
      lambda[i] = slide.day[0].lambda(i, main[0][i], slide.pilotFuel[0][p][i]);
    }
    return limits.distance(lambda);
  }

  private Standing standing(Slide slide, int p, boolean tooLean) {
    if (tooLean) {
      return Standing.TOO_LEAN;
    }
    for (int i = 0; i < space.openings; i++) {
      if (slide.day[0].lambda(i, main[0][i], slide.pilotFuel[0][p][i]) < limits.rich[i]) {
        return Standing.TOO_RICH;
      }
    }
    return Standing.RIGHT;
  }
}
