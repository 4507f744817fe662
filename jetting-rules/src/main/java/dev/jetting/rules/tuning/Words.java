package dev.jetting.rules.tuning;

import dev.jetting.core.mixture.ErrorSource;
import dev.jetting.units.ThrottleOpening;
import dev.jetting.units.TradeStyle;
import dev.jetting.units.number.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a session says to a rider, piece by piece: sentences that a workshop says aloud. */
final class Words {

  private static final String COVER_THE_CLUTCH =
      "Ride with the clutch covered: a lean seizure can lock the wheel. If the engine rattles, slows"
          + " or feels suddenly crisp, pull the clutch and stop the test.";

  private static final String ONE_CHANGE = "Change one thing, from the rich side, and do it again.";

  private Words() {}

  static String opening(ThrottleOpening throttle) {
    return throttle.equals(ThrottleOpening.CLOSED) ? "idle" : TradeStyle.throttle(throttle);
  }

  static List<String> howTo(NextTest test) {
    List<String> steps = new ArrayList<>();
    steps.add("The test: " + what(test));
    steps.addAll(
        switch (test.kind()) {
          case IDLE -> idle(test.instrument());
          case STEADY -> STEADY;
          case PLUG_CHOP -> PLUG_CHOP;
          case ROLL_ON -> ROLL_ON;
          case RUN_DOWN -> RUN_DOWN;
        });
    return List.copyOf(steps);
  }

  private static String what(NextTest test) {
    String speed = " at about " + Decimals.fixed(test.speed().rpm(), 0) + " rpm.";
    return switch (test.kind()) {
      case RUN_DOWN -> "throttle shut after a long pull, from" + speed.substring(3);
      case IDLE -> "idle" + speed;
      case STEADY, PLUG_CHOP, ROLL_ON -> TradeStyle.throttle(test.throttle()) + speed;
    };
  }

  private static List<String> idle(Instrument instrument) {
    List<String> steps = new ArrayList<>();
    steps.add("Let the engine idle until it is warm through.");
    if (instrument != Instrument.FEEL) {
      steps.add("Read the instrument once it has settled.");
    }
    steps.add(
        "Try the screw a quarter turn each way: the best idle should lie where it stands, between"
            + " three quarters and two and a half turns out. Outside of that the pilot jet is the"
            + " wrong size. Put the screw back.");
    steps.add(
        "Blip the throttle. An idle that hangs is lean. One that drops and stumbles is rich. One that"
            + " falls back at once is clean.");
    return steps;
  }

  private static final List<String> PLUG_CHOP =
      List.of(
          "Off public roads, engine warm, a new plug of the right heat range in, tools and gloves at"
              + " hand.",
          COVER_THE_CLUTCH,
          "Hold the throttle opening steady for some ten seconds under load; mark it on the grip.",
          "Pull the clutch and cut the ignition at that very opening, then roll out: no closed"
              + " throttle against the engine, no idling home.",
          "Let plug and exhaust cool, or use gloves; read the insulator deep down, not its tip.",
          ONE_CHANGE);

  private static final List<String> STEADY =
      List.of(
          "Off public roads, engine and instrument warm.",
          COVER_THE_CLUTCH,
          "Hold the throttle opening steady under load until the reading has settled, ten seconds at"
              + " most; mark it on the grip.",
          "Then pull the clutch before closing the throttle: no closed throttle against the engine.",
          ONE_CHANGE);

  private static final List<String> ROLL_ON =
      List.of(
          "Off public roads, engine warm.",
          COVER_THE_CLUTCH,
          "Ride steadily at this opening, then open the throttle quickly to a half.",
          "A hole or a late answer is lean. Coughing and loading up is rich. Otherwise it is clean.",
          ONE_CHANGE);

  private static final List<String> RUN_DOWN =
      List.of(
          "Off public roads, engine warm.",
          COVER_THE_CLUTCH,
          "Pull for ten seconds, shut the throttle, and let the engine run the machine down.",
          "Popping and an idle that hangs are lean. An engine that dies is rich. A quiet run down to"
              + " idle is clean.",
          ONE_CHANGE);

  static String check(Check check) {
    return switch (check) {
      case AIR_LEAK ->
          "Air leak: flanges, crankshaft seals and the carburettor's rubber are tight.";
      case IGNITION_TIMING -> "Ignition timing is as specified.";
      case FUEL_DELIVERY ->
          "Fuel: tap, hose and float valve deliver a quarter more than full throttle draws.";
      case FUEL_LEVEL -> "The float level is as specified.";
      case JETS_CLEAN -> "Jets and passages are clean, and the jets are the size stamped on them.";
      case SLIDE_AND_NEEDLE ->
          "The slide opens fully and closes onto its stop; the clip is seated; needle and needle jet"
              + " are not worn.";
      case THROTTLE_MARKS ->
          "Marks on the grip: the play of the cable is taken up, and each mark was made with the slide"
              + " measured at that opening.";
      case INTAKE_AND_EXHAUST -> "Filter, box and exhaust are as ridden, and not choked.";
      case HEAT_RANGE -> "The plug has the right heat range.";
      case WARM_ENGINE -> "The engine is warm for every test, and the choke is off.";
    };
  }

