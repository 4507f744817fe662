package dev.jetting.rules.search;

import java.util.Objects;

/**
 * How often a part stands in the best setting of an engine.
 *
 * @param kind the kind of part
 * @param index its index in the list of its kind in the {@link Choices}
 * @param engines the number of engines whose best setting has it
 */
public record PartUse(PartKind kind, int index, int engines) {

  /**
   * Checks for nulls.
   *
   * @param kind the kind of part
   * @param index its index in the list of its kind
   * @param engines the number of engines whose best setting has it
   */
  public PartUse {
    Objects.requireNonNull(kind, "kind");
  }
}
