package dev.jetting.examples.kitdesk;

import dev.jetting.rules.Rulebook;
import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.standard.StandardRulebook;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Looks into one kit or a file of them. */
@Command(
    name = "validate",
    mixinStandardHelpOptions = true,
    versionProvider = KitDesk.Version.class,
    header = "Looks into one kit, or into a file of them, before they are sold.",
    description = {
      "",
      "A line that is no kit is reported by its number; the rest is processed.",
      ""
    },
    sortOptions = false)
final class Validate implements Callable<Integer> {

  @Mixin private CatalogueOptions catalogue = new CatalogueOptions();

  @Parameters(
      arity = "0..1",
      paramLabel = "KITS",
      description =
          "A kit (.json), a kit a line (JSON lines), or a table (.csv); - reads standard input.")
  private @Nullable String file;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "json, jsonl or csv; by the file's name unless given.")
  private @Nullable String format;

  @Option(
      names = "--depth",
      paramLabel = "DEPTH",
      defaultValue = "setting",
      description = {
        "fit: do the parts fit each other;",
        "setting: and is each recommended setting safe (the default);",
        "coverage: and how many engines does the kit serve."
      })
  private String depth = "setting";

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write a JSON object for each line to a new file.")
  private @Nullable Path out;

  @Option(
      names = "--resume",
      description = "Go on after the last line that is in --out; without the file, begin it.")
  private boolean resume;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "How many kits at a time, 1 to 64; as many as processors unless given.")
  private @Nullable Integer threads;

  @ParentCommand private @Nullable KitDesk desk;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() throws UnusableException, IOException, InterruptedException {
    KitDesk parent = Objects.requireNonNull(desk, "desk");
    KitDepth how = Words.constant("--depth", KitDepth.class, depth);
    if (resume && out == null) {
      throw new UnusableException("--resume without --out: allowed with a file to go on with");
    }
    int most = Words.threads(threads);
    CatalogueFiles files = catalogue.read(parent.in());
    Source source = source(parent);
    KitFormat of =
        format == null ? KitFormat.of(source) : Words.constant("--format", KitFormat.class, format);
    if (out != null && source.is(out)) {
      throw new UnusableException("--out " + out + ": is the file of kits: allowed another");
    }
    Rulebook rulebook = StandardRulebook.rulebook();
    ResultHead head = new ResultHead(KitDesk.Version.text(), rulebook, how, files);
    Tally tally = new Tally();
    ExecutorService workers = Executors.newFixedThreadPool(most);
    try (KitLines lines = new KitLines(source, of);
        EarlierResults earlier = earlier(head);
        Bar bar = Bar.of("kits", -1, parent.err(), parent.terminal())) {
      passOver(earlier, lines, source, tally);
      KitValidator validator = KitValidator.of(files.catalogue(), rulebook, RiskModel.assumed());
      KitQueue queue = new KitQueue(lines, line -> Outcome.of(line, validator, how), workers);
      try (ResultFile results = results(earlier, head)) {
        for (var next = queue.next(); next.isPresent(); next = queue.next()) {
          take(next.get(), source, of, tally, results);
          bar.at(tally.lines());
        }
      }
    } finally {
      workers.shutdownNow();
    }
    if (tally.lines() == 0) {
      throw new UnusableException(source.name() + ": no kits: allowed at least one");
    }
    if (of != KitFormat.JSON) {
      page().print(source.name() + ", depth " + Words.word(how) + "\n\n" + tally.text());
    }
    return tally.exitCode();
  }

  private PrintWriter page() {
    return Objects.requireNonNull(spec, "spec").commandLine().getOut();
  }

  private EarlierResults earlier(ResultHead head) throws UnusableException, IOException {
    return resume && out != null && Files.exists(out)
        ? EarlierResults.of(out, head)
        : EarlierResults.none();
  }

  /** Counts the results that there are, each held against the line that it is of. */
  private static void passOver(EarlierResults earlier, KitLines lines, Source source, Tally tally)
      throws UnusableException, IOException {
    for (var result = earlier.next(); result.isPresent(); result = earlier.next()) {
      Optional<Numbered> line = lines.next();
      long number = result.get().line();
      if (line.isEmpty() || line.get().line() != number) {
        throw new UnusableException(
            source.name()
                + ", line "
                + number
                + ": is no kit, but --out has a result of it"
                + ": allowed the kits that it was begun with");
      }
      if (!line.get().input().equals(result.get().input())) {
        throw new UnusableException(
            source.name()
                + ", line "
                + number
                + ": is not what the result in --out is of"
                + ": allowed the kits that it was begun with");
      }
      tally.add(result.get().verdict());
    }
  }

  private void take(Outcome outcome, Source source, KitFormat of, Tally tally, ResultFile results)
      throws UnusableException {
    tally.add(Verdict.of(outcome));
    results.write(outcome);
    results.flush();
    if (outcome.validation().isEmpty()) {
      KitDesk.printError(
          Objects.requireNonNull(spec, "spec").commandLine(),
          source.name() + ", line " + outcome.line() + ": " + outcome.problem());
    } else if (of == KitFormat.JSON) {
      page().print(KitText.of(outcome.validation().get()));
    }
  }

  private Source source(KitDesk parent) throws UnusableException {
    if (file != null) {
      return Source.of(file, parent.in());
    }
    if (catalogue.isDemo()) {
      return Source.demo("kits.jsonl");
    }
    throw new UnusableException("no kits: allowed a file, or - for standard input");
  }

  private ResultFile results(EarlierResults earlier, ResultHead head) throws UnusableException {
    if (out == null) {
      return ResultFile.none();
    }
    return resume && Files.exists(out)
        ? ResultFile.after(earlier, out, head)
        : ResultFile.create(out, head);
  }
}
