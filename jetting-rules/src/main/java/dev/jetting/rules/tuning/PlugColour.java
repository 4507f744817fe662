package dev.jetting.rules.tuning;

/**
 * The colour of the plug's insulator after a proper plug chop, from leanest to richest.
 *
 * <p>What a colour means stands in a {@link Meanings}. Not for a plug that has idled home.
 */
public enum PlugColour {
  /** White or blistered, with bright specks: far too lean. Stop. */
  WHITE,
  /** Pale grey to straw: lean. */
  PALE,
  /** The brown of milky coffee: as wanted. */
  BROWN,
  /** Dark brown: rich. */
  DARK,
  /** Black, sooty or wet: far too rich. */
  BLACK
}
