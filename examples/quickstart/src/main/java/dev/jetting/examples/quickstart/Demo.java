package dev.jetting.examples.quickstart;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/** The setting files that come with the program; this module's README.md describes them. */
enum Demo {
  MILD_ALL_ROUND("mild-all-round", "milk cart, mild engine: holds from valley to pass"),
  LEAN_IN_THE_MIDDLE("lean-in-the-middle", "milk cart: fine at full throttle, lean below"),
  TUNED_ALL_ROUND("tuned-all-round", "hill-climb cart, tuned engine: holds"),
  TUNED_ON_MILD_MAIN("tuned-on-mild-main", "hill-climb cart: lean from a third to full throttle"),
  FROST_ON_THE_PASS("frost-on-the-pass", "milk cart: fine on a hot day, dangerous in frost"),
  RICH_START("rich-start", "milk cart: rich on purpose, to begin plug chops from");

  /** The one that shows why the library is there. */
  static final Demo DEFAULT = LEAN_IN_THE_MIDDLE;

  private final String title;
  private final String about;

  Demo(String title, String about) {
    this.title = title;
    this.about = about;
  }

  String title() {
    return title;
  }

  static Optional<Demo> named(String title) {
    return Arrays.stream(values()).filter(demo -> demo.title.equals(title)).findFirst();
  }

  static String titles() {
    return Arrays.stream(values()).map(Demo::title).collect(joining(", "));
  }

  /** One line a demo. */
  static String list() {
    int width = Arrays.stream(values()).mapToInt(demo -> demo.title.length()).max().orElse(0);
    return Arrays.stream(values())
        .map(
            demo ->
                demo.title
                    + " ".repeat(width + 2 - demo.title.length())
                    + demo.about
                    + (demo == DEFAULT ? " (the default)" : "")
                    + "\n")
        .collect(joining());
  }

  InputStream open() throws IOException {
    String file = title + ".json";
    return Objects.requireNonNull(Demo.class.getResourceAsStream(file), file);
  }
}
