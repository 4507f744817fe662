package dev.jetting.rules.laws;

import dev.jetting.rules.Finding;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Branch;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What has to hold of an outcome by itself. */
final class OutcomeLaws {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

  private OutcomeLaws() {}

  static LawVerdict neverBroken(Rule rule, Experiment experiment) {
    return verdict(rule, broken(rule.id(), rule.evaluate(experiment.before())));
  }

  private static Optional<String> broken(String id, Outcome outcome) {
    if (outcome.status() == Status.BROKEN && outcome.branches().isEmpty()) {
      return Optional.of("rule " + id + " is broken: " + outcome.reason());
    }
    return inBranches(outcome, OutcomeLaws::broken);
  }

  static LawVerdict wellFormed(Rule rule, Experiment experiment) {
    return verdict(rule, malformed(rule.id(), rule.evaluate(experiment.before())));
  }

  private static Optional<String> malformed(String id, Outcome outcome) {
    Optional<String> fault =
        fault(outcome).or(() -> outcome.margin().flatMap(m -> fault(m, outcome)));
    for (Finding finding : outcome.findings()) {
      fault = fault.or(() -> fault(finding));
    }
    return fault
        .map(what -> "rule " + id + ": " + what)
        .or(() -> inBranches(outcome, OutcomeLaws::malformed));
  }

  private static Optional<String> fault(Outcome outcome) {
    boolean composed = !outcome.branches().isEmpty();
    boolean findings = !outcome.findings().isEmpty();
    return switch (outcome.status()) {
      case FAILED -> failsIf(!findings && !composed, "failed without a finding");
      case PASSED -> failsIf(findings, "passed with a finding");
      case NOT_APPLICABLE, NOT_EVALUATED, BROKEN ->
          failsIf(findings, outcome.status() + " with a finding")
              .or(
                  () ->
                      failsIf(outcome.reason().isBlank(), outcome.status() + " without a reason"));
    };
  }

  /** Of the margin of an outcome that no finding states. */
  private static Optional<String> fault(Margin margin, Outcome outcome) {
    double left = margin.left().value();
    double distance = distance(margin.measured(), margin.limit());
    boolean differs =
        Math.abs(Math.abs(left) - distance) > 1e-9 * scale(margin.measured(), margin.limit());
    return failsIf(
            !margin.measured().unit().equals(margin.limit().unit())
                || !margin.left().unit().equals(margin.limit().unit()),
            "a margin in different units: " + margin)
        .or(() -> failsIf(differs, "what is left is not the difference of " + margin))
        .or(
            () ->
                failsIf(
                    !SubjectPath.exists(margin.subject()),
                    "subject " + margin.subject() + " is no path of a sheet or setup"))
        .or(
            () ->
                failsIf(
                    outcome.status() == Status.PASSED ? left < 0 : left > 0,
                    outcome.status() + " with a margin of " + margin.left()))
        .or(
            () ->
                failsIf(
                    outcome.status() != Status.PASSED && outcome.status() != Status.FAILED,
                    outcome.status() + " with a margin"));
  }

  private static double distance(Measure a, Measure b) {
    return Math.abs(a.value() - b.value());
  }

  private static double scale(Measure a, Measure b) {
    return Math.max(1e-9, Math.max(Math.abs(a.value()), Math.abs(b.value())));
  }

  private static Optional<String> fault(Finding f) {
    String unit = f.limit().unit();
    double over = f.measured().value() - f.limit().value();
    double margin = f.margin().value();
    double scale = Math.max(Math.abs(f.measured().value()), Math.abs(f.limit().value()));
    return failsIf(
            !f.measured().unit().equals(unit) || !f.margin().unit().equals(unit),
            "a finding in three units: measured "
                + f.measured()
                + ", limit "
                + f.limit()
                + ", margin "
                + f.margin())
        .or(
            () ->
                failsIf(
                    margin > 0 || Math.abs(-margin - Math.abs(over)) > 1e-9 * Math.max(1e-9, scale),
                    "margin "
                        + f.margin()
                        + " is not by how much measured "
                        + f.measured()
                        + " is beyond its limit "
                        + f.limit()))
        .or(
            () ->
                failsIf(
                    !SubjectPath.exists(f.subject()),
                    "subject " + f.subject() + " is no path of a sheet or setup"))
        .or(() -> unfilled(f))
        .or(() -> failsIf(f.message().isBlank(), "a finding without a message"))
        .or(() -> failsIf(f.remedy().text().isBlank(), "a finding without a remedy"));
  }

  private static Optional<String> unfilled(Finding finding) {
    Matcher placeholder = PLACEHOLDER.matcher(finding.message());
    while (placeholder.find()) {
      if (!finding.attributes().containsKey(placeholder.group(1))) {
        return Optional.of("no attribute for " + placeholder.group() + " in its message");
      }
    }
    return Optional.empty();
  }

  private interface Look {
    Optional<String> at(String id, Outcome outcome);
  }

  private static Optional<String> inBranches(Outcome outcome, Look look) {
    return outcome.branches().stream()
        .map((Branch branch) -> look.at(branch.ruleId(), branch.outcome()))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> failsIf(boolean fails, String how) {
    return fails ? Optional.of(how) : Optional.empty();
  }

  private static LawVerdict verdict(Rule rule, Optional<String> fault) {
    return fault.map(how -> LawVerdict.violated(rule.id(), how)).orElseGet(LawVerdict::held);
  }
}
