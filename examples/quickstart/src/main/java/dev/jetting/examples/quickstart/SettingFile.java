package dev.jetting.examples.quickstart;

import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.SheetJson;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a setup sheet; whatever is wrong comes out as one line that begins with the source. */
final class SettingFile {

  private static final String ALLOWED = ": allowed a setting file, - for standard input, or --demo";

  private SettingFile() {}

  static SetupSheet read(String file) throws UnreadableException {
    String named = '"' + file + '"';
    try {
      if (file.isBlank()) {
        throw new UnreadableException(named + ": no file named" + ALLOWED);
      }
      Path path = Path.of(file);
      if (Files.isDirectory(path)) {
        throw new UnreadableException(named + ": is a directory" + ALLOWED);
      }
      try (InputStream in = Files.newInputStream(path)) {
        return read(named, in);
      }
    } catch (InvalidPathException | NoSuchFileException e) {
      throw new UnreadableException(named + ": no such file" + ALLOWED);
    } catch (AccessDeniedException e) {
      throw new UnreadableException(named + ": may not be read" + ALLOWED);
    } catch (IOException e) {
      throw new UnreadableException(named + ": cannot be read: " + e.getMessage());
    }
  }

  static SetupSheet read(String source, InputStream in) throws UnreadableException {
    try {
      return SheetJson.read(in);
    } catch (JsonInputException e) {
      throw new UnreadableException(source + ": " + e.getMessage());
    } catch (IOException e) {
      throw new UnreadableException(source + ": cannot be read: " + e.getMessage());
    }
  }
}
