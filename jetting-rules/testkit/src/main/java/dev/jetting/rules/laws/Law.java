package dev.jetting.rules.laws;

import dev.jetting.rules.Rule;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Something that has to hold of a candidate on every trial. {@link Laws} has the library's own; a
 * tester may add more.
 */
public final class Law {

  private final String id;
  private final String title;
  private final String says;
  private final Function<? super Experiment, LawVerdict> check;

  private Law(
      String id, String title, String says, Function<? super Experiment, LawVerdict> check) {
    this.id = Objects.requireNonNull(id, "id");
    this.title = Objects.requireNonNull(title, "title");
    this.says = Objects.requireNonNull(says, "says");
    this.check = Objects.requireNonNull(check, "check");
  }

  /**
   * A law of a whole candidate.
   *
   * @param id stable id
   * @param title one line for people
   * @param says what has to hold
   * @param check tries it once
   * @return the law
   */
  public static Law of(
      String id, String title, String says, Function<? super Experiment, LawVerdict> check) {
    return new Law(id, title, says, check);
  }

  /**
   * A law of each rule.
   *
   * @param id stable id
   * @param title one line for people
   * @param says what has to hold
   * @param check tries it once on a rule
   * @return the law; violated by the first rule that violates it, not tried if it was on none
   */
  public static Law ofEachRule(
      String id,
      String title,
      String says,
      BiFunction<? super Rule, ? super Experiment, LawVerdict> check) {
    return new Law(
        id,
        title,
        says,
        experiment -> {
          List<LawVerdict> verdicts =
              experiment.candidate().rulebook().rules().stream()
                  .map(rule -> check.apply(rule, experiment))
                  .toList();
          return verdicts.stream()
              .min((a, b) -> Integer.compare(weight(a), weight(b)))
              .orElseGet(() -> LawVerdict.notTried("no rule"));
        });
  }

  private static int weight(LawVerdict verdict) {
    return switch (verdict.status()) {
      case VIOLATED -> 0;
      case HELD -> 1;
      case NOT_TRIED -> 2;
    };
  }

  /** {@return the stable id} */
  public String id() {
    return id;
  }

  /** {@return one line for people} */
  public String title() {
    return title;
  }

  /** {@return what has to hold} */
  public String says() {
    return says;
  }

  /**
   * Tries the law once.
   *
   * @param candidate what is held against it
   * @param trial the sheet and the change
   * @return the verdict: violated also if the check threw or an assertion in it failed; not tried
   *     if the sheet cannot be assessed
   */
  public LawVerdict check(Candidate candidate, Trial trial) {
    return check(new Experiment(candidate, trial));
  }

  LawVerdict check(Experiment experiment) {
    try {
      return check.apply(experiment);
    } catch (Experiment.NotAssessable e) {
      return LawVerdict.notTried("the sheet cannot be assessed: " + e.getMessage());
    } catch (RuntimeException | StackOverflowError | AssertionError | LinkageError e) {
      return LawVerdict.violated("", "threw " + e);
    }
  }

  /** {@return the id} */
  @Override
  public String toString() {
    return id;
  }
}
