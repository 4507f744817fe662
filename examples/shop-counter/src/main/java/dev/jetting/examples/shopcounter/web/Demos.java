package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.bench.DemoMachine;
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

  static List<DemoMachine> all() {
    return List.of(
        new DemoMachine("mild-all-round", "Milk cart, a setting that holds from valley to pass"),
        new DemoMachine("lean-in-the-middle", "Milk cart, fine at full throttle and lean below it"),
        new DemoMachine("tuned-on-mild-main", "Hill-climb cart on the milk cart's main jet"));
  }

  static SetupSheet sheet(String name) {
    if (all().stream().noneMatch(demo -> demo.name().equals(name))) {
      throw Problem.notFound();
    }
    try (InputStream in = Demos.class.getResourceAsStream(FOLDER + name + ".json")) {
      return SheetJson.read(java.util.Objects.requireNonNull(in, name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
