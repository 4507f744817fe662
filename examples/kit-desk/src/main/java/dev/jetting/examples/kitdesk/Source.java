package dev.jetting.examples.kitdesk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;

/** A file, standard input, or a file that comes with the program. */
final class Source {

  private static final int BYTE_ORDER_MARK = '\ufeff';

  private final String name;
  private final Opening opening;

  /** How to open it. */
  private interface Opening {
    InputStream open() throws IOException;
  }

  private Source(String name, Opening opening) {
    this.name = name;
    this.opening = opening;
  }

  static Source of(String file, InputStream standardInput) throws UnusableException {
    if (file.equals("-")) {
      return new Source("standard input", () -> standardInput);
    }
    try {
      Path path = Path.of(file);
      if (Files.isDirectory(path)) {
        throw new UnusableException('"' + file + "\": is a directory: allowed a file");
      }
      return new Source(file, () -> Files.newInputStream(path));
    } catch (InvalidPathException e) {
      throw new UnusableException('"' + file + "\": no such file");
    }
  }

  static Source demo(String name) {
    return new Source(
        name, () -> Objects.requireNonNull(Source.class.getResourceAsStream(name), name));
  }

  String name() {
    return name;
  }

  boolean isNamed(String ending) {
    return name.endsWith(ending);
  }

  InputStream open() throws UnusableException {
    try {
      return opening.open();
    } catch (NoSuchFileException e) {
      throw new UnusableException('"' + name + "\": no such file");
    } catch (AccessDeniedException e) {
      throw new UnusableException('"' + name + "\": may not be read");
    } catch (IOException e) {
      throw new UnusableException('"' + name + "\": cannot be read: " + e.getMessage());
    }
  }

  /** As UTF-8 without its byte order mark; bytes that are not UTF-8 become U+FFFD. */
  BufferedReader lines() throws UnusableException, IOException {
    BufferedReader reader =
        new BufferedReader(new InputStreamReader(open(), StandardCharsets.UTF_8));
    reader.mark(1);
    if (reader.read() != BYTE_ORDER_MARK) {
      reader.reset();
    }
    return reader;
  }
}
