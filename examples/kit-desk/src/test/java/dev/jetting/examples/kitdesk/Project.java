package dev.jetting.examples.kitdesk;

import java.nio.file.Path;

/** Where this module's files are while its tests run. */
final class Project {

  /** Maven sets it; elsewhere the tests must be run in the module's directory. */
  static final Path DIRECTORY = Path.of(System.getProperty("basedir", "")).toAbsolutePath();

  static final Path DEMO = DIRECTORY.resolve("src/main/resources/dev/jetting/examples/kitdesk");

  private Project() {}
}
