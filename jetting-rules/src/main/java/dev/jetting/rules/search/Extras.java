package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Choices with extra parts behind them in each list, and which of all are extra.
 *
 * @param all the choices, then the extra ones
 * @param own the choices without extras
 * @param indices of each kind, the indices that the extra parts had where they came from
 */
record Extras(Choices all, Choices own, Indices indices) {

  /** No extra part; as what a setting lacks, more than is looked at. */
  static final int NONE = -1;

  /**
   * An extra part.
   *
   * @param index its index where it came from
   * @param lacking what a setting lacks that has it and no other extra part
   */
  record Part(PartKind kind, int index, int lacking) {}

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
            extra(own.needles(), more.needles(), NeedlePosition::needle),
            extra(own.mainJets(), more.mainJets(), p -> p));
    Choices all =
        Choices.builder()
            .pilotJets(joined(own.pilotJets(), more.pilotJets(), indices.pilotJets))
            .screws(own.screws())
            .cutaways(joined(own.cutaways(), more.cutaways(), indices.cutaways))
            .needleJets(joined(own.needleJets(), more.needleJets(), indices.needleJets))
            .needles(joined(own.needles(), more.needles(), indices.needles))
            .mainJets(joined(own.mainJets(), more.mainJets(), indices.mainJets))
            .build();
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
   * What a setting lacks: an index of the extra part in it, or of the pilot jet and main jet
   * together; 0 if it has none, and negative if it has others.
   */
  int lacking(int slide, int needleJet, int needle, int pilot, int main) {
    int jets =
        lackingJets(
            isExtraPilot(pilot) ? pilot - own.pilotJets().size() : NONE,
            isExtraMain(main) ? main - own.mainJets().size() : NONE);
    int ring = ofRing(slide, needleJet, needle);
    if (ring == 0) {
      return jets;
    }
    if (ring > 1 || jets > 0) {
      return NONE;
    }
    if (isExtraSlide(slide)) {
      return lacking(PartKind.SLIDE, slide - own.cutaways().size());
    }
    return needle >= own.needles().size()
        ? lacking(PartKind.NEEDLE, needle - own.needles().size())
        : lacking(PartKind.NEEDLE_JET, needleJet - own.needleJets().size());
  }

  /**
   * The index for a pilot and a main jet.
   *
   * @param pilot place of the pilot jet among the extra ones, or {@link #NONE}
   * @param main the same of the main jet
   */
  int lackingJets(int pilot, int main) {
    return (pilot + 1) * (indices.mainJets.size() + 1) + main + 1;
  }

  /** The index for one part, by its place among the extra ones of its kind. */
  int lacking(PartKind kind, int place) {
    int jets = (indices.pilotJets.size() + 1) * (indices.mainJets.size() + 1);
    return switch (kind) {
      case PILOT_JET -> lackingJets(place, NONE);
      case MAIN_JET -> lackingJets(NONE, place);
      case SLIDE -> jets + place;
      case NEEDLE_JET -> jets + indices.cutaways.size() + place;
      case NEEDLE -> jets + indices.cutaways.size() + indices.needleJets.size() + place;
      case SCREW, CLIP -> throw new IllegalArgumentException("no extra part: " + kind);
    };
  }

  /** The indices that the extra parts of a kind had where they came from. */
  private List<Integer> indicesOf(PartKind kind) {
    return switch (kind) {
      case PILOT_JET -> indices.pilotJets;
      case SLIDE -> indices.cutaways;
      case NEEDLE_JET -> indices.needleJets;
      case NEEDLE -> indices.needles;
      case MAIN_JET -> indices.mainJets;
      case SCREW, CLIP -> List.of();
    };
  }

  /** All extra parts, kind by kind. */
  List<Part> parts() {
    return Stream.of(PartKind.values()).flatMap(kind -> parts(kind).stream()).toList();
  }

  /** The extra parts of a kind. */
  List<Part> parts(PartKind kind) {
    List<Integer> all = indicesOf(kind);
    return IntStream.range(0, all.size())
        .mapToObj(place -> new Part(kind, all.get(place), lacking(kind, place)))
        .toList();
  }
}
