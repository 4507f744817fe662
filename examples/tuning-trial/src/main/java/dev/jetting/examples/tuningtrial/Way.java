package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.tuning.Instrument;

/** A way to tune. */
enum Way {
  /** As the library says, with a wideband sensor. */
  LIBRARY_WIDEBAND,
  /** As the library says, by plug colours and what is felt. */
  LIBRARY_PLUG,
  /** One main size at a time by the plug, from the setting that the library starts with. */
  HABIT,
  /** The same from a setting taken over from another machine of the kind. */
  HABIT_TAKEN_OVER;

  boolean byLibrary() {
    return this == LIBRARY_WIDEBAND || this == LIBRARY_PLUG;
  }

  Instrument instrument() {
    return this == LIBRARY_WIDEBAND ? Instrument.WIDEBAND : Instrument.PLUG;
  }
}
