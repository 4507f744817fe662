package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.Kit;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.kit.Shop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The documents of a small shop: its catalogue, its kit, and what is said of the kit. */
class CatalogueJsonTest {

  @Test
  void catalogue_isTheDocumentBeside() {
    Documents.assertIsGolden("example-catalogue.json", CatalogueJson.write(Shop.CATALOGUE));
    assertThat(CatalogueJson.read(CatalogueJson.write(Shop.CATALOGUE))).isEqualTo(Shop.CATALOGUE);
  }

  @Test
  void kit_isTheDocumentBeside() {
    Documents.assertIsGolden("example-kit.json", KitJson.write(Shop.kit()));
    assertThat(KitJson.read(KitJson.write(Shop.kit()))).isEqualTo(Shop.kit());
  }

  @Test
  void streams_areReadAsTexts() throws IOException {
    assertThat(
            CatalogueJson.read(
                new ByteArrayInputStream(
                    CatalogueJson.write(Shop.CATALOGUE).getBytes(StandardCharsets.UTF_8))))
        .isEqualTo(Shop.CATALOGUE);
    assertThat(
            KitJson.read(
                new ByteArrayInputStream(
                    KitJson.writeLine(Shop.kit()).getBytes(StandardCharsets.UTF_8))))
        .isEqualTo(Shop.kit());
  }

  @Test
  void catalogueWithoutMachinesAndMarkets_needNotSaySo() {
    Catalogue bare =
        Catalogue.of(
            "parts",
            Shop.CATALOGUE.families(),
            Shop.CATALOGUE.series(),
            Shop.CATALOGUE.parts(),
            java.util.List.of(),
            java.util.List.of());

    assertThat(CatalogueJson.write(bare)).doesNotContain("machines", "markets");
    assertThat(CatalogueJson.read(CatalogueJson.write(bare))).isEqualTo(bare);
  }

  @ParameterizedTest
  @EnumSource(KitDepth.class)
  void validation_readsBackEqualAndIsValid(KitDepth depth) {
    KitValidation validation = KitValidator.of(Shop.CATALOGUE).validate(Shop.kit(), depth);
    String json = KitValidationJson.write(validation);
    String line = KitValidationJson.writeLine(validation);

    assertThat(KitValidationJson.read(json)).isEqualTo(validation);
    assertThat(KitValidationJson.read(line)).isEqualTo(validation);
    assertThat(line).doesNotContain("\n");
    assertThat(Validators.KIT_VALIDATION.complaints(json)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "format": "jetting catalogue" => "format": "jetting kit" => $.format: "jetting kit": allowed "jetting catalogue"
          "series": "mains of others" => "series": "mains of none" => $: series mains of none of part other 126 is not in the catalogue: allowed a series that is
          "id": "pilot 55" => "id": "pilot 50" => $: part pilot 50 twice in the catalogue: allowed once
          "bore": "0.55 mm" => "flow": "55 cm³/min" => $: part pilot 55 of series pilots: allowed a pilot jet not numbered by flow
          "bore": "0.55 mm" => "cutaway": "5 mm" => $: part pilot 55 of series pilots: allowed a pilot jet not numbered by flow
          "bore": "0.55 mm" => "bore": "0.55 mm", "flow": "55 cm³/min" => $.parts[1]: part of 2 shapes: allowed one of bore, flow, needleJet, needle, cutaway, screw, floatValve
          "bore": "0.55 mm" => "bores": "0.55 mm" => $.parts[1].bores: unknown field "bores", perhaps "bore": allowed id, description, series, bore, flow, needleJet, needle, cutaway, screw, floatValve, price
          "price": 3 => "price": "3" => $.parts[0].price: "3": allowed a finite number
          "price": 3 => "price": -3 => $.parts[0]: price of part pilot 50 -3: allowed 0 to 1000000, at most 4 decimals
          "price": 3 => "price": 1e99 => $.parts[0]: price of part pilot 50 1E+99: allowed 0 to 1000000, at most 4 decimals
          "dischargeCoefficient": 0.8 => "dischargeCoefficient": 0.8, "lengthToDiameter": 2 => $.series[5].bench: law of discharge stated twice or not at all: allowed dischargeCoefficient or lengthToDiameter
          "kind": "screw" => "kind": "screws" => $.series[6].kind: "screws": allowed "pilot-jet", "slide", "needle-jet", "needle", "main-jet", "screw", "float-valve"
          """)
  void spoiltCatalogue_isRefusedWithThePlace(String piece, String spoilt, String message) {
    String json = Documents.edited("example-catalogue.json", piece, spoilt);

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> CatalogueJson.read(json))
        .withMessage(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "schemaVersion": 1 => "schemaVersion": 2 => $.schemaVersion: 2: allowed 1
          "mainJet": "main 126" => "mainJet": 126 => $.recommendations[0].mainJet: 126: allowed a text
          "mainJet": "main 126" => "mainJet": "main 126", "fittedScrew": 5 => $.recommendations[0].fittedScrew: 5: allowed a text
          "market": "seaside" => "market": " " => $.market: id of the market of kit all-round is blank: allowed any text with a visible character
          "clip": "2 of 5 from top" => "clip": "2" => $.recommendations[0].clip: clip position "2" cannot be read: allowed "2 of 5 from top" or "4 of 5 from bottom", grooves counted from 1, at most 50
          """)
  void spoiltKit_isRefusedWithThePlace(String piece, String spoilt, String message) {
    String json = Documents.edited("example-kit.json", piece, spoilt);

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> KitJson.read(json))
        .withMessage(message);
  }

  @Test
  void kitWithoutRecommendation_isRefused() {
    Kit kit = Shop.kit();
    String json =
        KitJson.writeLine(kit).replaceFirst("\"recommendations\":\\[.*]", "\"recommendations\":[]");

    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> KitJson.read(json))
        .withMessage("$: recommendations of kit all-round: allowed at least one machine");
  }
}
