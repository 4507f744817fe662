package dev.jetting.core.typical;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.Setup;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.number.Decimals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;

/** MEASURING.md shows what the model computes; {@code -Dgolden.update=true} writes it anew. */
class MeasuringDocumentTest {

  private static final Path DOCUMENT = Path.of("MEASURING.md");
  private static final String GUESSES = "<!-- wrong guesses, made by the model -->\n";
  private static final String MEASURING = "<!-- measuring, made from the list in the code -->\n";
  private static final String END = "<!-- end -->\n";

  @Test
  void document_showsHowMuchAWrongGuessMatters() throws IOException {
    hold(GUESSES, guesses());
  }

  @Test
  void document_saysHowToMeasureEveryValue() throws IOException {
    hold(MEASURING, measuring());
  }

  private static void hold(String begin, String table) throws IOException {
    String document = Files.readString(DOCUMENT);
    int from = document.indexOf(begin) + begin.length();
    int to = document.indexOf(END, from);
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(DOCUMENT, document.substring(0, from) + table + document.substring(to));
    } else {
      assertThat(document.substring(from, to)).isEqualTo(table);
    }
  }

  private static String guesses() {
    Setup setup =
        TypicalMachine.setup(
            TypicalMachine.engine(123, StateOfTune.UTILITY), 24, ScrewKind.MIXTURE);
    return "| value | guess | plausible error | closed | 1/8 | 1/4 | 1/2 | full |\n"
        + "|---|---|---|---|---|---|---|---|\n"
        + WrongGuess.of(setup, EnumSet.allOf(MachineValue.class)).stream()
            .map(MeasuringDocumentTest::row)
            .collect(joining());
  }

  private static String row(WrongGuess guess) {
    MachineValue value = guess.value();
    String unit = value.unit().equals("1") ? "" : " " + value.unit();
    String error =
        value.errorIsShare()
            ? Decimals.shortest(value.error().value() * 100) + " %"
            : Decimals.shortest(value.error().value()) + unit;
    return "| "
        + value
        + " | "
        + Decimals.shortest(guess.guess())
        + unit
        + " | ± "
        + error
        + " | "
        + guess.change().values().stream()
            .map(change -> Decimals.fixed(100 * change, 1))
            .map(shown -> shown.equals("-0.0") ? "0.0" : shown.replace('-', '−'))
            .collect(joining(" | "))
        + " |\n";
  }

  private static String measuring() {
    return "| value | how |\n|---|---|\n"
        + Arrays.stream(MachineValue.values())
            .map(value -> "| " + value + " | " + value.measuring() + " |\n")
            .collect(joining());
  }
}
