package dev.jetting.rules.search;

import java.util.Objects;

/**
 * What one more part would bring, on its own or with those listed before it.
 *
 * @param kind the kind of part
 * @param index its index in the list of its kind in the extra choices
 * @param covered the number of engines for which the choices and this part, and in {@link
 *     Coverage#together()} all parts before it, contain a setting that is right
 */
public record ExtraPart(PartKind kind, int index, int covered) {

  /**
   * Checks for nulls.
   *
   * @param kind the kind of part
   * @param index its index in the list of its kind in the extra choices
   * @param covered the number of engines for which the choices and this part, or it and those
   *     before it, contain a right setting
   */
  public ExtraPart {
    Objects.requireNonNull(kind, "kind");
  }
}
