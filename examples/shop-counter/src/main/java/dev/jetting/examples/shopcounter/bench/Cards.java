package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.mixture.Setup;
import dev.jetting.examples.shopcounter.store.Entry;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.Report;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.text.Argument;
import dev.jetting.units.Displacement;
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
   * @param words the language
   * @return the cards
   */
  public static Cards of(Machine machine, List<Entry> log, Words words) {
    Knowledge known = Knowledge.of(machine);
    var assessed = known.assess(machine.sheet());
    Report report = StandardRulebook.rulebook().evaluate(assessed);
    return new Cards(
        machine,
        setting(machine.sheet().setup(), words),
        setIn(machine.sheet().setup(), words),
        DayLine.all(assessed, words),
        Verdict.of(report, words),
        log.stream()
            .filter(entry -> entry.kind() == Entry.Kind.READ)
            .limit(READINGS)
            .map(entry -> entry.day() + " " + entry.text(words.tag()))
            .toList(),
        report.cautions(words.wording()),
        WeatherCard.of(machine, known, words));
  }

  static Map<String, String> setting(Setup setup, Words words) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (Dial dial : Dial.all()) {
      parts.put(words.say(dial.label()), words.say(dial.size(setup.setting())));
    }
    parts.put(words.say("cards.carburettor"), setup.setting().carburettor().id());
    parts.put(words.say("cards.intake"), setup.setting().intake().id());
    parts.put(
        words.say("cards.engine"),
        setup.engine().id() + ", " + words.say(displacement(setup.engine().displacement())));
    return parts;
  }

  private static Argument displacement(Displacement displacement) {
    return Argument.exact(displacement.cubicCentimetres(), "cm³");
  }

  private static String setIn(Setup setup, Words words) {
    return words.say(
        "cards.air",
        "temperature",
        Argument.temperature(setup.air().temperature()),
        "pressure",
        Argument.pressure(setup.air().pressure()),
        "humidity",
        Argument.humidity(setup.air().humidity()),
        "fuel",
        Argument.fuel(setup.fuel()));
  }
}
