package dev.jetting.rules.search;

/** A listener to the progress of a search. */
@FunctionalInterface
public interface Progress {

  /**
   * Called now and then, from any thread that does the work, never from two at once, with rising
   * numbers.
   *
   * @param done how many pieces of work are done
   * @param total how many there are
   */
  void done(long done, long total);
}
