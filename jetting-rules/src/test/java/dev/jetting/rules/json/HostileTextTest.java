package dev.jetting.rules.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.Report;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each text of each document in turn, with characters that steer a terminal or break a line. */
class HostileTextTest {

  private static final String STEERING = "[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  record Kind(String name, String document, Function<String, ?> reader) {
    Kind(String name, Function<String, ?> reader) {
      this(name, Documents.read(name), reader);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    return Stream.of(
        new Kind("example-sheet.json", SheetJson::read),
        new Kind("example-session.json", SessionJson::read),
        new Kind("example-catalogue.json", CatalogueJson::read),
        new Kind("example-kit.json", KitJson::read),
        new Kind("example-rules.json", RuleFile::read),
        new Kind("waivers", WaiversJsonTest.DOCUMENT, WaiversJson::read),
        new Kind("waivers of kits", KitWaiversJsonTest.DOCUMENT, KitWaiversJson::read),
        new Kind("limits", LimitsJsonTest.DOCUMENT, LimitsJson::read));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void text_thatSteers_isRefusedWhereItStands(Kind kind) {
    for (String hostile : new String[] {"a\u202eb", "a\nb"}) {
      each(
          kind.document,
          (path, document) ->
              assertThatExceptionOfType(JsonInputException.class)
                  .as(path)
                  .isThrownBy(() -> kind.reader.apply(document))
                  .satisfies(
                      e -> {
                        assertThat(e.getMessage()).doesNotContainPattern(STEERING);
                        assertThat(path).startsWith(e.path().replaceFirst("\\[\".*", ""));
                        assertThat(e.path()).isNotEqualTo("$");
                      }),
          hostile);
    }
  }

  @Test
  void nameOfALimit_thatSteers_isRefused() {
    String document =
        LimitsJsonTest.DOCUMENT.replace("float valve capacity", "\\u202efloat\\n valve capacity");
    assertThatExceptionOfType(JsonInputException.class)
        .isThrownBy(() -> LimitsJson.read(document))
        .withMessageContaining("name of a limit with the character U+0202E")
        .satisfies(e -> assertThat(e.getMessage()).doesNotContainPattern(STEERING));
  }

  /** A report quotes what rules of others said; its pages show none of it raw. */
  @Test
  void pagesOfAReport_showNoSteeringCharacter() {
    each(
        Documents.read("report.golden.json"),
        (path, document) -> {
          Report report;
          try {
            report = ReportJson.read(document);
          } catch (JsonInputException e) {
            assertThat(e.getMessage()).doesNotContainPattern(STEERING);
            return;
          }
          assertThat(ReportText.of(report).replace("\n", ""))
              .as(path)
              .doesNotContainPattern(STEERING);
          assertThat(ReportMarkdown.of(report).replace("\n", ""))
              .as(path)
              .doesNotContainPattern(STEERING);
        },
        "a\u202e\u001b\n\u2028b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\u202eb", "a\u0007b", "a\r\nb"})
  void idOfAPart_thatSteers_isRefused(String id) {
    assertThatExceptionOfType(dev.jetting.units.InvalidValueException.class)
        .isThrownBy(() -> new dev.jetting.core.parts.Intake(id, java.util.Optional.empty()))
        .satisfies(
            e -> {
              assertThat(e.field()).isEqualTo("id");
              assertThat(e.getMessage())
                  .startsWith("id of the intake with the character U+")
                  .doesNotContainPattern(STEERING);
            });
  }

  private interface Trial {
    void of(String path, String document);
  }

  private static void each(String document, Trial trial, String text) {
    JsonNode root = tree(document);
    walk(root, "$", path -> trial.of(path, root.toString()), text);
  }

  /** Every text that names no kind, format or other word of a closed list. */
  private static void walk(JsonNode node, String path, Consumer<String> trial, String text) {
    if (node instanceof ObjectNode object) {
      object
          .fieldNames()
          .forEachRemaining(
              name -> {
                JsonNode child = object.get(name);
                if (child.isTextual()) {
                  object.put(name, text);
                  trial.accept(path + "." + name);
                  object.set(name, child);
                } else {
                  walk(child, path + "." + name, trial, text);
                }
              });
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        JsonNode child = array.get(i);
        String place = path + "[" + i + "]";
        if (child.isTextual()) {
          array.set(i, MAPPER.getNodeFactory().textNode(text));
          trial.accept(place);
          array.set(i, child);
        } else {
          walk(child, place, trial, text);
        }
      }
    }
  }

  private static JsonNode tree(String document) {
    try {
      return MAPPER.readTree(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the examples are JSON
    }
  }
}
