package dev.jetting.rules.search;

/** Told how far a search is. */
@FunctionalInterface
public interface Progress {

  /**
   * Called now and then, from whichever thread does the work but never from two at once, with
   * rising numbers.
   *
   * @param done how many pieces of work are done
   * @param total how many there are
   */
  void done(long done, long total);
}
