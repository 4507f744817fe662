package dev.jetting.rules;

import static com.google.common.collect.ImmutableMap.toImmutableMap;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.units.OneLine;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A named, versioned set of rules. Each id, and each id that a rule had before, belongs to one
 * rule. Immutable; what comes of an evaluation does not depend on the order of the rules.
 */
public final class Rulebook {

  private static final int LONGEST_SHOWN = 79;

  private final String name;
  private final String version;
  private final ImmutableList<Rule> rules;
  private final ImmutableMap<String, Coefficient> assumptions;

  /** The rules of the rulebook with this name and version, by id. */
  private final ImmutableMap<String, Rule> origin;

  private final Supplier<RulebookEdition> edition;

  private Rulebook(
      String name,
      String version,
      List<Rule> rules,
      Map<String, Coefficient> assumptions,
      Map<String, Rule> origin) {
    this.name = PlainLine.checked("name", "name of a rulebook", name, RulebookEdition.LONGEST_NAME);
    this.version =
        PlainLine.checked(
            "version", "version of a rulebook", version, RulebookEdition.LONGEST_NAME);
    this.rules = ImmutableList.copyOf(rules);
    this.assumptions = ImmutableMap.copyOf(assumptions);
    this.origin = ImmutableMap.copyOf(origin);
    this.edition = Suppliers.memoize(() -> Editions.of(this, this.origin));
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
   * @param name its name; one line, at most 200 characters
   * @param version its version; one line, at most 200 characters
   * @param rules the rules; each id, former ids included, once
   * @return the rulebook
   * @throws IllegalArgumentException if an id occurs twice, or name or version is blank, too long
   *     or not one line of visible characters
   */
  public static Rulebook of(String name, String version, List<Rule> rules) {
    return new Rulebook(name, version, rules, Map.of(), byId(rules));
  }

  private static ImmutableMap<String, Rule> byId(List<Rule> rules) {
    return rules.stream()
        .collect(toImmutableMap(Rule::id, Function.identity(), (first, second) -> first));
  }

  /** This rulebook, under its name, with other rules. */
  private Rulebook holding(List<Rule> others) {
    return new Rulebook(name, version, others, assumptions, origin);
  }

  /**
   * This rulebook with the numbers that its rules assume, for the report to show.
   *
   * @param more each coefficient by its name; one of a name that is there takes its place
   * @return the changed rulebook
   */
  public Rulebook assuming(Map<String, Coefficient> more) {
    Objects.requireNonNull(more, "more");
    return new Rulebook(name, version, rules, joined(assumptions, more), origin);
  }

  private static <V> ImmutableMap<String, V> joined(
      Map<String, ? extends V> first, Map<String, ? extends V> second) {
    return ImmutableMap.<String, V>builder().putAll(first).putAll(second).buildKeepingLast();
  }

  /** {@return the name} */
  public String name() {
    return name;
  }

  /** {@return the version} */
  public String version() {
    return version;
  }

  /**
   * Which edition of its name and version this is: the rules in which it was changed, and a digest.
   *
   * @return the edition; rulebooks of one digest declare the same rules
   */
  public RulebookEdition edition() {
    return edition.get();
  }

  /** {@return the numbers that its rules assume, the limits of each rule among them, by name} */
  public Map<String, Coefficient> assumptions() {
    ImmutableMap.Builder<String, Coefficient> all = ImmutableMap.builder();
    rules.forEach(rule -> all.putAll(rule.limits()));
    return all.putAll(assumptions).buildKeepingLast();
  }

  /**
   * This rulebook with another number in the place of a limit, in every rule that has it. Reports
   * show the number with where it comes from, and name the rules that were given other limits.
   *
   * <pre>{@code
   * rulebook.withLimit(
   *     "float valve capacity by full-throttle flow",
   *     Coefficient.assumed(1.5, "1", "our hoses are long"));
   * }</pre>
   *
   * @param name name of the limit, one of {@link #assumptions()} that a rule has
   * @param other the number, in the same unit, with where it comes from; where the limit is more
   *     than 0, a twentieth to twenty times of it
   * @return the changed rulebook
   * @throws IllegalArgumentException if no rule has a limit of this name, or the number is in
   *     another unit or out of range
   */
  public Rulebook withLimit(String name, Coefficient other) {
    if (rules.stream().noneMatch(rule -> rule.limits().containsKey(name))) {
      Set<String> names = new TreeSet<>();
      rules.forEach(rule -> names.addAll(rule.limits().keySet()));
      throw new IllegalArgumentException(
          "limit \"" + OneLine.shown(name, LONGEST_SHOWN) + "\": allowed " + names);
    }
    return holding(
        rules.stream()
            .map(rule -> rule.limits().containsKey(name) ? rule.withLimit(name, other) : rule)
            .toList());
  }

  /**
   * This rulebook with other numbers in the place of limits, such as those of a shop.
   *
   * @param others the numbers by the name of the limit
   * @return the changed rulebook
   * @throws IllegalArgumentException as for {@link #withLimit}
   */
  public Rulebook withLimits(Map<String, Coefficient> others) {
    Rulebook changed = this;
    for (Map.Entry<String, Coefficient> other : others.entrySet()) {
      changed = changed.withLimit(other.getKey(), other.getValue());
    }
    return changed;
  }

  /**
   * This rulebook with those rules alone that have one of some tags. Reports name the rules that
   * were left out.
   *
   * @param tags the tags
   * @return the smaller rulebook
   */
  public Rulebook tagged(String... tags) {
    Set<String> wanted = Set.of(tags);
    return holding(
        rules.stream().filter(rule -> rule.tags().stream().anyMatch(wanted::contains)).toList());
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
    Objects.requireNonNull(id, "id");
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
    return holding(Stream.concat(rules.stream(), more.stream()).toList());
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
      List<Rule> more = pack.rules();
      String named = all.version + " + " + pack.id() + " " + pack.version();
      all =
          new Rulebook(
              name, named, all.with(more).rules, assumptions, joined(all.origin, byId(more)));
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
    return holding(rules.stream().map(each -> each == old ? rule : each).toList());
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
    return holding(rules.stream().filter(each -> each != old).toList());
  }

  /**
   * This rulebook and another in one. What was changed in either stays a change.
   *
   * @param other the other
   * @param mergedName name of the merged rulebook
   * @param mergedVersion its version
   * @return the merged rulebook
   * @throws IllegalArgumentException if an id occurs in both
   */
  public Rulebook mergedWith(Rulebook other, String mergedName, String mergedVersion) {
    return new Rulebook(
        mergedName,
        mergedVersion,
        with(other.rules).rules,
        joined(assumptions, other.assumptions),
        joined(origin, other.origin));
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
   * Holds every rule against a setting, some findings waived. They stay in the report, and the
   * verdict names each waived danger. A waiver that waived nothing stands in the report with the
   * reason.
   *
   * @param setting the assessed setting
   * @param waivers the waivers; the first that covers a finding counts for it
   * @param day the day by which they expire, from the caller's own clock
   * @return the report
   */
  public Report evaluate(AssessedSetting setting, List<Waiver> waivers, LocalDate day) {
    return evaluate(setting, new Waivers(List.copyOf(waivers), Optional.of(day)));
  }

  private Report evaluate(AssessedSetting setting, Waivers waivers) {
    List<RuleResult> results = rules.stream().map(rule -> RuleResult.of(rule, setting)).toList();
    List<RankedFinding> findings =
        results.stream()
            .flatMap(result -> ranked(result, waivers, setting.sheet()))
            .sorted()
            .toList();
    return Report.of(setting, this, results, findings, waivers);
  }

  private Stream<RankedFinding> ranked(RuleResult result, Waivers waivers, SetupSheet sheet) {
    Rule rule = known(result.ruleId());
    return result.outcome().findings().stream()
        .map(
            finding ->
                new RankedFinding(
                    rule.id(), rule.severity(), finding, waivers.covering(rule, finding, sheet)));
  }

  private Rule known(String id) {
    return rule(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "rule id "
                        + OneLine.shown(id, LONGEST_SHOWN)
                        + ": allowed one of rulebook "
                        + name
                        + ", "
                        + rules));
  }

  /** {@return name and version, and how it differs from the rules of its name} */
  @Override
  public String toString() {
    return edition().toString();
  }
}
