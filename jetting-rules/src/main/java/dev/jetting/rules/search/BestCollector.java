package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.List;

/** A given number of the best settings, in {@link SettingCandidate#BEST_FIRST}. */
final class BestCollector implements SettingCollector {

  private final int count;
  private final RiskLimit accepted;
  private final List<SettingCandidate> kept = new ArrayList<>();
  private double furthest = Double.POSITIVE_INFINITY;
  private double furthestTooRich = Double.POSITIVE_INFINITY;
  private RiskLimit limit = RiskLimit.of(1);
  private RiskLimit limitOfLeanOverrun = limit;

  BestCollector(int count, double accepted) {
    this.count = count;
    this.accepted = RiskLimit.of(accepted);
  }

  @Override
  public double furthest(boolean tooRich) {
    return tooRich ? furthestTooRich : furthest;
  }

  @Override
  public RiskLimit limit(
      double distance, int newParts, long price, boolean tooRich, boolean leanOverrun) {
    return leanOverrun ? limitOfLeanOverrun : limit;
  }

  @Override
  public void offer(SettingCandidate candidate) {
    int place = kept.size();
    while (place > 0 && SettingCandidate.BEST_FIRST.compare(candidate, kept.get(place - 1)) < 0) {
      place--;
    }
    if (place >= count) {
      return;
    }
    kept.add(place, candidate);
    if (kept.size() > count) {
      kept.remove(count);
    }
    if (kept.size() == count) {
      draw(kept.get(count - 1));
    }
  }

  /** Draws the bounds by the last that is kept. */
  private void draw(SettingCandidate last) {
    if (last.standing() != Standing.TOO_LEAN) {
      boolean allRight = last.standing() == Standing.RIGHT;
      furthest = allRight ? last.distance() : furthest;
      furthestTooRich = allRight ? Double.NEGATIVE_INFINITY : last.distance();
      limit = accepted;
      limitOfLeanOverrun = RiskLimit.NOTHING;
    } else if (last.leanRisk() != limitOfLeanOverrun.risk()) {
      limitOfLeanOverrun = RiskLimit.of(last.leanRisk());
      limit = last.leanRisk() > accepted.risk() ? limitOfLeanOverrun : accepted;
    }
  }

  List<SettingCandidate> kept() {
    return kept;
  }
}
