package dev.jetting.rules.arbitraries;

import static java.util.stream.Collectors.partitioningBy;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.rules.laws.Candidate;
import dev.jetting.rules.laws.LawKit;
import dev.jetting.rules.laws.LawReport;
import dev.jetting.rules.laws.Laws;
import dev.jetting.rules.laws.Monotone;
import dev.jetting.rules.laws.Trial;
import dev.jetting.rules.standard.StandardRulebook;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** The rules that come with the library, held against every law. */
class StandardRulebookLawsProperties {

  /** Trials in one try; the build sets the number of tries. */
  private static final int AT_ONCE = 10;

  private static final Candidate STANDARD =
      Candidate.of(StandardRulebook.rulebook())
          .declaringOtherSpeeds("carburettor-too-big")
          .declaring("pilot-on-overrun", Monotone.leanSide(1e-6))
          .declaring("engine-change", Monotone.leanSide(1e-6))
          .declaring("float-valve-flow", Monotone.richSide(1e-6))
          .declaring("too-rich", Monotone.richSide(1e-6));

  @Property(shrinking = ShrinkingMode.OFF)
  void standardRulebook_onPlausibleSheets_keepsEveryLaw(@ForAll("plausible") List<Trial> trials) {
    Candidate candidate =
        STANDARD.declaring("lean-anywhere", Monotone.leanSide(Laws.RISK_TOLERANCE));

    keeps(LawKit.allLaws(), candidate, trials);
  }

  /** With observations λ is monotone to some 1e-3 only, so the laws of monotony are not tried. */
  @Property(shrinking = ShrinkingMode.OFF)
  void standardRulebook_onProvenSheets_keepsEveryOtherLaw(@ForAll("proven") List<Trial> trials) {
    LawKit others = LawKit.allLaws().without("monotone", "lambda", "lean-risk");

    keeps(others, STANDARD, trials);
  }

  /**
   * Where no tuner would go, the spread of λ can change with a part by far more than λ does. There
   * the wave behind the slide is beyond its fit too, so no argument holds λ monotone in the
   * cutaway.
   */
  @Property(shrinking = ShrinkingMode.OFF)
  void standardRulebook_onAnySheets_keepsEveryLawButTheLeanRisks(
      @ForAll("any") List<Trial> trials) {
    Map<Boolean, List<Trial>> bySlide =
        trials.stream().collect(partitioningBy(StandardRulebookLawsProperties::isSlide));
    LawKit kit = LawKit.allLaws().without("lean-risk");

    keeps(kit, STANDARD, bySlide.get(false));
    LawReport slides = kit.without("lambda", "monotone").hold(STANDARD, bySlide.get(true).stream());
    assertThat(slides.holds()).as(slides.toString()).isTrue();
  }

  private static boolean isSlide(Trial trial) {
    return trial.change().filter(change -> change.part() == MeteringPart.CUTAWAY).isPresent();
  }

  private static void keeps(LawKit kit, Candidate candidate, List<Trial> trials) {
    LawReport report = kit.hold(candidate, trials.stream());

    assertThat(report.holds()).as(report.toString()).isTrue();
    // Few changes take a rule over its limit; StandardMarginsTest makes such.
    assertThat(report.neverTried()).isSubsetOf("margins");
  }

  @Provide
  Arbitrary<List<Trial>> plausible() {
    return TrialArbitraries.trials(PlausibleArbitraries.sheets()).list().ofSize(AT_ONCE);
  }

  @Provide
  Arbitrary<List<Trial>> proven() {
    return TrialArbitraries.trials(PlausibleArbitraries.provenSheets()).list().ofSize(AT_ONCE);
  }

  @Provide
  Arbitrary<List<Trial>> any() {
    return TrialArbitraries.trials().list().ofSize(AT_ONCE);
  }
}
