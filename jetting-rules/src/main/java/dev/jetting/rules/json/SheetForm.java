package dev.jetting.rules.json;

import com.google.common.collect.Sets;
import dev.jetting.core.air.Air;
import dev.jetting.core.engine.Engine;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import dev.jetting.units.TemperatureDifference;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A setup sheet in JSON: the four things in the setup stand beside the others.
 *
 * @param format always {@code jetting setup sheet}
 * @param schemaVersion always 1
 * @param title a line for people
 * @param engine the engine
 * @param setting the carburettor with the parts in it
 * @param air the air of the day
 * @param fuel the fuel in the tank
 * @param fuelWarmerBy how much warmer than the air the fuel in the float chamber is; left out where
 *     it is as warm as the air, which is assumed
 * @param riding what the owner rides and what he accepts
 * @param parts the parts that the rider owns or can buy; left out if unknown
 * @param provenance where the setting comes from; left out if unknown
 * @param typical the values of the machine that are typical and were not measured, each once; left
 *     out for a measured machine
 */
record SheetForm(
    String format,
    int schemaVersion,
    String title,
    Engine engine,
    Setting setting,
    Air air,
    Fuel fuel,
    Optional<TemperatureDifference> fuelWarmerBy,
    Riding riding,
    Optional<PartsAtHand> parts,
    Optional<Provenance> provenance,
    Optional<List<MachineValue>> typical) {

  static final String FORMAT = "jetting setup sheet";
  static final int VERSION = 1;

  /** The fields that identify a sheet, as they are written. */
  static final Map<String, String> HEADER = Header.of(FORMAT, VERSION);

  SheetForm {
    Header.check(format, FORMAT, schemaVersion, VERSION);
    typical.ifPresent(SheetForm::checkOnce);
  }

  private static void checkOnce(List<MachineValue> typical) {
    Set<MachineValue> seen = EnumSet.noneOf(MachineValue.class);
    for (MachineValue value : typical) {
      if (!seen.add(value)) {
        throw InvalidValueException.worded(
            Sentence.of("error.twice")
                .with(
                    "what",
                    Sentence.of("error.value")
                        .with("what", Sentence.of("error.name.typical"))
                        .with("value", Enums.name(value))),
            Sentence.of("error.each-once"));
      }
    }
  }

  static SheetForm of(SetupSheet sheet) {
    SetupForm setup = SetupForm.of(sheet.setup());
    return new SheetForm(
        FORMAT,
        VERSION,
        sheet.title(),
        setup.engine(),
        setup.setting(),
        setup.air(),
        setup.fuel(),
        setup.fuelWarmerBy(),
        sheet.riding(),
        Optional.of(sheet.parts()).filter(parts -> !parts.equals(PartsAtHand.unknown())),
        Optional.of(sheet.provenance()).filter(stated -> !stated.equals(Provenance.unknown())),
        Optional.of(List.copyOf(sheet.typical())).filter(values -> !values.isEmpty()));
  }

  SetupSheet sheet() {
    return SetupSheet.builder()
        .title(title)
        .setup(new SetupForm(engine, setting, air, fuel, fuelWarmerBy).setup())
        .riding(riding)
        .parts(parts.orElse(PartsAtHand.unknown()))
        .provenance(provenance.orElse(Provenance.unknown()))
        .typical(Sets.immutableEnumSet(typical.orElse(List.of())))
        .build();
  }
}
