package dev.jetting.rules.json;

import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Taper;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Diameter;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.Sentence;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part of a catalogue in JSON: one field states its shape.
 *
 * @param id its name, unique among the parts of the catalogue
 * @param description a line for people
 * @param series id of its series, which states its kind and what it fits
 * @param bore of a pilot or main jet that is numbered by its bore
 * @param flow of a pilot or main jet that is numbered by its flow on the bench of its series
 * @param needleJet of a needle jet
 * @param needle of a needle, which has the id of the part
 * @param cutaway of a slide
 * @param screw of a pilot screw
 * @param floatValve of a float valve
 * @param price what it costs, in the one currency of the catalogue, 0 or more; left out if unknown
 */
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

  /** The fields for shapes. A part has one of them. */
  static final List<String> SHAPES =
      List.of("bore", "flow", "needleJet", "needle", "cutaway", "screw", "floatValve");

  /**
   * A needle, which has the id of its part.
   *
   * @param cylinder diameter above the tapers
   * @param tapers the tapers in order, each from its start to that of the next
   * @param grooves how many grooves for the clip
   * @param groovePitch from groove to groove
   * @param tip where the needle ends, measured like the start of a taper; beyond it the needle jet
   *     is open
   */
  record RodForm(
      Diameter cylinder, List<Taper> tapers, int grooves, Length groovePitch, Length tip) {

    static RodForm of(Needle needle) {
      return new RodForm(
          needle.cylinder(), needle.tapers(), needle.grooves(), needle.groovePitch(), needle.tip());
    }

    Needle needle(String id) {
      return Needle.builder()
          .id(id)
          .cylinder(cylinder)
          .tapers(tapers)
          .grooves(grooves)
          .groovePitch(groovePitch)
          .tip(tip)
          .build();
    }
  }

  PartForm {
    long shapes =
        Stream.of(bore, flow, needleJet, needle, cutaway, screw, floatValve)
            .filter(Optional::isPresent)
            .count();
    if (shapes != 1) {
      throw InvalidValueException.worded(
          Sentence.of("error.part-shapes").with("count", shapes),
          Sentence.of("error.one-of").with("names", String.join(", ", SHAPES)));
    }
  }

  static PartForm of(Part part) {
    PartShape shape = part.shape();
    return new PartForm(
        part.id(),
        part.description(),
        part.series(),
        as(PartShape.JetByBore.class, shape).map(PartShape.JetByBore::bore),
        as(PartShape.JetByFlow.class, shape).map(PartShape.JetByFlow::flow),
        as(PartShape.NeedleJetShape.class, shape).map(PartShape.NeedleJetShape::needleJet),
        as(PartShape.NeedleShape.class, shape).map(rod -> RodForm.of(rod.needle())),
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
        bore.<PartShape>map(PartShape.JetByBore::new)
            .or(() -> flow.map(PartShape.JetByFlow::new))
            .or(() -> needleJet.map(PartShape.NeedleJetShape::new))
            .or(() -> needle.map(rod -> new PartShape.NeedleShape(rod.needle(id))))
            .or(() -> cutaway.map(PartShape.Slide::new))
            .or(() -> screw)
            .or(() -> floatValve.map(PartShape.Valve::new))
            .orElseThrow();
    return Part.builder()
        .id(id)
        .description(description)
        .series(series)
        .shape(shape)
        .price(price)
        .build();
  }
}
