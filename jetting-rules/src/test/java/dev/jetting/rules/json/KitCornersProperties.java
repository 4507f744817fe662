package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.KitWaiver;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a catalogue and a kit may say is what a validation can be computed from. */
class KitCornersProperties {

  @Property(tries = 6)
  void kitAndCatalogueAtTheCorners_areValidatedWithFiniteNumbers(@ForAll long seed) {
    CornerRuns.run(seed, KitCornersProperties::isAnswered);
  }

  private static boolean isAnswered(Random random) {
    KitCorners drawn = new KitCorners(random);
    Catalogue catalogue;
    Kit kit;
    try {
      catalogue = CatalogueJson.read(drawn.catalogue());
      kit = KitJson.read(drawn.kit());
    } catch (JsonInputException e) {
      CornerRuns.assertNamesAPlace(e);
      return false;
    }
    KitValidator validator = KitValidator.of(catalogue);
    validator.validate(kit, KitDepth.FIT);
    KitDepth depth = random.nextInt(10) == 0 ? KitDepth.COVERAGE : KitDepth.SETTING;
    KitValidation found = validator.validate(kit, depth);
    assertIsFinite(found);
    List<KitWaiver> waivers = waivers(found);
    assertThat(KitWaiversJson.read(KitWaiversJson.write(waivers))).isEqualTo(waivers);
    assertIsFinite(validator.waiving(waivers, LocalDate.EPOCH).validate(kit, KitDepth.SETTING));
    validator
        .sheets(kit)
        .forEach(sheet -> assertThat(SheetJson.read(SheetJson.write(sheet))).isEqualTo(sheet));
    return true;
  }

  private static void assertIsFinite(KitValidation found) {
    String json = KitValidationJson.write(found);
    CornerRuns.assertFinite(json);
    assertThat(KitValidationJson.read(json)).isEqualTo(found);
    assertThat(found.machines()).allSatisfy(each -> assertThat(each.unanswered()).isEmpty());
  }

  /** Of everything that was found on a machine. */
  private static List<KitWaiver> waivers(KitValidation found) {
    List<KitWaiver> waivers = new ArrayList<>();
    found
        .machines()
        .forEach(
            machine ->
                machine
                    .findings()
                    .forEach(
                        finding ->
                            waivers.add(
                                KitWaiver.of(found, machine, finding)
                                    .by("A. Weaver")
                                    .because("why"))));
    return waivers;
  }
}
