package dev.jetting.rules.kit;

import static net.jqwik.api.Combinators.combine;

import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.rules.arbitraries.SheetArbitraries;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.FloatLevel;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Random catalogues, and kits that speak of some of what is in them. */
public final class KitArbitraries {

  private static final List<SeriesKind> KINDS = List.of(SeriesKind.values());

  private KitArbitraries() {}

  /** Catalogues with one series of each kind, main jets by flow, and one of pilots more. */
  public static Arbitrary<Catalogue> catalogues() {
    return combine(
            texts(),
            families().list().ofMinSize(0).ofMaxSize(2),
            benches(),
            parts().list().ofMaxSize(12),
            machines().list().ofMaxSize(2),
            markets().list().ofMaxSize(2))
        .as(KitArbitraries::catalogue);
  }

  private static Catalogue catalogue(
      String title,
      List<Family> families,
      JetCalibration bench,
      List<Part> parts,
      List<Machine> machines,
      List<Market> markets) {
    List<PartSeries> series = new ArrayList<>();
    for (SeriesKind kind : KINDS) {
      boolean byFlow = kind == SeriesKind.MAIN_JET;
      series.add(
          PartSeries.builder()
              .id(kind.name())
              .description("all of a kind")
              .kind(kind)
              .bench(byFlow ? Optional.of(bench) : Optional.empty())
              .build());
    }
    return Catalogue.of(
        title,
        numbered(
            families,
            (f, id) ->
                Family.builder()
                    .id(id)
                    .description(f.description())
                    .carburettor(f.carburettor())
                    .takes(f.takes())
                    .build()),
        series,
        numbered(parts, (p, id) -> renamed(p, id + p.id())),
        numbered(machines, (m, id) -> new Machine(id, m.engine(), m.intake())),
        numbered(
            markets,
            (m, id) ->
                Market.builder().id(id).air(m.air()).fuels(m.fuels()).riding(m.riding()).build()));
  }

  private interface Renaming<T> {
    T to(T thing, String id);
  }

  private static <T> List<T> numbered(List<T> things, Renaming<T> renaming) {
    return IntStream.range(0, things.size())
        .mapToObj(i -> renaming.to(things.get(i), i + " "))
        .toList();
  }

  private static Part renamed(Part part, String id) {
    PartShape shape = part.shape();
    if (shape instanceof PartShape.NeedleShape rod) {
      Needle n = rod.needle();
      shape =
          new PartShape.NeedleShape(
              Needle.builder()
                  .id(id)
                  .cylinder(n.cylinder())
                  .tapers(n.tapers())
                  .grooves(n.grooves())
                  .groovePitch(n.groovePitch())
                  .tip(n.tip())
                  .build());
    }
    return Part.builder()
        .id(id)
        .description(part.description())
        .series(part.series())
        .shape(shape)
        .price(part.price())
        .build();
  }

  private static Arbitrary<Family> families() {
    return combine(
            SheetArbitraries.carburettors(),
            Arbitraries.of(KINDS).map(Enum::name).set().ofMaxSize(7).map(List::copyOf))
        .as(
            (carburettor, takes) ->
                Family.builder()
                    .id("family")
                    .description("a family")
                    .carburettor(carburettor)
                    .takes(takes)
                    .build());
  }

  private static Arbitrary<JetCalibration> benches() {
    Arbitrary<JetCalibration.DischargeLaw> laws =
        Arbitraries.oneOf(
            numbers(0.3, 1).map(JetCalibration.ConstantCoefficient::new),
            numbers(2, 10).map(JetCalibration.ShortOrifice::new));
    return combine(numbers(100, 1000), texts(), laws, numbers(0, 0.4))
        .as(
            (head, name, law, uncertainty) ->
                new JetCalibration(
                    Length.ofMillimetres(head),
                    new JetCalibration.Liquid(
                        name,
                        Density.ofKilogramsPerCubicMetre(750),
                        DynamicViscosity.ofMillipascalSeconds(0.6)),
                    law,
                    uncertainty));
  }

  /** Parts of every shape and series. */
  static Arbitrary<Part> parts() {
    Arbitrary<Optional<BigDecimal>> prices =
        Arbitraries.bigDecimals()
            .between(BigDecimal.ZERO, BigDecimal.valueOf(1_000_000))
            .ofScale(4)
            .optional();
    return combine(Arbitraries.of(KINDS).flatMap(KitArbitraries::shaped), texts(), texts(), prices)
        .as(
            (shaped, id, description, price) ->
                renamed(
                    Part.builder()
                        .id(
                            shaped.shape() instanceof PartShape.NeedleShape rod
                                ? rod.needle().id()
                                : id)
                        .description(description)
                        .series(shaped.kind().name())
                        .shape(shaped.shape())
                        .price(price)
                        .build(),
                    id));
  }

  private record Shaped(SeriesKind kind, PartShape shape) {}

