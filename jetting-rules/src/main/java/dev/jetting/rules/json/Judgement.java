package dev.jetting.rules.json;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The result of a condition: it holds, it does not, or it stays open.
 *
 * @param violations what speaks against it; empty unless it does not hold
 * @param missing what would have to be known; empty unless it is open
 * @param margin how near it came to failing, if it holds and numbers decided that
 */
record Judgement(List<Violation> violations, Set<String> missing, Optional<Margin> margin) {

  static final Judgement HOLDS = new Judgement(List.of(), Set.of(), Optional.empty());

  /**
   * A number beyond its limit.
   *
   * @param most whether the limit is the most allowed; else it is the least
   */
  record Violation(
      MeasureDefinition definition,
      Measure measured,
      Measure limit,
      boolean most,
      ThrottleBand where,
      Argument measuredShown,
      Argument limitShown) {

    double excess() {
      return finding(definition.name()).says("", "").excess();
    }

    Margin margin(String subject) {
      return most
          ? Margin.atMost(subject, measured, limit, where)
          : Margin.atLeast(subject, measured, limit, where);
    }

    Finding.Texts finding(String subject) {
      return margin(subject).finding();
    }
  }

  static Judgement of(Violation violation) {
    return new Judgement(List.of(violation), Set.of(), Optional.empty());
  }

  static Judgement holds(Margin margin) {
    return new Judgement(List.of(), Set.of(), Optional.of(margin));
  }

  static Judgement missing(String what) {
    return new Judgement(List.of(), Set.of(what), Optional.empty());
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
    Set<String> missing = against.isEmpty() ? union(verdicts) : Set.of();
    boolean holds = against.isEmpty() && missing.isEmpty();
    return new Judgement(
        against, missing, holds ? Margin.nearest(margins(verdicts)) : Optional.empty());
  }

  /** Holds if one holds, else open if one is; fails with what speaks against the nearest miss. */
  static Judgement any(List<Judgement> verdicts) {
    List<Judgement> holding = verdicts.stream().filter(Judgement::holds).toList();
    if (!holding.isEmpty()) {
      List<Margin> margins = margins(holding);
      return margins.size() < holding.size()
          ? HOLDS
          : margins.stream()
              .max(Comparator.comparingDouble(Margin::share))
              .map(Judgement::holds)
              .orElse(HOLDS);
    }
    Set<String> missing = union(verdicts);
    return missing.isEmpty()
        ? verdicts.stream().reduce((a, b) -> b.worst() < a.worst() ? b : a).orElse(HOLDS)
        : new Judgement(List.of(), missing, Optional.empty());
  }

  private static List<Margin> margins(List<Judgement> verdicts) {
    return verdicts.stream().flatMap(verdict -> verdict.margin().stream()).toList();
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
