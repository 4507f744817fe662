package dev.jetting.examples.kitdesk;

import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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
      "Lines that are no kits are told by their number, and the rest goes on.",
      ""
    },
    sortOptions = false)
final class Validate implements Callable<Integer> {

  /** How many lines are in the works at a time. */
  private static final int BATCH = 256;

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
    KitValidator validator = KitValidator.of(catalogue.read(parent.in()));
    Source source = source(parent);
    KitFormat of =
        format == null ? KitFormat.of(source) : Words.constant("--format", KitFormat.class, format);
    PrintWriter page = Objects.requireNonNull(spec, "spec").commandLine().getOut();
    Tally tally = new Tally();
    ExecutorService workers = Executors.newFixedThreadPool(most);
    try (KitLines lines = new KitLines(source.lines(), of);
        ResultFile results = results(how, tally);
        Bar bar = Bar.of("kits", -1, parent.err(), parent.terminal())) {
      long done = tally.lastLine();
      List<Outcome> outcomes;
      do {
        outcomes = outcomes(lines.next(BATCH), done, validator, how, workers);
        for (Outcome outcome : outcomes) {
          if (outcome.line() > done) {
            take(outcome, source, of, tally, results, page);
          }
        }
        results.flush();
        bar.at(tally.lines());
      } while (!outcomes.isEmpty());
    } finally {
      workers.shutdownNow();
    }
    if (of != KitFormat.JSON) {
      page.print(source.name() + ", depth " + Words.word(how) + "\n\n" + tally.text());
    }
    return tally.exitCode();
  }

  private void take(
      Outcome outcome,
      Source source,
      KitFormat of,
      Tally tally,
      ResultFile results,
      PrintWriter page)
      throws IOException {
    tally.add(outcome);
    results.write(outcome);
    if (outcome.validation().isEmpty()) {
      KitDesk.tell(
          Objects.requireNonNull(spec, "spec").commandLine(),
          source.name() + ", line " + outcome.line() + ": " + outcome.problem());
    } else if (of == KitFormat.JSON) {
      page.print(KitText.of(outcome.validation().get()));
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

  private ResultFile results(KitDepth how, Tally tally) throws UnusableException, IOException {
    if (out == null) {
      return ResultFile.none();
    }
    return resume ? ResultFile.resume(out, how, tally::add) : ResultFile.create(out);
  }

  /** In the order of the lines, whichever was done first; those done before are passed over. */
  private static List<Outcome> outcomes(
      List<Numbered> lines,
      long done,
      KitValidator validator,
      KitDepth how,
      ExecutorService workers)
      throws InterruptedException {
    List<Future<Outcome>> pending = new ArrayList<>();
    for (Numbered line : lines) {
      pending.add(
          workers.submit(
              () ->
                  line.line() <= done
                      ? new Outcome(line.line(), java.util.Optional.empty(), "")
                      : Outcome.of(line, validator, how)));
    }
    List<Outcome> outcomes = new ArrayList<>();
    for (Future<Outcome> each : pending) {
      try {
        outcomes.add(each.get());
      } catch (ExecutionException e) {
        throw new IllegalStateException(String.valueOf(e.getCause()), e);
      }
    }
    return outcomes;
  }
}
