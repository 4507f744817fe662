package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.mixture.MeteringPart;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.Remedy.Direction;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.text.Wording;
import dev.jetting.units.Lambda;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ThrottleOpening;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RemedyTest {

  @Test
  void aim_richer_saysByHowMuchAndWhere() {
    assertThat(Remedy.Aim.richer(ThrottleOpening.ofEighths(2), 0.1).text())
        .isEqualTo("λ must fall by 10 % at 1/4 throttle.");
  }

  @Test
  void aim_leaner_withWordsOfTheRule() {
    assertThat(Remedy.Aim.leaner(ThrottleOpening.FULL, 0.1).saying("Soon.").text())
        .isEqualTo("λ must rise by 11 % at full throttle. Soon.");
  }

  @Test
  void aim_ofNextToNothing_neverSaysZero() {
    assertThat(Remedy.Aim.richer(ThrottleOpening.FULL, 1e-5).text())
        .isEqualTo("λ must fall by less than 1 % at full throttle.");
  }

  @ParameterizedTest
  @CsvSource({"RICHER, 0.1", "LEANER, -0.1", "OTHER, 0.1", "RICHER, -1", "LEANER, NaN"})
  void aim_whoseChangeGoesTheOtherWay_isRefused(Direction direction, double change) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new Remedy.Aim(direction, ThrottleOpening.FULL, change, Message.plain("")))
        .withMessageContaining("change of λ")
        .withMessageContaining("allowed");
  }

  @Test
  void change_ofAJet_isOneSentenceOfItsData() {
    assertThat(change(MeteringPart.MAIN_JET, Direction.RICHER, "main 126", "main 130", 2).text())
        .isEqualTo(
            "Fit main 130 in place of main 126, 2 sizes richer: at full throttle λ goes from 0.98"
                + " to 0.91 today, and the lean risk of the worst day goes from 40 % to 8 %.");
  }

  @ParameterizedTest
  @CsvSource({
    "CLIP, RICHER, 1, 'Move the clip a groove lower, to '",
    "CLIP, LEANER, 2, 'Move the clip 2 grooves higher, to '",
    "SCREW, RICHER, 1, 'Turn the mixture screw out to '",
    "SCREW, LEANER, 1, 'Turn the mixture screw in to '",
    "CUTAWAY, RICHER, 1, 'Fit a slide with '",
    "NEEDLE_DIAMETER, OTHER, 1, 'Fit '",
  })
  void change_deed_isInTheTradesWords(
      MeteringPart part, Direction direction, int steps, String start) {
    assertThat(change(part, direction, "one", "another", steps).deed()).startsWith(start);
  }

  /** Whichever sentence a program prints, a rider reads on what condition he may go leaner. */
  @ParameterizedTest
  @EnumSource(names = {"PILOT_JET", "SCREW", "CUTAWAY", "NEEDLE_JET", "CLIP", "MAIN_JET"})
  void change_towardsLean_alwaysHasItsCondition(MeteringPart part) {
    Remedy.Change leaner = change(part, Direction.LEANER, "one", "another", 1);
    Remedy.Change richer = change(part, Direction.RICHER, "one", "another", 1);
    for (Locale language : Wording.languages()) {
      Wording wording = Wording.of(language);
      String condition = wording.text(Message.of("plan.step.leaner"));
      assertThat(wording.text(leaner.message())).endsWith(condition);
      assertThat(wording.text(leaner.stepMessage())).endsWith(condition);
      assertThat(wording.text(richer.message())).doesNotContain(condition);
      assertThat(wording.text(richer.stepMessage())).doesNotContain(condition);
    }
    assertThat(leaner.text())
        .endsWith(". Towards lean: only after a plug chop that shows it rich.");
  }

  @Test
  void change_ofNoStep_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> change(MeteringPart.CLIP, Direction.RICHER, "one", "another", 0))
        .withMessage("steps of a change 0: allowed 1 or more");
  }

  private static Remedy.Change change(
      MeteringPart part, Direction direction, String from, String to, int steps) {
    Setting setting = TwoHundred.ALL_ROUND;
    assertThat(setting.carburettor().pilot().screwKind()).isEqualTo(ScrewKind.MIXTURE);
    return new Remedy.Change(
        part,
        direction,
        Argument.name(from),
        Argument.name(to),
        steps,
        Remedy.Source.AT_HAND,
        new Remedy.Effect(ThrottleOpening.FULL, state(0.98, 0.4), state(0.91, 0.08)),
        Remedy.Relief.WHOLE,
        setting);
  }

  private static Remedy.State state(double lambda, double risk) {
    return new Remedy.State(
        Lambda.of(lambda), Probability.of(risk), Probability.of(risk), Lambda.of(0.5));
  }
}
