package dev.jetting.rules.laws;

import dev.jetting.rules.Provenance;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.TradeStyle;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** The pieces of what is known of where a setting comes from. */
final class ProvenancePropertyTable {

  private ProvenancePropertyTable() {}

  /** Something that a provenance may have, or not. */
  private record Stated<T>(
      String name,
      Function<Provenance, Optional<T>> get,
      BiConsumer<Provenance.Builder, T> set,
      Function<T, String> text) {

    void copy(Provenance from, Provenance.Builder to) {
      get.apply(from).ifPresent(value -> set.accept(to, value));
    }

    SheetProperty<Optional<T>> piece() {
      return new SheetProperty<>(
          sheet -> get.apply(sheet.provenance()),
          this::with,
          value -> "proven " + name + value.map(it -> " " + text.apply(it)).orElse(" unset"));
    }

    private SetupSheet with(SetupSheet sheet, Optional<T> value) {
      Provenance.Builder builder = Provenance.builder();
      for (Stated<?> each : ALL) {
        if (!each.name.equals(name)) {
          each.copy(sheet.provenance(), builder);
        }
      }
      value.ifPresent(it -> set.accept(builder, it));
      return sheet.withProvenance(builder.build());
    }
  }

  private static final List<Stated<?>> ALL =
      List.of(
          new Stated<>(
              "engine", Provenance::engine, Provenance.Builder::engine, x -> quoted(x.id())),
          new Stated<>(
              "exhaust", Provenance::exhaust, Provenance.Builder::exhaust, x -> quoted(x.id())),
          new Stated<>(
              "cylinder",
              Provenance::cylinder,
              Provenance.Builder::cylinder,
              x -> "of " + x.displacement() + ", " + SheetPropertyTable.curve(x.deliveryRatio())),
          new Stated<>(
              "induction",
              Provenance::induction,
              Provenance.Builder::induction,
              x -> quoted(x.id())),
          new Stated<>(
              "setting",
              Provenance::setting,
              Provenance.Builder::setting,
              x -> "with " + TradeStyle.main(x.mainJet())),
          new Stated<>(
              "carburettor",
              Provenance::carburettor,
              Provenance.Builder::carburettor,
              x -> quoted(x.id())),
          new Stated<>(
              "intake", Provenance::intake, Provenance.Builder::intake, x -> quoted(x.id())),
          new Stated<>(
              "main jet", Provenance::mainJet, Provenance.Builder::mainJet, TradeStyle::main),
          new Stated<>("fuel", Provenance::fuel, Provenance.Builder::fuel, Object::toString),
          new Stated<>("air", Provenance::air, Provenance.Builder::air, Object::toString),
          new Stated<>(
              "needle wear",
              Provenance::needleWear,
              Provenance.Builder::needleWear,
              x -> "of " + x.needleJet() + " and " + x.needle()),
          new Stated<>(
              "observations",
              p -> Optional.of(p.observed()).filter(seen -> !seen.isEmpty()),
              Provenance.Builder::observed,
              Object::toString),
          new Stated<>(
              "pilot jet flow",
              Provenance::pilotJetFlow,
              Provenance.Builder::pilotJetFlow,
              Object::toString),
          new Stated<>(
              "main jet flow",
              Provenance::mainJetFlow,
              Provenance.Builder::mainJetFlow,
              Object::toString));

  static List<SheetProperty<?>> all() {
    return ALL.stream().<SheetProperty<?>>map(Stated::piece).toList();
  }

  private static String quoted(String id) {
    return "\"" + id + "\"";
  }
}
