package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.jetting.rules.text.EachLanguage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The errors of documents that are no sheets. The example sheet is spoilt in one place each. */
class BadSheetTest {

  /** The proven cylinder is part of an engine as soon as a setting is changed. */
  @Test
  void provenCylinderThatNoSheetMayHave_isRefusedWithItsField() {
    String sheet = Documents.edited("example-sheet.golden.json", "\"150 cm³\"", "\"2600 cm³\"");
    assertThat(catchThrowableOfType(JsonInputException.class, () -> SheetJson.read(sheet)))
        .hasMessage("$.provenance.cylinder.displacement: 2600 cm³: allowed 5 cm³ to 2500 cm³");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "lambda": 0.82 => "lambda": 1.6 => $.engine.need: λ wanted at 0 1.6: allowed 0.6 to 1.2
          "mainJet": "1.28 mm" => "mainJet": "9.9 mm" => $.setting.mainJet: 9.9 mm: allowed 0.3 mm to 5 mm
          "turns": "1 1/2 turns" => "turns": "50 turns" => $.setting.screw.turns: 50 turns: allowed 0 turns to 20 turns
          "displacement": "198 cm³" => "displacement": "90000 cm³" => $.engine.displacement: 90000 cm³: allowed 5 cm³ to 2500 cm³
          "title": "An invented 200 with a 30 mm slide carburettor, behind a filter" => "title": " " => $.title: title of a setup sheet is blank: allowed any text with a visible character
          """)
  void valueThatNoSheetMayHave_isRefusedWithItsField(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "format": "jetting setup sheet" => "format": "sheet" => $.format: "sheet": allowed "jetting setup sheet"
          "format": "jetting setup sheet", => '' => $.format: missing: allowed "jetting setup sheet"
          "schemaVersion": 1 => "schemaVersion": 2 => $.schemaVersion: 2: allowed 1
          "schemaVersion": 1 => "schemaVersion": "1" => $.schemaVersion: "1": allowed 1
          "schemaVersion": 1, => '' => $.schemaVersion: missing: allowed 1
          """)
  void header_ofAnotherDocument_isTheFirstThingTold(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "title": => "titel": => $.titel: unknown field "titel", perhaps "title": allowed format, schemaVersion, title, engine, setting, air, fuel, fuelWarmerBy, riding, parts, provenance, typical
          "mainJet": "1.28 mm" => "mainJet": "1.28 mm", "main": 5 => $.setting.main: unknown field "main": allowed carburettor, intake, pilotJet, screw, cutaway, idleLift, needleJet, needle, clip, mainJet, floats
          "cutaway": => "cutAway": => $.setting.cutAway: unknown field "cutAway", perhaps "cutaway": allowed carburettor, intake, pilotJet, screw, cutaway, idleLift, needleJet, needle, clip, mainJet, floats
          "rate": 0.04 => "rat": 0.04 => $.setting.needle.tapers[1].rat: unknown field "rat", perhaps "rate": allowed start, rate
          "altitude": "350 m" => "hieght": "350 m" => $.air.hieght: unknown field "hieght": allowed pressure, altitude, temperature, humidity, formula
          "premix": "50:1" => "premi x": "50:1" => $.fuel["premi x"]: unknown field "premi x", perhaps "premix": allowed blend, premix, oil, density, dynamicViscosity, stoichiometricRatio
          "mainJet": "1.28 mm" => "mainJet": {"value": 1.28, "units": "mm"} => $.setting.mainJet.units: unknown field "units", perhaps "unit": allowed value, unit
          """)
  void unknownField_isNamedWithTheKnownOnes(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "title": "An invented 200 with a 30 mm slide carburettor, behind a filter", => '' => $.title: missing: allowed a text
          "clip": "2 of 5 from top", => '' => $.setting.clip: missing: allowed clip position, "2 of 5 from top" or "4 of 5 from bottom", grooves counted from 1, at most 50
          "mainJet": "1.28 mm" => "mainJet": null => $.setting.mainJet: null: allowed jet bore, a decimal number with mm, hundredths, 1/100 mm
          "grooves": 5, => '' => $.setting.needle.grooves: missing: allowed a whole number
          "grooves": 5 => "grooves": null => $.setting.needle.grooves: null: allowed a whole number
          "start": "27 mm", => '' => $.setting.needle.tapers[1].start: missing: allowed length, a decimal number with mm
          {"start": "27 mm", "rate": 0.04} => null => $.setting.needle.tapers[1]: null: allowed an object with start, rate
          "kind": "mixture", => '' => $.setting.screw.kind: missing: allowed "mixture", "air"
          "effectiveArea": "900 mm²" => "effectiveArea": null => $.setting.intake.effectiveArea: null: allowed area, a decimal number with mm², mm2
          "induction": "mild", => '' => $.engine.induction: missing: allowed "mild", "tuned" or an object with id, kind, opens, closes, openShare, blowback
          "pilotJets": ["0.5 mm" => "pilotJets": [null => $.parts.pilotJets[0]: null: allowed jet bore, a decimal number with mm, hundredths, 1/100 mm
          "mainJet": "1.28 mm" => "mainJet": {"value": 1.28} => $.setting.mainJet.unit: missing: allowed a text
          "flow": "assumed" => "flow": null => $.setting.carburettor.flow: null: allowed "assumed" or an object with upstreamGap, downstreamGap, nozzleClosed, nozzleOpen, nozzleExponent, neckEffect, needleEntryLoss, needleEccentricity, pilotOutlet, pilotBleed, mainJetLength, pilotJetLength
          """)
  void missingFieldOrNull_isToldWithWhatShouldStandThere(
      String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "title": "An => "title": 5, "x": "An => $.title: 5: allowed a text
          "id": "bench-200" => "id": 200 => $.engine.id: 200: allowed a text of at most 60 characters
          "mainJet": "1.28 mm" => "mainJet": true => $.setting.mainJet: true: allowed jet bore, a decimal number with mm, hundredths, 1/100 mm
          "mainJet": "1.28 mm" => "mainJet": ["1.28 mm"] => $.setting.mainJet: an array: allowed jet bore, a decimal number with mm, hundredths, 1/100 mm
          "mainJet": "1.28 mm" => "mainJet": {"value": "1.28", "unit": "mm"} => $.setting.mainJet.value: "1.28": allowed a finite number
          "grooves": 5 => "grooves": 5.0 => $.setting.needle.grooves: 5.0: allowed a whole number
          "grooves": 5 => "grooves": 5000000000 => $.setting.needle.grooves: 5000000000: allowed a whole number
          "grooves": 5 => "grooves": "5" => $.setting.needle.grooves: "5": allowed a whole number
          "rate": 0.02 => "rate": "0.02" => $.setting.needle.tapers[0].rate: "0.02": allowed a finite number
          "rate": 0.02 => "rate": false => $.setting.needle.tapers[0].rate: false: allowed a finite number
          "rate": 0.02 => "rate": 1e999 => $.setting.needle.tapers[0].rate: 1e999: allowed a finite number
          "screwKind": "mixture" => "screwKind": "fuel" => $.setting.carburettor.pilot.screwKind: "fuel": allowed "mixture", "air"
          "screwKind": "mixture" => "screwKind": "MIXTURE" => $.setting.carburettor.pilot.screwKind: "MIXTURE": allowed "mixture", "air"
          "screwKind": "mixture" => "screwKind": 0 => $.setting.carburettor.pilot.screwKind: 0: allowed "mixture", "air"
          "formula": "cipm-2007" => "formula": "cipm" => $.riding.hottest.formula: "cipm": allowed "cipm-2007", "ideal-gas"
          "induction": "mild" => "induction": "wild" => $.engine.induction: "wild": allowed "mild", "tuned" or an object with id, kind, opens, closes, openShare, blowback
          "blend": "E5" => "blend": "E7" => $.fuel.blend: "E7": allowed "petrol", "E5", "E10", "E85" or an object with basis, shares
          "profile": "assumed road" => "profile": 7 => $.riding.profile: 7: allowed an array of points, "assumed road" or an object with points
          "loadLine": {"idle": "1500 rpm", "peak": "7000 rpm"} => "loadLine": "usual" => $.engine.loadLine: "usual": allowed an object with idle, peak
          {"points": [{"speed": "0 rpm", "value": 1}]} => {"points": {"speed": "0 rpm", "value": 1}} => $.engine.exhaust.deliveryFactor.points: an object: allowed an array
          {"points": [{"speed": "0 rpm", "value": 1}]} => [{"speed": "0 rpm", "value": "1"}] => $.engine.exhaust.deliveryFactor[0].value: "1": allowed a finite number
          {"points": [{"speed": "0 rpm", "value": 1}]} => [{"speed": "0 rpm", "value": 1}, null] => $.engine.exhaust.deliveryFactor[1]: null: allowed an object with speed, value
          {"points": [{"speed": "0 rpm", "value": 1}]} => [{"speed": "0 mm", "value": 1}] => $.engine.exhaust.deliveryFactor[0].speed: engine speed "0 mm" cannot be read: allowed a decimal number with rpm, 1/min
          {"points": [{"speed": "0 rpm", "value": 1}]} => [{"speed": "0 rpm", "vaule": 1}] => $.engine.exhaust.deliveryFactor[0].vaule: unknown field "vaule", perhaps "value": allowed speed, value
          {"points": [{"speed": "0 rpm", "value": 1}]} => [{"speed": "0 rpm", "value": 11}] => $.engine.exhaust.deliveryFactor[0]: curve over engine speed at 0 rpm 11: allowed 0 to 10
          {"points": [{"speed": "0 rpm", "value": 1}]} => [] => $.engine.exhaust.deliveryFactor: curve over engine speed []: allowed at least one point, each at a higher speed than the one before
          {"points": [{"speed": "0 rpm", "value": 1}]} => {"points": ""} => $.engine.exhaust.deliveryFactor.points: "": allowed an array
          """)
  void wrongType_isToldWithWhatIsAllowed(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "foam-filter", "effectiveArea": "900 mm²" => "foam-filter" => $.setting.intake: intake without an effective area: allowed effectiveArea, or openMouth true
          "effectiveArea": "900 mm²" => "effectiveArea": "900 mm²", "openMouth": true => $.setting.intake: intake with an effective area and an open mouth: allowed effectiveArea, or openMouth true
          "mainJet": "1.28 mm" => "mainJet": 1.28 => $.setting.mainJet: jet bore "1.28" cannot be read: allowed a decimal number with mm, hundredths, 1/100 mm
          "mainJet": "1.28 mm" => "mainJet": "1,28 mm" => $.setting.mainJet: jet bore "1,28 mm" cannot be read (write a decimal point, not a comma): allowed a decimal number with mm, hundredths, 1/100 mm
          "mainJet": "1.28 mm" => "mainJet": "128 mm" => $.setting.mainJet: jet bore 128 mm: allowed above 0 up to 10 mm
          "mainJet": "1.28 mm" => "mainJet": {"value": 0.00128, "unit": "m"} => $.setting.mainJet: jet bore "0.00128 m" cannot be read: allowed a decimal number with mm, hundredths, 1/100 mm
          "turns": "1 1/2 turns" => "turns": {"value": 1, "unit": "3/4 turns"} => $.setting.screw.turns: screw turns "1.0 3/4 turns" cannot be read: allowed a decimal or a fraction (1.75, 3/4, 1 3/4, 1¾), alone or with turns, turn
          "temperature": "33 °C" => "temperature": "33" => $.riding.hottest.temperature: temperature "33" cannot be read: allowed a decimal number with K, °C, °F
          "humidity": 0.3 => "humidity": 30 => $.riding.hottest.humidity: relative humidity 30: allowed from 0 to 1
          "pilotJets": ["0.5 mm" => "pilotJets": ["50" => $.parts.pilotJets[0]: jet bore "50" cannot be read: allowed a decimal number with mm, hundredths, 1/100 mm
          "premix": "50:1" => "premix": "50" => $.fuel.premix: premix ratio "50" cannot be read: allowed a decimal number with :1, %, % oil
          """)
  void quantityThatIsNone_isToldInItsOwnWords(String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "bore": "30 mm" => "bore": "300 mm" => $.setting.carburettor: bore of carburettor slide-30 300 mm: allowed 5 mm to 80 mm
          "rate": 0.02 => "rate": 0.6 => $.setting.needle.tapers[0]: rate of a needle's taper in mm/mm 0.6: allowed 0 to 0.5
          "clip": "2 of 5 => "clip": "2 of 6 => $.setting: clip position 2 of 6 from top: allowed a count on the 5 grooves of needle two-taper
          "altitude": "350 m" => "altitude": "350 m", "pressure": "1000 hPa" => $.air: air with both pressure and altitude: allowed one of pressure and altitude
          "altitude": "350 m", => '' => $.air: air with no pressure: allowed one of pressure and altitude
          , "premix": "50:1" => '' => $.fuel: incomplete fuel: allowed premix (such as "50:1", or "no oil") with either blend or all of density, dynamicViscosity and stoichiometricRatio; oil is optional
          {"blend": "E5", "premix": "50:1"} => {"density": "750 kg/m³", "dynamicViscosity": "0.5 mPa·s", "stoichiometricRatio": 14.5} => $.fuel: incomplete fuel: allowed premix (such as "50:1", or "no oil") with either blend or all of density, dynamicViscosity and stoichiometricRatio; oil is optional
          {"blend": "E5", "premix": "50:1"} => "E5", "fuelWarmerBy": "90 K" => $: fuel warmer than the air by 90 K: allowed -20 K to 80 K
          {"blend": "E5", "premix": "50:1"} => "E5", "typical": ["peak-speed", "peak-speed"] => $: typical value peak-speed twice: allowed each once
          "premix": "50:1" => "premix": "no oil", "oil": "two-stroke-oil" => $.fuel: oil in a fuel without premix: allowed none
          "acceptedRisk": "5 %" => "acceptedRisk": 0 => $.riding: accepted risk 0: allowed more than 0 and at most 0.5
          "note": "valve, tap and hose together; invented" => "note": "" => $.setting.carburettor.floatValve.discharge.note: note of a coefficient is blank: allowed any text with a visible character
          "fuel": {"blend": "E5", => "fuel": {"blend": {"basis": "mass", "shares": [{"component": "petrol", "share": 0.5}]}, => $.fuel.blend: sum of the shares of a fuel 0.5: allowed 1
          "fuel": {"blend": "E5", => "fuel": {"blend": {"basis": "mass", "shares": [{"component": "petrol", "share": 2}]}, => $.fuel.blend.shares[0]: share of petrol 2: allowed above 0 up to 1
          """)
  void impossibleValue_isToldInTheWordsOfWhatRefusesIt(
      String piece, String spoilt, String message) {
    assertRefused(piece, spoilt, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          "turns": "1 1/2 turns" => "kind": "air" => $.setting.screw.kind: duplicate field: allowed each field once
          "schemaVersion": 1 => "schemaVersion": 1, "format": 2 => $.format: duplicate field: allowed each field once
          "air": { => "air": [ => $.air[1]: syntax error at line 80, column 21: Unexpected character
          "rate": 0.02 => "rate": NaN => $.setting.needle.tapers[0].rate: syntax error at line 69, column 39: Non-standard token 'NaN'
          "rate": 0.02 => "rate": 0.02, => $.setting.needle.tapers[0].rate: syntax error at line 69, column 41: Unexpected character
          "bench-200" => bench => $.engine.id: syntax error at line 6, column 11: Unrecognized token 'bench'
          """)
  void brokenDocument_isToldWithLineAndColumn(String piece, String spoilt, String message) {
    assertThat(refusal(Documents.edited("example-sheet.json", piece, spoilt)).getMessage())
        .startsWith(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "=>",
      textBlock =
          """
          '' => $: the document is empty: allowed one JSON object
          ' ' => $: the document is empty: allowed one JSON object
          {} => $.format: missing: allowed "jetting setup sheet"
          {} {} => $: more after the end of the document: allowed one JSON object
          {}} => $: syntax error at line 1, column 3: Unexpected close marker '}': no open Object to close
          { => $: syntax error at line 1, column 2: the document ends too early
          {"format" => $.format: syntax error at line 1, column 10: the document ends too early
          null => $: null: allowed an object with format, schemaVersion, title, engine, setting, air, fuel, fuelWarmerBy, riding, parts, provenance, typical
          [] => $: an array: allowed an object with format, schemaVersion, title, engine, setting, air, fuel, fuelWarmerBy, riding, parts, provenance, typical
          "E5" => $: "E5": allowed an object with format, schemaVersion, title, engine, setting, air, fuel, fuelWarmerBy, riding, parts, provenance, typical
          """)
  void documentThatIsNoSheetAtAll_isRefused(String document, String message) {
    assertThat(refusal(document)).hasMessage(message);
  }

  @Test
  void refusal_toldInPieces_forPrograms() {
    JsonInputException refusal =
        refusal(Documents.edited("example-sheet.json", "\"2.66 mm\"", "\"2660 mm\""));

    assertThat(refusal)
        .hasMessage("$.setting.needleJet.bore: diameter 2660 mm: allowed above 0 up to 1000 mm");
    assertThat(refusal.path()).isEqualTo("$.setting.needleJet.bore");
    assertThat(refusal.value()).isEqualTo("\"2660 mm\"");
    assertThat(refusal.allowed()).isEqualTo("above 0 up to 1000 mm");
    assertThat(refusal.line()).isEqualTo(64);
    assertThat(refusal.column()).isEqualTo(27);
  }

  @Test
  void refusal_ofAMissingFormat_saysSoInData() {
    JsonInputException refusal = refusal("{\"title\": \"no sheet\"}");

    assertThat(refusal.path()).isEqualTo("$.format");
    assertThat(refusal.problem()).isEqualTo("missing");
    assertThat(refusal.value()).isEmpty();
    assertThat(refusal.allowed()).isEqualTo("\"jetting setup sheet\"");
  }

  @Test
  void refusal_ofWhatIsMissing_isPlacedAtTheObjectThatLacksIt() {
    JsonInputException refusal =
        refusal(Documents.edited("example-sheet.json", "\"start\": \"27 mm\", ", ""));

    assertThat(refusal.value()).isEmpty();
    assertThat(refusal.problem()).isEqualTo("missing");
    assertThat(refusal.line()).isEqualTo(70);
    assertThat(refusal.column()).isEqualTo(9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"title\": ",
        "\"mainJet\": ",
        "\"kind\": ",
        "\"rate\": ",
        "\"flow\": ",
        "\"id\": ",
        "\"induction\": ",
        "\"schemaVersion\": ",
        "\"note\": "
      })
  void longTextInAWrongPlace_isNeverQuotedInFull(String field) {
    String secret = "x\\n".repeat(400);
    String document =
        Documents.edited("example-sheet.json", field, "\"" + secret + "\": 1, " + field)
            .replace(secret, "y".repeat(150));

    assertThat(refusal(document).getMessage()).doesNotContain("y".repeat(81));
    assertThat(
            refusal(
                    Documents.edited(
                        "example-sheet.json", field, field + "\"" + secret + "\", \"a\": "))
                .getMessage())
        .doesNotContain("x\\u000a".repeat(81))
        .doesNotContain("\n");
  }

  @Test
  void longIdInAMessageOfItsPart_cannotComeUp() {
    String document =
        Documents.edited("example-sheet.json", "\"slide-30\"", "\"" + "y".repeat(61) + "\"");

    assertThat(refusal(document))
        .hasMessage(
            "$.setting.carburettor.id: \""
                + "y".repeat(60)
                + "…\": allowed a text of at most 60 characters");
  }

  @Test
  void longNoteInAMessageOfItsCoefficient_isCut() {
    String document =
        Documents.edited("example-sheet.json", "\"value\": 0.5,\n", "\"value\": 5,\n")
            .replace("valve, tap and hose together", "y".repeat(450));

    assertThat(refusal(document).getMessage())
        .startsWith("$.setting.carburettor.floatValve: discharge coefficient of the float valve 5")
        .endsWith("…: allowed more than 0 and at most 1")
        .doesNotContain("y".repeat(81));
  }

  private static void assertRefused(String piece, String spoilt, String message) {
    JsonInputException refusal = refused(piece, spoilt);
    assertThat(refusal).hasMessage(message);
    EachLanguage.of(refusal);
  }

  static JsonInputException refused(String piece, String spoilt) {
    return refusal(Documents.edited("example-sheet.json", piece, spoilt));
  }

  static JsonInputException refusal(String document) {
    return catchThrowableOfType(JsonInputException.class, () -> SheetJson.read(document));
  }
}
