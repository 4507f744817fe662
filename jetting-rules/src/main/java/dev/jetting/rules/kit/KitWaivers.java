package dev.jetting.rules.kit;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Measure;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.Report;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.UnusedWaiver;
import dev.jetting.rules.Waiver;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The waivers of one kit while it is validated: which of them waived something, and why not. */
final class KitWaivers {

  private final List<KitWaiver> waivers;
  private final LocalDate day;
  private final Set<KitWaiver> used = new HashSet<>();
  private final Map<KitWaiver, String> unused = new HashMap<>();
  private final Map<KitWaiver, String> exceeded = new HashMap<>();

  KitWaivers(Kit kit, List<KitWaiver> waivers, LocalDate day) {
    this.waivers = waivers.stream().filter(each -> each.kit().equals(kit.id())).toList();
    this.day = day;
  }

  /** The rulebook's report on the setting of a machine with one fuel, its findings waived. */
  Report report(Rulebook rulebook, AssessedSetting setting, Machine machine, int fuel) {
    String engine = setting.setup().engine().id();
    String carburettor = setting.setting().carburettor().id();
    Map<Waiver, KitWaiver> its = new LinkedHashMap<>();
    waivers.stream()
        .filter(each -> each.machine().equals(machine.id()) && !isCoverage(each))
        .forEach(each -> its.put(each.on(engine, carburettor), each));
    if (its.isEmpty()) {
      return rulebook.evaluate(setting);
    }
    Report report = rulebook.evaluate(setting, List.copyOf(its.keySet()), day);
    for (UnusedWaiver each : report.unusedWaivers()) {
      KitWaiver waiver = Objects.requireNonNull(its.remove(each.waiver()), "one that was given");
      boolean open = report.findings().stream().anyMatch(found -> isOpen(found, waiver, rulebook));
      if (open) {
        exceeded.put(waiver, "fuel " + fuel + ": " + each.why());
      }
      unused.putIfAbsent(waiver, each.why());
    }
    used.addAll(its.values());
    return report;
  }

  /** Whether a finding that a waiver is about is not covered. */
  private static boolean isOpen(RankedFinding found, KitWaiver waiver, Rulebook rulebook) {
    return found.waiver().isEmpty()
        && found.finding().subject().equals(waiver.subject())
        && rulebook.rule(waiver.ruleId()).filter(r -> r.id().equals(found.ruleId())).isPresent();
  }

  /** The waiver of a coverage below the least. */
  Optional<Waiver> ofCoverage(KitCoverage coverage, Fitted fitted, int fuel) {
    Optional<KitWaiver> found = Optional.empty();
    for (KitWaiver each : waivers) {
      if (each.machine().equals(fitted.machine().id()) && isCoverage(each)) {
        Optional<String> shortfall = shortfall(each, coverage);
        shortfall.ifPresent(why -> exceeded.put(each, "fuel " + fuel + ": " + why));
        if (shortfall.isEmpty()) {
          used.add(each);
          found = found.or(() -> Optional.of(each));
        }
      }
    }
    return found.map(
        each -> each.on(fitted.machine().engine().id(), fitted.setting().carburettor().id()));
  }

  private Optional<String> shortfall(KitWaiver waiver, KitCoverage coverage) {
    if (!waiver.signed().holdsOn(day)) {
      return waiver.expires().map(lastDay -> "expired on " + lastDay);
    }
    // A waiver written before a share had a unit of its own says 1.
    boolean isShare = Set.of(Measure.SHARE, "1").contains(waiver.measured().unit());
    return !isShare || coverage.share().value() < waiver.measured().value()
        ? Optional.of("accepted to " + waiver.measured() + ", now " + coverage.share())
        : Optional.empty();
  }

  /** Those that waived nothing or did not cover a finding, as far as it was looked. */
  List<UnusedKitWaiver> unused(KitDepth depth) {
    return waivers.stream()
        .filter(each -> isCoverage(each) ? depth == KitDepth.COVERAGE : depth != KitDepth.FIT)
        .filter(each -> !used.contains(each) || exceeded.containsKey(each))
        .map(each -> new UnusedKitWaiver(each, why(each)))
        .toList();
  }

  private String why(KitWaiver waiver) {
    return exceeded.getOrDefault(
        waiver, unused.getOrDefault(waiver, "no such finding on this machine"));
  }

  private static boolean isCoverage(KitWaiver waiver) {
    return waiver.subject().equals(KitWaiver.COVERAGE);
  }
}
