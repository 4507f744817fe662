package dev.jetting.core.cycle;

/**
 * Shortens the way to the state that repeats: of two turns and how the state moved in them, the
 * state from which the next turn begins. Anderson's method of depth one (from memory). A state that
 * repeats is left where it is, so only the number of turns depends on it.
 */
final class Extrapolation {

  /** The first turns are far from any straight line. */
  private static final int PLAIN_TURNS = 5;

  private static final double MOST_FORWARDS = -60;
  private static final double MOST_BACKWARDS = 0.9;

  private final int count;
  private int turns;
  private double[] lastMove;
  private double[] lastEnd;

  Extrapolation(int count) {
    this.count = count;
    lastMove = new double[count];
    lastEnd = new double[count];
  }

  /** The state to go on from, after a turn from one state to another. */
  double[] from(double[] begin, double[] end) {
    double[] move = new double[count];
    double along = 0;
    double square = 0;
    for (int i = 0; i < count; i++) {
      move[i] = end[i] - begin[i];
      double change = move[i] - lastMove[i];
      along += change * move[i];
      square += change * change;
    }
    double[] next = end.clone();
    turns++;
    if (turns > PLAIN_TURNS && square > 0) {
      double share = Math.max(MOST_FORWARDS, Math.min(MOST_BACKWARDS, along / square));
      for (int i = 0; i < count; i++) {
        next[i] = end[i] - share * (end[i] - lastEnd[i]);
      }
    }
    lastMove = move;
    lastEnd = end;
    return next;
  }
}
