package dev.jetting.examples.kitdesk;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;

/**
 * A desk for a seller of carburettor parts.
 *
 * <p>From the root of the project: {@code mvn -q -Pkit-desk -pl examples/kit-desk -am
 * process-classes}, with {@code -Dargs="--help"} for arguments.
 */
@Command(
    name = "kit-desk",
    mixinStandardHelpOptions = true,
    header = "Checks kits of carburettor parts before they are sold, and searches catalogues.",
    description = {
      "",
      "A calculation on assumed coefficients, never a promise of safety: start from",
      "the rich side and confirm with plug chops, one change at a time.",
      ""
    },
    versionProvider = KitDesk.Version.class,
    subcommands = {Validate.class, Search.class},
    exitCodeListHeading = "%nExit code%n",
    exitCodeList = {
      "0:every kit passes; a setting that is right was found",
      "1:a kit fails; no setting that was found is right",
      "2:input or output that cannot be used, no kits at all, or wrong arguments",
      "3:lines that are no kits, whatever came of the others"
    },
    sortOptions = false)
final class KitDesk implements Callable<Integer> {

  private final StandardInput in;
  private final PrintStream err;
  private final boolean terminal;

  private KitDesk(InputStream in, PrintStream err, boolean terminal) {
    this.in = new StandardInput(in);
    this.err = err;
    this.terminal = terminal;
  }

  /**
   * Runs the program and ends the process with its exit code.
   *
   * @param args the arguments; {@code --help} lists them
   */
  public static void main(String[] args) {
    System.exit(run(args, System.in, System.out, System.err, Ansi.AUTO.enabled()));
  }

  /** Runs the program; output is UTF-8 whatever the locale. */
  static int run(
      String[] args, InputStream in, PrintStream out, PrintStream err, boolean terminal) {
    CommandLine commandLine =
        new CommandLine(new KitDesk(in, err, terminal))
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setOut(new PrintWriter(out, false, StandardCharsets.UTF_8))
            .setErr(new PrintWriter(err, false, StandardCharsets.UTF_8))
            .setParameterExceptionHandler(
                (e, a) -> refuse(e.getCommandLine(), e.getMessage() + "; see --help"))
            .setExecutionExceptionHandler((e, command, parsed) -> refuse(command, e.getMessage()));
    int exitCode = execute(commandLine, args);
    commandLine.getErr().flush();
    // It flushes too, and reports a full disk, for which there is no exception.
    return commandLine.getOut().checkError()
        ? refuse(commandLine, "standard output: cannot be written")
        : exitCode;
  }

  /** An error beyond repair, such as no memory, is reported in a line like any other. */
  private static int execute(CommandLine commandLine, String[] args) {
    try {
      return commandLine.execute(args);
    } catch (Error e) {
      return refuse(commandLine, "stopped: " + e);
    }
  }

  @Override
  public Integer call() throws UnusableException {
    throw new UnusableException("no command: allowed validate or search; see --help");
  }

  StandardInput in() {
    return in;
  }

  PrintStream err() {
    return err;
  }

  boolean terminal() {
    return terminal;
  }

  /** Prints one line to the error stream, without control characters. */
  static void printError(CommandLine command, String line) {
    command
        .getErr()
        .println("kit-desk: " + line.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]+", " "));
    command.getErr().flush();
  }

  private static int refuse(CommandLine command, @Nullable String message) {
    printError(command, Objects.requireNonNullElse(message, "unknown fault"));
    return ExitCode.UNUSABLE;
  }

  /** The version of the build. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
      return new String[] {text()};
    }

    static String text() throws IOException {
      try (InputStream text =
          Objects.requireNonNull(KitDesk.class.getResourceAsStream("version.txt"))) {
        return "kit-desk " + new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
      }
    }
  }
}
