package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import dev.jetting.core.typical.MachineValue;
import java.util.List;
import java.util.stream.Collectors;

/** The usual cautions of the trade, which stand in every report, and that of a guessed machine. */
final class Caution {

  private Caution() {}

  private static final List<String> USUAL =
      List.of(
          "A lean two-stroke seizes, and a seizure can lock the wheel: cover the clutch.",
          "Never hold a closed throttle against the engine after a long open run: pull the clutch"
              + " or open up a little, so that fuel and oil reach it.",
          "Do plug chops off public roads, where somebody can run out and nobody follows.",
          "Petrol vapour burns: change jets outdoors, with the engine cold, no flame and no spark"
              + " near.",
          "Exhaust, cylinder and plug stay hot long after the engine has stopped.",
          "The law of the place and the engine's builder go before this report.",
          "A calculation on assumed coefficients is no measurement: start from the rich side and"
              + " confirm with plug chops, one change at a time.");

  static List<String> of(SetupSheet sheet) {
    List<MachineValue> typical = typical(sheet);
    return typical.isEmpty()
        ? USUAL
        : ImmutableList.<String>builder().add(guessed(typical)).addAll(USUAL).build();
  }

  /** The typical values that play a part: an open mouth has no filter to guess. */
  static List<MachineValue> typical(SetupSheet sheet) {
    return sheet.typical().stream().filter(v -> v.in(sheet.setup()).isPresent()).toList();
  }

  private static String guessed(List<MachineValue> typical) {
    return "Typical of such machines, not measured: "
        + typical.stream().map(MachineValue::toString).collect(Collectors.joining(", "))
        + ". The band of λ is wider for it: measure a value to narrow it.";
  }
}
