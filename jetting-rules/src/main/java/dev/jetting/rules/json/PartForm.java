package dev.jetting.rules.json;

import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A part of a catalogue in JSON: one field tells its shape. */
record PartForm(
    String id,
    String description,
    String series,
    Optional<JetBore> bore,
    Optional<JetFlow> flow,
    Optional<NeedleJet> needleJet,
    Optional<RodForm> needle,
    Optional<Cutaway> cutaway,
    Optional<PartShape.PilotScrew> screw,
    Optional<FloatValve> floatValve,
    Optional<BigDecimal> price) {

  /** The fields of which a part has one. */
  static final List<String> SHAPES =
      List.of("bore", "flow", "needleJet", "needle", "cutaway", "screw", "floatValve");

  /** A needle, which goes by the id of its part. */
  record RodForm(
      Diameter cylinder, List<Taper> tapers, int grooves, Length groovePitch, Length tip) {

    static RodForm of(Needle needle) {
      return new RodForm(
          needle.cylinder(), needle.tapers(), needle.grooves(), needle.groovePitch(), needle.tip());
    }

    Needle needle(String id) {
      return new Needle(id, cylinder, tapers, grooves, groovePitch, tip);
    }
  }

  PartForm {
    long shapes =
        Stream.of(bore, flow, needleJet, needle, cutaway, screw, floatValve)
            .filter(Optional::isPresent)
            .count();
    if (shapes != 1) {
      throw new IllegalArgumentException(
          "part of " + shapes + " shapes: allowed one of " + String.join(", ", SHAPES));
    }
  }

  static PartForm of(Part part) {
    PartShape shape = part.shape();
    return new PartForm(
        part.id(),
        part.description(),
        part.series(),
        as(PartShape.BoredJet.class, shape).map(PartShape.BoredJet::bore),
        as(PartShape.FlowedJet.class, shape).map(PartShape.FlowedJet::flow),
        as(PartShape.Tube.class, shape).map(PartShape.Tube::needleJet),
        as(PartShape.Rod.class, shape).map(rod -> RodForm.of(rod.needle())),
        as(PartShape.Slide.class, shape).map(PartShape.Slide::cutaway),
        as(PartShape.PilotScrew.class, shape),
        as(PartShape.Valve.class, shape).map(PartShape.Valve::floatValve),
        part.price());
  }

  private static <S extends PartShape> Optional<S> as(Class<S> type, PartShape shape) {
    return Optional.of(shape).filter(type::isInstance).map(type::cast);
  }

  Part part() {
    PartShape shape =
        bore.<PartShape>map(PartShape.BoredJet::new)
            .or(() -> flow.map(PartShape.FlowedJet::new))
            .or(() -> needleJet.map(PartShape.Tube::new))
            .or(() -> needle.map(rod -> new PartShape.Rod(rod.needle(id))))
            .or(() -> cutaway.map(PartShape.Slide::new))
            .or(() -> screw)
            .or(() -> floatValve.map(PartShape.Valve::new))
            .orElseThrow();
    return new Part(id, description, series, shape, price);
  }
}
