package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Invented machines to try the counter with; the quickstart's README describes them. */
final class Demos {

  private static final String FOLDER = "/dev/jetting/examples/shopcounter/demo/";

  private Demos() {}

  static List<String> all() {
    return List.of("mild-all-round", "lean-in-the-middle", "tuned-on-mild-main");
  }

  /** The sheet of a machine, under a name in the visitor's language. */
  static SetupSheet sheet(String name, Words words) {
    if (!all().contains(name)) {
      throw Problem.notFound();
    }
    try (InputStream in = Demos.class.getResourceAsStream(FOLDER + name + ".json")) {
      SetupSheet sheet = SheetJson.read(java.util.Objects.requireNonNull(in, name));
      return sheet.toBuilder().title(words.say("demo." + name)).build();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
