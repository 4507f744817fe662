package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitArbitraries;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every catalogue, every kit, and every document that is nearly one. */
class CatalogueJsonProperties {

  /** A scalar or an empty array or object, after the name of its field. */
  private static final Pattern SCALAR =
      Pattern.compile("(?<=\": )(\"([^\"\\\\]|\\\\.)*\"|[-0-9][^,\\s}\\]]*|\\[]|\\{})");

  @Property(tries = 60)
  void read_ofAWrittenCatalogue_isEqualAndValid(@ForAll("catalogues") Catalogue catalogue) {
    String json = CatalogueJson.write(catalogue);

    assertThat(CatalogueJson.read(json)).isEqualTo(catalogue);
    assertThat(Validators.CATALOGUE.complaints(json)).isEmpty();
  }

  @Property(tries = 100)
  void read_ofAWrittenKit_isEqualAndValid(@ForAll("kits") Kit kit) {
    String json = KitJson.write(kit);
    String line = KitJson.writeLine(kit);

    assertThat(KitJson.read(json)).isEqualTo(kit);
    assertThat(KitJson.read(line)).isEqualTo(kit);
    assertThat(line).doesNotContain("\n").doesNotContain("\r");
    assertThat(Validators.KIT.complaints(json)).isEmpty();
  }

  @Property(tries = 200)
  void catalogueWithAnotherScalar_isRefusedOrValid(
      @ForAll("catalogues") Catalogue catalogue,
      @ForAll("shares") double where,
      @ForAll("values") String value) {
    assertRefusedOrValid(
        replaced(CatalogueJson.write(catalogue), where, value),
        CatalogueJson::read,
        Validators.CATALOGUE);
  }

  @Property(tries = 200)
  void kitWithAnotherScalar_isRefusedOrValid(
      @ForAll("kits") Kit kit, @ForAll("shares") double where, @ForAll("values") String value) {
    assertRefusedOrValid(replaced(KitJson.write(kit), where, value), KitJson::read, Validators.KIT);
  }

  private static String replaced(String json, double where, String value) {
    List<MatchResult> scalars = SCALAR.matcher(json).results().toList();
    MatchResult scalar = scalars.get((int) (where * scalars.size()));
    return json.substring(0, scalar.start()) + value + json.substring(scalar.end());
  }

  private static void assertRefusedOrValid(
      String json, Consumer<String> reader, Validators validator) {
    try {
      reader.accept(json);
    } catch (JsonInputException e) {
      assertThat(e.getMessage()).startsWith("$").doesNotContainPattern("\\R").hasSizeLessThan(1000);
      return;
    }
    assertThat(validator.complaints(json)).as(json).isEmpty();
  }

  @Provide
  Arbitrary<Catalogue> catalogues() {
    return KitArbitraries.catalogues();
  }

  @Provide
  Arbitrary<Kit> kits() {
    return KitArbitraries.kits();
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.doubles().between(0, true, 1, false);
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "null",
        "true",
        "5",
        "-1",
        "2.50",
        "1e999",
        "1e-999",
        "\"2.50\"",
        "\"1.3 mm\"",
        "\"200 cm³/min\"",
        "\"\"",
        "\"main-jet\"",
        "\"air\"",
        "[]",
        "{}",
        "\"assumed\"");
  }
}
