package dev.jetting.rules.laws;

import com.google.common.collect.ImmutableMap;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Margin;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetEdits;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Checks a rule on examples, whatever the test framework: a check that does not hold throws an
 * {@code AssertionError}.
 *
 * <pre>{@code
 * RuleCheck check = RuleCheck.of(RULE).on(LawKit.plainSheet());
 * check.edited("/setting/mainJet", "1.40 mm").passes();
 * check.edited("/setting/mainJet", "1.41 mm").failsOn("setting.mainJet").withMeasured(1.41);
 * }</pre>
 *
 * <p>Immutable. Edits are those of {@link SheetEdits}.
 */
public final class RuleCheck {

  /** By how much of its size a number may differ from the one that is expected. */
  private static final double TOLERANCE = 1e-6;

  private final Rule rule;
  private final SetupSheet sheet;
  private final ImmutableMap<String, String> edits;
  private final Function<? super SetupSheet, AssessedSetting> assessment;

  private RuleCheck(
      Rule rule,
      SetupSheet sheet,
      Map<String, String> edits,
      Function<? super SetupSheet, AssessedSetting> assessment) {
    this.rule = Objects.requireNonNull(rule, "rule");
    this.sheet = Objects.requireNonNull(sheet, "sheet");
    this.edits = ImmutableMap.copyOf(edits);
    this.assessment = Objects.requireNonNull(assessment, "assessment");
  }

  /**
   * Begins checks of a rule on the plain sheet of the law kit.
   *
   * @param rule the rule
   * @return the checks
   */
  public static RuleCheck of(Rule rule) {
    return new RuleCheck(rule, LawKit.plainSheet(), Map.of(), AssessedSetting::of);
  }

  /**
   * These checks on another sheet, without the edits so far.
   *
   * @param other the sheet
   * @return the changed checks
   */
  public RuleCheck on(SetupSheet other) {
    return new RuleCheck(rule, other, Map.of(), assessment);
  }

  /**
   * These checks with another way to assess a sheet.
   *
   * @param other the way
   * @return the changed checks
   */
  public RuleCheck assessedBy(Function<? super SetupSheet, AssessedSetting> other) {
    return new RuleCheck(rule, sheet, edits, other);
  }

  /**
   * These checks with a text put into the sheet.
   *
   * @param pointer where, a JSON Pointer (RFC 6901) into the sheet's document
   * @param text the text, such as a quantity with its unit
   * @return the changed checks
   */
  public RuleCheck edited(String pointer, String text) {
    return editedJson(pointer, SheetEdits.text(text));
  }

  /**
   * These checks with a number put into the sheet.
   *
   * @param pointer where, a JSON Pointer (RFC 6901) into the sheet's document
   * @param number the number
   * @return the changed checks
   */
  public RuleCheck edited(String pointer, double number) {
    return editedJson(pointer, Numbers.text(number));
  }

  /**
   * These checks with a JSON value put into the sheet.
   *
   * @param pointer where, a JSON Pointer (RFC 6901) into the sheet's document
   * @param json the value, as JSON
   * @return the changed checks
   */
  public RuleCheck editedJson(String pointer, String json) {
    return new RuleCheck(
        rule,
        sheet,
        ImmutableMap.<String, String>builder().putAll(edits).put(pointer, json).buildKeepingLast(),
        assessment);
  }

  /** {@return what comes of the rule on the edited sheet} */
  public Outcome outcome() {
    return rule.evaluate(assessment.apply(SheetEdits.edited(sheet, edits)));
  }

  /**
   * Checks that the rule passes.
   *
   * @return its number, to be checked further
   */
  public Checked passes() {
    return checked(Status.PASSED);
  }

  /**
   * Checks that the rule fails, with a finding on a subject.
   *
   * @param subject path of the part or circuit
   * @return the number of the worst finding on it, to be checked further
   */
  public Checked failsOn(String subject) {
    Outcome outcome = checked(Status.FAILED).outcome;
    Outcome on =
        Outcome.of(outcome.findings().stream().filter(f -> f.subject().equals(subject)).toList());
    if (on.status() != Status.FAILED) {
      throw new AssertionError(
          "rule "
              + rule.id()
              + ": expected a finding on "
              + subject
              + ", but it "
              + words(outcome));
    }
    return new Checked(rule.id(), on);
  }

  /** Checks that the rule does not apply. */
  public void doesNotApply() {
    checked(Status.NOT_APPLICABLE);
  }

  /** Checks that something is missing that the rule needs. */
  public void isNotEvaluated() {
    checked(Status.NOT_EVALUATED);
  }

  private Checked checked(Status expected) {
    Outcome outcome = outcome();
    if (outcome.status() != expected) {
      throw new AssertionError(
          "rule "
              + rule.id()
              + " on "
              + edits
              + ": expected "
              + expected
              + ", but it "
              + words(outcome));
    }
    return new Checked(rule.id(), outcome);
  }

  private static String words(Outcome outcome) {
    return "came out as "
        + OutcomeText.of(outcome)
        + outcome.nearest().map(m -> ", " + m.measured() + " against " + m.limit()).orElse("");
  }

  /** An outcome as it was expected, whose number can be checked. */
  public static final class Checked {
    private final String ruleId;
    private final Outcome outcome;

    private Checked(String ruleId, Outcome outcome) {
      this.ruleId = ruleId;
      this.outcome = outcome;
    }

    /**
     * Checks what was measured.
     *
     * @param expected the number, in the unit that the rule measures in, to a millionth
     * @return this
     */
    public Checked withMeasured(double expected) {
      return with("measured", margin().measured().value(), expected);
    }

    /**
     * Checks the limit.
     *
     * @param expected the number, in the unit that the rule measures in, to a millionth
     * @return this
     */
    public Checked withLimit(double expected) {
      return with("limit", margin().limit().value(), expected);
    }

    private Margin margin() {
      return outcome
          .nearest()
          .orElseThrow(() -> new AssertionError("rule " + ruleId + " states no number"));
    }

    private Checked with(String what, double is, double expected) {
      if (Math.abs(is - expected) > TOLERANCE * Math.max(Math.abs(expected), TOLERANCE)) {
        throw new AssertionError(
            "rule "
                + ruleId
                + ": expected "
                + what
                + " "
                + Numbers.text(expected)
                + ", but it is "
                + Numbers.text(is));
      }
      return this;
    }
  }
}
