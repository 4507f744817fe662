package dev.example.ruleauthor;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.RulePack;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.PlausibleArbitraries;
import dev.jetting.rules.arbitraries.TrialArbitraries;
import dev.jetting.rules.json.SheetEdits;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Monotone;
import dev.jetting.rules.laws.PartChange;
import dev.jetting.rules.laws.SeenOutcomes;
import dev.jetting.rules.laws.Trial;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;

/** The author's own law tests: all rules, each with what it declares. */
class RuleAuthorLawsProperties {

  private static final Candidate RULES =
      Candidate.of(
              Rulebook.of("rule author", "1", List.of())
                  .withPacks(RulePack.load(RuleAuthorLawsProperties.class.getClassLoader())))
          .declaring("winter-reserve", Monotone.leanSide(1e-6))
          .declaring("kit-main-jet", Monotone.richSide(0));

  private static final Map<String, Set<Status>> SEEN = new TreeMap<>();

  @Property(shrinking = ShrinkingMode.OFF)
  void rules_onPlausibleSheets_keepTheLaws(@ForAll("trials") List<Trial> trials) {
    LawReport report = LawKit.allLaws().hold(RULES, trials.stream());

    assertThat(report.holds()).as(report.toString()).isTrue();
    assertThat(report.neverTried()).isEmpty();
    report.seen().forEach(RuleAuthorLawsProperties::count);
  }

  private static void count(SeenOutcomes seen) {
    SEEN.computeIfAbsent(seen.ruleId(), id -> EnumSet.noneOf(Status.class))
        .addAll(seen.counts().keySet());
  }

  /** A rule that never passed, or never failed, has not been tested. */
  @AfterContainer
  static void everyRule_passedAndFailed() {
    assertThat(SEEN)
        .hasSize(RULES.rulebook().rules().size())
        .allSatisfy((id, seen) -> assertThat(seen).contains(Status.PASSED, Status.FAILED));
    assertThat(SEEN.get("kit-pilot-jet")).contains(Status.NOT_APPLICABLE);
  }

  /** Random changes seldom take a rule over its limit, so one that does is among them. */
  @Provide
  Arbitrary<List<Trial>> trials() {
    Arbitrary<Trial> any = TrialArbitraries.trials(PlausibleArbitraries.sheets());
    Arbitrary<Trial> overTheLimit =
        PlausibleArbitraries.sheets().map(RuleAuthorLawsProperties::overTheKitsLimit);
    return Combinators.combine(any.list().ofSize(3), overTheLimit)
        .as((some, one) -> Stream.concat(some.stream(), Stream.of(one)).toList());
  }

  private static Trial overTheKitsLimit(SetupSheet sheet) {
    SetupSheet biggest =
        SheetEdits.edited(sheet, Map.of("/setting/mainJet", SheetEdits.text("1.40 mm")));
    return Trial.of(biggest, new PartChange(MeteringPart.MAIN_JET, PartChange.Way.RICHER, 0.02));
  }
}
