package dev.jetting.rules.search;

/** What a front counts as the cost of a setting. */
public enum Cost {
  /** The number of new parts. */
  NEW_PARTS,
  /** The price of the new parts; every part to buy must have one. */
  PRICE;

  long of(int newParts, long price) {
    return this == NEW_PARTS ? newParts : price;
  }

  long of(SettingCandidate candidate) {
    return of(candidate.newParts(), candidate.price());
  }
}
