package dev.jetting.examples.shopcounter.bench;

import dev.jetting.core.air.Air;
import dev.jetting.core.air.StandardAtmosphere;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Setting;
import dev.jetting.examples.shopcounter.store.Machine;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.PartsAtHand;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.MovedSetting;
import dev.jetting.units.Altitude;
import dev.jetting.units.Density;
import dev.jetting.units.JetBore;
import dev.jetting.units.Lambda;
import dev.jetting.units.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Which main jet and clip in which air, worked out for one machine.
 *
 * @param heights the heights above the sea, for people
 * @param rows a row for each temperature, the coldest first
 * @param ranges the leanest setting that serves up to an air, the densest air first
 */
public record WeatherCard(List<String> heights, List<Row> rows, List<Range> ranges) {

  private static final int HEIGHT_STEP = 500;
  private static final int HEIGHTS = 4;
  private static final List<Integer> TEMPERATURES = List.of(-10, 0, 10, 20, 30, 40);

  /**
   * A temperature.
   *
   * @param temperature the temperature, for people
   * @param cells the setting at each height
   */
  public record Row(String temperature, List<Cell> cells) {}

  /**
   * A setting in one air.
   *
   * @param text main jet and clip, for people
   * @param safe whether the lean risk is accepted
   * @param fitted whether it is what is on the machine
   */
  public record Cell(String text, boolean safe, boolean fitted) {}

  /**
   * A setting and the air that it serves in.
   *
   * @param text main jet and clip, for people
   * @param densest the air density up to which it serves everywhere in the table, for people
   * @param coldest that air's temperature and height, for people
   */
  public record Range(String text, String densest, String coldest) {}

  private record Place(Air air, Temperature temperature, Altitude height) {
    Density density() {
      return air.density();
    }

    Message words() {
      return Words.message(
          "cards.weather.place",
          "temperature",
          Argument.temperature(temperature),
          "height",
          metres(height));
    }
  }

  static WeatherCard of(Machine machine, Knowledge known, Words words) {
    SetupSheet sheet = jetsAlone(machine.sheet());
    List<Altitude> heights = heights(sheet.setup().air());
    List<Place> places = new ArrayList<>();
    Map<Message, Setting> settings = new LinkedHashMap<>();
    List<Row> rows = new ArrayList<>();
    for (int celsius : TEMPERATURES) {
      List<Cell> cells = new ArrayList<>();
      for (Altitude height : heights) {
        Place place = place(celsius, height, sheet.setup().air());
        places.add(place);
        cells.add(cell(sheet, place, known, settings, words));
      }
      rows.add(new Row(words.say(Argument.temperature(Temperature.ofCelsius(celsius))), cells));
    }
    return new WeatherCard(
        heights.stream().map(height -> words.say(metres(height))).toList(),
        rows,
        ranges(sheet, settings, places, known, words));
  }

  /** The main jets at hand, and of all else what is fitted. */
  private static SetupSheet jetsAlone(SetupSheet sheet) {
    Setting fitted = sheet.setup().setting();
    List<JetBore> mains =
        Dial.MAIN.sizes(sheet.parts(), fitted).stream().map(Setting::mainJet).toList();
    return sheet.withParts(
        PartsAtHand.builder()
            .pilotJets(List.of(fitted.pilotJet()))
            .cutaways(List.of(fitted.cutaway()))
            .needleJets(List.of(fitted.needleJet()))
            .needles(List.of(fitted.needle()))
            .mainJets(mains)
            .build());
  }

  /** Round heights, from below the machine's own up. */
  private static List<Altitude> heights(Air air) {
    double here = Math.max(0, StandardAtmosphere.pressureAltitude(air.pressure()).metres());
    long first = Math.max(0, Math.round(here / HEIGHT_STEP) - 1);
    return IntStream.range(0, HEIGHTS)
        .mapToObj(i -> Altitude.ofMetres((double) (first + i) * HEIGHT_STEP))
        .toList();
  }

  private static Place place(int celsius, Altitude height, Air like) {
    Temperature temperature = Temperature.ofCelsius(celsius);
    return new Place(Air.at(height, temperature, like.humidity()), temperature, height);
  }

  private static Cell cell(
      SetupSheet sheet, Place place, Knowledge known, Map<Message, Setting> settings, Words words) {
    Setup there = sheet.setup().withAir(place.air());
    MovedSetting moved = known.tuner().move(sheet, there, known.calibration());
    Setting setting = moved.setup().setting();
    boolean safe = serves(sheet, setting, place, known);
    Message text = text(setting);
    if (safe) {
      settings.put(text, setting);
    }
    return new Cell(words.say(text), safe, text.equals(text(there.setting())));
  }

  private static Message text(Setting setting) {
    return Words.message(
        "cards.weather.setting",
        "main",
        Dial.MAIN.size(setting),
        "clip",
        setting.clip().grooveFromTop(),
        "turns",
        Dial.SCREW.text(setting).replace(" turns", "").replace(" turn", ""));
  }

  private static Argument metres(Altitude height) {
    return Argument.exact(Math.rint(height.metres()), "m");
  }

  private static List<Range> ranges(
      SetupSheet sheet,
      Map<Message, Setting> settings,
      List<Place> places,
      Knowledge known,
      Words words) {
    List<Place> byDensity = places.stream().sorted(Comparator.comparing(Place::density)).toList();
    // The table goes from rich to lean: of those that serve up to one air, the last is put.
    Map<Place, Message> densest = new LinkedHashMap<>();
    settings.forEach(
        (text, setting) ->
            byDensity.stream()
                .takeWhile(place -> serves(sheet, setting, place, known))
                .reduce((thinner, denser) -> denser)
                .ifPresent(place -> densest.put(place, text)));
    return densest.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<Place, Message> e) -> e.getKey().density()).reversed())
        .map(e -> range(e.getValue(), e.getKey(), words))
        .toList();
  }

  /** The density is rounded down, which is the safe side. */
  private static Range range(Message setting, Place place, Words words) {
    double thousandths = Math.floor(place.density().kilogramsPerCubicMetre() * 1000);
    return new Range(
        words.say(setting),
        words.say(Argument.fixed(thousandths / 1000, "kg/m³", 3)),
        words.say(place.words()));
  }

  /** Whether the risk in one air is accepted, climbs included, and the overrun not too lean. */
  private static boolean serves(SetupSheet sheet, Setting setting, Place place, Knowledge known) {
    SetupSheet there =
        sheet.toBuilder()
            .setup(sheet.setup().withSetting(setting).withAir(place.air()))
            .riding(sheet.riding().withDays(place.air(), place.air()))
            .build();
    AssessedSetting assessed = known.assess(there);
    Lambda limit = known.riskModel().limits().overrun(there.setup().engine().need());
    return !assessed.worst().leanRisk().isMoreThan(there.riding().acceptedRisk())
        && !assessed.overrun().lambda().isMoreThan(limit);
  }
}
