package dev.jetting.rules.standard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Rule;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetEdits;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Laws;
import dev.jetting.rules.laws.SeenOutcomes;
import dev.jetting.rules.laws.Trial;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The standard rules are seen passing, failing and, where they can, not applying. */
class StandardOutcomesTest {

  /** They have something to say of every whole sheet. */
  private static final List<String> ALWAYS_APPLY =
      List.of(
          "lean-anywhere",
          "pilot-on-overrun",
          "screw-kind",
          "float-valve-flow",
          "needle-in-needle-jet",
          "too-rich",
          "cutaway-balance",
          "main-jet-authority",
          "screw-range",
          "mixture-step",
          "carburettor-too-small",
          "main-jet-kit");

  @Test
  void everyRule_isSeenPassing_failing_andNotApplying() throws IOException {
    LawReport report =
        LawKit.of(List.of(Laws.neverBroken()))
            .hold(Candidate.of(StandardRulebook.rulebook()), trials().stream());

    assertThat(report.untestedRules()).as(report.toString()).isEmpty();
    assertThat(report.seen())
        .filteredOn(seen -> !seen.counts().containsKey(Status.NOT_APPLICABLE))
        .extracting(SeenOutcomes::ruleId)
        .as(report.toString())
        .containsExactlyElementsOf(ALWAYS_APPLY);
  }

  private static List<Trial> trials() throws IOException {
    List<Trial> trials = new ArrayList<>();
    for (Rule rule : StandardRulebook.rulebook().rules()) {
      trials.add(Trial.of(RulePagesTest.sheet(rule, "Passes")));
      trials.add(Trial.of(RulePagesTest.sheet(rule, "Fails")));
    }
    SetupSheet plain = LawKit.plainSheet();
    trials.add(Trial.of(plain));
    trials.add(
        edited(plain, "/setting/needle/grooves", "1", "/setting/clip", "\"1 of 1 from top\""));
    trials.add(edited(plain, "/setting/carburettor/needleJetHead", "\"0 mm\""));
    return trials;
  }

  private static Trial edited(SetupSheet sheet, String... pointersAndValues) {
    Map<String, String> edits = new LinkedHashMap<>();
    for (int i = 0; i < pointersAndValues.length; i += 2) {
      edits.put(pointersAndValues[i], pointersAndValues[i + 1]);
    }
    return Trial.of(SheetEdits.edited(sheet, edits));
  }
}
