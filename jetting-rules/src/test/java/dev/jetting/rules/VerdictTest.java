package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.Verdict.Lean;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictTest {

  @ParameterizedTest
  @CsvSource({
    "'',false,false",
    "RIDDEN,true,false",
    "OVERRUN,false,true",
    "OVERRUN RIDDEN,true,true"
  })
  void lean_isReadByEachPlace(String places, boolean ridden, boolean overrun) {
    Set<Lean> lean = new LinkedHashSet<>();
    for (String place : places.split(" ", -1)) {
      if (!place.isEmpty()) {
        lean.add(Lean.valueOf(place));
      }
    }
    Verdict verdict =
        new Verdict(
            Verdict.Ruling.FAILS,
            List.of(),
            lean,
            List.of(),
            List.of(),
            List.of(),
            Optional.empty());
    assertThat(verdict.tooLean()).isEqualTo(ridden);
    assertThat(verdict.tooLeanOnOverrun()).isEqualTo(overrun);
    assertThat(List.copyOf(verdict.lean())).isSorted();
  }
}
