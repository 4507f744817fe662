package dev.jetting.rules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.CustomarySteps;
import dev.jetting.rules.Rule;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The standard rules pass and fail by one number: parts are changed far enough to cross limits. */
class StandardMarginsTest {

  private static final double[] STEPS = {1, 4, 10};

  @Test
  void standardRules_turnByOneNumber() {
    List<Law> laws =
        StandardRulebook.rulebook().rules().stream().map(StandardMarginsTest::law).toList();

    LawReport report = LawKit.of(laws).hold(Candidate.of(StandardRulebook.rulebook()), trials());

    assertThat(report.holds()).as(report.toString()).isTrue();
    assertThat(report.results())
        .filteredOn(LawResult::wasTriedAndHeld)
        .extracting(LawResult::lawId)
        .contains(
            "lean-anywhere", "pilot-on-overrun", "too-rich", "cutaway-balance", "mixture-step");
  }

  private static Law law(Rule rule) {
    return Law.of(rule.id(), rule.title(), "", experiment -> MarginLaw.check(rule, experiment));
  }

  private static Stream<Trial> trials() {
    CustomarySteps customary = CustomarySteps.assumed();
    List<Trial> trials = new ArrayList<>();
    for (double times : STEPS) {
      Stream.of(LawKit.plainSheet(), Odd.SHEET)
          .flatMap(sheet -> Trial.eachPart(sheet, customary))
          .map(
              trial -> {
                PartChange change = trial.change().orElseThrow();
                return Trial.of(
                    trial.sheet(),
                    new PartChange(change.part(), change.way(), times * change.step()));
              })
          .forEach(trials::add);
    }
    return trials.stream();
  }
}
