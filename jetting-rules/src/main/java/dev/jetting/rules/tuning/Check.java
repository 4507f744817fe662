package dev.jetting.rules.tuning;

import dev.jetting.rules.text.Message;

/**
 * What a tuner looks at before he jets anything, and again after a sign that does not fit. {@link
 * SessionText} words each.
 */
public enum Check {
  /** Flanges, crankshaft seals and the carburettor's rubber are tight. */
  AIR_LEAK,
  /** The ignition fires when it should. */
  IGNITION_TIMING,
  /** Tap, hose and float valve deliver at least a quarter more than full throttle draws. */
  FUEL_DELIVERY,
  /** The float level is as specified. */
  FUEL_LEVEL,
  /** Jets and passages are clean, and the jets are of the size that is stamped on them. */
  JETS_CLEAN,
  /** The slide opens fully and closes onto its stop; needle and clip sit right and are not worn. */
  SLIDE_AND_NEEDLE,
  /**
   * The marks on the grip were made by measuring the slide, with the play of the cable taken up.
   */
  THROTTLE_MARKS,
  /** Filter, filter box and exhaust are as ridden, and not choked. */
  INTAKE_AND_EXHAUST,
  /** The plug has the right heat range. */
  HEAT_RANGE,
  /** The premix is the one that the sheet states. */
  PREMIX,
  /** The engine is warm and the choke is off. */
  WARM_ENGINE;

  /** {@return what is right where the check finds nothing, a sentence for the rider} */
  public String text() {
    return message().text();
  }

  /** {@return the same for any language} */
  public Message message() {
    return Words.of("check", this);
  }
}
