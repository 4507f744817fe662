package dev.jetting.rules;

import com.google.common.collect.ImmutableList;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The usual cautions of the trade, which stand in every report, and that of a guessed machine. */
final class Caution {

  private Caution() {}

  private static final List<Message> USUAL =
      Stream.of("seizure", "overrun", "road", "petrol", "hot", "law", "calculation")
          .map(key -> Message.of("caution." + key))
          .toList();

  static List<Message> of(SetupSheet sheet) {
    List<MachineValue> typical = typical(sheet);
    return typical.isEmpty()
        ? USUAL
        : ImmutableList.<Message>builder().add(guessed(typical)).addAll(USUAL).build();
  }

  /** The typical values that play a part: an open mouth has no filter to guess. */
  static List<MachineValue> typical(SetupSheet sheet) {
    return sheet.typical().stream().filter(v -> v.in(sheet.setup()).isPresent()).toList();
  }

  private static Message guessed(List<MachineValue> typical) {
    return Message.of("caution.typical")
        .with("values", Argument.items(typical.stream().map(Caution::name).toList()));
  }

  private static Argument name(MachineValue value) {
    return Argument.word("machine." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
