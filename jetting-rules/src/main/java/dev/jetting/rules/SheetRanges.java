package dev.jetting.rules;

import static dev.jetting.rules.ranges.SizeRanges.carburettor;
import static dev.jetting.rules.ranges.SizeRanges.displacement;
import static dev.jetting.rules.ranges.SizeRanges.engine;
import static dev.jetting.rules.ranges.SizeRanges.fuel;
import static dev.jetting.rules.ranges.SizeRanges.intake;
import static dev.jetting.rules.ranges.SizeRanges.mainJet;
import static dev.jetting.rules.ranges.SizeRanges.setting;

import dev.jetting.core.mixture.Setup;
import dev.jetting.rules.ranges.SizeRanges;
import java.util.List;
import java.util.function.BiConsumer;

/** What the numbers of a sheet may be. */
final class SheetRanges {

  private SheetRanges() {}

  /**
   * Checks the numbers of a sheet, each message beginning with the name of the field.
   *
   * @throws dev.jetting.units.InvalidValueException if one is out of its range
   */
  static void check(Setup setup, PartsAtHand parts, Provenance provenance) {
    engine("engine", setup.engine());
    setting("setting", setup.setting());
    fuel("fuel", setup.fuel());
    parts(parts);
    provenance.engine().ifPresent(other -> engine("provenance.engine", other));
    provenance
        .cylinder()
        .ifPresent(other -> displacement("provenance.cylinder.displacement", other.displacement()));
    provenance.setting().ifPresent(other -> setting("provenance.setting", other));
    provenance.mainJet().ifPresent(jet -> mainJet("provenance.mainJet", jet));
    provenance.carburettor().ifPresent(other -> carburettor("provenance.carburettor", other));
    provenance.intake().ifPresent(other -> intake("provenance.intake", other));
    provenance.fuel().ifPresent(other -> fuel("provenance.fuel", other));
  }

  private static void parts(PartsAtHand parts) {
    each("parts.pilotJets", parts.pilotJets(), SizeRanges::pilotJet);
    each("parts.cutaways", parts.cutaways(), SizeRanges::cutaway);
    each("parts.needleJets", parts.needleJets(), SizeRanges::needleJet);
    each("parts.needles", parts.needles(), SizeRanges::needle);
    each("parts.mainJets", parts.mainJets(), SizeRanges::mainJet);
  }

  private static <P> void each(String at, List<P> parts, BiConsumer<String, P> check) {
    for (int i = 0; i < parts.size(); i++) {
      check.accept(at + "[" + i + "]", parts.get(i));
    }
  }
}
