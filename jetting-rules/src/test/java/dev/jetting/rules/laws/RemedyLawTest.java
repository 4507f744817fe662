package dev.jetting.rules.laws;

import static dev.jetting.rules.TwoHundred.ALL_ROUND;
import static dev.jetting.rules.TwoHundred.STANDARD;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Outcome;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.Rule;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.JetBore;
import dev.jetting.units.ThrottleOpening;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RemedyLawTest {

  private static final Law LAW = Laws.remedies();

  @Test
  void remedies_ofTheStandardRulebook_onALeanMainJet_hold() {
    Candidate standard = Candidate.of(StandardRulebook.rulebook());

    assertThat(LAW.check(standard, on(1.06)).status()).isEqualTo(LawVerdict.Status.HELD);
  }

  @Test
  void remedies_whereNothingIsFound_isNotTried() {
    Candidate standard = Candidate.of(StandardRulebook.rulebook());

    assertThat(LAW.check(standard, on(1.26)).status()).isEqualTo(LawVerdict.Status.NOT_TRIED);
  }

  /** A rule that passes a setting at first sight and finds worse at the second. */
  @Test
  void remedies_ofARuleThatIsNotPure_areViolated() {
    Map<JetBore, Integer> looks = new HashMap<>();
    Rule moody = Rule.named("moody").judging(setting -> moody(setting, looks));
    Candidate candidate = Candidate.of(Rulebook.of("moody", "1", List.of(moody)));

    LawVerdict verdict = LAW.check(candidate, on(1.06));

    assertThat(verdict.status()).isEqualTo(LawVerdict.Status.VIOLATED);
    assertThat(verdict.toString()).contains("carries the finding it is for from");
  }

  private static Outcome moody(AssessedSetting setting, Map<JetBore, Integer> looks) {
    JetBore main = setting.setting().mainJet();
    boolean own = main.equals(JetBore.ofMillimetres(1.06));
    return !own && looks.merge(main, 1, Integer::sum) == 1
        ? Outcome.passed()
        : Outcome.failed(
            Finding.above(
                    "setting.mainJet",
                    Measure.ratio(own ? 1.1 : 2),
                    Measure.ratio(1),
                    ThrottleBand.at(ThrottleOpening.FULL))
                .says("Too small.", Remedy.Aim.richer(ThrottleOpening.FULL, 0.1)));
  }

  private static Trial on(double mainJet) {
    Setting setting = ALL_ROUND.withMainJet(JetBore.ofMillimetres(mainJet));
    return Trial.of(TwoHundred.sheet(STANDARD, setting));
  }
}
