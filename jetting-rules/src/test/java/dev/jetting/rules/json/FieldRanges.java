package dev.jetting.rules.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The ranges of a document's numbers, as its reader states them: each number of an example is made
 * much too big, then as big as the error allows, until the reader takes it.
 */
final class FieldRanges {

  private static final Pattern QUANTITY = Pattern.compile("-?[0-9.]+( [^0-9].*)");
  private static final Pattern RANGE =
      Pattern.compile(
          "(?:from |above |more than )?-?[0-9.]+(?: \\S+)? (?:to|up to|and at most) (-?[0-9.]+)(?:"
              + " .*)?");
  private static final Pattern UNIT_OF_NAME = Pattern.compile(" in( \\S+) -?[0-9.]+: allowed");
  private static final Pattern BARE_END = Pattern.compile(".*[0-9]");
  private static final double MUCH = 9e7;
  private static final int MOST_ERRORS = 4;

  /** Of a type whose number means other things in other fields. */
  private static final String ELSEWHERE = "by the field that holds it";

  private final JsonNode document;
  private final Consumer<String> reader;
  private final Map<String, String> ranges = new TreeMap<>();

  private FieldRanges(JsonNode document, Consumer<String> reader) {
    this.document = document;
    this.reader = reader;
  }

  /** The range of each field that has one, by the name of its type and field: "needle.tip". */
  static Map<String, String> of(JsonNode schema, JsonNode document, Consumer<String> reader) {
    FieldRanges found = new FieldRanges(document, reader);
    found.walk(schema, "", schema, document);
    return found.ranges;
  }

  private void walk(JsonNode schema, String type, JsonNode here, JsonNode value) {
    if (value instanceof ArrayNode array) {
      JsonNode items = here.path("items");
      for (int i = 0; i < array.size(); i++) {
        int at = i;
        visit(schema, type, "", items, array.get(i), (node, changed) -> array.set(at, changed));
      }
    } else if (value instanceof ObjectNode object) {
      for (Map.Entry<String, JsonNode> field : here.path("properties").properties()) {
        String name = field.getKey();
        Optional.ofNullable(object.get(name))
            .ifPresent(
                node ->
                    visit(
                        schema,
                        type,
                        name,
                        field.getValue(),
                        node,
                        (old, changed) -> object.set(name, changed)));
      }
    }
  }

  private void visit(
      JsonNode schema,
      String type,
      String field,
      JsonNode form,
      JsonNode value,
      BiConsumer<JsonNode, JsonNode> change) {
    String reference = form.path("$ref").asText("");
    String name = reference.replace("#/$defs/", "");
    JsonNode resolved = reference.isEmpty() ? form : object(schema.path("$defs").path(name));
    if (value.isValueNode()) {
      probe(type + "." + field, value, changed -> change.accept(value, changed));
      change.accept(value, value);
    } else {
      walk(schema, reference.isEmpty() ? type : name, resolved, value);
    }
  }

  /** The object among the forms that a type can be written in. */
  private static JsonNode object(JsonNode definition) {
    for (JsonNode form : definition.path("anyOf")) {
      if (form.has("properties")) {
        return form;
      }
    }
    return definition;
  }

  private void probe(String field, JsonNode value, Consumer<JsonNode> change) {
    Optional<JsonNode> next = with(value, MUCH);
    String narrowest = "";
    for (int i = 0; i < MOST_ERRORS && next.isPresent(); i++) {
      change.accept(next.get());
      String allowed = allowed();
      Matcher range = RANGE.matcher(allowed);
      narrowest = range.matches() ? allowed : narrowest;
      next = range.matches() ? with(value, Double.parseDouble(range.group(1))) : Optional.empty();
    }
    if (!narrowest.isEmpty()) {
      ranges.merge(field, narrowest, (one, other) -> one.equals(other) ? one : ELSEWHERE);
    }
  }

  private static Optional<JsonNode> with(JsonNode value, double number) {
    if (value.isTextual()) {
      Matcher text = QUANTITY.matcher(value.asText());
      return text.matches()
          ? Optional.of(TextNode.valueOf(plain(number) + text.group(1)))
          : Optional.empty();
    }
    if (value.isInt()) {
      return Optional.of(IntNode.valueOf((int) number));
    }
    return value.isNumber() ? Optional.of(DoubleNode.valueOf(number)) : Optional.empty();
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }

  /** What the reader allows; empty where it takes the document. */
  private String allowed() {
    try {
      reader.accept(document.toString());
      return "";
    } catch (JsonInputException e) {
      Matcher unit = UNIT_OF_NAME.matcher(String.valueOf(e.getMessage()));
      boolean bare = BARE_END.matcher(e.allowed()).matches();
      return e.allowed() + (bare && unit.find() ? unit.group(1) : "");
    }
  }
}
