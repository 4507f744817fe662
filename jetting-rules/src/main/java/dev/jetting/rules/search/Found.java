package dev.jetting.rules.search;

import java.util.List;

/**
 * What a search has found.
 *
 * @param settings the settings in the search's order
 * @param combinations how many combinations of the choices there are
 * @param impossible how many of them cannot be put together: a needle too thick for the needle jet,
 *     a slide cut away beyond the bore
 * @param complete whether every combination was looked at; false if the search was cancelled, and
 *     the settings are then the best of those that were
 */
public record Found(
    List<FoundSetting> settings, long combinations, long impossible, boolean complete) {

  /**
   * Copies the list.
   *
   * @param settings the settings in the search's order
   * @param combinations how many combinations of the choices there are
   * @param impossible how many of them cannot be put together
   * @param complete whether every combination was looked at
   */
  public Found {
    settings = List.copyOf(settings);
  }
}
