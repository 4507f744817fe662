package dev.jetting.rules.kit;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.Severity;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple.Tuple2;

/** What holds of every kit, however badly put together. */
class KitValidatorProperties {

  @Property(tries = 100)
  void anyKit_isJudgedAndNotThrownAt(@ForAll("shops") Tuple2<Catalogue, Kit> shop) {
    KitValidator validator = KitValidator.of(shop.get1());

    KitValidation fit = validator.validate(shop.get2(), KitDepth.FIT);

    assertThat(fit.passes()).isEqualTo(fit.count(Severity.DANGER) == 0);
    assertThat(validator.validate(shop.get2(), KitDepth.FIT)).isEqualTo(fit);
    assertThat(fit.findings()).isSorted();
  }

  @Property(tries = 100)
  void kitOfPartsOfOneSeriesTaken_hasNoPartThatDoesNotFit(
      @ForAll("catalogues") Catalogue catalogue) {
    for (Family family : catalogue.families()) {
      for (Part part : catalogue.parts()) {
        assertThat(catalogue.fits(part, family))
            .isEqualTo(catalogue.fitting(family, catalogue.kind(part)).contains(part));
      }
    }
  }

  @Provide
  Arbitrary<Catalogue> catalogues() {
    return KitArbitraries.catalogues();
  }

  @Provide
  Arbitrary<Tuple2<Catalogue, Kit>> shops() {
    return KitArbitraries.catalogues()
        .flatMap(
            catalogue ->
                KitArbitraries.kits(catalogue).map(kit -> net.jqwik.api.Tuple.of(catalogue, kit)));
  }
}
