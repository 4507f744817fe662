package dev.jetting.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ClipPositionTest {

  @Test
  void position_countsFromBothEnds() {
    ClipPosition position = ClipPosition.fromBottom(4, 5);

    assertThat(position.grooveFromTop()).isEqualTo(2);
    assertThat(position.grooveFromBottom()).isEqualTo(4);
    assertThat(position.grooves()).isEqualTo(5);
    assertThat(position.countedFrom()).isEqualTo(ClipPosition.End.BOTTOM);
  }

  @Test
  void equals_goesByTheGroove_whileEachPrintsAsItWasGiven() {
    ClipPosition fromTop = ClipPosition.fromTop(2, 5);
    ClipPosition fromBottom = ClipPosition.fromBottom(4, 5);

    assertThat(fromTop).isEqualTo(fromBottom).hasSameHashCodeAs(fromBottom);
    assertThat(fromTop).hasToString("2 of 5 from top");
    assertThat(fromBottom).hasToString("4 of 5 from bottom");
  }

  @Test
  void equals_tellsTheSameGrooveOfDifferentNeedlesApart() {
    assertThat(ClipPosition.fromTop(2, 5)).isNotEqualTo(ClipPosition.fromTop(2, 4));
  }

  @Test
  void compareTo_ordersFromTopToBottomGroove() {
    assertThat(ClipPosition.fromTop(2, 5)).isLessThan(ClipPosition.fromTop(3, 5));
    assertThat(ClipPosition.fromBottom(2, 5)).isGreaterThan(ClipPosition.fromBottom(3, 5));
    assertThat(ClipPosition.fromTop(5, 5)).isLessThan(ClipPosition.fromTop(1, 6));
  }

  @Test
  void next_movesOneGrooveAndKeepsTheEnd() {
    assertThat(ClipPosition.fromTop(2, 5).nextTowardsBottom().map(ClipPosition::toString))
        .contains("3 of 5 from top");
    assertThat(ClipPosition.fromTop(2, 5).nextTowardsTop().map(ClipPosition::toString))
        .contains("1 of 5 from top");
    assertThat(ClipPosition.fromBottom(4, 5).nextTowardsBottom().map(ClipPosition::toString))
        .contains("3 of 5 from bottom");
  }

  @Test
  void next_isEmptyAtTheEnds() {
    assertThat(ClipPosition.fromTop(1, 5).nextTowardsTop()).isEmpty();
    assertThat(ClipPosition.fromBottom(1, 5).nextTowardsBottom()).isEmpty();
  }

  @Test
  void factories_refuseGroovesThatAreNotThere() {
    assertThatThrownBy(() -> ClipPosition.fromTop(6, 5))
        .isInstanceOf(QuantityException.class)
        .hasMessage("clip position 6 of 5 from top: allowed from 1 to 5");
    assertThatThrownBy(() -> ClipPosition.fromBottom(0, 5))
        .hasMessage("clip position 0 of 5 from bottom: allowed from 1 to 5");
    assertThatThrownBy(() -> ClipPosition.fromTop(1, 0))
        .hasMessage("clip position: number of grooves 0 grooves: allowed from 1 to 50");
    assertThatThrownBy(() -> ClipPosition.fromTop(1, 51)).isInstanceOf(QuantityException.class);
  }
}
