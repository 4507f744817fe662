package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;

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

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private final Draft draft;
  private final Function<? super AssessedSetting, Outcome> judge;
  private final String definition;

  private Rule(Draft draft, Function<? super AssessedSetting, Outcome> judge, String definition) {
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
    return new Draft(id, ImmutableSet.of(), id, "", Severity.WARNING, ThrottleBand.WHOLE);
  }

  private static String checked(String id) {
    if (!ID.matcher(Objects.requireNonNull(id, "id")).matches()) {
      throw new IllegalArgumentException(
          "rule id \""
              + TextPage.shortened(id)
              + "\": allowed lower-case words joined by hyphens, as in lean-anywhere");
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
   */
  public record Draft(
      String id,
      Set<String> formerIds,
      String title,
      String rationale,
      Severity severity,
      ThrottleBand band) {

    /**
     * Copies the former ids.
     *
     * @param id stable id
     * @param formerIds ids that it had before
     * @param title one line for people
     * @param rationale why it matters
     * @param severity how much
     * @param band the part of the throttle range it speaks of
     * @throws IllegalArgumentException if an id has another form than rule ids have
     */
    public Draft {
      checked(id);
      formerIds = ImmutableSet.copyOf(formerIds);
      formerIds.forEach(Rule::checked);
      PlainLine.checkLength("title of rule " + id, title);
      PlainLine.checkLength("rationale of rule " + id, rationale);
      Objects.requireNonNull(severity, "severity");
      Objects.requireNonNull(band, "band");
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
      return new Draft(id, ids, title, rationale, severity, band);
    }

    /**
     * Sets the title.
     *
     * @param line one line for people
     * @return the changed draft
     */
    public Draft title(String line) {
      return new Draft(id, formerIds, line, rationale, severity, band);
    }

    /**
     * Sets the rationale.
     *
     * @param why the trade's reason
     * @return the changed draft
     */
    public Draft rationale(String why) {
      return new Draft(id, formerIds, title, why, severity, band);
    }

    /**
     * Sets the severity.
     *
     * @param howMuch the severity of its findings
     * @return the changed draft
     */
    public Draft severity(Severity howMuch) {
      return new Draft(id, formerIds, title, rationale, howMuch, band);
    }

    /**
     * Sets the throttle band.
     *
     * @param where the only part of the throttle range that the judge will see
     * @return the changed draft
     */
    public Draft within(ThrottleBand where) {
      return new Draft(id, formerIds, title, rationale, severity, where);
    }

    /**
     * Completes the rule.
     *
     * @param judge from the assessed setting, narrowed to the rule's throttle band, to an outcome;
     *     pure: the same setting always gets the same outcome
     * @return the rule
     */
    public Rule judging(Function<? super AssessedSetting, Outcome> judge) {
      return new Rule(this, judge, "");
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
    return id().equals(asked) || formerIds().contains(asked);
  }

  /** {@return one line for people} */
  public String title() {
    return draft.title();
  }

  /** {@return why it matters} */
  public String rationale() {
    return draft.rationale();
  }

  /** {@return how much its findings matter} */
  public Severity severity() {
    return draft.severity();
  }

  /** {@return the part of the throttle range it speaks of} */
  public ThrottleBand band() {
    return draft.band();
  }

  /**
   * This rule with the text that its judge was made from, such as its place in a rule file. The
   * digest of a rulebook covers the text, since it cannot see what a judge does.
   *
   * @param text all that the judge depends on; rules of one text judge alike
   * @return the changed rule, of the same id
   */
  public Rule definedBy(String text) {
    return new Rule(draft, judge, text);
  }

  /** The text that the judge was made from; empty for a judge that is known as code only. */
  String definition() {
    return definition;
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
      return Outcome.notEvaluated("an assessed throttle opening within " + text(band()));
    }
    try {
      Outcome outcome = judge.apply(setting.within(band()));
      return outcome == null ? Outcome.broken("the rule gave no outcome") : outcome;
    } catch (RuntimeException | StackOverflowError | AssertionError | LinkageError e) {
      // What a judge of somebody else's may throw without the virtual machine being in trouble.
      return Outcome.broken(e.toString());
    }
  }

  private static String text(ThrottleBand band) {
    return band.from() + " to " + band.to();
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
              String why = "the rule speaks of " + text(band()) + ", not of " + text(other);
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
    return draft.judging(
        setting ->
            condition.test(setting) ? judge.apply(setting) : Outcome.notApplicable(otherwise));
  }

  /**
   * This rule unless a condition holds.
   *
   * @param condition the condition
   * @param reason the reason to give where it holds
   * @return the changed rule, of the same id
   */
  public Rule unless(Predicate<? super AssessedSetting> condition, String reason) {
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
