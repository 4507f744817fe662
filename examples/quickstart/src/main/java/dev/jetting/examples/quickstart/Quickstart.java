package dev.jetting.examples.quickstart;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.advice.Adviser;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.render.ReportMarkdown;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Reads one setting file and prints what a tuner wants to know before anyone rides.
 *
 * <p>From the root of the project: {@code mvn -q -Pquickstart -pl examples/quickstart -am
 * process-classes}, with {@code -Dargs="--help"} for arguments.
 */
@Command(
    name = "quickstart",
    mixinStandardHelpOptions = true,
    header = {
      "Finds, before anyone rides, whether a two-stroke's carburettor setting is lean",
      "anywhere over the throttle range, why, and what to change."
    },
    description = {
      "",
      "A calculation on assumed coefficients, never a promise of safety: start from",
      "the rich side and confirm with plug chops, one change at a time.",
      ""
    },
    versionProvider = Quickstart.Version.class,
    exitCodeListHeading = "%nExit code%n",
    exitCodeList = {
      "0:no rule speaks against a careful first ride",
      "1:the report speaks against riding: danger found or not ruled out",
      "2:no report: input that cannot be used, or wrong arguments"
    },
    sortOptions = false)
final class Quickstart implements Callable<Integer> {

  private static final int SPEAKS_AGAINST = 1;
  private static final int UNUSABLE = 2;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "Setting file (JSON); - reads standard input.")
  private @Nullable String file;

  @Option(
      names = "--demo",
      paramLabel = "NAME",
      description = "A setting that comes with the program.")
  private @Nullable String demo;

  @Option(names = "--list-demos", description = "List these settings and exit.")
  private boolean listDemos;

  @ArgGroup(exclusive = true)
  private @Nullable Form form;

  /** Ways to print a report; without one it is the page for a terminal. */
  private static final class Form {
    @Option(names = "--compact", description = "Print a line for each finding.")
    private boolean compact;

    @Option(names = "--full", description = "Print the report with each assumed value.")
    private boolean full;

    @Option(names = "--json", description = "Print the report as JSON.")
    private boolean json;

    @Option(names = "--markdown", description = "Print the report as Markdown.")
    private boolean markdown;
  }

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Print the report in en, de or it; JSON is the same in each.")
  private String language = Locale.ENGLISH.getLanguage();

  @Option(
      names = "--colour",
      description = "Colour the words that warn, on a terminal and without NO_COLOR.")
  private boolean colour;

  @Spec private @Nullable CommandSpec spec;

  private final InputStream in;

  private Quickstart(InputStream in) {
    this.in = in;
  }

  /**
   * Runs the program and ends the process with its exit code.
   *
   * @param args the arguments; {@code --help} lists them
   */
  public static void main(String[] args) {
    System.exit(run(args, System.in, System.out, System.err));
  }

  /** Runs the program; output is UTF-8 whatever the locale. */
  static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
    CommandLine commandLine =
        new CommandLine(new Quickstart(in))
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setOut(new PrintWriter(out, false, StandardCharsets.UTF_8))
            .setErr(new PrintWriter(err, false, StandardCharsets.UTF_8))
            .setParameterExceptionHandler(
                (e, a) -> refuse(e.getCommandLine(), e.getMessage() + "; see --help"))
            .setExecutionExceptionHandler((e, command, parsed) -> refuse(command, e.getMessage()));
    int exitCode = commandLine.execute(args);
    commandLine.getOut().flush();
    commandLine.getErr().flush();
    return exitCode;
  }

  @Override
  public Integer call() throws UnreadableException, IOException {
    PrintWriter out = Objects.requireNonNull(spec, "spec").commandLine().getOut();
    if (listDemos) {
      out.print(Demo.list());
      return 0;
    }
    Report report = report(sheet());
    out.print(printed(report, wording()));
    return report.passes() ? 0 : SPEAKS_AGAINST;
  }

  private Wording wording() throws UnreadableException {
    try {
      return Wording.of(Locale.forLanguageTag(language));
    } catch (IllegalArgumentException e) {
      throw new UnreadableException("--language " + language + ": " + e.getMessage());
    }
  }

  private String printed(Report report, Wording wording) {
    if (form != null && form.json) {
      return ReportJson.write(report);
    }
    if (form != null && form.markdown) {
      return ReportMarkdown.of(report, wording);
    }
    String text = text(report, wording);
    return colour && Ansi.AUTO.enabled() ? Colour.of(text) : text;
  }

  private String text(Report report, Wording wording) {
    if (form != null && form.compact) {
      return ReportText.compact(report, wording);
    }
    return form != null && form.full
        ? ReportText.inFull(report, wording)
        : ReportText.of(report, wording);
  }

  private static Report report(SetupSheet sheet) throws UnreadableException {
    try {
      return Adviser.of(StandardRulebook.rulebook()).advise(AssessedSetting.of(sheet));
    } catch (IllegalArgumentException e) {
      throw new UnreadableException('"' + sheet.title() + "\": " + e.getMessage());
    }
  }

  private SetupSheet sheet() throws UnreadableException, IOException {
    if (file != null && demo != null) {
      throw new UnreadableException("FILE " + file + " and --demo " + demo + ": allowed one");
    }
    if (file != null) {
      return file.equals("-") ? SettingFile.read("standard input", in) : SettingFile.read(file);
    }
    Demo chosen = demo == null ? Demo.DEFAULT : demo(demo);
    try (InputStream sheet = chosen.open()) {
      return SettingFile.read(chosen.title(), sheet);
    }
  }

  private static Demo demo(String title) throws UnreadableException {
    return Demo.named(title)
        .orElseThrow(
            () -> new UnreadableException("--demo " + title + ": allowed one of " + Demo.titles()));
  }

  /** One line, whatever went wrong. */
  private static int refuse(CommandLine command, @Nullable String message) {
    String line = Objects.requireNonNullElse(message, "unknown fault");
    command
        .getErr()
        .println(
            "quickstart: " + line.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]+", " "));
    return UNUSABLE;
  }

  /** The version of the build. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
      try (InputStream text =
          Objects.requireNonNull(Quickstart.class.getResourceAsStream("version.txt"))) {
        return new String[] {
          "quickstart " + new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()
        };
      }
    }
  }
}
