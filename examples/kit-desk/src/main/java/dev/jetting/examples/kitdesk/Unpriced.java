package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.CatalogueChoices;
import dev.jetting.rules.kit.Part;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.PartKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Parts to buy without a price. With one of them, no search by price is possible. */
final class Unpriced {

  /** The most of them to name. */
  private static final int MOST = 3;

  private Unpriced() {}

  /** Throws where there is one. */
  static void check(String option, Choices choices, CatalogueChoices catalogue)
      throws UnusableException {
    List<String> ids =
        Stream.of(
                of(PartKind.PILOT_JET, choices.pilotJets(), choices, catalogue),
                of(PartKind.SLIDE, choices.cutaways(), choices, catalogue),
                of(PartKind.NEEDLE_JET, choices.needleJets(), choices, catalogue),
                of(PartKind.NEEDLE, choices.needles(), choices, catalogue),
                of(PartKind.MAIN_JET, choices.mainJets(), choices, catalogue))
            .flatMap(ofKind -> ofKind)
            .toList();
    if (!ids.isEmpty()) {
      int more = ids.size() - MOST;
      throw new UnusableException(
          option
              + ": allowed only where every part to buy has a price; without one: "
              + String.join(", ", ids.subList(0, Math.min(MOST, ids.size())))
              + (more > 0 ? " and " + more + " more" : ""));
    }
  }

  private static <P> Stream<String> of(
      PartKind kind, List<Choice<P>> ofKind, Choices choices, CatalogueChoices catalogue) {
    return IntStream.range(0, ofKind.size())
        .filter(i -> !ofKind.get(i).owned() && ofKind.get(i).price().isEmpty())
        .mapToObj(i -> catalogue.part(choices, kind, i))
        .flatMap(Optional::stream)
        .map(Part::id);
  }
}
