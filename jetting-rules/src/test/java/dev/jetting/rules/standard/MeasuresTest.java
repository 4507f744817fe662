package dev.jetting.rules.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Rule;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.Probability;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A measure says what its number is, and that number is the one of the sentence. */
class MeasuresTest {

  private static final List<Rule> RULES = StandardRulebook.rulebook().rules();

  @Test
  void everyMeasureOfTheStandardRules_hasAKind() throws IOException {
    List<Measure> measures = new ArrayList<>();
    for (Rule rule : RULES) {
      failed(rule)
          .forEach(finding -> measures.addAll(List.of(finding.measured(), finding.limit())));
      outcome(rule, "Passes").margin().ifPresent(margin -> measures.add(margin.left()));
    }
    assertThat(measures).hasSizeGreaterThan(2 * RULES.size());
    assertThat(measures).allMatch(measure -> measure.kind().isPresent());
  }

  @Test
  void changeOfLambda_isTheShareThatTheSentenceHas() throws IOException {
    List<String> seen = new ArrayList<>();
    for (Rule rule : RULES) {
      for (Finding finding : failed(rule)) {
        if (finding.measured().kind().equals(Optional.of(Measure.Kind.LOGARITHM))
            && finding.words().arguments().get("by") instanceof Argument.Amount by) {
          seen.add(rule.id());
          assertThat(by.value())
              .as(rule.id())
              .isCloseTo(StrictMath.expm1(finding.measured().value()), within(1e-12));
        }
      }
    }
    assertThat(seen)
        .contains("cutaway-balance", "mixture-step", "crisp-but-lean-middle", "fuel-change");
  }

  @Test
  void toString_isForPeople() {
    assertThat(Measure.logarithm(StrictMath.log(1.125))).hasToString("12.5 %");
    assertThat(Measure.share(0.125)).hasToString("12.5 %");
    assertThat(Measure.probability(Probability.of(0.25))).hasToString("25 %");
    assertThat(Measure.ratio(0.5)).hasToString("0.500");
    assertThat(new Measure(2, "sizes")).hasToString("2.000 sizes");
    assertThat(new Measure(2, "buckets").kind()).isEmpty();
  }

  private static List<Finding> failed(Rule rule) throws IOException {
    return outcome(rule, "Fails").findings();
  }

  private static Outcome outcome(Rule rule, String which) throws IOException {
    return rule.evaluate(AssessedSetting.of(RulePagesTest.sheet(rule, which)));
  }
}
