package dev.jetting.rules.search;

import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.rules.search.Draws.Drawn;
import dev.jetting.rules.search.Space.NeedleGroove;
import dev.jetting.rules.search.Space.Slide;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * The settings that are right on one engine whose differences are known. At every opening the fuel
 * lies between a least (the lean limit, on every day) and a most (the rich limit, today). No
 * logarithm is needed, so every setting is computed until one opening is out of bounds.
 */
final class EngineSweep {

  private final Space space;
  private final Extras extras;
  private final SearchLimits limits;
  private final Drawn engine;
  private final Work work;

  private final double[][] main;
  private final double[][] leastFuel;
  private final double[] mostFuel;
  private final double[] wantedFuel;

  private double bestDistance = Double.POSITIVE_INFINITY;
  private @Nullable ChoiceIndices best;
  private boolean cut;

  EngineSweep(Space space, Extras extras, SearchLimits limits, Drawn engine, Work work) {
    this.space = space;
    this.extras = extras;
    this.limits = limits;
    this.engine = engine;
    this.work = work;
    int days = space.days.size();
    main = new double[days][space.openings];
    leastFuel = new double[days][space.openings];
    mostFuel = new double[space.openings];
    wantedFuel = new double[space.openings];
  }

  /** The right setting nearest to need, of the choices without extras; null if there is none. */
  @Nullable ChoiceIndices best() {
    sweep(null);
    return best;
  }

  /** Adds what the settings lack that one extra part, or two extra jets, make right. */
  void lacking(BitSet found) {
    sweep(found);
  }

  /** Whether a sweep was stopped before its end, so that what it found is not all. */
  boolean isCut() {
    return cut;
  }

  private void sweep(@Nullable BitSet lacking) {
    for (int s = 0; s < space.slides(); s++) {
      Slide slide = space.slide(s);
      if (slide == null || (lacking == null && extras.isExtraSlide(s))) {
        continue;
      }
      prepare(slide);
      for (int jet = 0; jet < space.choices.needleJets().size(); jet++) {
        for (NeedleGroove h : space.hung) {
          int extra = extras.ofRing(s, jet, h.needle());
          if (work.stopped()) {
            cut = true;
            return;
          }
          if (extra > (lacking == null ? 0 : 1) || !space.fits(jet, h)) {
            continue;
          }
          MixtureTable.Ring[] rings = new MixtureTable.Ring[space.days.size()];
          for (int d = 0; d < rings.length; d++) {
            rings[d] = space.ring(slide, d, jet, h);
          }
          for (int m = 0; m < space.mains; m++) {
            block(slide, s, jet, h, m, rings, lacking);
          }
        }
      }
    }
  }

  private void prepare(Slide slide) {
    for (int i = 0; i < space.openings; i++) {
      for (int d = 0; d < leastFuel.length; d++) {
        leastFuel[d][i] = slide.fuelAtOne[d][i] * engine.residual()[i] / limits.lean[i];
      }
      double today = slide.fuelAtOne[0][i] * engine.residual()[i];
      mostFuel[i] = today / limits.rich[i];
      wantedFuel[i] = today / limits.need[i];
    }
  }

  private void block(
      Slide slide,
      int s,
      int jet,
      NeedleGroove h,
      int m,
      MixtureTable.Ring[] rings,
      @Nullable BitSet lacking) {
    for (int d = 0; d < rings.length; d++) {
      MixtureTable table = slide.day[d];
      for (int i = 0; i < space.openings; i++) {
        double fuel = table.mainFuel(rings[d], slide.main[d][m], i);
        main[d][i] = fuel;
        if (fuel + slide.mostPilot[d][i] < leastFuel[d][i]
            || (d == 0 && fuel + slide.leastPilot[0][i] > mostFuel[i])) {
          return;
        }
      }
    }
    for (int p = 0; p < space.pilots; p++) {
      if (lacking == null) {
        if (!extras.isExtraMain(m) && !extras.isExtraPilot(p / space.screws) && isRight(slide, p)) {
          offer(space.pick(s, jet, h, p, m), slide.pilotFuel[0][p]);
        }
      } else {
        int lack = extras.lacking(s, jet, h.needle(), p / space.screws, m);
        if (lack > 0 && !lacking.get(lack) && isRight(slide, p)) {
          lacking.set(lack);
        }
      }
    }
  }

  private boolean isRight(Slide slide, int p) {
    if (slide.overrunLambda(p) > limits.overrun) {
      return false;
    }
    for (int d = 0; d < main.length; d++) {
      double[] pilot = slide.pilotFuel[d][p];
      for (int i = 0; i < space.openings; i++) {
        double fuel = main[d][i] + pilot[i];
        if (fuel < leastFuel[d][i] || (d == 0 && fuel > mostFuel[i])) {
          return false;
        }
      }
    }
    return true;
  }

  private void offer(ChoiceIndices pick, double[] pilotFuel) {
    double sum = 0;
    for (int i = 0; i < space.openings; i++) {
      double off = StrictMath.log(wantedFuel[i] / (main[0][i] + pilotFuel[i]));
      sum += limits.weight[i] * (off > 0 ? 2 * off : -off);
      if (sum >= bestDistance) {
        return;
      }
    }
    bestDistance = sum;
    best = pick;
  }
}
