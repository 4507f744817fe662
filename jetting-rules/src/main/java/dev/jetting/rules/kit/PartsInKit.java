package dev.jetting.rules.kit;

import dev.jetting.rules.PartsAtHand;
import java.util.List;
import java.util.function.Function;

/** The parts of a kit that are in the catalogue, by what they are for. */
final class PartsInKit {

  private final Catalogue catalogue;
  private final List<Part> parts;

  PartsInKit(Catalogue catalogue, Kit kit) {
    this.catalogue = catalogue;
    this.parts =
        kit.parts().stream().distinct().flatMap(id -> catalogue.part(id).stream()).toList();
  }

  PartsAtHand atHand() {
    return new PartsAtHand(
        of(SeriesKind.PILOT_JET, catalogue::boreOf),
        of(SeriesKind.SLIDE, part -> ((PartShape.Slide) part.shape()).cutaway()),
        of(SeriesKind.NEEDLE_JET, part -> ((PartShape.Tube) part.shape()).needleJet()),
        of(SeriesKind.NEEDLE, part -> ((PartShape.Rod) part.shape()).needle()),
        of(SeriesKind.MAIN_JET, catalogue::boreOf));
  }

  private <P> List<P> of(SeriesKind kind, Function<Part, P> shape) {
    return parts.stream()
        .filter(part -> catalogue.kind(part) == kind)
        .map(shape)
        .distinct()
        .toList();
  }
}