  private static Arbitrary<Shaped> shaped(SeriesKind kind) {
    Arbitrary<? extends PartShape> shapes =
        switch (kind) {
          case PILOT_JET ->
              numbers(0.2, 1).map(JetBore::ofMillimetres).map(PartShape.JetByBore::new);
          case MAIN_JET ->
              numbers(50, 300)
                  .map(JetFlow::ofCubicCentimetresPerMinute)
                  .map(PartShape.JetByFlow::new);
          case SLIDE -> numbers(0, 10).map(Cutaway::ofMillimetres).map(PartShape.Slide::new);
          case NEEDLE_JET ->
              combine(numbers(1, 4), numbers(0, 5))
                  .as(
                      (bore, neck) ->
                          new PartShape.NeedleJetShape(
                              new NeedleJet(
                                  Diameter.ofMillimetres(bore), Length.ofMillimetres(neck))));
          case NEEDLE -> SheetArbitraries.needles().map(PartShape.NeedleShape::new);
          case SCREW ->
              combine(Arbitraries.of(ScrewKind.class), numbers(0.01, 1))
                  .as((is, area) -> new PartShape.PilotScrew(is, Area.ofSquareMillimetres(area)));
          case FLOAT_VALVE ->
              SheetArbitraries.carburettors()
                  .map(carburettor -> new PartShape.Valve(carburettor.floatValve()));
        };
    return shapes.map(shape -> new Shaped(kind, shape));
  }

  private static Arbitrary<Machine> machines() {
    return combine(SheetArbitraries.engines(), SheetArbitraries.intakes())
        .as((engine, intake) -> new Machine("machine", engine, intake));
  }

  private static Arbitrary<Market> markets() {
    return combine(
            SheetArbitraries.airs(),
            SheetArbitraries.fuels().list().ofMinSize(1).ofMaxSize(2),
            SheetArbitraries.ridings())
        .as(
            (air, fuels, riding) ->
                Market.builder().id("market").air(air).fuels(fuels).riding(riding).build());
  }

  /** Kits by ids of anything or of nothing. */
  public static Arbitrary<Kit> kits() {
    return kits(texts());
  }

  /** Kits of the parts of a catalogue, right or wrong, and of some that it does not have. */
  static Arbitrary<Kit> kits(Catalogue catalogue) {
    List<String> ids = new ArrayList<>(List.of("no such thing"));
    catalogue.parts().forEach(part -> ids.add(part.id()));
    catalogue.families().forEach(family -> ids.add(family.id()));
    catalogue.machines().forEach(machine -> ids.add(machine.id()));
    catalogue.markets().forEach(market -> ids.add(market.id()));
    return kits(Arbitraries.of(ids));
  }

  private static Arbitrary<Kit> kits(Arbitrary<String> ids) {
    return combine(
            texts(),
            texts(),
            ids,
            ids.list().ofMaxSize(8),
            ids,
            recommendations(ids).list().ofMinSize(1).ofMaxSize(3))
        .as(Kit::new);
  }

  private static Arbitrary<Recommendation> recommendations(Arbitrary<String> ids) {
    Arbitrary<Screw> screws =
        combine(Arbitraries.of(ScrewKind.class), numbers(0, 5).map(ScrewTurns::of)).as(Screw::new);
    Arbitrary<ClipPosition> clips =
        Arbitraries.integers()
            .between(1, 9)
            .flatMap(
                grooves ->
                    Arbitraries.integers()
                        .between(1, grooves)
                        .map(groove -> ClipPosition.fromTop(groove, grooves)));
    Arbitrary<Floats> floats =
        numbers(0, 60)
            .map(FloatLevel::ofMillimetres)
            .tuple2()
            .map(levels -> Floats.builder().set(levels.get1()).nominal(levels.get2()).build());
    return ids.list()
        .ofSize(8)
        .flatMap(
            named ->
                combine(
                        screws,
                        numbers(0.01, 5).map(Length::ofMillimetres),
                        clips,
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        floats.optional())
                    .as(
                        (screw, idle, clip, withScrew, withValve, level) ->
                            Recommendation.builder()
                                .machine(named.get(0))
                                .pilotJet(named.get(1))
                                .screw(screw)
                                .slide(named.get(2))
                                .idleLift(idle)
                                .needleJet(named.get(3))
                                .needle(named.get(4))
                                .clip(clip)
                                .mainJet(named.get(5))
                                .fittedScrew(Optional.of(named.get(6)).filter(id -> withScrew))
                                .floatValve(Optional.of(named.get(7)).filter(id -> withValve))
                                .floats(level)
                                .build()));
  }

  private static Arbitrary<Double> numbers(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(4);
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.strings()
        .alpha()
        .numeric()
        .withChars(" \"\\/{}[]:,';…λ³·é")
        .ofMinLength(1)
        .ofMaxLength(24)
        .filter(text -> !text.isBlank());
  }
}
