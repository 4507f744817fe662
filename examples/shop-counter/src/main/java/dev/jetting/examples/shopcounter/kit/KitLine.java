package dev.jetting.examples.shopcounter.kit;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.kit.CornerRisk;
import dev.jetting.rules.kit.KitCoverage;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.MachineResult;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The result of one line of kits.
 *
 * @param number the line
 * @param kit the kit's id; empty where the line is no kit
 * @param state passes, fails, or no kit
 * @param machines a row for each machine and fuel
 * @param findings what was found
 */
public record KitLine(
    int number, String kit, State state, List<MachineRow> machines, List<KitFinding> findings) {

  /** The result. */
  public enum State {
    /** Nothing speaks against selling it. */
    PASSES,
    /** Something dangerous was found. */
    FAILS,
    /** The line could not be read as a kit. */
    NO_KIT;

    /** {@return its name in style sheets} */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * The recommended setting on one machine with one fuel.
   *
   * @param machine the machine
   * @param fuel number of the fuel in the market
   * @param today the greatest lean risk today, and where
   * @param coldest the same on the coldest day
   * @param hottest the same on the hottest day
   * @param passes whether it passes
   * @param serves how many drawn engines the kit serves; empty where that was not asked
   * @param add which jets to add, and how many engines the kit serves then
   */
  public record MachineRow(
      String machine,
      int fuel,
      String today,
      String coldest,
      String hottest,
      boolean passes,
      String serves,
      String add) {}

  /**
   * Something found.
   *
   * @param severity how much it matters, as a name in style sheets
   * @param of what it was found on
   * @param text what was found
   * @param remedy what to do
   */
  public record KitFinding(String severity, String of, String text, String remedy) {}

  static KitLine unreadable(int number, Message why, Words words) {
    return new KitLine(
        number,
        "",
        State.NO_KIT,
        List.of(),
        List.of(new KitFinding("danger", words.say("kits.of-line"), words.say(why), "")));
  }

  static KitLine of(int number, KitValidation validation, Words words) {
    List<KitFinding> findings = new ArrayList<>();
    String kit = words.say("kits.of-kit");
    validation.findings().forEach(found -> findings.add(finding(kit, found, words)));
    for (MachineResult machine : validation.machines()) {
      machine.findings().forEach(found -> findings.add(finding(machine.machine(), found, words)));
    }
    return new KitLine(
        number,
        validation.kit(),
        validation.passes() ? State.PASSES : State.FAILS,
        validation.machines().stream().map(machine -> row(machine, words)).toList(),
        findings);
  }

  private static KitFinding finding(String of, RankedFinding found, Words words) {
    return new KitFinding(
        found.severity().name().toLowerCase(Locale.ROOT),
        of,
        words.say(found.finding().words()),
        words.say(found.finding().remedy().message()));
  }

  private static MachineRow row(MachineResult machine, Words words) {
    return new MachineRow(
        machine.machine(),
        machine.fuel(),
        words.say(risk(machine.today())),
        words.say(risk(machine.coldest())),
        words.say(risk(machine.hottest())),
        machine.passes(),
        machine.coverage().map(coverage -> words.say(serves(coverage))).orElse(""),
        machine.coverage().map(coverage -> add(coverage, words)).orElse(""));
  }

  private static Message risk(CornerRisk corner) {
    return Words.message(
        "kits.risk",
        "risk",
        Argument.risk(corner.leanRisk()),
        "throttle",
        Argument.throttle(corner.throttle()));
  }

  private static Message serves(KitCoverage coverage) {
    return Words.message(
        "kits.serves.share", "share", Argument.risk(coverage.share(), KitCoverage.LEAST));
  }

  private static String add(KitCoverage coverage, Words words) {
    return coverage.extras().isEmpty()
        ? ""
        : words.say(
            Words.joined("kits.then", coverage.extras().stream().map(KitLine::extra).toList()));
  }

  private static Message extra(KitCoverage.Extra extra) {
    return Words.message("kits.extra", "part", extra.part(), "share", Argument.risk(extra.share()));
  }
}
