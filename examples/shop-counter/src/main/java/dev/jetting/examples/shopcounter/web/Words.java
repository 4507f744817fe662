package dev.jetting.examples.shopcounter.web;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the choices of the form are called. */
public final class Words {

  /** States of tune. */
  public static final Map<String, String> TUNES =
      words(
          "utility", "for work: cart, moped, pump",
          "standard", "as sold for the road",
          "sport", "tuned, with an expansion chamber",
          "race", "for races");

  /** Inlets. */
  public static final Map<String, String> INLETS =
      words("piston_port", "piston port", "reed_valve", "reeds", "rotary_valve", "rotary valve");

  /** Ways of cooling. */
  public static final Map<String, String> COOLING =
      words("air", "the wind", "fan", "a fan", "liquid", "water");

  /** Kinds of pilot screw. */
  public static final Map<String, String> SCREWS =
      words(
          "air", "air screw, on the side of the filter: out is leaner",
          "mixture", "mixture screw, on the side of the engine: out is richer");

  /** Colours of a plug, from leanest to richest. */
  public static final Map<String, String> COLOURS =
      words(
          "white", "white or blistered",
          "pale", "pale",
          "brown", "brown",
          "dark", "dark brown",
          "black", "black, sooty or wet");

  /** What a rider feels. */
  public static final Map<String, String> SYMPTOMS =
      words(
          "clean", "it answers cleanly",
          "hesitates", "it answers late",
          "bogs", "it falls flat when opened",
          "surges", "it surges at a steady throttle",
          "hangs", "the idle hangs",
          "stumbles", "it stumbles or loads up",
          "four_strokes", "it runs like a four-stroke",
          "crisp", "it feels crisp");

  /** What an idle answers to the screw, or does by itself. */
  public static final Map<String, String> IDLES =
      words(
          "idle_best", "best where the screw stands",
          "idle_faster_richer", "faster with the screw turned richer",
          "idle_faster_leaner", "faster with the screw turned leaner",
          "idle_beyond_rich", "wants more than the rich end of the screw",
          "idle_beyond_lean", "wants more than the lean end of the screw",
          "idle_unmoved", "the screw changes nothing",
          "idle_races", "races with the slide shut",
          "idle_runs_on", "runs on with the ignition off");

  /** What stops a ride at once. */
  public static final Map<String, String> ALARMS =
      words(
          "pings", "it pings under load",
          "fades", "power fades with heat",
          "seizes", "it slowed by itself, or specks of metal");

  /** What an engine does on the overrun. */
  public static final Map<String, String> RUN_DOWNS =
      words(
          "run_clean", "runs down quietly",
          "run_pops", "pops and hangs",
          "run_dies", "dies");

  private Words() {}

  private static Map<String, String> words(String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return words;
  }
}
