package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import dev.jetting.core.engine.InductionKind;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.PartShape;
import dev.jetting.units.ScrewKind;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The texts that a measure can have.
 *
 * @param byMeasure the texts, by the name of the measure; a measure that is not there can have any
 */
record KnownTexts(Map<String, Set<String>> byMeasure) {

  private static final ImmutableMap<String, Set<String>> ALWAYS =
      ImmutableMap.of(
          "setting.screw.kind", ImmutableSet.copyOf(Enums.names(ScrewKind.class)),
          "setting.carburettor.pilot.screwKind", ImmutableSet.copyOf(Enums.names(ScrewKind.class)),
          "engine.induction.kind", inductions());

  private static ImmutableSet<String> inductions() {
    return Stream.of(InductionKind.values())
        .map(InductionKind::toString)
        .collect(ImmutableSet.toImmutableSet());
  }

  /** What is known without a catalogue. */
  static KnownTexts always() {
    return new KnownTexts(ALWAYS);
  }

  /** What occurs in a catalogue; any text where the catalogue lists nothing of its kind. */
  static KnownTexts in(Catalogue catalogue) {
    ImmutableMap.Builder<String, Set<String>> found =
        ImmutableMap.<String, Set<String>>builder().putAll(ALWAYS);
    put(found, "engine.id", catalogue.machines().stream().map(m -> m.engine().id()));
    put(
        found,
        "engine.exhaust.id",
        catalogue.machines().stream().map(machine -> machine.engine().exhaust().id()));
    put(
        found,
        "setting.carburettor.id",
        catalogue.families().stream().map(family -> family.carburettor().id()));
    put(found, "setting.intake.id", catalogue.machines().stream().map(m -> m.intake().id()));
    put(
        found,
        "setting.needle.id",
        catalogue.parts().stream()
            .flatMap(
                part ->
                    part.shape() instanceof PartShape.NeedleShape rod
                        ? Stream.of(rod.needle().id())
                        : Stream.empty()));
    return new KnownTexts(found.buildOrThrow());
  }

  private static void put(
      ImmutableMap.Builder<String, Set<String>> found, String name, Stream<String> texts) {
    Set<String> all = texts.collect(ImmutableSet.toImmutableSet());
    if (!all.isEmpty()) {
      found.put(name, all);
    }
  }

  /** The texts of a measure; empty if it can have any. */
  Optional<Set<String>> of(String measure) {
    return Optional.ofNullable(byMeasure.get(measure));
  }
}
