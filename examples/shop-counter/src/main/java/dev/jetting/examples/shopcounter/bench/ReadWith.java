package dev.jetting.examples.shopcounter.bench;

import dev.jetting.rules.tuning.Instrument;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a rider reads an engine with. Everybody has a plug and feels how the engine answers. */
public enum ReadWith {
  /** The plug and the feel alone. */
  PLUG,
  /** A wideband λ sensor as well. */
  SENSOR,
  /** A thermometer in the exhaust as well. */
  THERMOMETER,
  /** Both as well. */
  BOTH;

  /**
   * Returns the choice that an address names.
   *
   * @param key the name; null where the address names none
   * @return the choice; the plug alone where the name is none or another
   */
  public static ReadWith of(@Nullable String key) {
    return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst().orElse(PLUG);
  }

  /** {@return its name in an address} */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** {@return the instruments} */
  public Set<Instrument> instruments() {
    return switch (this) {
      case PLUG -> EnumSet.of(Instrument.PLUG, Instrument.FEEL);
      case SENSOR -> EnumSet.of(Instrument.PLUG, Instrument.FEEL, Instrument.WIDEBAND);
      case THERMOMETER ->
          EnumSet.of(Instrument.PLUG, Instrument.FEEL, Instrument.EXHAUST_THERMOMETER);
      case BOTH -> EnumSet.allOf(Instrument.class);
    };
  }

  /**
   * Returns whether an instrument is at hand.
   *
   * @param instrument the instrument
   * @return true if it is
   */
  public boolean has(Instrument instrument) {
    return instruments().contains(instrument);
  }
}
