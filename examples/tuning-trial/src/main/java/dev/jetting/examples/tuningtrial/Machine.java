package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.StartingSetting;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * An invented machine of which many were built, no two alike.
 *
 * @param name plain name
 * @param sheet the machine on its starting setting
 */
record Machine(String name, SetupSheet sheet) {

  /** The machines of the trial, each on the setting that the library starts with. */
  static List<Machine> all(RiskModel riskModel) {
    return Stream.of("mild-123", "tuned-123", "standard-200", "tuned-210")
        .map(name -> of(name, riskModel))
        .toList();
  }

  private static Machine of(String name, RiskModel riskModel) {
    SetupSheet sheet = SheetJson.read(text(name + ".json"));
    StartingSetting start = StartingSetting.of(sheet, riskModel);
    return new Machine(name, sheet.withSetup(sheet.setup().withSetting(start.setting())));
  }

  private static String text(String name) {
    try (InputStream in = Objects.requireNonNull(Machine.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a resource of the program's own jar
    }
  }
}
