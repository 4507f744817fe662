package dev.jetting.rules.search;

import java.util.List;
import java.util.Objects;

/**
 * What a search has found.
 *
 * @param settings the settings in the search's order
 * @param combinations how many combinations of the choices there are
 * @param impossible how many of them cannot be put together: a needle too thick for the needle jet,
 *     a slide cut away beyond the bore
 * @param ending how the search ended; unless it is complete, the settings are the best of those
 *     that were looked at
 */
public record Found(
    List<FoundSetting> settings, long combinations, long impossible, SearchEnding ending) {

  /**
   * Copies the list.
   *
   * @param settings the settings in the search's order
   * @param combinations how many combinations of the choices there are
   * @param impossible how many of them cannot be put together
   * @param ending how the search ended
   */
  public Found {
    settings = List.copyOf(settings);
    Objects.requireNonNull(ending, "ending");
  }

  /** {@return whether every combination was looked at} */
  public boolean complete() {
    return ending == SearchEnding.COMPLETE;
  }
}
