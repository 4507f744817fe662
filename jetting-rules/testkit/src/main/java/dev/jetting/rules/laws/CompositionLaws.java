package dev.jetting.rules.laws;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A rule composed with rules of each status. */
final class CompositionLaws {

  /** A rule of each status, in the order of the statuses. */
  private static final List<Rule> COMPANIONS =
      Arrays.stream(Status.values()).map(CompositionLaws::companion).toList();

  private CompositionLaws() {}

  private static Rule companion(Status status) {
    return Rule.named(status.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-companion")
        .judging(
            setting ->
                switch (status) {
                  case PASSED -> Outcome.passed();
                  case FAILED -> Outcome.failed();
                  case NOT_APPLICABLE -> Outcome.notApplicable("never");
                  case NOT_EVALUATED -> Outcome.notEvaluated("everything");
                  case BROKEN -> throw new IllegalStateException("always");
                });
  }

  static LawVerdict doubleNegation(Rule rule, Experiment experiment) {
    AssessedSetting setting = experiment.before();
    Outcome own = rule.evaluate(setting);
    Outcome twice = not(not(rule)).evaluate(setting);
    boolean same =
        own.status() == twice.status()
            && own.findings().equals(twice.findings())
            && own.reason().equals(twice.reason())
            && own.nearest().equals(twice.nearest());
    return same
        ? LawVerdict.held()
        : LawVerdict.violated(
            rule.id(),
            "negated twice it comes out as "
                + OutcomeText.of(twice)
                + " instead of "
                + OutcomeText.of(own));
  }

  static LawVerdict andOr(Rule rule, Experiment experiment) {
    AssessedSetting setting = experiment.before();
    Status own = rule.evaluate(setting).status();
    return first(
        rule,
        Stream.concat(
            Stream.of(
                () -> table(setting, List.of(), List.of()),
                () -> table(setting, List.of(rule), List.of(own))),
            COMPANIONS.stream()
                .flatMap(
                    companion -> {
                      Status other = companion.evaluate(setting).status();
                      return Stream.<Supplier<Optional<String>>>of(
                          () -> table(setting, List.of(rule, companion), List.of(own, other)),
                          () -> table(setting, List.of(companion, rule), List.of(other, own)));
                    })));
  }

  private static Optional<String> table(
      AssessedSetting setting, List<Rule> rules, List<Status> statuses) {
    Outcome all = and(rules).evaluate(setting);
    Outcome any = or(rules).evaluate(setting);
    return differs(
            "allOf" + statuses, all.status(), decided(statuses, Status.FAILED, Status.PASSED))
        .or(
            () ->
                differs(
                    "anyOf" + statuses,
                    any.status(),
                    decided(statuses, Status.PASSED, Status.FAILED)))
        .or(() -> branches("allOf", all, statuses))
        .or(() -> branches("anyOf", any, statuses));
  }

  /**
   * The table, written a second time: broken, the deciding one, open, nothing to say, the other.
   */
  private static Status decided(List<Status> statuses, Status deciding, Status otherwise) {
    for (Status status : List.of(Status.BROKEN, deciding, Status.NOT_EVALUATED, otherwise)) {
      if (statuses.contains(status)) {
        return status;
      }
    }
    return statuses.isEmpty() ? otherwise : Status.NOT_APPLICABLE;
  }

  private static Optional<String> branches(String what, Outcome outcome, List<Status> statuses) {
    List<Status> kept =
        outcome.branches().stream().map(branch -> branch.outcome().status()).toList();
    return kept.equals(statuses)
        ? Optional.empty()
        : Optional.of(what + statuses + " has the branches " + kept);
  }

  static LawVerdict deMorgan(Rule rule, Experiment experiment) {
    AssessedSetting setting = experiment.before();
    return first(
        rule,
        COMPANIONS.stream()
            .flatMap(
                s -> {
                  List<Rule> plain = List.of(rule, s);
                  List<Rule> negated = List.of(not(rule), not(s));
                  return Stream.<Supplier<Optional<String>>>of(
                      () ->
                          differs(
                              "not(allOf(r, s)) against anyOf(not r, not s)",
                              not(and(plain)).evaluate(setting).status(),
                              or(negated).evaluate(setting).status()),
                      () ->
                          differs(
                              "not(anyOf(r, s)) against allOf(not r, not s)",
                              not(or(plain)).evaluate(setting).status(),
                              and(negated).evaluate(setting).status()));
                }));
  }

  static LawVerdict whenUnless(Rule rule, Experiment experiment) {
    AssessedSetting setting = experiment.before();
    Outcome own = rule.evaluate(setting);
    Outcome never = Outcome.notApplicable("a reason");
    Severity other = rule.severity() == Severity.NOTE ? Severity.WARNING : Severity.NOTE;
    return first(
        rule,
        Stream.of(
            () -> differs("when true", rule.when(s -> true, "a reason").evaluate(setting), own),
            () -> differs("when false", rule.when(s -> false, "a reason").evaluate(setting), never),
            () ->
                differs("unless true", rule.unless(s -> true, "a reason").evaluate(setting), never),
            () ->
                differs("unless false", rule.unless(s -> false, "a reason").evaluate(setting), own),
            () -> differs("with " + other, rule.withSeverity(other).evaluate(setting), own)));
  }

  private static LawVerdict first(Rule rule, Stream<Supplier<Optional<String>>> checks) {
    return checks
        .map(Supplier::get)
        .flatMap(Optional::stream)
        .findFirst()
        .map(how -> LawVerdict.violated(rule.id(), how))
        .orElseGet(LawVerdict::held);
  }

  private static Optional<String> differs(String what, Outcome is, Outcome should) {
    return is.equals(should)
        ? Optional.empty()
        : Optional.of(what + ": " + OutcomeText.of(is) + " instead of " + OutcomeText.of(should));
  }

  private static Optional<String> differs(String what, Status is, Status should) {
    return is == should
        ? Optional.empty()
        : Optional.of(what + ": " + is + " instead of " + should);
  }

  private static Rule not(Rule rule) {
    return Rule.not(Rule.named("law-not"), rule);
  }

  private static Rule and(List<Rule> rules) {
    return Rule.allOf(Rule.named("law-and"), rules);
  }

  private static Rule or(List<Rule> rules) {
    return Rule.anyOf(Rule.named("law-or"), rules);
  }
}
