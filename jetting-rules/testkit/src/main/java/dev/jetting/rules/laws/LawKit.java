package dev.jetting.rules.laws;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.SetupSheet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Holds candidates against laws, whatever the test framework.
 *
 * <pre>{@code
 * LawReport report =
 *     LawKit.allLaws()
 *         .hold(
 *             Candidate.of(MY_RULE).declaring(MY_RULE.id(), Monotone.leanSide(0)),
 *             Trial.eachPart(sheet, CustomarySteps.assumed()));
 * if (!report.holds()) {
 *   throw new AssertionError(report);
 * }
 * }</pre>
 *
 * <p>Immutable. The same candidate and trials give the same report.
 */
public final class LawKit {

  private final ImmutableList<Law> laws;
  private final SetupSheet plain;

  private LawKit(List<Law> laws, SetupSheet plain) {
    this.laws = ImmutableList.copyOf(laws);
    this.plain = Objects.requireNonNull(plain, "plain");
    Set<String> taken = new HashSet<>();
    for (Law law : laws) {
      if (!taken.add(law.id())) {
        throw new IllegalArgumentException("law id " + law.id() + " twice in a kit: allowed once");
      }
    }
  }

  /** {@return a kit of all of {@link Laws}, that shrinks towards {@link #plainSheet()}} */
  public static LawKit allLaws() {
    return of(Laws.all());
  }

  /**
   * A kit of some laws.
   *
   * @param laws the laws, each id once
   * @return the kit
   * @throws IllegalArgumentException if an id occurs twice
   */
  public static LawKit of(List<Law> laws) {
    return new LawKit(laws, plainSheet());
  }

  /**
   * The sheet from which counterexamples list their differences: the reference geometry of the
   * mixture model on an engine of its own, at 15 °C at the sea. It is plain, not good: no machine's
   * setting.
   *
   * @return the sheet
   */
  public static SetupSheet plainSheet() {
    return PlainSheet.SHEET;
  }

  /**
   * This kit without some laws.
   *
   * @param ids ids of the laws
   * @return the smaller kit
   * @throws IllegalArgumentException if the kit has no such law
   */
  public LawKit without(String... ids) {
    Set<String> out = ImmutableSet.copyOf(ids);
    for (String id : out) {
      if (laws.stream().noneMatch(law -> law.id().equals(id))) {
        throw new IllegalArgumentException("law id " + id + ": allowed one of " + laws);
      }
    }
    return new LawKit(laws.stream().filter(law -> !out.contains(law.id())).toList(), plain);
  }

  /**
   * This kit with a law more, or with another one of its id in its place.
   *
   * @param law the law
   * @return the changed kit
   */
  public LawKit with(Law law) {
    List<Law> changed = new ArrayList<>(laws);
    changed.replaceAll(each -> each.id().equals(law.id()) ? law : each);
    if (!changed.contains(law)) {
      changed.add(law);
    }
    return new LawKit(changed, plain);
  }

  /**
   * This kit, with counterexamples described by their differences from another sheet.
   *
   * @param sheet the sheet that counterexamples are shrunken towards
   * @return the changed kit
   */
  public LawKit shrinkingTowards(SetupSheet sheet) {
    return new LawKit(laws, sheet);
  }

  /** {@return the laws} */
  public List<Law> laws() {
    return laws;
  }

  /**
   * Tries each law on each trial, until it is violated; a violation is shrunken.
   *
   * @param candidate the rulebook, its risk model and what is declared
   * @param trials the trials, taken one by one; none holds
   * @return the report
   */
  public LawReport hold(Candidate candidate, Stream<Trial> trials) {
    List<Tally> tallies = laws.stream().map(Tally::new).toList();
    Map<String, Map<Status, Integer>> seen = new LinkedHashMap<>();
    candidate.rulebook().rules().forEach(rule -> seen.put(rule.id(), new EnumMap<>(Status.class)));
    trials
        .takeWhile(trial -> tallies.stream().anyMatch(Tally::open))
        .forEachOrdered(
            trial -> {
              Experiment experiment = new Experiment(candidate, trial);
              tallies.stream().filter(Tally::open).forEach(tally -> tally.add(experiment));
              count(experiment, seen);
            });
    return new LawReport(
        tallies.stream().map(Tally::result).toList(),
        seen.entrySet().stream()
            .map(each -> new SeenOutcomes(each.getKey(), each.getValue()))
            .toList());
  }

  private static void count(Experiment experiment, Map<String, Map<Status, Integer>> seen) {
    try {
      Stream.concat(Stream.of(experiment.before()), experiment.after().stream())
          .forEach(
              setting ->
                  experiment
                      .candidate()
                      .rulebook()
                      .rules()
                      .forEach(
                          rule ->
                              Objects.requireNonNull(seen.get(rule.id()))
                                  .merge(rule.evaluate(setting).status(), 1, Integer::sum)));
    } catch (Experiment.NotAssessable e) {
      // No setting, no outcome: the laws were not tried on it either.
    }
  }

  /** One law over the trials. */
  private final class Tally {
    private final Law law;
    private int held;
    private int notTried;
    private Optional<Counterexample> counterexample = Optional.empty();

    Tally(Law law) {
      this.law = law;
    }

    boolean open() {
      return counterexample.isEmpty();
    }

    void add(Experiment experiment) {
      LawVerdict verdict = law.check(experiment);
      switch (verdict.status()) {
        case HELD -> held++;
        case NOT_TRIED -> notTried++;
        case VIOLATED -> counterexample = Optional.of(shrunken(experiment, verdict));
      }
    }

    private Counterexample shrunken(Experiment experiment, LawVerdict verdict) {
      Candidate candidate = experiment.candidate();
      Shrinker shrinker = new Shrinker(plain);
      Trial smallest =
          shrinker.shrunk(
              experiment.trial(),
              trial -> {
                LawVerdict again = law.check(candidate, trial);
                return again.isViolated() && again.ruleId().equals(verdict.ruleId());
              });
      LawVerdict last = law.check(candidate, smallest);
      return new Counterexample(
          verdict.ruleId(),
          last.isViolated() ? last.explanation() : verdict.explanation(),
          smallest,
          shrinker.differences(smallest.sheet()),
          smallest
              .change()
              .map(change -> change.describe(smallest.sheet().setup().setting()))
              .orElse(""),
          experiment.trial());
    }

    LawResult result() {
      return new LawResult(law.id(), law.title(), held, notTried, counterexample);
    }
  }
}
