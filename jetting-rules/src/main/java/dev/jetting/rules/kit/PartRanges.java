package dev.jetting.rules.kit;

import dev.jetting.rules.ranges.SizeRanges;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Sentence;

/** What the sizes of a catalogue's parts may be: what an assessment can compute with. */
final class PartRanges {

  private PartRanges() {}

  /**
   * Checks a part.
   *
   * @param at the place of the part, with a full stop behind it; empty for a part on its own
   * @param series its series, which such a part can be of
   * @param shape its shape
   * @throws dev.jetting.units.InvalidValueException if a size is out of its range
   * @throws dev.jetting.units.QuantityException if its bench does not reach its flow
   */
  static void check(String at, PartSeries series, PartShape shape) {
    boolean pilot = series.kind() == SeriesKind.PILOT_JET;
    if (shape instanceof PartShape.JetByBore jet && pilot) {
      SizeRanges.pilotJet(at + "bore", jet.bore());
    } else if (shape instanceof PartShape.JetByBore jet) {
      SizeRanges.mainJet(at + "bore", jet.bore());
    } else if (shape instanceof PartShape.JetByFlow jet) {
      JetBore bore = series.bench().orElseThrow().boreOf(jet.flow()).value();
      flowed(at + "flow", jet, () -> check(at, series, new PartShape.JetByBore(bore)));
    } else if (shape instanceof PartShape.NeedleJetShape tube) {
      SizeRanges.needleJet(at + "needleJet", tube.needleJet());
    } else if (shape instanceof PartShape.NeedleShape rod) {
      SizeRanges.needle(at + "needle", rod.needle());
    } else if (shape instanceof PartShape.Slide slide) {
      SizeRanges.cutaway(at + "cutaway", slide.cutaway());
    } else if (shape instanceof PartShape.PilotScrew screw) {
      SizeRanges.areaPerTurn(at + "screw.areaPerTurn", screw.areaPerTurn());
    } else if (shape instanceof PartShape.Valve valve) {
      SizeRanges.floatValve(at + "floatValve", valve.floatValve());
    }
  }

  /** A jet numbered by its flow is refused by its flow, with the bore that it comes to. */
  private static void flowed(String field, PartShape.JetByFlow jet, Runnable check) {
    try {
      check.run();
    } catch (InvalidValueException e) {
      throw InvalidValueException.at(
          field,
          Sentence.of("error.flow-bore").with("flow", jet.flow()).with("size", e.value()),
          Sentence.of("error.bore-of")
              .with("allowed", e.withoutField().part("allowed").orElseThrow()));
    }
  }
}
