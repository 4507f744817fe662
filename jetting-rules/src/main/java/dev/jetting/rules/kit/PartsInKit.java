package dev.jetting.rules.kit;

import dev.jetting.rules.PartsAtHand;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The parts of a kit that are in the catalogue and fit, and what else there is for its family. */
final class PartsInKit {

  private final Catalogue catalogue;
  private final List<Part> parts;
  private final List<Part> fitting;

  PartsInKit(Catalogue catalogue, Kit kit, Family family) {
    this.catalogue = catalogue;
    Set<String> takes = Set.copyOf(family.takes());
    this.fitting =
        catalogue.parts().stream().filter(part -> takes.contains(part.series())).toList();
    this.parts =
        kit.parts().stream()
            .distinct()
            .flatMap(id -> catalogue.part(id).stream())
            .filter(part -> takes.contains(part.series()))
            .toList();
  }

  List<Part> parts() {
    return parts;
  }

  /**
   * Jets are those of the kit, because a rule counts how many are left. Slides, needle jets and
   * needles are those of the catalogue, because a rule compares with the leanest ones.
   */
  PartsAtHand atHand() {
    return PartsAtHand.builder()
        .pilotJets(of(parts, SeriesKind.PILOT_JET, catalogue::boreOf))
        .cutaways(of(fitting, SeriesKind.SLIDE, part -> ((PartShape.Slide) part.shape()).cutaway()))
        .needleJets(
            of(
                fitting,
                SeriesKind.NEEDLE_JET,
                part -> ((PartShape.NeedleJetShape) part.shape()).needleJet()))
        .needles(
            of(fitting, SeriesKind.NEEDLE, part -> ((PartShape.NeedleShape) part.shape()).needle()))
        .mainJets(of(parts, SeriesKind.MAIN_JET, catalogue::boreOf))
        .build();
  }

  private <P> List<P> of(List<Part> all, SeriesKind kind, Function<Part, P> shape) {
    return all.stream().filter(part -> catalogue.kind(part) == kind).map(shape).distinct().toList();
  }
}
