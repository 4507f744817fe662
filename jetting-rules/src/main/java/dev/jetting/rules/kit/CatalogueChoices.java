package dev.jetting.rules.kit;

import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.NeedlePosition;
import dev.jetting.rules.search.PartKind;
import dev.jetting.units.Cutaway;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.ScrewTurns;
import dev.jetting.units.Sentence;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The parts of a catalogue that fit a family, as choices for a search, and the way back from what
 * was found to the parts.
 *
 * <p>Parts that are equal to the mixture model, such as equal jets of two series, become one
 * choice. An owned part comes first, of these the least well known. Else it is the best known part,
 * of these the cheapest, of these the first of the catalogue. The bench of a jet states how well
 * the jet is known.
 */
public final class CatalogueChoices {

  private static final BigDecimal DEAREST = new BigDecimal("1e9");

  private final Catalogue catalogue;
  private final Set<String> owned;
  private final List<Part> pilotJets;
  private final List<Part> slides;
  private final List<Part> needleJets;
  private final List<Part> needles;
  private final List<Part> mainJets;
  private final Choices choices;

  private CatalogueChoices(
      Catalogue catalogue, List<Part> parts, Set<String> owned, List<ScrewTurns> screws) {
    this.catalogue = catalogue;
    this.owned = Set.copyOf(owned);
    pilotJets = distinct(parts, SeriesKind.PILOT_JET, catalogue::boreOf);
    slides = distinct(parts, SeriesKind.SLIDE, CatalogueChoices::cutaway);
    needleJets = distinct(parts, SeriesKind.NEEDLE_JET, CatalogueChoices::needleJet);
    needles = distinct(parts, SeriesKind.NEEDLE, CatalogueChoices::needle);
    mainJets = distinct(parts, SeriesKind.MAIN_JET, catalogue::boreOf);
    choices =
        Choices.builder()
            .pilotJets(choices(pilotJets, catalogue::boreOf))
            .screws(screws)
            .cutaways(choices(slides, CatalogueChoices::cutaway))
            .needleJets(choices(needleJets, CatalogueChoices::needleJet))
            .needles(choices(needles, CatalogueChoices::needle))
            .mainJets(choices(mainJets, catalogue::boreOf))
            .build();
  }

  /**
   * All parts of a catalogue that fit a family.
   *
   * @param catalogue the catalogue
   * @param family the family
   * @param owned ids of the parts that are there already; those that do not fit do not count
   * @param screws turns at which the screw may stand; at least one, none twice
   * @return the choices
   * @throws IllegalArgumentException if an id is not in the catalogue, or nothing of a kind fits
   */
  public static CatalogueChoices of(
      Catalogue catalogue, Family family, Set<String> owned, List<ScrewTurns> screws) {
    for (String id : owned) {
      if (catalogue.part(id).isEmpty()) {
        throw InvalidValueException.worded(
            Sentence.of("error.name.owned-part").with("id", id),
            Sentence.of("error.part-of-catalogue").with("title", catalogue.title()));
      }
    }
    List<Part> fitting =
        catalogue.parts().stream().filter(part -> catalogue.fits(part, family)).toList();
    return new CatalogueChoices(catalogue, fitting, owned, screws);
  }

  /** These parts and no others, all of them owned. */
  static CatalogueChoices owning(Catalogue catalogue, List<Part> parts, List<ScrewTurns> screws) {
    Set<String> ids = Set.copyOf(parts.stream().map(Part::id).toList());
    return new CatalogueChoices(catalogue, parts, ids, screws);
  }

  private List<Part> distinct(List<Part> parts, SeriesKind kind, Function<Part, ?> shape) {
    Comparator<Part> preference =
        Comparator.<Part, Boolean>comparing(part -> !isOwned(part))
            .thenComparing(part -> isOwned(part) ? -uncertainty(part) : uncertainty(part))
            .thenComparing(part -> part.price().orElse(DEAREST));
    Map<Object, Part> byShape = new LinkedHashMap<>();
    for (Part part : parts) {
      if (catalogue.kind(part) == kind) {
        byShape.merge(shape.apply(part), part, (a, b) -> preference.compare(b, a) < 0 ? b : a);
      }
    }
    return List.copyOf(byShape.values());
  }

  private <P> List<Choice<P>> choices(List<Part> parts, Function<Part, P> shape) {
    List<Choice<P>> all = new ArrayList<>();
    for (Part part : parts) {
      all.add(
          Choice.<P>builder()
              .part(shape.apply(part))
              .source(isOwned(part) ? Choice.Source.OWNED : Choice.Source.TO_BUY)
              .price(part.price())
              .uncertainty(uncertainty(part))
              .build());
    }
    return all;
  }

  private boolean isOwned(Part part) {
    return owned.contains(part.id());
  }

