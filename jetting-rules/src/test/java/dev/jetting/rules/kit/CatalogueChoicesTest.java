package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.jetting.rules.search.Choice;
import dev.jetting.rules.search.PartKind;
import dev.jetting.rules.search.Pick;
import dev.jetting.units.JetBore;
import dev.jetting.units.ScrewTurns;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
  void pick_leadsBackToItsParts() {
    assertThat(of(Shop.CATALOGUE, Set.of()).parts(new Pick(1, 0, 1, 2, 1, 3, 5)))
        .extracting(Part::id)
        .containsExactly("pilot 55", "slide 40", "tube 268", "leaner needle", "main 126");
  }

  /** Of equal jets one stands for all: the owned one, else the cheapest. */
  @Test
  void equalJets_areOneChoice() {
    Catalogue more =
        Shop.CATALOGUE.withParts(List.of(main("cheap 126", "1"), main("dear 126", "9")));

    assertThat(of(more, Set.of()).part(PartKind.MAIN_JET, 5).map(Part::id)).contains("cheap 126");
    assertThat(of(more, Set.of("dear 126")).part(PartKind.MAIN_JET, 5).map(Part::id))
        .contains("dear 126");
    assertThat(of(more, Set.of()).choices().mainJets()).hasSize(11);
  }

  @Test
  void ownedPartThatTheCatalogueLacks_isRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(Shop.CATALOGUE, Set.of("nothing")))
        .withMessage("owned part nothing: allowed a part of the catalogue a small shop");
  }

  private static Part main(String id, String price) {
    return new Part(
        id,
        "",
        "mains",
        new PartShape.BoredJet(JetBore.ofHundredths(126)),
        Optional.of(new BigDecimal(price)));
  }

  private static CatalogueChoices of(Catalogue catalogue, Set<String> owned) {
    return CatalogueChoices.of(catalogue, Shop.FAMILY, owned, SCREWS);
  }
}
