package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import dev.jetting.core.parts.Coefficient;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A named, versioned set of rules. Each id, and each id that a rule had before, belongs to one
 * rule. Immutable; what comes of an evaluation does not depend on the order of the rules.
 */
public final class Rulebook {

  private final String name;
  private final String version;
  private final ImmutableList<Rule> rules;
  private final ImmutableMap<String, Coefficient> assumptions;

  private Rulebook(
      String name, String version, List<Rule> rules, Map<String, Coefficient> assumptions) {
    this.name = Objects.requireNonNull(name, "name");
    this.version = Objects.requireNonNull(version, "version");
    this.rules = ImmutableList.copyOf(rules);
    this.assumptions = ImmutableMap.copyOf(assumptions);
    Set<String> taken = new HashSet<>();
    for (Rule rule : rules) {
      Stream.concat(Stream.of(rule.id()), rule.formerIds().stream())
          .filter(id -> !taken.add(id))
          .forEach(
              id -> {
                throw new IllegalArgumentException(
                    "rule id " + id + " twice in rulebook " + name + ": allowed once");
              });
    }
  }

  /**
   * A rulebook.
   *
   * @param name its name
   * @param version its version
   * @param rules the rules; each id, former ids included, once
   * @return the rulebook
   * @throws IllegalArgumentException if an id occurs twice
   */
  public static Rulebook of(String name, String version, List<Rule> rules) {
    return new Rulebook(name, version, rules, Map.of());
  }

  /**
   * This rulebook with the numbers that its rules assume, for the report to show.
   *
   * @param more each coefficient by its name; one of a name that is there takes its place
   * @return the changed rulebook
   */
  public Rulebook assuming(Map<String, Coefficient> more) {
    return new Rulebook(name, version, rules, joined(assumptions, more));
  }

  private static ImmutableMap<String, Coefficient> joined(
      Map<String, Coefficient> first, Map<String, Coefficient> second) {
    return ImmutableMap.<String, Coefficient>builder()
        .putAll(first)
        .putAll(second)
        .buildKeepingLast();
  }

  /** {@return the name} */
  public String name() {
    return name;
  }

  /** {@return the version} */
  public String version() {
    return version;
  }

  /** {@return the numbers that its rules assume, by name} */
  public Map<String, Coefficient> assumptions() {
    return assumptions;
  }

  /** {@return the rules in the order they were given} */
  public List<Rule> rules() {
    return rules;
  }

  /**
   * The rule of an id.
   *
   * @param id the id, or one that the rule had before
   * @return the rule, empty if there is none
   */
  public Optional<Rule> rule(String id) {
    return rules.stream().filter(rule -> rule.answersTo(id)).findFirst();
  }

  /**
   * This rulebook with more rules.
   *
   * @param more the rules
   * @return the larger rulebook
   * @throws IllegalArgumentException if an id occurs twice
   */
  public Rulebook with(Rule... more) {
    return with(List.of(more));
  }

  /**
   * This rulebook with more rules, such as those of a rule file.
   *
   * @param more the rules
   * @return the larger rulebook
   * @throws IllegalArgumentException if an id occurs twice
   */
  public Rulebook with(List<Rule> more) {
    return new Rulebook(
        name, version, Stream.concat(rules.stream(), more.stream()).toList(), assumptions);
  }

  /**
   * This rulebook with the rules of packs; its version names theirs.
   *
   * @param packs the packs, as {@link RulePack#load} gives them
   * @return the larger rulebook
   * @throws IllegalArgumentException if an id occurs twice
   */
  public Rulebook withPacks(List<RulePack> packs) {
    Rulebook all = this;
    for (RulePack pack : packs) {
      String named = all.version + " + " + pack.id() + " " + pack.version();
      all = new Rulebook(name, named, all.with(pack.rules()).rules, assumptions);
    }
    return all;
  }

  /**
   * This rulebook with a rule in the place of the one of its id.
   *
   * @param rule the new rule
   * @return the changed rulebook
   * @throws IllegalArgumentException if there is no rule of this id
   */
  public Rulebook replacing(Rule rule) {
    Rule old = known(rule.id());
    return new Rulebook(
        name, version, rules.stream().map(each -> each == old ? rule : each).toList(), assumptions);
  }

  /**
   * This rulebook without a rule.
   *
   * @param id id of the rule, or one that it had before
   * @return the smaller rulebook
   * @throws IllegalArgumentException if there is no rule of this id
   */
  public Rulebook without(String id) {
    Rule old = known(id);
    return new Rulebook(
        name, version, rules.stream().filter(each -> each != old).toList(), assumptions);
  }

  /**
   * This rulebook and another in one.
   *
   * @param other the other
   * @param mergedName name of the merged rulebook
   * @param mergedVersion its version
   * @return the merged rulebook
   * @throws IllegalArgumentException if an id occurs in both
   */
  public Rulebook mergedWith(Rulebook other, String mergedName, String mergedVersion) {
    return new Rulebook(
        mergedName, mergedVersion, with(other.rules).rules, joined(assumptions, other.assumptions));
  }

  /**
   * Holds every rule against a setting.
   *
   * @param setting the assessed setting
   * @return the report
   */
  public Report evaluate(AssessedSetting setting) {
    return evaluate(setting, Waivers.NONE);
  }

  /**
   * Holds every rule against a setting, some findings waived. They stay in the report; waivers that
   * waived nothing are told.
   *
   * @param setting the assessed setting
   * @param waivers the waivers; of several for one finding the first counts
   * @param day the day by which they expire, from the caller's own clock
   * @return the report
   */
  public Report evaluate(AssessedSetting setting, List<Waiver> waivers, LocalDate day) {
    return evaluate(setting, new Waivers(List.copyOf(waivers), Optional.of(day)));
  }

  private Report evaluate(AssessedSetting setting, Waivers waivers) {
    List<RuleResult> results = rules.stream().map(rule -> RuleResult.of(rule, setting)).toList();
    List<RankedFinding> findings =
        results.stream().flatMap(result -> ranked(result, waivers)).sorted().toList();
    return Report.of(setting, this, results, findings, waivers.unused(this, findings));
  }

  private Stream<RankedFinding> ranked(RuleResult result, Waivers waivers) {
    Rule rule = known(result.ruleId());
    return result.outcome().findings().stream()
        .map(
            finding ->
                new RankedFinding(
                    rule.id(), rule.severity(), finding, waivers.covering(rule, finding)));
  }

  private Rule known(String id) {
    return rule(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "rule id " + id + ": allowed one of rulebook " + name + ", " + rules));
  }
}
