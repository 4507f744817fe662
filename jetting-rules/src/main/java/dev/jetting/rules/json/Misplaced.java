package dev.jetting.rules.json;

import java.io.Serial;

/** What is wrong at a place of a document whose values each can be read. */
final class Misplaced extends IllegalArgumentException {

  @Serial private static final long serialVersionUID = 1L;

  private final transient Path path;

  Misplaced(Path path, String problem, String allowed) {
    super(problem + ": allowed " + allowed);
    this.path = path;
  }

  /** The same from the words of a check, of the form that this library's checks use. */
  Misplaced(Path path, IllegalArgumentException check) {
    super(check.getMessage(), check);
    this.path = path;
  }

  Path path() {
    return path;
  }
}
