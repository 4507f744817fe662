package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Choices with extra parts behind them in each list, and which of all are extra.
 *
 * @param all the choices, then the extra ones
 * @param own the choices without extras
 * @param indices of each kind, the indices that the extra parts had where they came from
 */
record Extras(Choices all, Choices own, Indices indices) {

  /** An extra part by its index where it came from. */
  record Part(PartKind kind, int index) {}

  record Indices(
      List<Integer> pilotJets,
      List<Integer> cutaways,
      List<Integer> needleJets,
      List<Integer> needles,
      List<Integer> mainJets) {}

  static Extras none(Choices own) {
    return new Extras(own, own, new Indices(List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  /** The parts of {@code more} that are not among {@code own}. */
  static Extras of(Choices own, Choices more) {
    Indices indices =
        new Indices(
            extra(own.pilotJets(), more.pilotJets(), p -> p),
            extra(own.cutaways(), more.cutaways(), p -> p),
            extra(own.needleJets(), more.needleJets(), p -> p),
            extra(own.needles(), more.needles(), HungNeedle::needle),
            extra(own.mainJets(), more.mainJets(), p -> p));
    Choices all =
        new Choices(
            joined(own.pilotJets(), more.pilotJets(), indices.pilotJets),
            own.screws(),
            joined(own.cutaways(), more.cutaways(), indices.cutaways),
            joined(own.needleJets(), more.needleJets(), indices.needleJets),
            joined(own.needles(), more.needles(), indices.needles),
            joined(own.mainJets(), more.mainJets(), indices.mainJets));
    return new Extras(all, own, indices);
  }

  private static <P> List<Integer> extra(
      List<Choice<P>> own, List<Choice<P>> more, Function<P, Object> key) {
    List<Object> known = own.stream().map(choice -> key.apply(choice.part())).toList();
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < more.size(); i++) {
      if (!known.contains(key.apply(more.get(i).part()))) {
        indices.add(i);
      }
    }
    return indices;
  }

  private static <P> List<Choice<P>> joined(
      List<Choice<P>> own, List<Choice<P>> more, List<Integer> indices) {
    List<Choice<P>> all = new ArrayList<>(own);
    indices.forEach(i -> all.add(more.get(i)));
    return all;
  }

  boolean isExtraSlide(int index) {
    return index >= own.cutaways().size();
  }

  boolean isExtraMain(int index) {
    return index >= own.mainJets().size();
  }

  boolean isExtraPilot(int index) {
    return index >= own.pilotJets().size();
  }

  /** How many of slide, needle jet and needle are extra. */
  int ofRing(int slide, int needleJet, int needle) {
    return (isExtraSlide(slide) ? 1 : 0)
        + (needleJet >= own.needleJets().size() ? 1 : 0)
        + (needle >= own.needles().size() ? 1 : 0);
  }

  /**
   * The extra parts of a setting, where they are one part, or a pilot jet and a main jet in that
   * order; null where there is none, or there are others.
   */
  @Nullable List<Part> lacking(int slide, int needleJet, int needle, int pilot, int main) {
    int ring = ofRing(slide, needleJet, needle);
    int jets = (isExtraPilot(pilot) ? 1 : 0) + (isExtraMain(main) ? 1 : 0);
    if (ring + jets == 0 || ring > 1 || (ring == 1 && jets > 0)) {
      return null;
    }
    if (jets == 2) {
      return List.of(pilotJet(pilot), mainJet(main));
    }
    if (jets == 1) {
      return List.of(isExtraPilot(pilot) ? pilotJet(pilot) : mainJet(main));
    }
    if (isExtraSlide(slide)) {
      return List.of(part(PartKind.SLIDE, indices.cutaways, slide - own.cutaways().size()));
    }
    return List.of(
        needle >= own.needles().size()
            ? part(PartKind.NEEDLE, indices.needles, needle - own.needles().size())
            : part(PartKind.NEEDLE_JET, indices.needleJets, needleJet - own.needleJets().size()));
  }

  private Part pilotJet(int pilot) {
    return part(PartKind.PILOT_JET, indices.pilotJets, pilot - own.pilotJets().size());
  }

  private Part mainJet(int main) {
    return part(PartKind.MAIN_JET, indices.mainJets, main - own.mainJets().size());
  }

  private static Part part(PartKind kind, List<Integer> indices, int place) {
    return new Part(kind, indices.get(place));
  }

  /** All extra parts, kind by kind. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    indices.pilotJets.forEach(i -> parts.add(new Part(PartKind.PILOT_JET, i)));
    indices.cutaways.forEach(i -> parts.add(new Part(PartKind.SLIDE, i)));
    indices.needleJets.forEach(i -> parts.add(new Part(PartKind.NEEDLE_JET, i)));
    indices.needles.forEach(i -> parts.add(new Part(PartKind.NEEDLE, i)));
    indices.mainJets.forEach(i -> parts.add(new Part(PartKind.MAIN_JET, i)));
    return parts;
  }
}
