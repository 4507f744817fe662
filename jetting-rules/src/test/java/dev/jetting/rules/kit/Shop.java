package dev.jetting.rules.kit;

import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Screw;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Area;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import dev.jetting.units.Density;
import dev.jetting.units.Diameter;
import dev.jetting.units.DynamicViscosity;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.JetFlow;
import dev.jetting.units.Length;
import dev.jetting.units.Probability;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A small catalogue round the engine on which facts of the trade are tried, and a sound kit. */
public final class Shop {

  static final JetCalibration BENCH =
      new JetCalibration(
          Length.ofMillimetres(500),
          new JetCalibration.Liquid(
              "test petrol",
              Density.ofKilogramsPerCubicMetre(750),
              DynamicViscosity.ofMillipascalSeconds(0.6)),
          new JetCalibration.ConstantCoefficient(0.8),
          0.03);

  static final List<PartSeries> SERIES =
      List.of(
          series("pilots", SeriesKind.PILOT_JET),
          series("slides", SeriesKind.SLIDE),
          series("tubes", SeriesKind.NEEDLE_JET),
          series("needles", SeriesKind.NEEDLE),
          series("mains", SeriesKind.MAIN_JET),
          PartSeries.builder()
              .id("flow mains")
              .description("by flow")
              .kind(SeriesKind.MAIN_JET)
              .bench(Optional.of(BENCH))
              .build(),
          series("screws", SeriesKind.SCREW),
          series("valves", SeriesKind.FLOAT_VALVE),
          series("mains of others", SeriesKind.MAIN_JET));

  static final Family FAMILY =
      Family.builder()
          .id("slide 30")
          .description("30 mm, mixture screw")
          .carburettor(TwoHundred.carburettor(ScrewKind.MIXTURE, 2.5))
          .takes(
              List.of(
                  "pilots",
                  "slides",
                  "tubes",
                  "needles",
                  "mains",
                  "flow mains",
                  "screws",
                  "valves"))
          .build();

  /** What the demo sells. */
  public static final Catalogue CATALOGUE =
      Catalogue.of(
          "a small shop",
          List.of(FAMILY),
          SERIES,
          parts(),
          List.of(
              new Machine("standard", TwoHundred.STANDARD, TwoHundred.ALL_ROUND.intake()),
              new Machine("tuned", TwoHundred.tuned(220), TwoHundred.ALL_ROUND.intake())),
          List.of(
              Market.builder()
                  .id("seaside")
                  .air(TwoHundred.DAY)
                  .fuels(List.of(TwoHundred.FUEL))
                  .riding(
                      Riding.builder()
                          .acceptedRisk(Probability.of(0.1))
                          .profile(RidingProfile.assumedRoad())
                          .coldest(TwoHundred.DAY)
                          .hottest(TwoHundred.DAY)
                          .build())
                  .build()));

  private Shop() {}

  private static PartSeries series(String id, SeriesKind kind) {
    return PartSeries.builder().id(id).description("of the small shop").kind(kind).build();
  }

  private static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (int bore : new int[] {50, 55, 60}) {
      parts.add(
          part("pilot " + bore, "pilots", new PartShape.JetByBore(JetBore.ofHundredths(bore))));
    }
    for (int tenths : new int[] {35, 40, 45}) {
      parts.add(part("slide " + tenths, "slides", new PartShape.Slide(Cutaway.ofTenths(tenths))));
    }
    for (int bore : new int[] {264, 266, 268}) {
      parts.add(
          part(
              "tube " + bore,
              "tubes",
              new PartShape.NeedleJetShape(TwoHundred.needleJet(bore / 100.0))));
    }
    parts.add(
        part("tube narrow", "tubes", new PartShape.NeedleJetShape(TwoHundred.needleJet(2.49))));
    parts.add(part("needle", "needles", new PartShape.NeedleShape(TwoHundred.NEEDLE)));
    parts.add(
        part("leaner needle", "needles", new PartShape.NeedleShape(TwoHundred.LEANER_NEEDLE)));
    parts.add(
        part(
            "thick needle",
            "needles",
            new PartShape.NeedleShape(TwoHundred.needle("thick needle", 2.7))));
    for (int bore = 96; bore <= 150; bore += 6) {
      parts.add(part("main " + bore, "mains", new PartShape.JetByBore(JetBore.ofHundredths(bore))));
    }
    parts.add(
        part("other 126", "mains of others", new PartShape.JetByBore(JetBore.parse("1.26 mm"))));
    parts.add(
        part("flow 200", "flow mains", new PartShape.JetByFlow(JetFlow.parse("200 cm³/min"))));
    parts.add(
        part(
            "air screw",
            "screws",
            new PartShape.PilotScrew(ScrewKind.AIR, Area.ofSquareMillimetres(0.2))));
    parts.add(
        part(
            "fine screw",
            "screws",
            new PartShape.PilotScrew(ScrewKind.MIXTURE, Area.ofSquareMillimetres(0.15))));
    parts.add(part("small valve", "valves", new PartShape.Valve(valve(0.8))));
    parts.add(part("big valve", "valves", new PartShape.Valve(valve(3))));
    return parts;
  }

  private static FloatValve valve(double seat) {
    FloatValve own = TwoHundred.ALL_ROUND.carburettor().floatValve();
    return new FloatValve(Diameter.ofMillimetres(seat), own.supplyHead(), own.discharge());
  }

  private static Part part(String id, String series, PartShape shape) {
    return Part.builder()
        .id(id)
        .description("of the small shop")
        .series(series)
        .shape(shape)
        .price(Optional.of(BigDecimal.valueOf(3)))
        .build();
  }

  /** The all-round setting, with the parts for it and a few to either side. */
  public static Kit kit() {
    return Kit.builder()
        .id("all-round")
        .description("for the standard 200")
        .family("slide 30")
        .parts(
            List.of(
                "pilot 50",
                "pilot 55",
                "slide 40",
                "tube 266",
                "needle",
                "main 120",
                "main 126",
                "main 132",
                "main 138"))
        .market("seaside")
        .recommendations(List.of(recommendation()))
        .build();
  }

  static Recommendation recommendation() {
    return Recommendation.builder()
        .machine("standard")
        .pilotJet("pilot 55")
        .screw(new Screw(ScrewKind.MIXTURE, ScrewTurns.of(1.5)))
        .slide("slide 40")
        .idleLift(Length.ofMillimetres(2))
        .needleJet("tube 266")
        .needle("needle")
        .clip(ClipPosition.fromTop(2, 5))
        .mainJet("main 126")
        .build();
  }

  /** The sound kit with other parts. */
  static Kit kitOf(String... parts) {
    Kit kit = kit();
    return Kit.builder()
        .id(kit.id())
        .description(kit.description())
        .family(kit.family())
        .parts(List.of(parts))
        .market(kit.market())
        .recommendations(kit.recommendations())
        .build();
  }

  /** The sound kit with one more part. */
  static Kit kitWith(String... more) {
    List<String> parts = new ArrayList<>(kit().parts());
    parts.addAll(List.of(more));
    return kitOf(parts.toArray(String[]::new));
  }

  /** The sound kit, and this part, with another recommendation. */
  static Kit recommending(Recommendation recommendation, String... more) {
    Kit kit = kitWith(more);
    return Kit.builder()
        .id(kit.id())
        .description(kit.description())
        .family(kit.family())
        .parts(kit.parts())
        .market(kit.market())
        .recommendations(List.of(recommendation))
        .build();
  }
}
