package dev.jetting.examples.kitdesk;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Severity;
import dev.jetting.rules.kit.KitValidation;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a summary needs to know of a kit's validation, with the names that it has there.
 *
 * @param kit id of the kit
 * @param passes whether it passes
 * @param findings what was found on the kit itself
 * @param machines what was found on each machine
 */
record Judged(String kit, boolean passes, List<Finding> findings, List<Machine> machines) {

  Judged {
    Objects.requireNonNull(kit, "kit");
    findings = List.copyOf(findings);
    machines = List.copyOf(machines);
  }

  /** A finding. */
  record Finding(String ruleId, Severity severity) {

    Finding {
      Objects.requireNonNull(ruleId, "ruleId");
      Objects.requireNonNull(severity, "severity");
    }

    static List<Finding> of(List<RankedFinding> found) {
      return found.stream().map(each -> new Finding(each.ruleId(), each.severity())).toList();
    }
  }

  /** What was found on a machine. */
  record Machine(List<Finding> findings, List<String> unanswered) {

    Machine {
      findings = List.copyOf(findings);
      unanswered = List.copyOf(unanswered);
    }
  }

  static Judged of(KitValidation validation) {
    return new Judged(
        validation.kit(),
        validation.passes(),
        Finding.of(validation.findings()),
        validation.machines().stream()
            .map(each -> new Machine(Finding.of(each.findings()), each.unanswered()))
            .toList());
  }

  Stream<Finding> all() {
    return Stream.concat(
        findings.stream(), machines.stream().flatMap(machine -> machine.findings().stream()));
  }

  /** Why the kit fails, in a few words. */
  String why() {
    String dangers =
        all()
            .filter(found -> found.severity() == Severity.DANGER)
            .map(Finding::ruleId)
            .distinct()
            .collect(Collectors.joining(", "));
    if (!dangers.isEmpty()) {
      return dangers;
    }
    String unanswered =
        machines.stream()
            .flatMap(machine -> machine.unanswered().stream())
            .distinct()
            .collect(Collectors.joining(", "));
    return unanswered.isEmpty() ? "kit-coverage" : "not answered: " + unanswered;
  }
}
