package dev.jetting.examples.tuningtrial;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.units.JetBore;
import dev.jetting.units.Probability;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An invented kind of machine. Many were built, no two alike.
 *
 * @param start the machine on the setting that the library starts with
 * @param takenOver the machine on a setting taken over from another of its kind, which fits the
 *     model's engine, with a main jet four sizes of the drawer bigger to begin with
 */
record Machine(SetupSheet start, SetupSheet takenOver) {

  private static final int SIZES_RICHER = 4;

  /** The machines of the trial, for owners who accept a risk. */
  static List<Machine> all(RiskModel riskModel, Probability accepted) {
    return Stream.of("mild-123", "tuned-123", "standard-180", "tuned-248")
        .map(name -> of(accepting(accepted, fitting(name)), riskModel))
        .toList();
  }

  /** A machine on a setting that fits the model's engine. */
  static SetupSheet fitting(String name) {
    return SheetJson.read(text(name + ".json"));
  }

  private static Machine of(SetupSheet sheet, RiskModel riskModel) {
    Setting fitting = sheet.setup().setting();
    JetBore bigger =
        sheet.parts().mainJets().stream()
            .filter(main -> main.compareTo(fitting.mainJet()) > 0)
            .sorted()
            .toList()
            .get(SIZES_RICHER - 1);
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG)).withRiskModel(riskModel);
    return new Machine(
        with(tuner.start(sheet).setting(), sheet), with(fitting.withMainJet(bigger), sheet));
  }

  private static SetupSheet with(Setting setting, SetupSheet sheet) {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  private static SetupSheet accepting(Probability accepted, SetupSheet sheet) {
    return sheet.withRiding(sheet.riding().withAcceptedRisk(accepted));
  }

  private static String text(String name) {
    try (InputStream in = Objects.requireNonNull(Machine.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a resource of the program's own jar
    }
  }
}
