package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.kit.KitDepth;

/** The first line of a file of results: what made them. Results of two makings do not mix. */
final class ResultHead {

  private static final String FORMAT = "jetting kit results";
  private static final int SCHEMA_VERSION = 1;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final ObjectNode fields = MAPPER.createObjectNode();

  ResultHead(String program, Rulebook rulebook, KitDepth depth, CatalogueFiles catalogue) {
    fields.put("format", FORMAT);
    fields.put("schemaVersion", SCHEMA_VERSION);
    fields.put("program", program);
    fields.put("rulebook", rulebook.name() + " " + rulebook.version());
    fields.put("depth", Words.word(depth));
    fields.put("catalogue", catalogue.digest());
    ArrayNode parts = fields.putArray("parts");
    catalogue.partsDigests().forEach(parts::add);
  }

  /** The line with its end. */
  String line() {
    return fields + "\n";
  }

  /** Throws unless a file's first line says that it goes on with the same making. */
  void check(String file, String firstLine) throws UnusableException {
    JsonNode its = tree(firstLine);
    if (!its.path("format").asText().equals(FORMAT)) {
      throw new UnusableException(
          file + ", line 1: is no result file's head: allowed a file that --out has begun");
    }
    checkSame(file, "schemaVersion", "in another form", its);
    checkSame(file, "program", "by another version of the program", its);
    checkSame(file, "rulebook", "by another rulebook", its);
    checkSame(file, "depth", "at another depth", its);
    checkSame(file, "catalogue", "with another catalogue, SHA-256", its);
    checkSame(file, "parts", "with other parts lists, SHA-256", its);
  }

  private static JsonNode tree(String line) {
    try {
      return MAPPER.readTree(line);
    } catch (JsonProcessingException e) {
      return MAPPER.missingNode();
    }
  }

  private void checkSame(String file, String field, String how, JsonNode its)
      throws UnusableException {
    if (!fields.path(field).equals(its.path(field))) {
      throw new UnusableException(
          file
              + ": was made "
              + how
              + ": "
              + Table.fitted(text(its.path(field)), 80)
              + ": allowed "
              + text(fields.path(field)));
    }
  }

  private static String text(JsonNode node) {
    return node.isTextual() ? node.textValue() : node.toString();
  }
}
