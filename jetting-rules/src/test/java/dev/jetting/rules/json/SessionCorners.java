package dev.jetting.rules.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.jetting.rules.Rulebook;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.IdleAnswer;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.RunDown;
import dev.jetting.rules.tuning.Symptom;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * Draws tuning sessions: a sheet and a tuner at the corners of their ranges, steps with other
 * parts, air and fuel, and observations of every kind in any order.
 */
final class SessionCorners {

  static final Rulebook RULES = StandardRulebook.rulebook();

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String SHEET =
      SheetJson.write(SheetJson.read(Documents.read("example-sheet.golden.json")));
  private static final String SESSION =
      SessionJson.write(
          TuningSession.beginning(SheetJson.read(Documents.read("bare-sheet.json"))),
          Tuner.readingWith(Set.of(Instrument.PLUG)));
  private static final List<String> SETUP = List.of("engine", "setting", "air", "fuel");
  private static final List<String> THROTTLES =
      List.of("0", "0.125", "0.25", "0.5", "0.75", "1", "0.000000001", "0.99", "0.3");
  private static final List<String> SPEEDS =
      List.of("1500 rpm", "4000 rpm", "7500 rpm", "0.001 rpm", "1 rpm", "30000 rpm");
  private static final List<String> HARM =
      List.of("{'colour': 'white'}", "{'symptom': 'pings'}", "{'symptom': 'seizes'}");
  private static final Corners SHEETS = new Corners(SHEET, CornerRuns.takes(SheetJson::read));
  private static final Corners TUNERS =
      new Corners(
          tree(SESSION).get("tuner").toString(), CornerRuns.takes(SessionCorners::readTuner));

  private final Random random;

  SessionCorners(Random random) {
    this.random = random;
  }

  private static ObjectNode tree(String json) {
    try {
      return (ObjectNode) MAPPER.readTree(json.replace('\'', '"'));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e); // what was written here is JSON
    }
  }

  private static void readTuner(String tuner) {
    ObjectNode session = tree(SESSION);
    session.set("tuner", tree(tuner));
    SessionJson.readTuner(session.toString(), RULES);
  }

  /** A session with its tuner; the reader takes it or not. */
  String next() {
    ObjectNode session = tree(SESSION);
    ObjectNode sheet = sheet();
    session.set("sheet", sheet);
    ArrayNode steps = session.putArray("steps");
    List<ObjectNode> setups = new ArrayList<>();
    ObjectNode other = sheet();
    setups.add(sheet.deepCopy().retain(SETUP));
    int most = random.nextInt(40) == 0 ? 80 : 1 + random.nextInt(12);
    int seen = 0;
    Draw draw = draw();
    while (steps.size() < 80 && (steps.isEmpty() || seen < most)) {
      ObjectNode step = steps.addObject();
      step.set("setup", setups.get(setups.size() - 1));
      ArrayNode observations = step.putArray("observations");
      for (int i = random.nextInt(most == 80 ? 20 : 4); i > 0 && seen < most; i--, seen++) {
        observations.add(draw.observation());
      }
      if (random.nextInt(3) == 0) {
        step.set("checks", checks());
      }
      setups.add(changed(setups, other));
    }
    if (random.nextBoolean()) {
      session.set("checks", checks());
    }
    session.set("tuner", tuner());
    return session.toString();
  }

  private ObjectNode sheet() {
    return tree(random.nextInt(3) == 0 ? SHEET : SHEETS.of(random));
  }

  /** Another part, day or fuel, the setup of another sheet, or one that was left before. */
  private ObjectNode changed(List<ObjectNode> setups, ObjectNode other) {
    ObjectNode changed = any(setups).deepCopy();
    switch (random.nextInt(6)) {
      case 0 -> changed.set("air", other.get("air"));
      case 1 -> changed.set("fuel", other.get("fuel"));
      case 2 -> changed.set("setting", other.get("setting"));
      case 3, 4 -> {
        ObjectNode setting = (ObjectNode) changed.get("setting");
        String part = any(List.of("mainJet", "pilotJet", "screw", "clip", "cutaway", "needleJet"));
        JsonNode to =
            part.equals("clip")
                ? MAPPER.getNodeFactory().textNode(1 + random.nextInt(5) + " of 5 from top")
                : other.at("/setting/" + part);
        setting.set(part, to);
      }
      default -> {
        // as it was
      }
    }
    return changed;
  }

  private ArrayNode checks() {
    ArrayNode checks = MAPPER.createArrayNode();
    boolean all = random.nextInt(3) > 0;
    for (Check check : Check.values()) {
      if (all || random.nextInt(3) > 0) {
        checks.add(check.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
    }
    return checks;
  }

  private ObjectNode tuner() {
    if (random.nextInt(4) == 0) {
      return (ObjectNode) tree(SESSION).get("tuner");
    }
    ObjectNode tuner = tree(TUNERS.of(random));
    if (random.nextInt(3) == 0) {
      double[] cuts = random.doubles(4, -4.6, 4.6).map(StrictMath::exp).sorted().toArray();
      ArrayNode colours = (ArrayNode) tuner.at("/meanings/colours");
      for (int i = 0; i < colours.size(); i++) {
        ((ObjectNode) colours.get(i).get("meaning"))
            .put("from", i == 4 ? 0.01 : cuts[3 - i])
            .put("to", i == 0 ? 100 : cuts[4 - i]);
      }
    }
    ArrayNode instruments = tuner.putArray("instruments");
    for (Instrument instrument : Instrument.values()) {
      if (random.nextBoolean()) {
        instruments.add(instrument.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
    }
    return tuner;
  }

  /** Draws observations. */
  private interface Draw {
    JsonNode observation();
  }

  /** Any; at one opening; one and the same; or harm and one other at one opening. */
  private Draw draw() {
    String throttle = throttle();
    JsonNode one = observation(throttle, evidence(throttle));
    return switch (random.nextInt(5)) {
      case 0 -> () -> observation(throttle, evidence(throttle));
      case 1 -> one::deepCopy;
      case 2 -> () -> random.nextBoolean() ? one.deepCopy() : observation(throttle, any(HARM));
      default ->
          () -> {
            String at = throttle();
            return observation(at, evidence(at));
          };
    };
  }

  private JsonNode observation(String throttle, String evidence) {
    ObjectNode seen = MAPPER.createObjectNode();
    seen.put("throttle", throttle).put("speed", any(SPEEDS));
    return seen.set("evidence", tree(evidence));
  }

  private String throttle() {
    return random.nextInt(10) == 0 ? String.valueOf(random.nextDouble()) : any(THROTTLES);
  }

  private String evidence(String throttle) {
    String lambda = any(List.of("0.4", "2", "0.8", "0.9", "1", "1.1", "1.3", "0.6"));
    String hotter = any(List.of("0", "1", "-1", "25", "-400", "2000", "-2000"));
    return switch (random.nextInt(throttle.equals("0") ? 7 : 6)) {
      case 0 -> "{'wideband': " + lambda + "}";
      case 1 -> "{'colour': '" + any(PlugColour.values()) + "'}";
      case 2 -> "{'symptom': '" + any(Symptom.values()) + "'}";
      case 3 -> "{'exhaustTemperature': {'hotter': '" + hotter + " K', 'good': " + lambda + "}}";
      case 4 -> "{'overrun': '" + any(RunDown.values()) + "'}";
      case 5 -> "{'proven': true}";
      default -> "{'idle': '" + any(IdleAnswer.values()) + "'}";
    };
  }

  private String any(Enum<?>[] values) {
    return any(Arrays.asList(values)).name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