  private double uncertainty(Part part) {
    boolean jet =
        part.shape() instanceof PartShape.JetByBore || part.shape() instanceof PartShape.JetByFlow;
    return jet ? catalogue.boreUncertainty(part) : 0;
  }

  private static Cutaway cutaway(Part part) {
    return ((PartShape.Slide) part.shape()).cutaway();
  }

  private static NeedleJet needleJet(Part part) {
    return ((PartShape.NeedleJetShape) part.shape()).needleJet();
  }

  private static Needle bareNeedle(Part part) {
    return ((PartShape.NeedleShape) part.shape()).needle();
  }

  private static NeedlePosition needle(Part part) {
    return NeedlePosition.inAnyGroove(bareNeedle(part));
  }

  /** {@return the choices; needles may hang in any groove} */
  public Choices choices() {
    return choices;
  }

  /**
   * The part of the catalogue for a part of a setting.
   *
   * @param kind the kind of part
   * @param setting a setting that was found among {@link #choices()}, or among what was made of
   *     them, such as by {@link Choices#keeping}
   * @return the part; empty for screw and clip, where there is nothing to buy, and if no part of
   *     the catalogue that fits matches
   */
  public Optional<Part> part(PartKind kind, Setting setting) {
    return switch (kind) {
      case PILOT_JET -> find(pilotJets, catalogue::boreOf, setting.pilotJet());
      case SLIDE -> find(slides, CatalogueChoices::cutaway, setting.cutaway());
      case NEEDLE_JET -> find(needleJets, CatalogueChoices::needleJet, setting.needleJet());
      case NEEDLE -> find(needles, CatalogueChoices::bareNeedle, setting.needle());
      case MAIN_JET -> find(mainJets, catalogue::boreOf, setting.mainJet());
      case SCREW, CLIP -> Optional.empty();
    };
  }

  /**
   * The part of the catalogue for a choice.
   *
   * @param among {@link #choices()}, or choices made of them, such as by {@link Choices#keeping}
   * @param kind the kind of part
   * @param index its place in the list of its kind in those choices, from 0
   * @return the part; empty for screw and clip, where there is nothing to buy, and if no part of
   *     the catalogue that fits matches
   * @throws IndexOutOfBoundsException if there is no such place
   */
  public Optional<Part> part(Choices among, PartKind kind, int index) {
    return switch (kind) {
      case PILOT_JET -> find(pilotJets, catalogue::boreOf, among.pilotJets().get(index).part());
      case SLIDE -> find(slides, CatalogueChoices::cutaway, among.cutaways().get(index).part());
      case NEEDLE_JET ->
          find(needleJets, CatalogueChoices::needleJet, among.needleJets().get(index).part());
      case NEEDLE ->
          find(needles, CatalogueChoices::bareNeedle, among.needles().get(index).part().needle());
      case MAIN_JET -> find(mainJets, catalogue::boreOf, among.mainJets().get(index).part());
      case SCREW, CLIP -> Optional.empty();
    };
  }

  private static Optional<Part> find(List<Part> parts, Function<Part, ?> shape, Object wanted) {
    return parts.stream().filter(part -> shape.apply(part).equals(wanted)).findFirst();
  }

  /** The part behind one of {@link #choices()} themselves. */
  Optional<Part> part(PartKind kind, int index) {
    return part(choices, kind, index);
  }

  /**
   * The parts of a setting.
   *
   * @param setting a setting that was found among {@link #choices()}, or among what was made of
   *     them, such as by {@link Choices#keeping}
   * @return pilot jet, slide, needle jet, needle and main jet
   * @throws IllegalArgumentException if it has one that is none of the catalogue's parts that fit
   */
  public List<Part> parts(Setting setting) {
    return List.of(
        known(PartKind.PILOT_JET, setting, setting.pilotJet()),
        known(PartKind.SLIDE, setting, setting.cutaway()),
        known(PartKind.NEEDLE_JET, setting, setting.needleJet().bore()),
        known(PartKind.NEEDLE, setting, setting.needle().id()),
        known(PartKind.MAIN_JET, setting, setting.mainJet()));
  }

  private Part known(PartKind kind, Setting setting, Object name) {
    return part(kind, setting)
        .orElseThrow(
            () ->
                InvalidValueException.worded(
                    Sentence.of("error.of-setting")
                        .with("what", kind.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                        .with("id", name),
                    Sentence.of("error.fitting-part").with("title", catalogue.title())));
  }

  /** Whether nothing of a kind is left to choose from, so that no setting can be made. */
  static boolean lacksAKind(Catalogue catalogue, List<Part> parts) {
    return Stream.of(
            SeriesKind.PILOT_JET,
            SeriesKind.SLIDE,
            SeriesKind.NEEDLE_JET,
            SeriesKind.NEEDLE,
            SeriesKind.MAIN_JET)
        .anyMatch(kind -> parts.stream().noneMatch(part -> catalogue.kind(part) == kind));
  }
}
