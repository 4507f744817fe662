package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Changes JSON documents by their structure: a value becomes another of a list made to hurt, moves
 * from another document, goes, or comes many times. A fuzzer of bytes seldom leaves the syntax
 * whole.
 */
final class Edits {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final int MOST_EDITS = 6;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "x",
          "0",
          "-0",
          "1/0",
          "1e999 mm",
          "1e-400 mm",
          "-1 mm",
          "0 mm",
          "1.2 mm",
          "NaN",
          "∞",
          "1000000 rpm",
          "100 %",
          "1/3 of 7",
          "a\u202eb",
          "a\nb",
          "a\u0000b",
          "\ud800",
          "\u2028",
          "{limit}",
          "{measured}{measured}{measured}",
          "{",
          "<script>",
          "verdict      passes",
          "lean-anywhere",
          "setting.mainJet",
          "2026-02-30",
          "+999999999-12-31",
          "x".repeat(201),
          "9".repeat(99),
          "x".repeat(10_001));

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0.0",
          "1",
          "-1",
          "0.5",
          "1e-3",
          "1e-300",
          "4.9e-324",
          "1e3",
          "1e9",
          "2147483647",
          "2147483648",
          "1e300",
          "1.7976931348623157e308",
          "1e309",
          "1e-400");

  private final List<JsonNode> documents;
  private final List<JsonNode> pieces = new ArrayList<>();

  Edits(Stream<String> examples) {
    documents = examples.map(Edits::tree).toList();
    documents.forEach(document -> places(document).forEach(place -> pieces.add(place.value())));
  }

  /** A value in a document, with what holds it. */
  private record Place(JsonNode in, String name, int index) {

    JsonNode value() {
      return in.isObject() ? in.get(name) : in.get(index);
    }

    void put(JsonNode other) {
      if (in instanceof ObjectNode object) {
        object.set(name, other);
      } else {
        ((ArrayNode) in).set(index, other);
      }
    }

    void remove() {
      if (in instanceof ObjectNode object) {
        object.remove(name);
      } else {
        ((ArrayNode) in).remove(index);
      }
    }
  }

  /** One of the documents with up to six edits; few more often than many. */
  String of(Random random) {
    JsonNode document = documents.get(random.nextInt(documents.size())).deepCopy();
    int edits = 1 + random.nextInt(1 + random.nextInt(MOST_EDITS));
    for (int i = 0; i < edits; i++) {
      List<Place> places = places(document);
      if (!places.isEmpty()) {
        edit(places.get(random.nextInt(places.size())), random);
      }
    }
    return document.toString();
  }

  private void edit(Place place, Random random) {
    JsonNode value = place.value();
    switch (random.nextInt(9)) {
      case 0 -> place.remove();
      case 1 -> place.put(one(pieces, random).deepCopy());
      case 2 -> place.put(NODES.textNode(one(TEXTS, random)));
      case 3 -> place.put(NODES.nullNode());
      case 4 -> repeat(place, 1 << random.nextInt(11));
      case 5 -> place.put(wrapped(value, 1 << random.nextInt(7), random.nextBoolean()));
      case 6 -> rename(place, one(TEXTS, random));
      case 7 -> place.put(scaled(value, random));
      default -> place.put(number(one(NUMBERS, random)));
    }
  }

  private static JsonNode number(String decimal) {
    return NODES.numberNode(new BigDecimal(decimal));
  }

  /** A number, or a text that begins with one, many times as large or as small. */
  private static JsonNode scaled(JsonNode value, Random random) {
    double factor = StrictMath.pow(10, random.nextGaussian());
    if (value.isNumber()) {
      return NODES.numberNode(value.doubleValue() * factor);
    }
    String text = value.asText();
    int end = 0;
    while (end < text.length() && "0123456789.".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    try {
      double scaled = Double.parseDouble(text.substring(0, end)) * factor;
      return NODES.textNode(new BigDecimal(scaled).toPlainString() + text.substring(end));
    } catch (NumberFormatException e) {
      return value.isBoolean() ? NODES.booleanNode(!value.booleanValue()) : value;
    }
  }

  private static void repeat(Place place, int times) {
    if (place.in() instanceof ArrayNode array) {
      for (int i = 0; i < times; i++) {
        array.add(place.value());
      }
    } else {
      ArrayNode array = NODES.arrayNode();
      for (int i = 0; i < times; i++) {
        array.add(place.value());
      }
      place.put(array);
    }
  }

  private static JsonNode wrapped(JsonNode value, int times, boolean inArrays) {
    JsonNode wrapped = value;
    for (int i = 0; i < times; i++) {
      wrapped =
          inArrays ? NODES.arrayNode().add(wrapped) : NODES.objectNode().set("words", wrapped);
    }
    return wrapped;
  }

  private static void rename(Place place, String name) {
    JsonNode value = place.value();
    if (place.in() instanceof ObjectNode object) {
      object.remove(place.name());
      object.set(name, value);
    }
  }

  private static <T> T one(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  private static List<Place> places(JsonNode document) {
    List<Place> places = new ArrayList<>();
    collect(document, places);
    return places;
  }

  private static void collect(JsonNode node, List<Place> places) {
    if (node.isObject()) {
      node.fieldNames()
          .forEachRemaining(
              name -> {
                places.add(new Place(node, name, 0));
                collect(node.get(name), places);
              });
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        places.add(new Place(node, "", i));
        collect(node.get(i), places);
      }
    }
  }

  private static JsonNode tree(String document) {
    try {
      return MAPPER.readTree(document);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e); // the examples are JSON
    }
  }
}
