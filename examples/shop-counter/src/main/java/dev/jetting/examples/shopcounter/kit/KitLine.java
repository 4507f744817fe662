package dev.jetting.examples.shopcounter.kit;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.kit.CornerRisk;
import dev.jetting.rules.kit.KitCoverage;
import dev.jetting.rules.kit.KitValidation;
import dev.jetting.rules.kit.MachineResult;
import dev.jetting.units.TradeStyle;
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
    PASSES("passes"),
    /** Something dangerous was found. */
    FAILS("fails"),
    /** The line could not be read as a kit. */
    NO_KIT("no kit");

    private final String words;

    State(String words) {
      this.words = words;
    }

    /** {@return what people read} */
    public String words() {
      return words;
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
   * @param severity how much it matters, as a word
   * @param of what it was found on
   * @param text what was found
   * @param remedy what to do
   */
  public record KitFinding(String severity, String of, String text, String remedy) {}

  static KitLine unreadable(int number, String why) {
    return new KitLine(
        number,
        "",
        State.NO_KIT,
        List.of(),
        List.of(new KitFinding("danger", "the line", why, "")));
  }

  static KitLine of(int number, KitValidation validation) {
    List<KitFinding> findings = new ArrayList<>();
    validation.findings().forEach(found -> findings.add(finding("the kit", found)));
    for (MachineResult machine : validation.machines()) {
      machine.findings().forEach(found -> findings.add(finding(machine.machine(), found)));
    }
    return new KitLine(
        number,
        validation.kit(),
        validation.passes() ? State.PASSES : State.FAILS,
        validation.machines().stream().map(KitLine::row).toList(),
        findings);
  }

  private static KitFinding finding(String of, RankedFinding found) {
    return new KitFinding(
        found.severity().name().toLowerCase(Locale.ROOT),
        of,
        found.finding().text(),
        found.finding().remedy().text());
  }

  private static MachineRow row(MachineResult machine) {
    return new MachineRow(
        machine.machine(),
        machine.fuel(),
        risk(machine.today()),
        risk(machine.coldest()),
        risk(machine.hottest()),
        machine.passes(),
        machine.coverage().map(KitLine::serves).orElse(""),
        machine.coverage().map(KitLine::add).orElse(""));
  }

  private static String risk(CornerRisk corner) {
    return TradeStyle.probability(corner.leanRisk())
        + " at "
        + TradeStyle.throttle(corner.throttle()).replace(" throttle", "");
  }

  private static String serves(KitCoverage coverage) {
    return TradeStyle.probability(coverage.share(), KitCoverage.LEAST);
  }

  private static String add(KitCoverage coverage) {
    List<String> extras =
        coverage.extras().stream()
            .map(extra -> extra.part() + " (then " + TradeStyle.probability(extra.share()) + ")")
            .toList();
    return String.join(", then ", extras);
  }
}
