package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.ImmutableSortedSet;
import dev.jetting.core.parts.Coefficient;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.OneLine;
import dev.jetting.units.Sentence;
import dev.jetting.units.number.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Something that a careful tuner looks at: an immutable value that judges an assessed setting.
 *
 * <p>A rule never throws for a bad setting; what its judge throws, and a missing answer of its,
 * comes out as {@link Outcome.Status#BROKEN}. It sees only the assessed points of its throttle
 * band.
 *
 * <pre>{@code
 * Rule rule =
 *     Rule.named("no-air-screw")
 *         .title("Only mixture screws")
 *         .rationale("This shop has no advice for air screws.")
 *         .judging(setting -> setting.setting().screw().kind() == ScrewKind.MIXTURE
 *             ? Outcome.passed()
 *             : Outcome.notApplicable("an air screw"));
 * }</pre>
 */
public final class Rule {

  /**
   * Beyond it a percentage was taken for a share, or a rule that is not wanted should be left out.
   */
  private static final double MOST_TIMES = 20;

  private static final int LONGEST_SHOWN = 79;

  private static final Pattern ID = Pattern.compile("[a-z0-9]++(?:-[a-z0-9]++)*+");

  private static final int LONGEST_LINK = 300;

  /** From a setting and the rule's limits to an outcome. */
  private interface Judge {
    @Nullable Outcome apply(AssessedSetting setting, Map<String, Coefficient> limits);
  }

  private final Draft draft;
  private final Judge judge;
  private final String definition;

  private Rule(Draft draft, Judge judge, String definition) {
    this.draft = draft;
    this.judge = Objects.requireNonNull(judge, "judge");
    this.definition = Objects.requireNonNull(definition, "definition");
  }

  /**
   * Begins a rule. By default it is a warning for the whole throttle range.
   *
   * @param id stable id: lower-case words of letters and digits, joined by hyphens
   * @return a rule without its judge
   * @throws IllegalArgumentException if the id has another form
   */
  public static Draft named(String id) {
    return new Draft(
        id,
        ImmutableSet.of(),
        id,
        "",
        Severity.WARNING,
        ThrottleBand.WHOLE,
        ImmutableSet.of(),
        "",
        ImmutableMap.of());
  }

  static String checkedId(String id) {
    if (!ID.matcher(Objects.requireNonNull(id, "id")).matches()) {
      throw InvalidValueException.of(
          Sentence.of("error.name.rule-id"),
          '"' + OneLine.shown(id, LONGEST_SHOWN) + '"',
          Sentence.of("error.rule-id"));
    }
    return id;
  }

  /**
   * A rule that its author has not given a judge yet.
   *
   * @param id stable id
   * @param formerIds ids that it had before
   * @param title one line for people
   * @param rationale why it matters
   * @param severity how much
   * @param band the part of the throttle range it speaks of
   * @param tags words by which a rulebook can be filtered
   * @param link where its page stands; empty if it has none
   * @param limits the numbers that its judge uses, by name, which a rulebook can replace
   */
  public record Draft(
      String id,
      Set<String> formerIds,
      String title,
      String rationale,
      Severity severity,
      ThrottleBand band,
      Set<String> tags,
      String link,
      Map<String, Coefficient> limits) {

    /**
     * Copies the former ids, the tags and the limits.
     *
     * @param id stable id
     * @param formerIds ids that it had before
     * @param title one line for people
     * @param rationale why it matters
     * @param severity how much
     * @param band the part of the throttle range it speaks of
     * @param tags words by which a rulebook can be filtered
     * @param link where its page stands; empty if it has none
     * @param limits the numbers that its judge uses, by name
     * @throws IllegalArgumentException if an id or tag has another form than rule ids have, or the
     *     link is not one line of at most 300 visible characters
     */
    public Draft {
      checkedId(id);
      formerIds = ImmutableSet.copyOf(formerIds);
      formerIds.forEach(Rule::checkedId);
      PlainLine.checkLength("title of rule " + id, title);
      PlainLine.checkLength("rationale of rule " + id, rationale);
      Objects.requireNonNull(severity, "severity");
      Objects.requireNonNull(band, "band");
      tags = ImmutableSortedSet.copyOf(tags);
      tags.forEach(Rule::checkedId);
      if (!link.isEmpty()) {
        PlainLine.checked("", "link of rule " + id, link, LONGEST_LINK);
      }
      limits = ImmutableSortedMap.copyOf(limits);
    }

    /**
     * Keeps an id that the rule had before, so that waivers and callers that know it still find it.
     *
     * @param formerId the former id
     * @return the changed draft
     * @throws IllegalArgumentException if the id has another form than rule ids have
     */
    public Draft formerly(String formerId) {
      ImmutableSet<String> ids =
          ImmutableSet.<String>builder().addAll(formerIds).add(formerId).build();
      return new Draft(id, ids, title, rationale, severity, band, tags, link, limits);
    }

    /**
     * Sets the title.
     *
     * @param line one line for people
     * @return the changed draft
     */
    public Draft title(String line) {
      return new Draft(id, formerIds, line, rationale, severity, band, tags, link, limits);
    }

    /**
     * Sets the rationale.
     *
     * @param why the trade's reason
     * @return the changed draft
     */
    public Draft rationale(String why) {
      return new Draft(id, formerIds, title, why, severity, band, tags, link, limits);
    }

    /**
     * Sets the severity.
     *
     * @param howMuch the severity of its findings
     * @return the changed draft
     */
    public Draft severity(Severity howMuch) {
      return new Draft(id, formerIds, title, rationale, howMuch, band, tags, link, limits);
    }

    /**
     * Sets the throttle band.
     *
     * @param where the only part of the throttle range that the judge will see
     * @return the changed draft
     */
    public Draft within(ThrottleBand where) {
      return new Draft(id, formerIds, title, rationale, severity, where, tags, link, limits);
    }

    /**
     * Adds tags, by which a rulebook can be filtered.
     *
     * @param more lower-case words of letters and digits, joined by hyphens
     * @return the changed draft
     * @throws IllegalArgumentException if a tag has another form
     */
    public Draft tagged(String... more) {
      ImmutableSet<String> all = ImmutableSet.<String>builder().addAll(tags).add(more).build();
      return new Draft(id, formerIds, title, rationale, severity, band, all, link, limits);
    }

    /**
     * Sets where the rule's page stands.
     *
     * @param page an address or a path; one line, at most 300 characters
     * @return the changed draft
     * @throws IllegalArgumentException if it is not one line of visible characters
     */
    public Draft link(String page) {
      return new Draft(id, formerIds, title, rationale, severity, band, tags, page, limits);
    }

    /**
     * Adds a number that the judge uses, so that a rulebook can replace it: see {@link
     * Rulebook#withLimit}.
     *
     * @param name its name, as reports show it
     * @param limit the number, with its unit and where it comes from
     * @return the changed draft
     */
    public Draft limit(String name, Coefficient limit) {
      ImmutableMap<String, Coefficient> all =
          ImmutableMap.<String, Coefficient>builder()
              .putAll(limits)
              .put(PlainLine.checked("", "name of a limit", name, LONGEST_LINK), limit)
              .buildKeepingLast();
      return new Draft(id, formerIds, title, rationale, severity, band, tags, link, all);
    }

    /**
     * Completes a rule whose judge uses limits.
     *
     * @param judge from the assessed setting, narrowed to the rule's throttle band, and the limits
     *     by name to an outcome; pure
     * @return the rule
     */
    public Rule judgingBy(
        BiFunction<? super AssessedSetting, ? super Map<String, Coefficient>, Outcome> judge) {
      Objects.requireNonNull(judge, "judge");
      return new Rule(this, judge::apply, "");
    }

    /**
     * Completes the rule.
     *
     * @param judge from the assessed setting, narrowed to the rule's throttle band, to an outcome;
     *     pure: the same setting always gets the same outcome
     * @return the rule
     */
    public Rule judging(Function<? super AssessedSetting, Outcome> judge) {
      Objects.requireNonNull(judge, "judge");
      return new Rule(this, (setting, limits) -> judge.apply(setting), "");
    }
  }

  /** {@return the stable id} */
  public String id() {
    return draft.id();
  }

  /** {@return the ids that it had before} */
  public Set<String> formerIds() {
    return draft.formerIds();
  }

  /**
   * Whether an id is the rule's own or one that it had before.
   *
   * @param asked the id
   * @return true if it is
   */
  public boolean answersTo(String asked) {
    return id().equals(Objects.requireNonNull(asked, "asked")) || formerIds().contains(asked);
  }

  /** {@return one line for people} */
  public String title() {
    return draft.title();
  }

  /** {@return why it matters} */
  public String rationale() {
    return draft.rationale();
  }

  /**
   * Returns the title in another language, by the key {@code rule.ID.title}.
   *
   * @param wording the words of the language
   * @return one line for people; the rule's own where the wording has none
   */
  public String title(Wording wording) {
    return title(id(), title(), wording);
  }

  static String title(String id, String title, Wording wording) {
    return wording.text(titleMessage(id, title));
  }

  /** The title for any language: by its key where the language has it, else as it is. */
  static Argument titleWords(String id, String title) {
    return Argument.words(titleMessage(id, title));
  }

  private static Message titleMessage(String id, String title) {
    return Message.of("rule." + id + ".title", title);
  }

  /**
   * Returns the rationale in another language, by the key {@code rule.ID.rationale}.
   *
   * @param wording the words of the language
   * @return why it matters; the rule's own where the wording has none
   */
  public String rationale(Wording wording) {
    return wording.text(Message.of("rule." + id() + ".rationale", rationale()));
  }

  /** {@return how much its findings matter} */
  public Severity severity() {
    return draft.severity();
  }

  /** {@return the part of the throttle range it speaks of} */
  public ThrottleBand band() {
    return draft.band();
  }

  /** {@return words by which a rulebook can be filtered, in their order} */
  public Set<String> tags() {
    return draft.tags();
  }

  /** {@return where its page stands; empty if it has none} */
  public String link() {
    return draft.link();
  }

  /** {@return the numbers that its judge uses, by name} */
  public Map<String, Coefficient> limits() {
    return draft.limits();
  }

  /**
   * This rule with another number in the place of one of its limits.
   *
   * @param name name of the limit
   * @param other the number, in the same unit, with where it comes from; where the limit is more
   *     than 0, a twentieth to twenty times of it
   * @return the changed rule, of the same id
   * @throws IllegalArgumentException if the rule has no limit of this name, or the number is in
   *     another unit or out of range
   */
  public Rule withLimit(String name, Coefficient other) {
    Coefficient limit = limits().get(name);
    if (limit == null) {
      throw new IllegalArgumentException(
          "limit \""
              + OneLine.shown(name, LONGEST_SHOWN)
              + "\" of rule "
              + id()
              + ": allowed "
              + limits().keySet());
    }
    double least = Decimals.rounded(limit.value() / MOST_TIMES, 3);
    double most = Decimals.rounded(limit.value() * MOST_TIMES, 3);
    boolean far = limit.value() > 0 && !(other.value() >= least && other.value() <= most);
    if (!limit.unit().equals(other.unit()) || far) {
      throw new IllegalArgumentException(
          "limit "
              + name
              + " "
              + Decimals.shortest(other.value())
              + " "
              + OneLine.shown(other.unit(), LONGEST_SHOWN)
              + ": allowed a number "
              + (limit.value() > 0
                  ? "from " + Decimals.shortest(least) + " to " + Decimals.shortest(most) + " "
                  : "")
              + "in the unit "
              + limit.unit());
    }
    return new Rule(draft.limit(name, other), judge, definition);
  }

  /**
   * This rule with the text that its judge was made from, such as its place in a rule file. The
   * digest of a rulebook covers the text, since it cannot see what a judge does.
   *
   * @param text all that the judge depends on; rules of one text judge alike
   * @return the changed rule, of the same id
   */
  public Rule definedBy(String text) {
    return new Rule(draft, judge, Objects.requireNonNull(text, "text"));
  }

  /** The text that the judge was made from; empty for a judge that is known as code only. */
  String definition() {
    return definition;
  }

  /** This rule with all limits of another that it has too. */
  Rule withLimitsOf(Rule other) {
    return new Rule(
        new Draft(
            draft.id(),
            draft.formerIds(),
            draft.title(),
            draft.rationale(),
            draft.severity(),
            draft.band(),
            draft.tags(),
            draft.link(),
            other.limits()),
        judge,
        definition);
  }

  /** Whether both declare the same and are known to judge alike. */
  boolean isSameAs(Rule other) {
    boolean alike =
        judge == other.judge || (!definition.isEmpty() && definition.equals(other.definition));
    return alike && draft.equals(other.draft);
  }

  /**
   * Holds the rule against a setting.
   *
   * @param setting the assessed setting
   * @return its outcome; never throws for a bad setting or a broken judge
   */
  public Outcome evaluate(AssessedSetting setting) {
    if (!setting.looksInto(band())) {
      return Outcome.notEvaluated(between(Message.of("rule.no-opening"), "from", "to", band()));
    }
    try {
      @Nullable Outcome outcome = judge.apply(setting.within(band()), limits());
      return outcome == null ? Outcome.broken("the rule gave no outcome") : outcome;
    } catch (Exception | StackOverflowError | AssertionError | LinkageError e) {
      // What a judge of somebody else's may throw without the virtual machine being in trouble:
      // checked exceptions too, which other languages throw undeclared.
      return Outcome.broken(e);
    }
  }

  private static Message between(Message message, String from, String to, ThrottleBand band) {
    return message
        .with(from, Argument.exact(band.from().share(), "1"))
        .with(to, Argument.exact(band.to().share(), "1"));
  }

  /**
   * This rule with another severity.
   *
   * @param other the severity
   * @return the changed rule, of the same id
   */
  public Rule withSeverity(Severity other) {
    return new Rule(draft.severity(other), judge, definition);
  }

  /**
   * This rule restricted to a throttle band.
   *
   * @param other the band
   * @return the changed rule, of the same id, whose band is what lies in both this band and the
   *     rule's own; where nothing does, a rule of the given band that never applies
   */
  public Rule within(ThrottleBand other) {
    return band()
        .common(other)
        .map(common -> new Rule(draft.within(common), judge, definition))
        .orElseGet(
            () -> {
              Message own = between(Message.of("rule.other-band"), "from", "to", band());
              Message why = between(own, "otherFrom", "otherTo", other);
              return draft.within(other).judging(setting -> Outcome.notApplicable(why));
            });
  }

  /**
   * This rule where a condition holds, not applicable otherwise.
   *
   * @param condition the condition
   * @param otherwise the reason to give where it does not hold
   * @return the changed rule, of the same id
   */
  public Rule when(Predicate<? super AssessedSetting> condition, String otherwise) {
    return when(condition, Message.plain(otherwise));
  }

  /**
   * This rule where a condition holds, not applicable otherwise.
   *
   * @param condition the condition
   * @param otherwise the reason to give where it does not hold
   * @return the changed rule, of the same id
   */
  public Rule when(Predicate<? super AssessedSetting> condition, Message otherwise) {
    Judge where =
        (setting, limits) ->
            condition.test(setting)
                ? judge.apply(setting, limits)
                : Outcome.notApplicable(otherwise);
    return new Rule(draft, where, "");
  }

  /**
   * This rule unless a condition holds.
   *
   * @param condition the condition
   * @param reason the reason to give where it holds
   * @return the changed rule, of the same id
   */
  public Rule unless(Predicate<? super AssessedSetting> condition, String reason) {
    return unless(condition, Message.plain(reason));
  }

  /**
   * This rule unless a condition holds.
   *
   * @param condition the condition
   * @param reason the reason to give where it holds
   * @return the changed rule, of the same id
   */
  public Rule unless(Predicate<? super AssessedSetting> condition, Message reason) {
    return when(setting -> !condition.test(setting), reason);
  }

  /**
   * A rule that holds where all of some rules hold; without any it holds.
   *
   * @param draft id, title, rationale, severity and band of the composed rule
   * @param rules the rules
   * @return the composed rule
   */
  public static Rule allOf(Draft draft, List<Rule> rules) {
    List<Rule> copy = ImmutableList.copyOf(rules);
    return draft.judging(setting -> Composition.all(copy, setting));
  }

  /**
   * A rule that holds where any of some rules holds; without any it does not.
   *
   * @param draft id, title, rationale, severity and band of the composed rule
   * @param rules the rules
   * @return the composed rule
   */
  public static Rule anyOf(Draft draft, List<Rule> rules) {
    List<Rule> copy = ImmutableList.copyOf(rules);
    return draft.judging(setting -> Composition.any(copy, setting));
  }

  /**
   * A rule that holds where another does not.
   *
   * @param draft id, title, rationale, severity and band of the composed rule
   * @param rule the other rule
   * @return the composed rule
   */
  public static Rule not(Draft draft, Rule rule) {
    return draft.judging(setting -> Composition.not(rule, setting));
  }

  /** {@return the id} */
  @Override
  public String toString() {
    return id();
  }
}
