package dev.jetting.examples.shopcounter.web;

import java.util.List;

/** The choices of the forms, by their names in a form. Their words have the same names. */
public final class Choices {

  /** States of tune. */
  public static final List<String> TUNES = List.of("utility", "standard", "sport", "race");

  /** Inlets. */
  public static final List<String> INLETS = List.of("piston_port", "reed_valve", "rotary_valve");

  /** Ways of cooling. */
  public static final List<String> COOLING = List.of("air", "fan", "liquid");

  /** Kinds of pilot screw. */
  public static final List<String> SCREWS = List.of("air", "mixture");

  /** Colours of a plug, from leanest to richest. */
  public static final List<String> COLOURS = List.of("white", "pale", "brown", "dark", "black");

  /** What a rider feels. */
  public static final List<String> SYMPTOMS =
      List.of("clean", "hesitates", "bogs", "surges", "hangs", "stumbles", "four_strokes", "crisp");

  /** What an idle answers to the screw, or does by itself. */
  public static final List<String> IDLES =
      List.of(
          "idle_best",
          "idle_faster_richer",
          "idle_faster_leaner",
          "idle_beyond_rich",
          "idle_beyond_lean",
          "idle_unmoved",
          "idle_races",
          "idle_runs_on");

  /** What stops a ride at once. */
  public static final List<String> ALARMS = List.of("pings", "fades", "seizes");

  /** What an engine does on the overrun. */
  public static final List<String> RUN_DOWNS = List.of("run_clean", "run_pops", "run_dies");

  private Choices() {}

  /**
   * Returns the key of a choice's words.
   *
   * @param area what is chosen
   * @param choice its name in a form
   * @return the key
   */
  public static String key(String area, String choice) {
    return area + "." + choice.replace('_', '-');
  }
}
