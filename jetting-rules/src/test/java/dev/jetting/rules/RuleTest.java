package dev.jetting.rules;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RuleTest {

  private static final AssessedSetting SETTING = TwoHundred.assessed(STANDARD, ALL_ROUND);

  private static final Finding FINDING =
      Finding.above("setting.x", Measure.ratio(2), Measure.ratio(1), ThrottleBand.WHOLE)
          .with("a", "A")
          .says("{a} is wrong.", "Mend it.");

  private static final Rule PASS = rule("pass", Outcome.passed());
  private static final Rule FAIL = rule("fail", Outcome.failed(FINDING));
  private static final Rule IDLE = rule("idle", Outcome.notApplicable("not here"));
  private static final Rule OPEN = rule("open", Outcome.notEvaluated("a number"));
  private static final Rule BROKEN =
      Rule.named("broken")
          .judging(
              setting -> {
                throw new IllegalStateException("oh");
              });

  @Test
  void draft_badId_isRefusedHoweverItIsMade() {
    assertThatIllegalArgumentException().isThrownBy(() -> Rule.named("No Id"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> draft("No Id", Set.of()))
        .withMessageContaining("No Id");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> draft("id", Set.of("No Id")))
        .withMessageContaining("No Id");
  }

  @Test
  void evaluate_throwingJudge_isBrokenAndNamed() {
    Outcome outcome = BROKEN.evaluate(SETTING);
    assertThat(outcome.status()).isEqualTo(Status.BROKEN);
    assertThat(outcome.reason()).contains("oh");
  }

  @Test
  @SuppressWarnings("NullAway") // a careless author's judge
  void evaluate_judgeWithoutAnswer_isBroken() {
    assertThat(Rule.named("mute").judging(setting -> null).evaluate(SETTING).status())
        .isEqualTo(Status.BROKEN);
  }

  @Test
  void evaluate_ruleWithBand_seesOnlyItsPoints() {
    List<ThrottleOpening> seen = new ArrayList<>();
    Rule.named("looker")
        .within(ThrottleBand.eighths(2, 4))
        .judging(
            setting -> {
              setting.profile().points().forEach(p -> seen.add(p.mixture().throttle()));
              return Outcome.passed();
            })
        .evaluate(SETTING);
    assertThat(seen).hasSize(9);
    assertThat(Collections.min(seen)).isEqualTo(ThrottleOpening.ofEighths(2));
    assertThat(Collections.max(seen)).isEqualTo(ThrottleOpening.ofEighths(4));
  }

  @Test
  void within_narrowsFurther() {
    List<Integer> sizes = new ArrayList<>();
    Rule looker =
        Rule.named("looker")
            .within(ThrottleBand.eighths(2, 4))
            .judging(
                setting -> {
                  sizes.add(setting.profile().points().size());
                  return Outcome.passed();
                });
    Rule narrowed = looker.within(ThrottleBand.eighths(3, 8));
    narrowed.evaluate(SETTING);
    assertThat(sizes).containsExactly(5);
    assertThat(narrowed.band()).isEqualTo(ThrottleBand.eighths(3, 4));
  }

  @Test
  void within_bandThatTheRuleDoesNotSpeakOf_neverApplies() {
    Rule low = rule("low", Outcome.failed(FINDING)).within(ThrottleBand.eighths(0, 2));
    Rule nowhere = low.within(ThrottleBand.eighths(4, 8));
    assertThat(nowhere.band()).isEqualTo(ThrottleBand.eighths(4, 8));
    assertThat(nowhere.evaluate(SETTING).status()).isEqualTo(Status.NOT_APPLICABLE);
  }

  /** Nobody looked there, which is not the same as nothing being wrong. */
  @Test
  void evaluate_bandBetweenTheAssessedOpenings_isNotEvaluated() {
    ThrottleBand between =
        new ThrottleBand(ThrottleOpening.ofShare(0.501), ThrottleOpening.ofShare(0.502));
    Outcome outcome = rule("gap", Outcome.passed()).within(between).evaluate(SETTING);
    assertThat(outcome.status()).isEqualTo(Status.NOT_EVALUATED);
    assertThat(outcome.reason()).isEqualTo("an assessed throttle opening within 0.501 to 0.502");
  }

  @ParameterizedTest
  @ValueSource(classes = {StackOverflowError.class, AssertionError.class, LinkageError.class})
  void evaluate_judgeThatThrowsAnError_isBrokenAndNamed(Class<? extends Error> type)
      throws ReflectiveOperationException {
    Error error = type.getDeclaredConstructor().newInstance();
    Rule erring =
        Rule.named("erring")
            .judging(
                setting -> {
                  throw error;
                });
    Outcome outcome = erring.evaluate(SETTING);
    assertThat(outcome.status()).isEqualTo(Status.BROKEN);
    assertThat(outcome.reason()).contains(type.getSimpleName());
  }

  /** A language without checked exceptions throws them undeclared. */
  @Test
  void evaluate_judgeThatThrowsACheckedException_isBrokenAndNamed() {
    Outcome outcome = throwing(new IOException("no file")).evaluate(SETTING);
    assertThat(outcome.status()).isEqualTo(Status.BROKEN);
    assertThat(outcome.reason()).isEqualTo("java.io.IOException: no file");
  }

  @Test
  void evaluate_faultWhoseWordsThrow_isBrokenAndNamedByItsClass() {
    Outcome outcome = throwing(new Fault()).evaluate(SETTING);
    assertThat(outcome.status()).isEqualTo(Status.BROKEN);
    assertThat(outcome.reason()).isEqualTo(Fault.class.getName());
  }

  /** A fault may quote what a stranger wrote. */
  @Test
  void evaluate_faultWithSteeringCharacters_isBrokenOnOneLine() {
    Outcome outcome =
        throwing(new IllegalStateException("a\u202e\u001b\nb\ud800")).evaluate(SETTING);
    assertThat(outcome.reason())
        .isEqualTo("java.lang.IllegalStateException: a\\u202e\\u001b b\\ud800");
  }

  private static final class Fault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @Override
    public String getMessage() {
      throw new IllegalStateException("no words either");
    }
  }

  private static Rule throwing(Exception fault) {
    return Rule.named("throwing")
        .judging(
            setting -> {
              RuleTest.<RuntimeException>undeclared(fault);
              return Outcome.passed();
            });
  }

  @SuppressWarnings("unchecked") // no cast is made
  private static <E extends Exception> void undeclared(Exception fault) throws E {
    throw (E) fault;
  }

  /** The pattern of ids goes through a long one in a loop. */
  @Test
  void formerly_idOfManyWords_overflowsNoStack() {
    String id = "a" + "-a".repeat(100_000);
    assertThat(Rule.named("id").formerly(id).formerIds()).containsExactly(id);
    assertThatIllegalArgumentException().isThrownBy(() -> Rule.named("id").formerly(id + "-"));
  }

  @Test
  void when_conditionFalse_isNotApplicableWithTheReason() {
    Outcome outcome = FAIL.when(setting -> false, "not today").evaluate(SETTING);
    assertThat(outcome).isEqualTo(Outcome.notApplicable("not today"));
    assertThat(FAIL.when(setting -> true, "not today").evaluate(SETTING).status())
        .isEqualTo(Status.FAILED);
  }

  @Test
  void unless_isTheOppositeOfWhen() {
    assertThat(FAIL.unless(setting -> true, "spared").evaluate(SETTING))
        .isEqualTo(Outcome.notApplicable("spared"));
    assertThat(FAIL.unless(setting -> false, "spared").evaluate(SETTING).status())
        .isEqualTo(Status.FAILED);
  }

  @Test
  void allOf_decidesLikeATruthTable() {
    assertThat(all()).isEqualTo(Status.PASSED);
    assertThat(all(PASS, PASS)).isEqualTo(Status.PASSED);
    assertThat(all(PASS, FAIL)).isEqualTo(Status.FAILED);
    assertThat(all(OPEN, FAIL)).isEqualTo(Status.FAILED);
    assertThat(all(OPEN, PASS)).isEqualTo(Status.NOT_EVALUATED);
    assertThat(all(IDLE, PASS)).isEqualTo(Status.PASSED);
    assertThat(all(IDLE, IDLE)).isEqualTo(Status.NOT_APPLICABLE);
    assertThat(all(BROKEN, FAIL)).isEqualTo(Status.BROKEN);
  }

  @Test
  void anyOf_decidesLikeATruthTable() {
    assertThat(any()).isEqualTo(Status.FAILED);
    assertThat(any(FAIL, FAIL)).isEqualTo(Status.FAILED);
    assertThat(any(PASS, FAIL)).isEqualTo(Status.PASSED);
    assertThat(any(OPEN, PASS)).isEqualTo(Status.PASSED);
    assertThat(any(OPEN, FAIL)).isEqualTo(Status.NOT_EVALUATED);
    assertThat(any(IDLE, FAIL)).isEqualTo(Status.FAILED);
    assertThat(any(IDLE, IDLE)).isEqualTo(Status.NOT_APPLICABLE);
    assertThat(any(BROKEN, PASS)).isEqualTo(Status.BROKEN);
  }

  @Test
  void composed_keepsEveryBranch() {
    Outcome outcome = Rule.allOf(Rule.named("both"), List.of(PASS, FAIL, IDLE)).evaluate(SETTING);
    assertThat(outcome.branches())
        .extracting(Outcome.Branch::ruleId)
        .containsExactly("pass", "fail", "idle");
    assertThat(outcome.findings()).containsExactly(FINDING);
  }

  @Test
  void not_turnsPassedAndFailedRoundAndLeavesTheRest() {
    assertThat(not(PASS)).isEqualTo(Status.FAILED);
    assertThat(not(FAIL)).isEqualTo(Status.PASSED);
    assertThat(not(IDLE)).isEqualTo(Status.NOT_APPLICABLE);
    assertThat(not(OPEN)).isEqualTo(Status.NOT_EVALUATED);
    assertThat(not(BROKEN)).isEqualTo(Status.BROKEN);
  }

  @Test
  void not_twice_givesStatusAndFindingsBack() {
    Rule twice = Rule.not(Rule.named("twice"), Rule.not(Rule.named("once"), FAIL));
    assertThat(twice.evaluate(SETTING).status()).isEqualTo(Status.FAILED);
    assertThat(twice.evaluate(SETTING).findings()).containsExactly(FINDING);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Lean", "lean anywhere", "-lean", "lean--anywhere", "läan"})
  void named_badId_isRefusedAndQuoted(String id) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rule.named(id))
        .withMessageContaining("\"" + id + "\"")
        .withMessageContaining("lean-anywhere");
  }

  private static Status all(Rule... rules) {
    return Rule.allOf(Rule.named("all"), List.of(rules)).evaluate(SETTING).status();
  }

  private static Status any(Rule... rules) {
    return Rule.anyOf(Rule.named("any"), List.of(rules)).evaluate(SETTING).status();
  }

  private static Status not(Rule rule) {
    return Rule.not(Rule.named("not"), rule).evaluate(SETTING).status();
  }

  private static Rule rule(String id, Outcome outcome) {
    return Rule.named(id).judging(setting -> outcome);
  }

  private static Rule.Draft draft(String id, Set<String> formerIds) {
    return new Rule.Draft(
        id, formerIds, "", "", Severity.NOTE, ThrottleBand.WHOLE, Set.of(), "", Map.of());
  }
}
