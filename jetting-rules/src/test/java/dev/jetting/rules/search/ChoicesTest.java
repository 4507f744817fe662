package dev.jetting.rules.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.TwoHundred;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChoicesTest {

  private static final Setting SETTING = TwoHundred.ALL_ROUND;
  private static final JetBore BIGGER = JetBore.ofMillimetres(1.30);

  private static final Choices CHOICES =
      Choices.of(
          Shelf.SHEET.withParts(
              PartsAtHand.builder()
                  .pilotJets(List.of())
                  .cutaways(List.of())
                  .needleJets(List.of())
                  .needles(List.of(TwoHundred.LEANER_NEEDLE))
                  .mainJets(List.of(BIGGER, SETTING.mainJet(), BIGGER))
                  .build()));

  @Test
  void sheet_givesItsOwnPartsAsOwnedAndThoseAtHandToBeGot() {
    assertThat(CHOICES.mainJets())
        .containsExactly(Choice.ofOwned(SETTING.mainJet()), Choice.toBuy(BIGGER));
    assertThat(CHOICES.pilotJets()).containsExactly(Choice.ofOwned(SETTING.pilotJet()));
    assertThat(CHOICES.needles()).hasSize(2).allMatch(c -> c.part().clips().size() == 5);
    assertThat(CHOICES.screws().stream().map(ScrewTurns::turns))
        .containsExactly(1.5, 1.0, 1.25, 1.75, 2.0);
    assertThat(CHOICES.combinations()).isEqualTo(5 * 10 * 2);
    assertThat(CHOICES.allOwned().mainJets()).allMatch(Choice::owned);
  }

  @Test
  void keeping_leavesThePartOfTheSettingAlone() {
    Choices kept = CHOICES.keeping(PartKind.MAIN_JET, SETTING);
    assertThat(kept.mainJets()).containsExactly(Choice.ofOwned(SETTING.mainJet()));
    kept = kept.keeping(PartKind.CLIP, SETTING);
    assertThat(kept.needles()).allMatch(c -> c.part().clips().equals(List.of(SETTING.clip())));
    kept = kept.keeping(PartKind.NEEDLE, SETTING);
    for (PartKind kind : PartKind.values()) {
      kept = kept.keeping(kind, SETTING);
    }
    assertThat(kept.combinations()).isEqualTo(1);
  }

  @Test
  void listsThatMakeNoSense_areRefused() {
    assertThatThrownBy(() -> CHOICES.withMainJets(List.of()))
        .hasMessage("choices without a main jet: allowed at least one");
    assertThatThrownBy(
            () -> CHOICES.withMainJets(List.of(Choice.toBuy(BIGGER), Choice.ofOwned(BIGGER))))
        .hasMessage("main jet 1.3 mm twice: allowed once");
    assertThatThrownBy(() -> Choice.toBuy(BIGGER, new BigDecimal("-1")))
        .hasMessage("price -1 of 1.3 mm: allowed 0 or more");
    assertThatThrownBy(
            () -> new NeedlePosition(TwoHundred.NEEDLE, List.of(ClipPosition.fromTop(1, 3))))
        .hasMessage(
            "clip position 1 of 3 from top: allowed a count on the 5 grooves of needle needle");
    assertThatThrownBy(() -> new NeedlePosition(TwoHundred.NEEDLE, List.of()))
        .hasMessage("clip positions of needle needle: allowed at least one");
  }
}
