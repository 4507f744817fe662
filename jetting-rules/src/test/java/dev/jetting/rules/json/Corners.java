package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the numbers of a document at the ends of what its reader takes. The ends of each leaf are
 * found once, beside the document as it is; then leaves are moved to them together, as far as the
 * reader takes that.
 */
final class Corners {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Pattern NUMBER = Pattern.compile("(-?[0-9.]+(?:[eE]-?[0-9]+)?)(.*)");
  private static final int HALVINGS = 12;

  /** Leaves that are no numbers, whatever they begin with, and the version. */
  private static final Set<String> TEXTS =
      Set.of("schemaVersion", "title", "id", "unit", "note", "clip");

  private final String document;
  private final Predicate<String> accepts;
  private final List<Leaf> leaves;

  /** A number of the document, with the unit written after it and the ends of what is read. */
  private record Leaf(JsonPointer at, JsonNode was, String unit, double least, double most) {}

  Corners(String document, Predicate<String> accepts) {
    this.document = document;
    this.accepts = accepts;
    JsonNode root = tree();
    List<JsonPointer> found = new ArrayList<>();
    collect(root, JsonPointer.empty(), found);
    leaves = found.stream().map(at -> leaf(root, at)).toList();
  }

  private JsonNode tree() {
    try {
      return MAPPER.readTree(document);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The document with a random share of its leaves, half on average, at or near their ends. */
  String of(Random random) {
    JsonNode root = tree();
    List<Leaf> order = new ArrayList<>(leaves);
    Collections.shuffle(order, random);
    double share = random.nextDouble();
    for (Leaf leaf : order) {
      JsonNode before = root.at(leaf.at());
      if (random.nextDouble() < share) {
        double was = number(leaf.was());
        double end = random.nextBoolean() ? leaf.most() : leaf.least();
        put(root, leaf.at(), node(leaf, random.nextInt(3) == 0 ? end + (was - end) / 100 : end));
        if (!accepts.test(root.toString())) {
          put(root, leaf.at(), before);
        }
      }
    }
    return root.toString();
  }

  private static void collect(JsonNode node, JsonPointer at, List<JsonPointer> leaves) {
    if (node.isObject()) {
      node.fieldNames()
          .forEachRemaining(name -> collect(node.get(name), at.appendProperty(name), leaves));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(node.get(i), at.appendIndex(i), leaves);
      }
    } else if (!TEXTS.contains(String.valueOf(at.last().getMatchingProperty()))
        && (node.isNumber() || (node.isTextual() && NUMBER.matcher(node.asText()).matches()))) {
      leaves.add(at);
    }
  }

  private static double number(JsonNode node) {
    Matcher matcher = NUMBER.matcher(node.asText());
    return matcher.matches() ? Double.parseDouble(matcher.group(1)) : Double.NaN;
  }

  private Leaf leaf(JsonNode root, JsonPointer at) {
    JsonNode was = root.at(at);
    Matcher matcher = NUMBER.matcher(was.asText());
    Leaf leaf = new Leaf(at, was, matcher.matches() ? matcher.group(2) : "", 0, 0);
    Leaf ends = new Leaf(at, was, leaf.unit(), end(root, leaf, false), end(root, leaf, true));
    put(root, at, was);
    return ends;
  }

  private double end(JsonNode root, Leaf leaf, boolean up) {
    double good = number(leaf.was());
    double bad = up ? 1e9 : -1e9;
    for (double end : up ? new double[] {1e4, 1e3, 100, 10, 1} : new double[] {0, 1e-6, 1e-3}) {
      if ((up ? end > good : end < good) && takes(root, leaf, end)) {
        good = end;
        break;
      }
    }
    for (int i = 0; i < HALVINGS && !leaf.was().isInt(); i++) {
      double middle = good > 0 && bad > 0 ? StrictMath.sqrt(good * bad) : (good + bad) / 2;
      if (takes(root, leaf, middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private boolean takes(JsonNode root, Leaf leaf, double number) {
    put(root, leaf.at(), node(leaf, number));
    return accepts.test(root.toString());
  }

  private static JsonNode node(Leaf leaf, double to) {
    BigDecimal number = new BigDecimal(to).round(new MathContext(12));
    if (leaf.was().isInt()) {
      return MAPPER.getNodeFactory().numberNode((int) to);
    }
    return leaf.was().isNumber()
        ? MAPPER.getNodeFactory().numberNode(number)
        : MAPPER.getNodeFactory().textNode(number.toPlainString() + leaf.unit());
  }

  private static void put(JsonNode root, JsonPointer at, JsonNode node) {
    JsonNode parent = root.at(at.head());
    if (parent instanceof ArrayNode array) {
      array.set(at.last().getMatchingIndex(), node);
    } else {
      ((ObjectNode) parent).set(at.last().getMatchingProperty(), node);
    }
  }
}
