package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.search.PartKind;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a search has found, for programs: a JSON object a line. The first names what was searched,
 * each of the others is a setting. The file is created before the search and written after it. If
 * the search fails, it is deleted.
 */
final class FoundFile implements Closeable {

  private static final String FORMAT = "jetting search results";
  private static final int SCHEMA_VERSION = 1;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final @Nullable Path file;
  private boolean written;

  private FoundFile(@Nullable Path file) {
    this.file = file;
  }

  /** A new file; none where no path is given. */
  static FoundFile create(@Nullable Path file) throws UnusableException {
    if (file != null) {
      try {
        Files.createFile(file);
      } catch (FileAlreadyExistsException e) {
        throw new UnusableException("--out " + file + ": is there already: allowed a new file");
      } catch (IOException e) {
        throw UnusableException.of("--out " + file, "written", e);
      }
    }
    return new FoundFile(file);
  }

  /**
   * Writes all.
   *
   * @param searched what was searched, by name, for the first line
   * @param own what each of the settings has of the sheet's carburettor
   */
  void write(Map<String, Object> searched, OwnFittings own, List<JudgedSetting> settings)
      throws UnusableException {
    if (file == null) {
      return;
    }
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("format", FORMAT);
    head.put("schemaVersion", SCHEMA_VERSION);
    head.putAll(searched);
    try {
      StringBuilder text = new StringBuilder(line(head));
      for (JudgedSetting each : settings) {
        text.append(line(fields(each, own)));
      }
      // Half a character, which JSON may escape in an id, is a question mark in these bytes.
      byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      Files.write(file, bytes, StandardOpenOption.WRITE);
      written = true;
    } catch (IOException e) {
      throw UnusableException.of("--out " + file, "written", e);
    }
  }

  private static String line(Map<String, Object> fields) throws JsonProcessingException {
    return MAPPER.writeValueAsString(fields) + "\n";
  }

  private static Map<String, Object> fields(JudgedSetting judged, OwnFittings own) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("standing", Words.word(judged.found().standing()));
    fields.put("passes", judged.passes());
    fields.put("leanRisk", judged.found().leanRisk().value());
    fields.put("worstRisk", judged.worstRisk().value());
    fields.put("distance", judged.found().distance());
    fields.put("setting", setting(judged, own));
    fields.put("newParts", judged.parts().toBuy().stream().map(FoundFile::toBuy).toList());
    judged.found().price().ifPresent(price -> fields.put("price", price));
    fields.put("dangers", judged.dangers());
    fields.put("unanswered", judged.unanswered());
    return fields;
  }

  /** As a kit recommends it. */
  private static Map<String, @Nullable Object> setting(JudgedSetting judged, OwnFittings own) {
    Setting setting = judged.found().setting();
    Map<PartKind, String> ids = judged.parts().ids();
    Map<String, Object> screw = new LinkedHashMap<>();
    screw.put("kind", Words.word(setting.screw().kind()));
    screw.put("turns", setting.screw().turns().toString());
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("pilotJet", ids.get(PartKind.PILOT_JET));
    fields.put("screw", screw);
    fields.put("slide", ids.get(PartKind.SLIDE));
    fields.put("idleLift", setting.idleLift().toString());
    fields.put("needleJet", ids.get(PartKind.NEEDLE_JET));
    fields.put("needle", ids.get(PartKind.NEEDLE));
    fields.put("clip", setting.clip().toString());
    fields.put("mainJet", ids.get(PartKind.MAIN_JET));
    fields.putAll(own.fields());
    return fields;
  }

  private static Map<String, Object> toBuy(SettingParts.ToBuy part) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("kind", Words.word(part.kind()));
    fields.put("id", part.id());
    part.price().ifPresent(price -> fields.put("price", price));
    return fields;
  }

  @Override
  public void close() throws IOException {
    if (file != null && !written) {
      Files.deleteIfExists(file);
    }
  }
}
