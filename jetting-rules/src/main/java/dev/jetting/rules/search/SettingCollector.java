package dev.jetting.rules.search;

/** Keeps what a search is after, and says what can no longer be among it. Belongs to one worker. */
interface SettingCollector {

  /**
   * The distance beyond which a setting no longer matters.
   *
   * @param tooRich whether it is known to be too rich somewhere
   */
  double furthest(boolean tooRich);

  /**
   * The lean risk beyond which a setting no longer matters.
   *
   * @param distance no more than the setting's distance
   * @param newParts no more than its new parts
   * @param price no more than its price
   * @param tooRich whether it is known to be too rich somewhere
   * @param leanOverrun whether it is too lean on the overrun
   */
  RiskLimit limit(double distance, int newParts, long price, boolean tooRich, boolean leanOverrun);

  /** Takes a setting in, if it is among what the search is after. */
  void offer(SettingCandidate candidate);
}
