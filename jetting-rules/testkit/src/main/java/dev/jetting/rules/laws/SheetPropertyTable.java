package dev.jetting.rules.laws;

import dev.jetting.core.engine.Engine;
import dev.jetting.core.engine.MixtureNeed;
import dev.jetting.core.engine.RpmCurve;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Carburettor;
import dev.jetting.core.parts.Floats;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.Setting;
import dev.jetting.core.typical.MachineValue;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Probability;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pieces of a sheet; neighbours belong together. */
final class SheetPropertyTable {

  private SheetPropertyTable() {}

  private static final List<SheetProperty<?>> OF_MACHINE_AND_RIDING =
      List.of(
          piece(SetupSheet::title, SetupSheet::withTitle, title -> "title \"" + title + "\""),
          piece(SetupSheet::parts, SetupSheet::withParts, SheetPropertyTable::parts),
          piece(SetupSheet::typical, SetupSheet::withTypical, SheetPropertyTable::typical),
          riding(
              Riding::acceptedRisk,
              Riding::withAcceptedRisk,
              (Probability p) -> "accepted risk " + TradeStyle.probability(p)),
          riding(Riding::profile, Riding::withProfile, SheetPropertyTable::weights),
          riding(Riding::coldest, Riding::withColdest, air -> "coldest day " + air),
          riding(Riding::hottest, Riding::withHottest, air -> "hottest day " + air),
          riding(
              Riding::speeds,
              Riding::withSpeeds,
              speeds -> "load uphill " + number(speeds.uphillLoad()) + " times the level road's"),
          piece(
              s -> s.setup().air(), (s, x) -> withSetup(s, s.setup().withAir(x)), a -> "air " + a),
          piece(
              s -> s.setup().fuel(),
              (s, x) -> withSetup(s, s.setup().withFuel(x)),
              f -> "fuel " + f),
          piece(
              s -> s.setup().fuelWarmerBy(),
              (s, x) -> withSetup(s, s.setup().withFuelWarmerBy(x)),
              x -> "fuel warmer than the air by " + x),
          engine(Engine::id, Engine::withId, id -> "engine \"" + id + "\""),
          engine(Engine::displacement, Engine::withDisplacement, x -> "displacement " + x),
          engine(
              Engine::deliveryRatio, Engine::withDeliveryRatio, x -> "delivery ratio " + curve(x)),
          engine(Engine::induction, Engine::withInduction, x -> "induction \"" + x.id() + "\""),
          engine(
              Engine::exhaust,
              Engine::withExhaust,
              x -> "exhaust \"" + x.id() + "\" of " + curve(x.deliveryFactor())),
          engine(
              Engine::loadLine,
              Engine::withLoadLine,
              x -> "load line " + x.idle() + " to " + x.peak()),
          engine(Engine::need, Engine::withNeed, SheetPropertyTable::need),
          carburettor(Carburettor::id, Carburettor::withId, id -> "carburettor \"" + id + "\""),
          carburettor(
              Carburettor::bore, Carburettor::withBore, x -> "bore " + TradeStyle.diameter(x)),
          carburettor(
              Carburettor::needleJetLength,
              Carburettor::withNeedleJetLength,
              x -> "needle jet length " + x),
          carburettor(
              Carburettor::needleJetHead,
              Carburettor::withNeedleJetHead,
              x -> "needle jet head " + x),
          carburettor(
              Carburettor::pilot,
              Carburettor::withPilot,
              x ->
                  "pilot circuit of "
                      + x.screwKind()
                      + " screw, "
                      + x.areaPerTurn()
                      + " a turn, "
                      + x.fixedArea()
                      + " fixed"),
          carburettor(
              Carburettor::floatValve,
              Carburettor::withFloatValve,
              x -> "float valve of " + TradeStyle.diameter(x.seat())),
          carburettor(Carburettor::flow, Carburettor::withFlow, x -> "flow coefficients " + x),
          setting(
              Setting::intake,
              Setting::withIntake,
              x -> x.effectiveArea().map(area -> x.id() + " of " + area).orElse(x.id())),
          setting(Setting::pilotJet, Setting::withPilotJet, TradeStyle::pilot),
          setting(Setting::screw, Setting::withScrew, x -> TradeStyle.screw(x.kind(), x.turns())),
          setting(Setting::cutaway, Setting::withCutaway, TradeStyle::cutaway),
          setting(Setting::idleLift, Setting::withIdleLift, x -> "idle lift " + x),
          setting(
              Setting::needleJet,
              Setting::withNeedleJet,
              x -> "needle jet " + TradeStyle.diameter(x.bore()) + ", neck " + x.neck()),
          setting(
              Setting::needle,
              (s, x) -> s.withNeedle(x, clipOn(x, s.clip())),
              SheetPropertyTable::needle),
          setting(Setting::clip, Setting::withClip, TradeStyle::clip),
          setting(Setting::mainJet, Setting::withMainJet, TradeStyle::main),
          setting(
              Setting::floats,
              (s, x) -> s.toBuilder().floats(x).build(),
              SheetPropertyTable::floats));

