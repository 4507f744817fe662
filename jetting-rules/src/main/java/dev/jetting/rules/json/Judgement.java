package dev.jetting.rules.json;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The result of a condition: it holds, it does not, or it stays open.
 *
 * @param violations what speaks against it; empty unless it does not hold
 * @param missing what would have to be known; empty unless it is open
 */
record Judgement(List<Violation> violations, Set<String> missing) {

  static final Judgement HOLDS = new Judgement(List.of(), Set.of());

  /**
   * A number beyond its limit.
   *
   * @param most whether the limit is the most allowed; else it is the least
   */
  record Violation(
      Gauge gauge,
      Measure measured,
      Measure limit,
      boolean most,
      ThrottleBand where,
      String measuredText,
      String limitText) {

    double excess() {
      return finding(gauge.name()).says("", "").excess();
    }

    Finding.Texts finding(String subject) {
      return most
          ? Finding.above(subject, measured, limit, where)
          : Finding.below(subject, measured, limit, where);
    }
  }

  static Judgement of(Violation violation) {
    return new Judgement(List.of(violation), Set.of());
  }

  static Judgement missing(String what) {
    return new Judgement(List.of(), Set.of(what));
  }

  boolean holds() {
    return violations.isEmpty() && missing.isEmpty();
  }

  boolean fails() {
    return !violations.isEmpty();
  }

  /** Fails if one fails, with all that speaks against it; else open if one is. */
  static Judgement all(List<Judgement> verdicts) {
    ImmutableList<Violation> against = flat(verdicts, Judgement::violations);
    return new Judgement(against, against.isEmpty() ? union(verdicts) : Set.of());
  }

  /** Holds if one holds, else open if one is; fails with what speaks against the nearest miss. */
  static Judgement any(List<Judgement> verdicts) {
    if (verdicts.stream().anyMatch(Judgement::holds)) {
      return HOLDS;
    }
    Set<String> missing = union(verdicts);
    return missing.isEmpty()
        ? verdicts.stream().reduce((a, b) -> b.worst() < a.worst() ? b : a).orElse(HOLDS)
        : new Judgement(List.of(), missing);
  }

  private double worst() {
    return violations.stream().mapToDouble(Violation::excess).max().orElse(0);
  }

  private static Set<String> union(List<Judgement> verdicts) {
    return ImmutableSet.copyOf(flat(verdicts, Judgement::missing));
  }

  private static <E> ImmutableList<E> flat(
      List<Judgement> verdicts, Function<Judgement, ? extends Iterable<E>> part) {
    ImmutableList.Builder<E> all = ImmutableList.builder();
    verdicts.forEach(verdict -> all.addAll(part.apply(verdict)));
    return all.build();
  }
}
