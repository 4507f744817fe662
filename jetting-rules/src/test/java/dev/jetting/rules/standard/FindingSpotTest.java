package dev.jetting.rules.standard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules that look over the throttle range say as data where it is worst. */
class FindingSpotTest {

  /** A mean over a band is worst at no single opening. */
  private static final Set<String> OF_A_BAND = Set.of("cutaway-balance", "crisp-but-lean-middle");

  static List<Rule> rulesOfTheMixture() {
    return StandardRulebook.rulebook().rules().stream()
        .filter(rule -> rule.tags().contains("mixture"))
        .filter(rule -> !OF_A_BAND.contains(rule.id()))
        .toList();
  }

  static List<Rule> rules() {
    return StandardRulebook.rulebook().rules();
  }

  @ParameterizedTest
  @MethodSource("rulesOfTheMixture")
  void ruleOfTheMixture_saysWhereItIsWorst(Rule rule) throws Exception {
    assertThat(findings(rule)).isNotEmpty().allMatch(finding -> finding.worst().isPresent());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void worst_isInTheBand_andTheOpeningOfTheSentence(Rule rule) throws Exception {
    for (Finding finding : findings(rule)) {
      Map<String, Argument> arguments = finding.words().arguments();
      for (Finding.Spot worst : finding.worst().stream().toList()) {
        assertThat(finding.band().contains(worst.throttle())).isTrue();
        assertThat(worst.speed().rpm()).isPositive();
        Argument shown = Argument.throttle(worst.throttle());
        assertThat(arguments.getOrDefault("throttle", shown)).isEqualTo(shown);
      }
      // A needle sticks in its jet at any speed.
      if (arguments.containsKey("throttle") && !rule.id().equals("needle-in-needle-jet")) {
        assertThat(finding.worst()).isPresent();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void remedy_keepsTheSpot(Rule rule) throws Exception {
    for (Finding finding : findings(rule)) {
      assertThat(finding.withRemedy(finding.remedy())).isEqualTo(finding);
    }
  }

  private static List<Finding> findings(Rule rule) throws Exception {
    Outcome outcome = rule.evaluate(AssessedSetting.of(RulePagesTest.sheet(rule, "Fails")));
    assertThat(outcome.status()).isEqualTo(Outcome.Status.FAILED);
    return outcome.findings();
  }
}
