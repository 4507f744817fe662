package shop.consumer;

import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.Report;
import dev.jetting.rules.RulePack;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.json.ReportJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.render.ReportText;
import dev.jetting.rules.standard.StandardRulebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Goes once through what an outsider uses, with nothing there but the published artifacts and what
 * they need to run. Ends with an exception where something does not hold.
 *
 * <p>Arguments: {@code module-path}, {@code class-path} or {@code linked}, and a setup sheet.
 */
public final class Main {

  private Main() {}

  /**
   * Runs the consumer.
   *
   * @param args {@code module-path}, {@code class-path} or {@code linked}, and the file of a setup
   *     sheet
   * @throws IOException if the file cannot be read
   */
  public static void main(String[] args) throws IOException {
    Path sheet = Path.of(args[1]);
    boolean modules = !args[0].equals("class-path");
    Stream.of(Report.class, AssessedSetting.class, SheetJson.class, Main.class)
        .forEach(type -> check(type.getModule().isNamed() == modules, type + ", " + args[0]));
    Stream.of("org.jspecify.annotations.NullMarked", "org.junit.jupiter.api.Test")
        .forEach(name -> check(isAbsent(name), name + " is absent"));

    Rulebook rules =
        StandardRulebook.rulebook().withPacks(RulePack.load(Main.class.getClassLoader()));
    check(rules.rule("shop-has-the-jet").isPresent(), "the rule pack is found");

    Report report = rules.evaluate(AssessedSetting.of(SheetJson.read(Files.readString(sheet))));
    check(!report.passes(), "the demo that is lean in the middle does not pass");
    check(ReportText.of(report).contains("DANGER"), "the text warns");
    check(ReportJson.read(ReportJson.write(report)).equals(report), "JSON reads back equal");
    System.out.println("consumer, " + args[0] + ": as it should be");
  }

  private static boolean isAbsent(String name) {
    try {
      Class.forName(name);
      return false;
    } catch (ClassNotFoundException e) {
      return true;
    }
  }

  private static void check(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException("does not hold: " + what);
    }
  }
}
