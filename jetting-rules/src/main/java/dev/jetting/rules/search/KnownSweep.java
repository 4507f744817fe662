package dev.jetting.rules.search;

import dev.jetting.core.calibration.AirCase;
import dev.jetting.core.calibration.Normal;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.search.Space.NeedleGroove;
import dev.jetting.rules.search.Space.Slide;

/**
 * Goes through the settings with one slide and one needle jet on an engine with a proven setup.
 * What is known moves the mixture, so the bounds of {@link Sweep} do not hold: each setting is
 * computed until it is too far from need or too lean to matter. Belongs to one worker.
 */
final class KnownSweep implements Sweeping {

  private static final Normal STANDARD = new Normal(0, 1);

  private final Space space;
  private final SearchLimits limits;
  private final ModelUncertainty[][] parts;
  private final Sweep.Bounds bounds;
  private final KnownOverrun overrun;
  private final SettingCollector keeper;
  private final Work work;
  private final int middle;
  private final MixtureTable.Ring[] rings;
  private final double[] lambda;
  private final MixtureTable.Local local = new MixtureTable.Local();
  private int criticalDay;
  private int criticalOpening;
  private long workedOut;

  KnownSweep(
      Space space,
      SearchLimits limits,
      ModelUncertainty[][] parts,
      Sweep.Bounds bounds,
      KnownOverrun overrun,
      SettingCollector keeper,
      Work work) {
    this.space = space;
    this.limits = limits;
    this.parts = parts;
    this.bounds = bounds;
    this.overrun = overrun;
    this.keeper = keeper;
    this.work = work;
    middle = limits.airCases.size() / 2;
    rings = new MixtureTable.Ring[space.days.size()];
    lambda = new double[space.openings];
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
    for (NeedleGroove h : space.hung) {
      if (work.stopped()) {
        return;
      }
      int mains =
          slide != null && space.fits(needleJet, h)
              ? mains(slide, slideIndex, needleJet, h)
              : space.mains;
      work.done((long) mains * space.pilots);
    }
  }

  /** Goes through the main jets; returns how many it came to before the stop. */
  private int mains(Slide slide, int slideIndex, int needleJet, NeedleGroove h) {
    for (int d = 0; d < rings.length; d++) {
      rings[d] = space.ring(slide, d, needleJet, h);
    }
    int m = 0;
    while (m < space.mains && !work.stopped()) {
      for (int p = 0; p < space.pilots; p++) {
        setting(slide, slideIndex, needleJet, h, m, p);
      }
      m++;
    }
    return m;
  }

  private void setting(Slide slide, int slideIndex, int needleJet, NeedleGroove h, int m, int p) {
    int newParts =
        bounds.cutaway().newParts()[slideIndex]
            + bounds.needleJet().newParts()[needleJet]
            + bounds.needle().newParts()[h.needle()]
            + bounds.mainJet().newParts()[m]
            + bounds.pilotJet().newParts()[p / space.screws];
    long price =
        bounds.cutaway().price()[slideIndex]
            + bounds.needleJet().price()[needleJet]
            + bounds.needle().price()[h.needle()]
            + bounds.mainJet().price()[m]
            + bounds.pilotJet().price()[p / space.screws];
    if (newParts > bounds.newParts() || price > bounds.price()) {
      return;
    }
    workedOut++;
    boolean tooRich = expect(slide, m, p);
    double distance = limits.distance(lambda);
    if (distance > keeper.furthest(tooRich)) {
      return;
    }
    boolean leanOverrun = overrun.isTooLean(slideIndex, p);
    RiskLimit limit = keeper.limit(distance, newParts, price, tooRich, leanOverrun);
    if (limit.isNothing()) {
      return;
    }
    double risk = leanRisk(slide, m, p, limit.risk());
    if (risk <= limit.risk()) {
      keeper.offer(
          new SettingCandidate(
              standing(tooRich, risk > limits.accepted || leanOverrun),
              risk,
              distance,
              newParts,
              price,
              space.pick(slideIndex, needleJet, h, p, m)));
    }
  }

  /** Fills λ as expected today; returns whether it is too rich somewhere. */
  private boolean expect(Slide slide, int m, int p) {
    boolean tooRich = false;
    for (int i = 0; i < lambda.length; i++) {
      slide.day[0].local(slide.pilot[0][p], rings[0], slide.main[0][m], i, middle, local);
      lambda[i] = StrictMath.exp(limits.expected(local, i, middle));
      tooRich |= lambda[i] < limits.rich[i];
    }
    return tooRich;
  }

  private static Standing standing(boolean tooRich, boolean tooLean) {
    if (tooLean) {
      return Standing.TOO_LEAN;
    }
    return tooRich ? Standing.TOO_RICH : Standing.RIGHT;
  }

  /** The highest risk; any number beyond the limit if it is beyond. */
  private double leanRisk(Slide slide, int m, int p, double limit) {
    double highest = riskAt(slide, criticalDay, m, p, criticalOpening);
    for (int d = 0; d < rings.length; d++) {
      for (int i = 0; i < space.openings && highest <= limit; i++) {
        double risk = riskAt(slide, d, m, p, i);
        if (risk > highest) {
          highest = risk;
          criticalDay = d;
          criticalOpening = i;
        }
      }
    }
    return highest;
  }

  private double riskAt(Slide slide, int d, int m, int p, int i) {
    double risk = 0;
    for (int c = 0; c < limits.airCases.size(); c++) {
      slide.day[d].local(slide.pilot[d][p], rings[d], slide.main[d][m], i, c, local);
      AirCase air = limits.airCases.get(c);
      double away = limits.deviationsAwayKnown(local, i, c, parts[p / space.screws][m]);
      risk += air.probability() * STANDARD.above(away);
    }
    return risk;
  }
}
