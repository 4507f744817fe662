package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.rules.Report;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.units.TradeStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The cards to print: the setting, to keep with the machine, and the weather card for the track.
 *
 * @param machine the machine
 * @param setting each part with its size
 * @param setIn the air and the fuel that it was set in
 * @param days the riskiest opening of each day
 * @param verdict what its report comes to
 * @param readings what was read last
 * @param cautions what to take care of
 * @param weather which main jet and clip in which air
 */
public record Cards(
    Machine machine,
    Map<String, String> setting,
    String setIn,
    List<DayLine> days,
    Verdict verdict,
    List<String> readings,
    List<String> cautions,
    WeatherCard weather) {

  private static final int READINGS = 6;

  /**
   * Works the cards out.
   *
   * @param machine the machine
   * @param log its log, the newest line first
   * @return the cards
   */
  public static Cards of(Machine machine, List<Entry> log) {
    Knowledge known = Knowledge.of(machine);
    var assessed = known.assess(machine.sheet());
    Report report = StandardRulebook.rulebook().evaluate(assessed);
    return new Cards(
        machine,
        setting(machine.sheet().setup()),
        setIn(machine.sheet().setup()),
        DayLine.all(assessed),
        Verdict.of(report),
        log.stream()
            .filter(entry -> entry.kind() == Entry.Kind.READ)
            .limit(READINGS)
            .map(entry -> entry.day() + " " + entry.text())
            .toList(),
        report.cautions(),
        WeatherCard.of(machine, known));
  }

  static Map<String, String> setting(Setup setup) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (Dial dial : Dial.all()) {
      parts.put(dial.label(), dial.text(setup.setting()));
    }
    parts.put("Carburettor", setup.setting().carburettor().id());
    parts.put("Intake", setup.setting().intake().id());
    parts.put("Engine", setup.engine().id() + ", " + setup.engine().displacement());
    return parts;
  }

  private static String setIn(Setup setup) {
    return TradeStyle.temperature(setup.air().temperature())
        + ", "
        + TradeStyle.pressure(setup.air().pressure())
        + ", "
        + TradeStyle.humidity(setup.air().humidity())
        + "; fuel "
        + setup.fuel();
  }
}
