package dev.jetting.examples.kitdesk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/** A file, standard input, or a file that comes with the program. */
final class Source {

  private final String name;
  private final Optional<Path> path;
  private final Opening opening;

  /** How to open it. */
  private interface Opening {
    InputStream open() throws UnusableException, IOException;
  }

  private Source(String name, Optional<Path> path, Opening opening) {
    this.name = name;
    this.path = path;
    this.opening = opening;
  }

  static Source of(String file, StandardInput standardInput) throws UnusableException {
    if (file.equals("-")) {
      return new Source("standard input", Optional.empty(), standardInput::open);
    }
    try {
      Path path = Path.of(file);
      if (Files.isDirectory(path)) {
        throw new UnusableException('"' + file + "\": is a directory: allowed a file");
      }
      return new Source(file, Optional.of(path), () -> Files.newInputStream(path));
    } catch (InvalidPathException e) {
      throw new UnusableException('"' + file + "\": no such file");
    }
  }

  static Source demo(String name) {
    return new Source(
        name,
        Optional.empty(),
        () -> Objects.requireNonNull(Source.class.getResourceAsStream(name), name));
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
    } catch (IOException e) {
      throw UnusableException.of('"' + name + '"', "read", e);
    }
  }

  Lines lines() throws UnusableException, IOException {
    return Lines.of(open());
  }

  /** Whether this is the file of a path, by whatever name. */
  boolean is(Path other) throws IOException {
    return path.isPresent() && Files.exists(other) && Files.isSameFile(path.get(), other);
  }
}
