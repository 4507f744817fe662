package dev.jetting.rules.laws;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.RiskModel;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What is held against the laws: a rulebook, the way its settings are assessed, and what is
 * declared of its rules. Immutable.
 */
public final class Candidate {

  private final Rulebook rulebook;
  private final Function<? super SetupSheet, AssessedSetting> assessment;
  private final ImmutableMap<String, Monotone> monotone;
  private final ImmutableSet<String> otherSpeeds;

  private Candidate(
      Rulebook rulebook,
      Function<? super SetupSheet, AssessedSetting> assessment,
      Map<String, Monotone> monotone,
      Set<String> otherSpeeds) {
    this.rulebook = Objects.requireNonNull(rulebook, "rulebook");
    this.assessment = Objects.requireNonNull(assessment, "assessment");
    this.monotone = ImmutableMap.copyOf(monotone);
    this.otherSpeeds = ImmutableSet.copyOf(otherSpeeds);
  }

  /**
   * A rulebook on settings that are assessed with the library's own risk model, nothing declared.
   *
   * @param rulebook the rulebook
   * @return the candidate
   */
  public static Candidate of(Rulebook rulebook) {
    return new Candidate(rulebook, AssessedSetting::of, Map.of(), Set.of());
  }

  /**
   * Rules in a rulebook of their own.
   *
   * @param rules the rules, each id once
   * @return the candidate
   * @throws IllegalArgumentException if an id occurs twice
   */
  public static Candidate of(Rule... rules) {
    return of(Rulebook.of("candidate", "1", List.of(rules)));
  }

  /**
   * This candidate on settings assessed with another risk model.
   *
   * @param riskModel limits, spreads and steps
   * @return the changed candidate
   */
  public Candidate assessedWith(RiskModel riskModel) {
    return assessedBy(sheet -> AssessedSetting.of(sheet, riskModel));
  }

  /**
   * This candidate on settings assessed in a way of the caller's own, which is held against the
   * laws too.
   *
   * @param assessment from a sheet to the assessed setting; an {@code IllegalArgumentException}
   *     says that the sheet cannot be assessed
   * @return the changed candidate
   */
  public Candidate assessedBy(Function<? super SetupSheet, AssessedSetting> assessment) {
    return new Candidate(rulebook, assessment, monotone, otherSpeeds);
  }

  /**
   * Declares a rule monotone in each part, so that it is held to that.
   *
   * @param ruleId id of the rule
   * @param how the side that it warns of, and the tolerance
   * @return the changed candidate
   * @throws IllegalArgumentException if there is no such rule
   */
  public Candidate declaring(String ruleId, Monotone how) {
    return new Candidate(
        rulebook,
        assessment,
        ImmutableMap.<String, Monotone>builder()
            .putAll(monotone)
            .put(known(ruleId), how)
            .buildKeepingLast(),
        otherSpeeds);
  }

  /**
   * Declares that a rule computes the mixture in its throttle band at other engine speeds than
   * those of the load line, so that the band law leaves these speeds alone.
   *
   * @param ruleId id of the rule
   * @return the changed candidate
   * @throws IllegalArgumentException if there is no such rule
   */
  public Candidate declaringOtherSpeeds(String ruleId) {
    return new Candidate(
        rulebook,
        assessment,
        monotone,
        ImmutableSet.<String>builder().addAll(otherSpeeds).add(known(ruleId)).build());
  }

  private String known(String ruleId) {
    return rulebook
        .rule(ruleId)
        .map(Rule::id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "rule id " + ruleId + ": allowed one of " + rulebook.rules()));
  }

  /** {@return the rulebook} */
  public Rulebook rulebook() {
    return rulebook;
  }

  /**
   * Assesses a sheet.
   *
   * @param sheet the sheet
   * @return the assessed setting
   * @throws IllegalArgumentException if the sheet cannot be assessed
   */
  public AssessedSetting assess(SetupSheet sheet) {
    return assessment.apply(sheet);
  }

  /**
   * What is declared of a rule's answer to changes of parts.
   *
   * @param rule the rule
   * @return the declaration; empty if there is none
   */
  public Optional<Monotone> monotone(Rule rule) {
    return Optional.ofNullable(monotone.get(rule.id()));
  }

  /**
   * Whether a rule is declared to compute at other engine speeds.
   *
   * @param rule the rule
   * @return true if it is
   */
  public boolean computesAtOtherSpeeds(Rule rule) {
    return otherSpeeds.contains(rule.id());
  }
}
