package dev.example.ruleauthor;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.RulePack;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.arbitraries.TrialArbitraries;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Monotone;
import dev.jetting.rules.laws.Trial;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** The author's own law tests: both rules, each with what it declares. */
class RuleAuthorLawsProperties {

  private static final Candidate RULES =
      Candidate.of(
              Rulebook.of("rule author", "1", List.of())
                  .withPacks(RulePack.load(RuleAuthorLawsProperties.class.getClassLoader())))
          .declaring("winter-reserve", Monotone.leanSide(1e-6))
          .declaring("kit-main-jet", Monotone.richSide(0));

  @Property(shrinking = ShrinkingMode.OFF)
  void rules_onPlausibleSheets_keepTheLaws(@ForAll("trials") List<Trial> trials) {
    LawReport report = LawKit.allLaws().hold(RULES, trials.stream());

    assertThat(report.holds()).as(report.toString()).isTrue();
    // Few changes take a rule over its limit.
    assertThat(report.neverTried()).isSubsetOf("margins");
  }

  @Provide
  Arbitrary<List<Trial>> trials() {
    return TrialArbitraries.trials(PlausibleArbitraries.sheets()).list().ofSize(5);
  }
}
