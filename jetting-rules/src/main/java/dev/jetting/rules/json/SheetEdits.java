package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.Sentence;
import java.util.Map;
import java.util.Objects;

/**
 * Edits of a setup sheet by JSON Pointers (RFC 6901) into its document, as examples of rules have
 * them: {@code "/setting/mainJet"} with {@code "1.45 mm"}.
 *
 * <p>For examples and tests. A program changes a sheet with its withers and builders.
 */
public final class SheetEdits {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private SheetEdits() {}

  /**
   * Edits a sheet.
   *
   * @param sheet the sheet
   * @param edits the value to put at each pointer, as JSON, such as {@code "\"1.45 mm\""}
   * @return the edited sheet
   * @throws JsonInputException if the edited document is no setup sheet
   * @throws IllegalArgumentException if a pointer leads nowhere, or a value is no JSON
   */
  public static SetupSheet edited(SetupSheet sheet, Map<String, String> edits) {
    return edited(document(Objects.requireNonNull(sheet)), edits);
  }

  /** A sheet as a tree that can be edited again and again. */
  static JsonNode document(SetupSheet sheet) {
    return parsed("the sheet", SheetJson.write(sheet));
  }

  static SetupSheet edited(JsonNode original, Map<String, String> edits) {
    JsonNode document = original.deepCopy();
    edits.forEach((pointer, value) -> edit(document, pointer, parsed(pointer, value)));
    return SheetJson.read(document.toString());
  }

  private static JsonNode parsed(String where, String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw InvalidValueException.worded(
              Sentence.of("error.value-at").with("value", Quote.quoted(where)),
              Sentence.of("error.json-value"))
          .causedBy(e);
    }
  }

  private static void edit(JsonNode document, String text, JsonNode value) {
    JsonPointer pointer = pointer(text);
    JsonNode holder =
        pointer.matches() ? MAPPER.getNodeFactory().nullNode() : document.at(pointer.head());
    if (holder instanceof ObjectNode object) {
      object.set(pointer.last().getMatchingProperty(), value);
    } else if (holder instanceof ArrayNode array && array.has(pointer.last().getMatchingIndex())) {
      array.set(pointer.last().getMatchingIndex(), value);
    } else {
      throw InvalidValueException.of(
          Sentence.of("error.name.pointer"),
          Quote.quoted(text),
          Sentence.of("error.pointer.field"));
    }
  }

  static JsonPointer pointer(String text) {
    try {
      return JsonPointer.compile(text);
    } catch (IllegalArgumentException e) {
      throw InvalidValueException.of(
              Sentence.of("error.name.pointer"),
              Quote.quoted(text),
              Sentence.of("error.pointer.such-as").with("sample", "/setting/mainJet"))
          .causedBy(e);
    }
  }

  /**
   * Writes a text as JSON, for the value of an edit.
   *
   * @param value the text
   * @return the text in quotation marks, escaped
   */
  public static String text(String value) {
    return MAPPER.getNodeFactory().textNode(Objects.requireNonNull(value, "value")).toString();
  }
}
