package dev.jetting.rules.kit;

import com.google.common.collect.HashMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.SetMultimap;
import dev.jetting.core.checks.Checks;
import dev.jetting.core.fuel.Fuel;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.ranges.SizeRanges;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.Sentence;
import dev.jetting.units.Uncertain;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a seller lists: families of carburettors, the parts that they take, the machines that kits
 * are sold for, and the markets. Immutable.
 *
 * <p>Not a stock list: it does not say how many there are.
 */
public final class Catalogue {

  /** The most UTF-16 units that a title or description may have. */
  static final int LONGEST_TITLE = 200;

  private static final ImmutableList<SeriesKind> ON_EACH_SHEET =
      ImmutableList.of(SeriesKind.SLIDE, SeriesKind.NEEDLE_JET, SeriesKind.NEEDLE);

  private final String title;
  private final ImmutableMap<String, Family> families;
  private final ImmutableMap<String, PartSeries> series;
  private final ImmutableMap<String, Part> parts;
  private final ImmutableMap<String, Machine> machines;
  private final ImmutableMap<String, Market> markets;

  /** The bores of jets, those numbered by flow included, by part id. */
  private final ImmutableMap<String, Uncertain<JetBore>> bores;

  private Catalogue(
      String title,
      List<Family> families,
      List<PartSeries> series,
      List<Part> parts,
      List<Machine> machines,
      List<Market> markets) {
    Checks.lineOrNothing(
        "title", () -> Sentence.of("error.name.title-of-a-catalogue"), title, LONGEST_TITLE);
    this.title = title;
    this.families = byId("error.name.thing.family", families, Family::id);
    this.series = byId("error.name.thing.series", series, PartSeries::id);
    this.parts = byId("error.name.thing.part", parts, Part::id);
    this.machines = byId("error.name.thing.machine", machines, Machine::id);
    this.markets = byId("error.name.thing.market", markets, Market::id);
    for (Family family : families) {
      family.takes().forEach(id -> known(id, "error.name.thing.family", family.id()));
    }
    ImmutableMap.Builder<String, Uncertain<JetBore>> found = ImmutableMap.builder();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      bore(part).ifPresent(bore -> found.put(part.id(), bore));
      PartRanges.check(
          "parts[" + i + "].",
          known(part.series(), "error.name.thing.part", part.id()),
          part.shape());
    }
    checkRanges(families, machines, markets);
    checkFitting(families, parts);
    this.bores = found.buildOrThrow();
  }

  /** What a kit for these is worked out with, an assessment can be computed with. */
  private static void checkRanges(
      List<Family> families, List<Machine> machines, List<Market> markets) {
    for (int i = 0; i < families.size(); i++) {
      SizeRanges.carburettor("families[" + i + "].carburettor", families.get(i).carburettor());
    }
    for (int i = 0; i < machines.size(); i++) {
      SizeRanges.engine("machines[" + i + "].engine", machines.get(i).engine());
      SizeRanges.intake("machines[" + i + "].intake", machines.get(i).intake());
    }
    for (int i = 0; i < markets.size(); i++) {
      List<Fuel> fuels = markets.get(i).fuels();
      for (int j = 0; j < fuels.size(); j++) {
        SizeRanges.fuel("markets[" + i + "].fuels[" + j + "]", fuels.get(j));
      }
    }
  }

  /** The slides, needle jets and needles of a family stand on each sheet of a kit for it. */
  private void checkFitting(List<Family> families, List<Part> parts) {
    SetMultimap<String, PartShape> bySeries = HashMultimap.create();
    parts.forEach(part -> bySeries.put(part.series(), part.shape()));
    for (int i = 0; i < families.size(); i++) {
      Map<SeriesKind, Integer> fitting = new EnumMap<>(SeriesKind.class);
      for (String id : families.get(i).takes()) {
        SeriesKind kind = Objects.requireNonNull(series.get(id)).kind();
        fitting.merge(kind, bySeries.get(id).size(), Integer::sum);
      }
      for (SeriesKind kind : ON_EACH_SHEET) {
        String family = families.get(i).id();
        Checks.atMost(
            "families[" + i + "].takes",
            () ->
                Sentence.of("error.name.fitting-parts").with("kind", kind(kind)).with("id", family),
            fitting.getOrDefault(kind, 0),
            PartsAtHand.MOST_PARTS);
      }
    }
  }

  private static <T> ImmutableMap<String, T> byId(
      String key, List<T> things, Function<T, String> id) {
    Set<String> taken = new HashSet<>();
    ImmutableMap.Builder<String, T> map = ImmutableMap.builder();
    for (T thing : things) {
      if (!taken.add(id.apply(thing))) {
        throw InvalidValueException.worded(
            Sentence.of("error.twice-in-catalogue")
                .with("what", Sentence.of(key))
                .with("id", id.apply(thing)),
            Sentence.of("error.once"));
      }
      map.put(id.apply(thing), thing);
    }
    return map.buildOrThrow();
  }

  private PartSeries known(String id, String owner, String ownersId) {
    PartSeries found = series.get(id);
    if (found == null) {
      throw InvalidValueException.worded(
          Sentence.of("error.series-unknown")
              .with("series", id)
              .with("what", Sentence.of(owner))
              .with("id", ownersId),
          Sentence.of("error.series-known"));
    }
    return found;
  }

  private static Sentence kind(SeriesKind kind) {
    return Sentence.name(kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  /** Checks a part against its series; the bore if it is a jet. */
  private Optional<Uncertain<JetBore>> bore(Part part) {
    PartSeries its = known(part.series(), "error.name.thing.part", part.id());
    boolean byFlow = its.bench().isPresent();
    boolean suits =
        part.shape().suits(its.kind()) && part.shape() instanceof PartShape.JetByFlow == byFlow;
    if (!suits) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.part-of-series").with("id", part.id()).with("series", its.id()),
          Sentence.of(byFlow ? "error.by-flow" : "error.not-by-flow")
              .with("what", kind(its.kind())));
    }
    if (part.shape() instanceof PartShape.JetByFlow jet) {
      return its.bench().map(bench -> bench.boreOf(jet.flow()));
    }
    return part.shape() instanceof PartShape.JetByBore jet
        ? Optional.of(new Uncertain<>(jet.bore(), jet.bore(), jet.bore()))
        : Optional.empty();
  }

  /**
   * A catalogue.
   *
   * @param title a line for people
   * @param families the families of carburettors
   * @param series the series of parts
   * @param parts the parts, each of one of these series
   * @param machines the machines that kits are sold for; may be none
   * @param markets the markets; may be none
   * @return the catalogue
   * @throws IllegalArgumentException if the title is no line of visible characters, a size is out
   *     of range, an id is there twice, a series is missing, or a part does not match its series
   * @throws dev.jetting.units.QuantityException if a jet is numbered by a flow that its bench does
   *     not reach
   */
  public static Catalogue of(
      String title,
      List<Family> families,
      List<PartSeries> series,
      List<Part> parts,
      List<Machine> machines,
      List<Market> markets) {
    return new Catalogue(title, families, series, parts, machines, markets);
  }

  /**
   * This catalogue with more parts, such as those of a parts list.
   *
   * @param more the parts
   * @return the larger catalogue
   * @throws IllegalArgumentException as {@link #of}
   */
  public Catalogue withParts(List<Part> more) {
    return of(
        title,
        families(),
        series(),
        Stream.concat(parts.values().stream(), more.stream()).toList(),
        machines(),
        markets());
  }

  /** {@return a line for people} */
  public String title() {
    return title;
  }

  /** {@return the families in the order they were given} */
  public List<Family> families() {
    return families.values().asList();
  }

  /** {@return the series in the order they were given} */
  public List<PartSeries> series() {
    return series.values().asList();
  }

  /** {@return the parts in the order they were given} */
  public List<Part> parts() {
    return parts.values().asList();
  }

  /** {@return the machines in the order they were given} */
  public List<Machine> machines() {
    return machines.values().asList();
  }

  /** {@return the markets in the order they were given} */
  public List<Market> markets() {
    return markets.values().asList();
  }

  /**
   * Looks a family up.
   *
   * @param id its id
   * @return the family; empty if there is none of this id
   */
  public Optional<Family> family(String id) {
    return Optional.ofNullable(families.get(id));
  }

  /**
   * Looks a part up.
   *
   * @param id its id
   * @return the part; empty if there is none of this id
   */
  public Optional<Part> part(String id) {
    return Optional.ofNullable(parts.get(id));
  }

  /**
   * Looks a machine up.
   *
   * @param id its id
   * @return the machine; empty if there is none of this id
   */
  public Optional<Machine> machine(String id) {
    return Optional.ofNullable(machines.get(id));
  }

  /**
   * Looks a market up.
   *
   * @param id its id
   * @return the market; empty if there is none of this id
   */
  public Optional<Market> market(String id) {
    return Optional.ofNullable(markets.get(id));
  }

  /**
   * The kind of a part of this catalogue.
   *
   * @param part the part
   * @return the kind of its series
   * @throws IllegalArgumentException if its series is not in this catalogue
   */
  public SeriesKind kind(Part part) {
    return known(part.series(), "error.name.thing.part", part.id()).kind();
  }

  /**
   * Whether a part fits a family.
   *
   * @param part the part
   * @param family the family
   * @return true if the family takes the part's series
   */
  public boolean fits(Part part, Family family) {
    return family.takes().contains(part.series());
  }

  /**
   * The parts of a kind that fit a family.
   *
   * @param family the family
   * @param kind the kind
   * @return the parts in the order of the catalogue; may be none
   */
  public List<Part> fitting(Family family, SeriesKind kind) {
    return parts.values().stream()
        .filter(part -> fits(part, family) && kind(part) == kind)
        .toList();
  }

  /**
   * The bore of a jet: its own, or what its bench makes of its flow.
   *
   * @param part a pilot or main jet of this catalogue
   * @return the bore, the best estimate where the jet is numbered by flow
   * @throws IllegalArgumentException if the part is no jet of this catalogue
   */
  public JetBore boreOf(Part part) {
    return jet(part).value();
  }

  /**
   * How far off the bore of a jet may be, beyond the tolerance of its kind: what the bench of its
   * series leaves open where the jet is numbered by its flow.
   *
   * @param part a pilot or main jet of this catalogue
   * @return standard uncertainty, mm, zero or more; 0 for a jet numbered by its bore
   * @throws IllegalArgumentException if the part is no jet of this catalogue
   */
  public double boreUncertainty(Part part) {
    Uncertain<JetBore> bore = jet(part);
    return (bore.upper().millimetres() - bore.lower().millimetres()) / 2;
  }

  private Uncertain<JetBore> jet(Part part) {
    Uncertain<JetBore> bore = bores.get(part.id());
    if (bore == null) {
      throw InvalidValueException.worded(
          Sentence.of("error.name.part").with("id", part.id()),
          Sentence.of("error.jet-of-catalogue").with("title", title));
    }
    return bore;
  }

  Map<String, PartSeries> seriesById() {
    return series;
  }

  /** Equal where title and all lists are, in their order. */
  @Override
  @SuppressWarnings("exports") // callers compile without the annotation
  public boolean equals(@Nullable Object other) {
    return other instanceof Catalogue that
        && title.equals(that.title)
        && families().equals(that.families())
        && series().equals(that.series())
        && parts().equals(that.parts())
        && machines().equals(that.machines())
        && markets().equals(that.markets());
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, families, series, parts, machines, markets);
  }

  /** {@return the title and how many parts there are} */
  @Override
  public String toString() {
    return title + ", " + families.size() + " families, " + parts.size() + " parts";
  }
}
