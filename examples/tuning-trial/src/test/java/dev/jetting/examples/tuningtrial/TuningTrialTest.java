package dev.jetting.examples.tuningtrial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TuningTrialTest {

  @Test
  void withTables_replacesWhatStoodBetweenTheMarks() {
    String document = "before\n" + TuningTrial.BEGIN + "old\n" + TuningTrial.END + "after\n";
    assertThat(TuningTrial.withTables(document, "new\n"))
        .isEqualTo("before\n" + TuningTrial.BEGIN + "new\n\n" + TuningTrial.END + "after\n");
  }
}
