package dev.jetting.rules.json;

import com.google.common.collect.ImmutableList;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Condition.All;
import dev.jetting.rules.json.Condition.Any;
import dev.jetting.rules.json.Condition.Bound;
import dev.jetting.rules.json.Condition.Not;
import dev.jetting.rules.json.Condition.OneOf;
import java.util.List;

/**
 * Finds out whether some conditions can hold together, by the cases in which they would. Counts its
 * work and gives up, as unsure, on what takes too much.
 */
final class Cases {

  private static final int MOST_CASES = 100;
  private static final int MOST_WORK = 20_000;
  private static final int MOST_WORK_IN_ALL = 1_000_000;

  private int workInAll;
  private int work;

  /** A condition, whether it should hold, and the throttle band that its rule sees. */
  record Wanted(Condition condition, boolean holds, ThrottleBand band) {}

  /** Too many cases to look at. */
  private static final class Unsure extends RuntimeException {
    private static final long serialVersionUID = 1;

    Unsure() {
      super(null, null, false, false);
    }
  }

  /** Whether surely no setting meets all of some conditions. */
  boolean areImpossible(List<Wanted> all) {
    work = 0;
    try {
      List<Box> cases = ImmutableList.of(Box.WHOLE);
      return together(cases, all).isEmpty();
    } catch (Unsure e) {
      return false;
    }
  }

  private List<Box> left(List<Box> cases, Wanted wanted) {
    Condition condition = wanted.condition();
    boolean holds = wanted.holds();
    if (condition instanceof Not not) {
      return left(cases, new Wanted(not.condition(), !holds, wanted.band()));
    }
    if (condition instanceof All all) {
      return holds ? together(cases, all.each(), wanted) : either(cases, all.each(), wanted);
    }
    if (condition instanceof Any any) {
      return holds ? either(cases, any.each(), wanted) : together(cases, any.each(), wanted);
    }
    return cases.stream()
        .map(box -> counted(narrowed(box, wanted)))
        .filter(box -> !box.isEmpty())
        .toList();
  }

  private static Box narrowed(Box box, Wanted wanted) {
    return wanted.condition() instanceof Bound bound
        ? box.with(bound, wanted.holds(), wanted.band())
        : box.with((OneOf) wanted.condition(), wanted.holds());
  }

  private List<Box> together(List<Box> cases, List<Condition> each, Wanted wanted) {
    return together(
        cases, each.stream().map(c -> new Wanted(c, wanted.holds(), wanted.band())).toList());
  }

  /** Single conditions first: they only narrow the cases, which others multiply. */
  private List<Box> together(List<Box> cases, List<Wanted> all) {
    List<Box> left = cases;
    for (Wanted wanted : all) {
      left = isSingle(wanted.condition()) ? left(left, wanted) : left;
    }
    for (Wanted wanted : all) {
      left = isSingle(wanted.condition()) ? left : left(left, wanted);
    }
    return left;
  }

  private static boolean isSingle(Condition condition) {
    return condition instanceof Bound || condition instanceof OneOf;
  }

  private List<Box> either(List<Box> cases, List<Condition> each, Wanted wanted) {
    ImmutableList.Builder<Box> all = ImmutableList.builder();
    int count = 0;
    for (Condition condition : each) {
      List<Box> left = left(cases, new Wanted(condition, wanted.holds(), wanted.band()));
      count += left.size();
      if (count > MOST_CASES) {
        throw new Unsure();
      }
      all.addAll(left);
    }
    return all.build();
  }

  private Box counted(Box box) {
    if (++work > MOST_WORK || ++workInAll > MOST_WORK_IN_ALL) {
      throw new Unsure();
    }
    return box;
  }
}
