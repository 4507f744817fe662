package dev.jetting.rules.laws;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The result of checking a candidate against laws.
 *
 * @param results the result of each law, in the order of the kit
 * @param seen each rule of the candidate with the outcomes that it ever had, in their order
 */
public record LawReport(List<LawResult> results, List<SeenOutcomes> seen) {

  /**
   * Copies the lists.
   *
   * @param results each law with its result
   * @param seen each rule of the candidate with the outcomes that it ever had
   */
  public LawReport {
    results = List.copyOf(results);
    seen = List.copyOf(seen);
  }

  /** {@return whether no law was violated; says nothing of laws that were never tried} */
  public boolean holds() {
    return results.stream().allMatch(result -> result.counterexample().isEmpty());
  }

  /** {@return ids of the laws that no trial said anything of} */
  public List<String> neverTried() {
    return results.stream()
        .filter(result -> result.held() == 0 && result.counterexample().isEmpty())
        .map(LawResult::lawId)
        .toList();
  }

  /**
   * Returns the rules that never passed, or never failed: the trials do not test them.
   *
   * @return ids of those rules
   */
  public List<String> untestedRules() {
    return seen.stream().filter(each -> !each.isTested()).map(SeenOutcomes::ruleId).toList();
  }

  /**
   * The violation of a law.
   *
   * @param lawId id of the law
   * @return the counterexample; empty if the law was not violated or not chosen
   */
  public Optional<Counterexample> violation(String lawId) {
    return results.stream()
        .filter(result -> result.lawId().equals(lawId))
        .findFirst()
        .flatMap(LawResult::counterexample);
  }

  /** {@return a line for each law, with the counterexamples, then a line for each rule} */
  @Override
  public String toString() {
    return results.stream().map(LawResult::toString).collect(Collectors.joining())
        + seen.stream().map(SeenOutcomes::toString).collect(Collectors.joining());
  }
}