  static String fault(Fault fault) {
    return switch (fault) {
      case AIR_LEAK -> "an air leak";
      case PILOT_BLOCKED -> "a blocked or wrong pilot jet";
      case MAIN_BLOCKED -> "a blocked or wrongly stamped main jet";
      case FUEL_SHORT -> "a fuel supply that does not keep up";
      case FUEL_LEVEL_LOW -> "a low float level";
      case IGNITION_TIMING -> "ignition that fires too early";
      case PLUG_TOO_HOT -> "a plug that is too hot";
      case PLUG_TOO_COLD -> "a plug that is too cold";
      case CHOKE_ON -> "a choke that is on, or a cold engine";
      case FUEL_LEVEL_HIGH -> "a high float level";
      case BREATHING -> "a dirty filter or a choked exhaust";
      case NEEDLE_WORN -> "a worn needle or needle jet, or a clip that has slipped";
      case THROTTLE_SLACK -> "a slack throttle cable, or marks on the grip that are off";
    };
  }

  /** What passes or draws. */
  static String what(ErrorSource source) {
    return switch (source) {
      case PILOT -> "The pilot circuit passes";
      case NEEDLE -> "The gap between needle and needle jet passes";
      case MAIN -> "The main jet passes";
      case AIR -> "The engine draws";
    };
  }

  static String ofWhat(ErrorSource source) {
    return source == ErrorSource.AIR ? "air" : "fuel";
  }

  /** What it means, what to do, and what then. */
  static String answer(ErrorSource source, boolean less) {
    return switch (source) {
      case PILOT ->
          less
              ? "Idle and an eighth run lean. Clean the pilot jet and its passages. If that changes"
                  + " nothing, fit the next bigger pilot jet, then read the idle again."
              : "Idle and an eighth run rich. Check the float level and the size of the pilot jet. If"
                  + " both are right, fit the next smaller one, then read the idle again.";
      case NEEDLE ->
          less
              ? "A quarter to three quarters run lean. Check that the clip is seated. If it is, go one"
                  + " groove richer, then read a half again."
              : "A quarter to three quarters run rich. Check needle and needle jet for wear. If there"
                  + " is none, go one groove leaner, then read a half again.";
      case MAIN ->
          less
              ? "Full throttle runs lean. Check that the main jet is clean and of the size stamped on"
                  + " it. If it is, fit the next bigger one, then read full throttle again."
              : "Full throttle runs rich. Check the size stamped on the main jet. If it is right, fit"
                  + " the next smaller one, then read full throttle again.";
      case AIR ->
          less
              ? "The whole range runs rich. Check the filter and the exhaust. If both are clear, lean"
                  + " one part at a time, and read after each."
              : "The whole range runs lean. Look for an air leak first. If there is none, make main and"
                  + " pilot richer, then read again.";
    };
  }

  static String reason(NextChange.Reason reason) {
    return switch (reason) {
      case SIGN -> "This part acts there.";
      case SAFE -> "It brings the lean risk to what is accepted, on every day.";
      case SAFER -> "It takes most off the lean risk. More changes must follow before a ride.";
      case SUSPICION ->
          "A fault was looked for and not found, and the readings still speak for one. Stay richer"
              + " until it is settled.";
      case NEARER ->
          "It comes nearer to what the engine needs. The risk stays accepted, on every day.";
    };
  }

  /** What was observed, as the rider would say it. */
  static String observed(Observation observation) {
    String where = " at " + opening(observation.throttle());
    Evidence evidence = observation.evidence();
    if (evidence instanceof Evidence.Wideband wideband) {
      return TradeStyle.lambda(wideband.lambda()) + where;
    }
    if (evidence instanceof Evidence.Colour plug) {
      return "a " + plug.colour().name().toLowerCase(Locale.ROOT) + " plug" + where;
    }
    if (evidence instanceof Evidence.Felt felt) {
      return felt(felt.symptom()) + where;
    }
    if (evidence instanceof Evidence.Overrun overrun) {
      return switch (overrun.runDown()) {
        case CLEAN -> "a clean run down";
        case POPS -> "popping on the overrun";
        case DIES -> "an engine that dies on the overrun";
      };
    }
    return evidence instanceof Evidence.ExhaustTemperature exhaust
        ? "an exhaust "
            + Decimals.fixed(Math.abs(exhaust.hotter().kelvin()), 0)
            + (exhaust.hotter().kelvin() < 0 ? " K cooler" : " K hotter")
            + " than on the good run"
            + where
        : "a setting known to be good" + where;
  }

  private static String felt(Symptom symptom) {
    return switch (symptom) {
      case CLEAN -> "a clean answer";
      case BOGS -> "a bog";
      case FOUR_STROKES -> "four-stroking";
      case HESITATES -> "a late answer";
      case SURGES -> "surging";
      case HANGS -> "an idle that hangs";
      case STUMBLES -> "stumbling";
      case PINGS -> "pinging";
      case FADES -> "power that fades with heat";
      case SEIZES -> "seizing, or specks of metal";
      case CRISP -> "a crisp engine";
    };
  }
}
