package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.TwoHundred;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.ChoiceIndices;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.PartKind;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetCalibration;
import dev.jetting.units.JetFlow;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** From a catalogue to choices and back. */
class CatalogueChoicesTest {

  private static final List<ScrewTurns> SCREWS = List.of(ScrewTurns.of(1.5));

  @Test
  void choices_areThePartsThatFit() {
    CatalogueChoices all = of(Shop.CATALOGUE, Set.of("main 126"));

    assertThat(all.choices().pilotJets()).hasSize(3);
    assertThat(all.choices().mainJets()).hasSize(11); // one by flow, and none of another thread
    assertThat(all.choices().mainJets())
        .filteredOn(Choice::owned)
        .extracting(Choice::part)
        .containsExactly(JetBore.ofHundredths(126));
    assertThat(all.part(PartKind.MAIN_JET, 0).map(Part::id)).contains("main 96");
    assertThat(all.part(PartKind.SCREW, 0)).isEmpty();
  }

  @Test
  void settingThatWasFound_leadsBackToItsParts() {
    CatalogueChoices all = of(Shop.CATALOGUE, Set.of());

    FoundSetting found = best(all.choices());

    ChoiceIndices pick = found.pick();
    assertThat(all.parts(found.setting()))
        .extracting(Optional::of)
        .containsExactly(
            all.part(PartKind.PILOT_JET, pick.pilotJet()),
            all.part(PartKind.SLIDE, pick.cutaway()),
            all.part(PartKind.NEEDLE_JET, pick.needleJet()),
            all.part(PartKind.NEEDLE, pick.needle()),
            all.part(PartKind.MAIN_JET, pick.mainJet()));
    assertThat(all.part(PartKind.CLIP, found.setting())).isEmpty();
  }

  /** The index of a part is another one there: that of the leanest main jet. */
  @Test
  void settingThatWasFoundAmongNarrowedChoices_leadsBackToItsParts() {
    CatalogueChoices all = of(Shop.CATALOGUE, Set.of());
    Setting kept = TwoHundred.ALL_ROUND.withMainJet(JetBore.ofHundredths(132));
    Choices narrowed = all.choices().keeping(PartKind.MAIN_JET, kept);
    narrowed = narrowed.withPilotJets(narrowed.pilotJets().subList(2, 3));

    FoundSetting found = best(narrowed);

    assertThat(found.pick().mainJet()).isZero();
    assertThat(all.parts(found.setting())).extracting(Part::id).contains("pilot 60", "main 132");
    assertThat(all.part(narrowed, PartKind.MAIN_JET, 0).map(Part::id)).contains("main 132");
    assertThat(all.part(narrowed, PartKind.SCREW, 0)).isEmpty();
  }

  @Test
  void partThatTheCatalogueLacks_isNoneOfItsParts() {
    CatalogueChoices all = of(Shop.CATALOGUE, Set.of());
    Setting own = TwoHundred.ALL_ROUND.withMainJet(JetBore.ofHundredths(127));
    Choices kept = all.choices().keeping(PartKind.MAIN_JET, own);

    FoundSetting found = best(kept);

    assertThat(all.part(PartKind.MAIN_JET, found.setting())).isEmpty();
    assertThat(all.part(kept, PartKind.MAIN_JET, 0)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> all.parts(found.setting()))
        .withMessage(
            "main jet 1.27 mm of the setting: allowed a part of the catalogue a small shop that"
                + " fits");
  }

  private static FoundSetting best(Choices choices) {
    SetupSheet sheet = TwoHundred.sheet(TwoHundred.STANDARD, TwoHundred.ALL_ROUND);
    return SettingSearch.of(sheet, choices, RiskModel.assumed())
        .spending(1)
        .best(1, Run.alone())
        .settings()
        .get(0);
  }

  /** Equal jets are one choice: the owned one, else the cheapest. */
  @Test
  void equalJets_areOneChoice() {
    Catalogue more =
        Shop.CATALOGUE.withParts(List.of(main("cheap 126", "1"), main("dear 126", "9")));

    assertThat(of(more, Set.of()).part(PartKind.MAIN_JET, 5).map(Part::id)).contains("cheap 126");
    assertThat(of(more, Set.of("dear 126")).part(PartKind.MAIN_JET, 5).map(Part::id))
        .contains("dear 126");
    assertThat(of(more, Set.of()).choices().mainJets()).hasSize(11);
  }

  /** To buy, the better known jet stands, though it is dearer; of owned ones the worse known. */
  @Test
  void equalJetsByFlow_standByHowWellTheirBenchesAreKnown() {
    Catalogue shop = withMainsOnTwoBenches();

    assertThat(jet200(shop, Set.of())).isEqualTo("exact 200");
    assertThat(jet200(shop, Set.of("exact 200", "vague 200"))).isEqualTo("vague 200");
  }

  private static String jet200(Catalogue shop, Set<String> owned) {
    JetBore bore = shop.boreOf(shop.part("exact 200").orElseThrow());
    return CatalogueChoices.of(shop, shop.families().get(0), owned, SCREWS)
        .part(PartKind.MAIN_JET, TwoHundred.ALL_ROUND.withMainJet(bore))
        .orElseThrow()
        .id();
  }

  private static Catalogue withMainsOnTwoBenches() {
    JetCalibration b = Shop.BENCH;
    Family family = Shop.FAMILY;
    return Catalogue.of(
        "benches",
        List.of(
            Family.builder()
                .id(family.id())
                .description(family.description())
                .carburettor(family.carburettor())
                .takes(Stream.concat(family.takes().stream(), Stream.of("exact", "vague")).toList())
                .build()),
        Stream.concat(
                Shop.SERIES.stream(), Stream.of(series("exact", b, 0), series("vague", b, 0.3)))
            .toList(),
        Stream.concat(
                Shop.CATALOGUE.parts().stream().filter(part -> !part.id().equals("flow 200")),
                Stream.of(byFlow("exact 200", "exact", "9"), byFlow("vague 200", "vague", "1")))
            .toList(),
        List.of(),
        List.of());
  }

  private static PartSeries series(String id, JetCalibration bench, double uncertainty) {
    JetCalibration known =
        new JetCalibration(bench.head(), bench.liquid(), bench.law(), uncertainty);
    return PartSeries.builder()
        .id(id)
        .description("by flow")
        .kind(SeriesKind.MAIN_JET)
        .bench(Optional.of(known))
        .build();
  }

  private static Part byFlow(String id, String series, String price) {
    return Part.builder()
        .id(id)
        .description("main jet")
        .series(series)
        .shape(new PartShape.JetByFlow(JetFlow.ofCubicCentimetresPerMinute(200)))
        .price(Optional.of(new BigDecimal(price)))
        .build();
  }

  @Test
  void ownedPartThatTheCatalogueLacks_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(Shop.CATALOGUE, Set.of("nothing")))
        .withMessage("owned part nothing: allowed a part of the catalogue a small shop");
  }

  private static Part main(String id, String price) {
    return Part.builder()
        .id(id)
        .description("")
        .series("mains")
        .shape(new PartShape.JetByBore(JetBore.ofHundredths(126)))
        .price(Optional.of(new BigDecimal(price)))
        .build();
  }

  private static CatalogueChoices of(Catalogue catalogue, Set<String> owned) {
    return CatalogueChoices.of(catalogue, Shop.FAMILY, owned, SCREWS);
  }
}
