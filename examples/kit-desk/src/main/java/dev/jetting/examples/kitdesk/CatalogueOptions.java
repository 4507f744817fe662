package dev.jetting.examples.kitdesk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which catalogue. */
final class CatalogueOptions {

  @Option(names = "--catalogue", paramLabel = "FILE", description = "Catalogue (JSON).")
  private @Nullable String file;

  @Option(
      names = "--parts",
      paramLabel = "FILE",
      description = "Parts list (CSV) that belongs to it; may be given again.")
  private List<String> partsLists = new ArrayList<>();

  @Option(names = "--demo", description = "Use the catalogue that comes with the program.")
  private boolean demo;

  boolean isDemo() {
    return demo;
  }

  CatalogueFiles read(StandardInput standardInput) throws UnusableException, IOException {
    if (demo == (file != null)) {
      throw new UnusableException(
          (demo ? "--catalogue and --demo" : "no catalogue") + ": allowed one of the two");
    }
    if (demo && !partsLists.isEmpty()) {
      throw new UnusableException(
          "--demo and --parts: allowed with --catalogue, for the demo brings its own parts list");
    }
    if (file == null) {
      return CatalogueFiles.demo();
    }
    List<Source> lists = new ArrayList<>();
    for (String list : partsLists) {
      lists.add(Source.of(list, standardInput));
    }
    return CatalogueFiles.read(Source.of(file, standardInput), lists);
  }
}