  static final List<SheetProperty<?>> ALL =
      Stream.concat(OF_MACHINE_AND_RIDING.stream(), ProvenancePropertyTable.all().stream())
          .toList();

  private static <T> SheetProperty<T> piece(
      Function<SetupSheet, T> get,
      BiFunction<SetupSheet, T, SetupSheet> with,
      Function<T, String> text) {
    return new SheetProperty<>(get, with, text);
  }

  private static <T> SheetProperty<T> riding(
      Function<Riding, T> get, BiFunction<Riding, T, Riding> with, Function<T, String> text) {
    return piece(
        s -> get.apply(s.riding()), (s, x) -> s.withRiding(with.apply(s.riding(), x)), text);
  }

  private static <T> SheetProperty<T> engine(
      Function<Engine, T> get, BiFunction<Engine, T, Engine> with, Function<T, String> text) {
    return piece(
        s -> get.apply(s.setup().engine()),
        (s, x) -> withSetup(s, s.setup().withEngine(with.apply(s.setup().engine(), x))),
        text);
  }

  private static <T> SheetProperty<T> setting(
      Function<Setting, T> get, BiFunction<Setting, T, Setting> with, Function<T, String> text) {
    return piece(
        s -> get.apply(s.setup().setting()),
        (s, x) -> {
          Setup setup = s.setup();
          return withSetup(s, setup.withSetting(with.apply(setup.setting(), x)));
        },
        text);
  }

  private static <T> SheetProperty<T> carburettor(
      Function<Carburettor, T> get,
      BiFunction<Carburettor, T, Carburettor> with,
      Function<T, String> text) {
    return setting(
        s -> get.apply(s.carburettor()),
        (s, x) -> s.toBuilder().carburettor(with.apply(s.carburettor(), x)).build(),
        text);
  }

  /** The same groove, or the lowest one where the needle has fewer. */
  private static ClipPosition clipOn(Needle needle, ClipPosition clip) {
    return needle.grooves() == clip.grooves()
        ? clip
        : ClipPosition.fromTop(Math.min(clip.grooveFromTop(), needle.grooves()), needle.grooves());
  }

  /** Of a sheet that is another, not of one that changed: its provenance stays. */
  private static SetupSheet withSetup(SetupSheet s, Setup other) {
    return s.toBuilder().setup(other).build();
  }

  private static String floats(Optional<Floats> floats) {
    return floats
        .map(
            f ->
                TradeStyle.floatLevel(f.set())
                    + " where "
                    + TradeStyle.floatLevel(f.nominal())
                    + " is meant")
        .orElse("unknown float level");
  }

  private static String needle(Needle n) {
    return "needle "
        + TradeStyle.diameter(n.cylinder())
        + n.tapers().stream()
            .map(t -> " tapering from " + t.start() + " by " + number(t.rate()) + " mm/mm")
            .collect(Collectors.joining(","))
        + " to "
        + n.tip()
        + ", "
        + n.grooves()
        + " grooves of "
        + n.groovePitch();
  }

  private static String need(MixtureNeed need) {
    return "mixture needed "
        + need.points().stream()
            .map(p -> TradeStyle.lambda(p.lambda()) + " at " + TradeStyle.throttle(p.throttle()))
            .collect(Collectors.joining(", "));
  }

  private static String weights(RidingProfile profile) {
    return "riding "
        + profile.points().stream()
            .map(p -> number(p.weight()) + " at " + TradeStyle.throttle(p.throttle()))
            .collect(Collectors.joining(", "));
  }

  static String curve(RpmCurve curve) {
    return curve.points().stream()
        .map(p -> number(p.value()) + " at " + p.speed())
        .collect(Collectors.joining(", "));
  }

  private static String typical(Set<MachineValue> typical) {
    return typical.isEmpty()
        ? "no typical values"
        : "typical values: "
            + typical.stream().map(MachineValue::toString).collect(Collectors.joining(", "));
  }

  private static String parts(PartsAtHand parts) {
    return parts.equals(PartsAtHand.unknown())
        ? "parts at hand unknown"
        : "parts at hand: "
            + parts.pilotJets().size()
            + " pilot jets, "
            + parts.cutaways().size()
            + " slides, "
            + parts.needleJets().size()
            + " needle jets, "
            + parts.needles().size()
            + " needles, "
            + parts.mainJets().size()
            + " main jets";
  }

  private static String number(double value) {
    return Numbers.shortest(value);
  }
}
