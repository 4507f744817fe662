package dev.jetting.rules.advice;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;

import dev.jetting.core.parts.Setting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A beam search for the fewest changes after which nothing is left to remedy. From each of the best
 * settings with n changed parts it tries every further part on its best rung.
 */
final class WaySearch {

  /** How many settings are followed up with each number of changes (assumed). */
  private static final int WIDTH = 3;

  /** The safe first, and of those the ones with less left to remedy; then by cost. */
  private static final Comparator<Way> BEST =
      comparing((Way way) -> !way.judged().isSafe())
          .thenComparing(way -> way.judged().isSafe() ? way.judged().open().size() : 0)
          .thenComparingDouble(Way::cost);

  /** A rung further must better the cost by this much, so that no change is made for nothing. */
  private static final double WORTH_CHANGING = 0.02;

  /** What a further change must save where no danger is left and it remedies nothing (assumed). */
  private static final double MUCH_NEARER = 1;

  /** How many changes more are tried without a better setting (assumed). */
  private static final int PATIENCE = 2;

  private final Judge judge;
  private final Judged start;
  private final List<Ladder> ladders;
  private final double share;

  /**
   * @param share of the accepted risk, by which the lean risk may rise at most
   */
  WaySearch(Judge judge, Judged start, List<Ladder> ladders, double share) {
    this.judge = judge;
    this.start = start;
    this.ladders = ladders;
    this.share = share;
  }

  /** The way to the best setting; the start itself if no change betters it. */
  Way best() {
    Way best = Way.from(start);
    List<Way> front = List.of(best);
    for (int idle = 0; idle < PATIENCE && !front.isEmpty() && !best.judged().isDone(); idle++) {
      front = further(front);
      for (Way way : front) {
        if (BEST.compare(way, best) < 0 && betters(way, best)) {
          best = way;
          idle = -1;
        }
      }
    }
    return best;
  }

  /** More changes must leave less to remedy, or be much nearer; a danger must become less. */
  private static boolean betters(Way way, Way best) {
    if (way.judged().isSafe() != best.judged().isSafe()) {
      return way.judged().isSafe();
    }
    if (way.judged().isSafe() && way.judged().open().size() < best.judged().open().size()) {
      return true;
    }
    return way.cost() < best.cost() - (best.judged().isSafe() ? MUCH_NEARER : WORTH_CHANGING);
  }

  private List<Way> further(List<Way> front) {
    List<Way> all = new ArrayList<>();
    Set<Setting> seen = new HashSet<>();
    for (Way way : front) {
      for (Ladder ladder : ladders) {
        if (!way.rungs().containsKey(ladder.part())) {
          bestRung(way, ladder).filter(w -> seen.add(w.judged().setting())).ifPresent(all::add);
        }
      }
    }
    all.sort(BEST.thenComparing(way -> way.rungs().toString()));
    List<Way> done = all.stream().filter(way -> way.judged().isDone()).toList();
    if (!done.isEmpty()) {
      return List.of(done.stream().min(comparingDouble(Way::cost)).orElseThrow());
    }
    return all.subList(0, Math.min(WIDTH, all.size()));
  }

  /** The rung of a ladder that serves a setting best; empty where the own does. */
  Optional<Way> bestRung(Way way, Ladder ladder) {
    int best = ladder.own();
    double cost = way.cost();
    double own = cost;
    for (int side : new int[] {1, -1}) {
      int reach = 1;
      double before = own;
      for (int at = ladder.own() + side;
          at >= 0 && at < ladder.size();
          at = ladder.own() + side * reach) {
        double there = cost(way, ladder, at);
        if (there < cost) {
          cost = there;
          best = at;
        } else if (there > before && there > cost + 1) {
          break;
        }
        before = there;
        reach = reach < 2 ? reach + 1 : reach + reach / 2;
      }
    }
    for (int step = Math.abs(best - ladder.own()) / 2; step >= 1; step /= 2) {
      for (int at : new int[] {best - step, best + step}) {
        if (at >= 0 && at < ladder.size() && at != ladder.own()) {
          double there = cost(way, ladder, at);
          if (there < cost) {
            cost = there;
            best = at;
          }
        }
      }
    }
    return best == ladder.own() || cost > own - WORTH_CHANGING
        ? Optional.empty()
        : with(way, ladder, best);
  }

  private double cost(Way way, Ladder ladder, int rung) {
    return with(way, ladder, rung).map(Way::cost).orElse(Double.POSITIVE_INFINITY);
  }

  private Optional<Way> with(Way way, Ladder ladder, int rung) {
    return ladder
        .on(way.judged().setting(), rung)
        .flatMap(judge::of)
        .filter(then -> then.bringsNoDangerTo(start, share))
        .map(then -> way.with(ladder, rung, then));
  }
}
