package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every sheet and every document. */
class SheetJsonProperties {

  @Property(tries = 100)
  void read_ofWritten_isEqual(@ForAll("sheets") SetupSheet sheet) {
    String json = SheetJson.write(sheet);

    SetupSheet read = SheetJson.read(json);

    assertThat(read).isEqualTo(sheet);
    // Equality leaves out from which end a clip is counted; the text does not.
    assertThat(SheetJson.write(read)).isEqualTo(json);
  }

  @Property(tries = 100)
  void read_ofADocumentWithAPieceCutOut_isASheetOrRefused(
      @ForAll("sheets") SetupSheet sheet,
      @ForAll("shares") double from,
      @ForAll("shares") double to) {
    String json = SheetJson.write(sheet);
    int start = (int) (from * json.length());
    int end = Math.min(json.length(), start + (int) (to * 40));

    assertReadOrRefused(json.substring(0, start) + json.substring(end));
  }

  @Property(tries = 100)
  void read_ofADocumentWithSomethingPutIn_isASheetOrRefused(
      @ForAll("sheets") SetupSheet sheet,
      @ForAll("shares") double where,
      @ForAll("fragments") String fragment) {
    String json = SheetJson.write(sheet);
    int at = (int) (where * json.length());

    assertReadOrRefused(json.substring(0, at) + fragment + json.substring(at));
  }

  @Property(tries = 100)
  void read_ofASheetWithAScalarReplaced_isASheetOrRefused(
      @ForAll("sheets") SetupSheet sheet,
      @ForAll("shares") double where,
      @ForAll("values") String value) {
    String[] lines = SheetJson.write(sheet).split("\n");
    int line = (int) (where * lines.length);
    lines[line] =
        lines[line].replaceFirst(
            "(\": ).*?(,?)$", "$1" + java.util.regex.Matcher.quoteReplacement(value) + "$2");

    assertReadOrRefused(String.join("\n", lines));
  }

  @Property(tries = 300)
  void read_ofAnyText_isRefused(@ForAll String text) {
    assertReadOrRefused(text);
  }

  private static void assertReadOrRefused(String json) {
    try {
      SheetJson.read(json);
    } catch (JsonInputException e) {
      assertThat(e.getMessage()).startsWith("$").doesNotContainPattern("\\R").hasSizeLessThan(700);
      assertThat(e.line()).isBetween(1, (int) json.lines().count() + 1);
      assertThat(e.column()).isPositive();
    }
  }

  @Provide
  Arbitrary<SetupSheet> sheets() {
    return SheetArbitraries.sheets();
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, true, 1, false);
  }

  @Provide
  Arbitrary<String> fragments() {
    return Arbitraries.of(
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "\"",
        "\\",
        "null",
        "0",
        "-",
        "e9",
        "\u0000",
        "\"a\": 1,",
        "/*",
        "{\"a\":");
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "null",
        "true",
        "-1",
        "0",
        "1e999",
        "-1e-999",
        "123456789012345678901234567890",
        "\"\"",
        "\" \"",
        "\"NaN\"",
        "[]",
        "[[]]",
        "{}",
        "{\"value\": 1, \"unit\": \"mm\"}",
        "\"-1 mm\"",
        "\"1e300 mm\"",
        "\"2 of 1 from top\"",
        "\"E5\"",
        "\"assumed\"",
        "\"mixture\"");
  }
}
