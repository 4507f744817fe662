package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The Pareto front of the settings in lean risk, distance and cost. It is the front of the right
 * settings. Until one is found, it is the front of all settings, without those whose lean risk is
 * above the highest or whose overrun is too lean. Of settings equal in all three the first in part
 * order stays.
 */
final class ParetoCollector implements SettingCollector {

  static final Comparator<SettingCandidate> BY_DISTANCE =
      Comparator.comparingDouble(SettingCandidate::distance)
          .thenComparingDouble(SettingCandidate::leanRisk)
          .thenComparingInt(SettingCandidate::newParts)
          .thenComparingLong(SettingCandidate::price)
          .thenComparing(SettingCandidate.PART_ORDER);

  private record Kept(SettingCandidate candidate, RiskLimit limit) {}

  private final RiskLimit accepted;
  private final RiskLimit highest;
  private final Cost cost;
  private final List<Kept> kept = new ArrayList<>(); // by rising distance
  private boolean anyRight;

  /**
   * @param accepted the lean risk beyond which no setting is right
   * @param highestRisk the lean risk beyond which none is kept, no less than what is accepted
   */
  ParetoCollector(double accepted, double highestRisk, Cost cost) {
    this.accepted = RiskLimit.of(accepted);
    highest = RiskLimit.of(highestRisk);
    this.cost = cost;
  }

  @Override
  public double furthest(boolean tooRich) {
    return anyRight && tooRich ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  @Override
  public RiskLimit limit(
      double distance, int newParts, long price, boolean tooRich, boolean leanOverrun) {
    if (leanOverrun) {
      return RiskLimit.NOTHING;
    }
    RiskLimit least = leastKept(distance, cost.of(newParts, price));
    // The first right setting matters, whatever is kept that is not.
    boolean mayBeFirst = !anyRight && !tooRich;
    return mayBeFirst && accepted.risk() > least.risk() ? accepted : least;
  }

  /** The least risk of those kept that are as near and cost no more. */
  private RiskLimit leastKept(double distance, long most) {
    RiskLimit least = anyRight ? accepted : highest;
    for (int i = 0; i < kept.size(); i++) {
      Kept k = kept.get(i);
      if (k.candidate.distance() > distance) {
        break;
      }
      if (k.limit.risk() < least.risk() && cost.of(k.candidate) <= most) {
        least = k.limit;
      }
    }
    return least;
  }

  @Override
  public void offer(SettingCandidate candidate) {
    boolean right = candidate.standing() == Standing.RIGHT;
    if (right && !anyRight) {
      anyRight = true;
      kept.clear();
    }
    if (right == anyRight && !isBeaten(candidate)) {
      keep(candidate);
    }
  }

  private boolean isBeaten(SettingCandidate candidate) {
    for (Kept k : kept) {
      if (k.candidate.distance() > candidate.distance()) {
        break;
      }
      if (beats(k.candidate, candidate)) {
        return true;
      }
    }
    return false;
  }

  private void keep(SettingCandidate candidate) {
    kept.removeIf(k -> beats(candidate, k.candidate));
    int place = kept.size();
    while (place > 0 && BY_DISTANCE.compare(candidate, kept.get(place - 1).candidate) < 0) {
      place--;
    }
    kept.add(place, new Kept(candidate, RiskLimit.of(candidate.leanRisk())));
  }

  /** Whether a is as good in all three and better in one, or equal and first in part order. */
  private boolean beats(SettingCandidate a, SettingCandidate b) {
    if (a.leanRisk() > b.leanRisk() || a.distance() > b.distance() || cost.of(a) > cost.of(b)) {
      return false;
    }
    return a.leanRisk() < b.leanRisk()
        || a.distance() < b.distance()
        || cost.of(a) < cost.of(b)
        || SettingCandidate.PART_ORDER.compare(a, b) < 0;
  }

  List<SettingCandidate> kept() {
    return kept.stream().map(Kept::candidate).toList();
  }
}
