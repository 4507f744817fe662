package dev.jetting.rules.tuning;

/** What a rider reads an engine with. */
public enum Instrument {
  /** A wideband λ sensor in the exhaust. */
  WIDEBAND,
  /** A thermometer in the exhaust, and a run known to be good to compare with. */
  EXHAUST_THERMOMETER,
  /** The colour of a new plug after a plug chop. */
  PLUG,
  /** How the engine feels: the idle, a roll-on, the overrun. Everybody has it. */
  FEEL;

  /**
   * Standard deviation in ln λ of a reading: that of a colour has the eye's error and the width of
   * the band in it, which varies by a twelfth of its square.
   */
  double deviation(Meanings meanings) {
    return switch (this) {
      case WIDEBAND, EXHAUST_THERMOMETER -> meanings.accuracyOf(this);
      case FEEL -> wide(meanings.of(Symptom.CLEAN));
      case PLUG -> wide(meanings.of(PlugColour.BROWN));
    };
  }

  private static double wide(Meaning band) {
    double width = StrictMath.log(band.to() / band.from());
    return Math.sqrt(band.deviation() * band.deviation() + width * width / 12);
  }
}
