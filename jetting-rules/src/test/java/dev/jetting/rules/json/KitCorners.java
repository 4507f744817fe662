package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableSortedMap;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Draws catalogues, kits and waivers of kits: numbers at the corners of their ranges, further fuels
 * in a market, and settings of any parts.
 */
final class KitCorners {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** The parts that the catalogue is thinned to, because each number of it is tried. */
  private static final Set<String> KEPT =
      Set.of(
          "pilot 50",
          "pilot 55",
          "slide 40",
          "slide 45",
          "tube 266",
          "tube narrow",
          "needle",
          "thick needle",
          "main 120",
          "main 126",
          "other 126",
          "flow 200",
          "air screw",
          "fine screw",
          "small valve");

  /** The series that the parts of a recommendation are of. */
  private static final Map<String, List<String>> SERIES =
      ImmutableSortedMap.of(
          "mainJet", List.of("mains", "flow mains", "mains of others"),
          "needle", List.of("needles"),
          "needleJet", List.of("tubes"),
          "pilotJet", List.of("pilots"),
          "slide", List.of("slides"));

  private static final String USUAL = "{\"blend\": \"E5\", \"premix\": \"50:1\"}";
  private static final String CATALOGUE = thinned();
  private static final Corners CATALOGUES =
      new Corners(CATALOGUE, CornerRuns.takes(CatalogueJson::read));
  private static final Corners KITS =
      new Corners(Documents.read("example-kit.json"), CornerRuns.takes(KitJson::read));

  private final Random random;
  private final ObjectNode catalogue;

  KitCorners(Random random) {
    this.random = random;
    catalogue = tree(random.nextInt(5) == 0 ? CATALOGUE : CATALOGUES.of(random));
    moreFuels();
  }

  private static String thinned() {
    ObjectNode catalogue = tree(Documents.read("example-catalogue.json"));
    ArrayNode parts = (ArrayNode) catalogue.get("parts");
    for (int i = parts.size() - 1; i >= 0; i--) {
      if (!KEPT.contains(parts.get(i).get("id").asText())) {
        parts.remove(i);
      }
    }
    ((ArrayNode) catalogue.get("machines")).remove(0);
    ((ArrayNode) catalogue.at("/markets/0/fuels")).set(0, tree(USUAL));
    return catalogue.toString();
  }

  private static ObjectNode tree(String json) {
    try {
      return (ObjectNode) MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e); // what was written here is JSON
    }
  }

  private void moreFuels() {
    ArrayNode fuels = (ArrayNode) catalogue.at("/markets/0/fuels");
    for (int i = random.nextInt(3); i > 0; i--) {
      String[] others = {
        "{\"blend\": \"E85\", \"premix\": \"20:1\"}",
        "{\"blend\": \"petrol\", \"premix\": \"no oil\"}",
        "{\"density\": \"500 kg/m³\", \"dynamicViscosity\": \"0.05 mPa·s\","
            + " \"stoichiometricRatio\": 3, \"premix\": \"1000:1\"}",
        "{\"density\": \"1500 kg/m³\", \"dynamicViscosity\": \"100 mPa·s\","
            + " \"stoichiometricRatio\": 25, \"premix\": \"10:1\"}"
      };
      fuels.add(tree(others[random.nextInt(others.length)]));
    }
  }

  String catalogue() {
    return catalogue.toString();
  }

  /** A kit with a setting of any parts on any machine; most of them are in the box. */
  String kit() {
    ObjectNode kit = tree(KITS.of(random));
    ObjectNode setting = (ObjectNode) kit.at("/recommendations/0");
    ArrayNode boxed = (ArrayNode) kit.get("parts");
    ArrayNode all = kit.putArray("recommendations");
    for (int i = random.nextInt(2); i >= 0; i--) {
      ObjectNode one = setting.deepCopy();
      all.add(one);
      one.put("machine", any(List.of("tuned", "tuned", "tuned", "unknown")));
      SERIES.forEach((field, series) -> put(one, field, series, boxed));
      if (random.nextInt(4) == 0) {
        put(one, "fittedScrew", List.of("screws"), boxed);
      }
      if (random.nextInt(4) == 0) {
        put(one, "floatValve", List.of("valves"), boxed);
      }
    }
    return kit.toString();
  }

  private void put(ObjectNode setting, String field, List<String> series, ArrayNode boxed) {
    if (random.nextInt(3) == 0) {
      List<String> ids = new ArrayList<>();
      catalogue
          .get("parts")
          .forEach(
              part -> {
                if (series.contains(part.get("series").asText())) {
                  ids.add(part.get("id").asText());
                }
              });
      String id = any(ids);
      setting.put(field, id);
      if (random.nextInt(8) > 0) {
        boxed.add(id);
      }
    }
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
