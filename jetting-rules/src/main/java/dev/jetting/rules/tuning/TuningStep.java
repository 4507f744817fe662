package dev.jetting.rules.tuning;

import com.google.common.collect.Sets;
import dev.jetting.core.mixture.Setup;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * A setup that was tried, with what was observed on it.
 *
 * @param setup engine, setting, air and fuel of that run
 * @param observations what was observed, in order
 * @param checks what was looked into because of it, without finding a fault
 */
public record TuningStep(Setup setup, List<Observation> observations, Set<Check> checks) {
  /**
   * Copies the observations and checks.
   *
   * @param setup engine, setting, air and fuel of that run
   * @param observations what was observed, in order
   * @param checks what was looked into because of it, without finding a fault
   */
  public TuningStep {
    Objects.requireNonNull(setup, "setup");
    observations = List.copyOf(observations);
    checks = Sets.immutableEnumSet(checks);
  }

  static TuningStep on(Setup setup) {
    return new TuningStep(setup, List.of(), Set.of());
  }

  TuningStep with(List<Observation> other) {
    return new TuningStep(setup, other, checks);
  }

  TuningStep with(Set<Check> more) {
    Set<Check> all = new TreeSet<>(checks);
    all.addAll(more);
    return new TuningStep(setup, observations, all);
  }
}
