package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The few extra jets that serve most engines together, chosen one after the other. A setting has
 * one pilot and one main jet, so that what each of them and each two make right is all there is to
 * know, and choosing is counting.
 */
final class Together {

  /** A few (assumed: what a seller may think of adding to a box). */
  private static final int MOST = 3;

  private final Extras extras;
  private final List<BitSet> lacking;

  /** The pilot jets, then the main jets; a jet's number is its place in this list. */
  private final List<Extras.Part> jets = new ArrayList<>();

  private final int pilots;

  /**
   * @param lacking engine by engine, what the settings lack that extra parts would make right
   */
  Together(Extras extras, List<BitSet> lacking) {
    this.extras = extras;
    this.lacking = lacking.stream().filter(lack -> !lack.isEmpty()).toList();
    jets.addAll(extras.parts(PartKind.PILOT_JET));
    pilots = jets.size();
    jets.addAll(extras.parts(PartKind.MAIN_JET));
  }

  /**
   * The jets to add, each with the engines covered once it is added; {@code covered} are before.
   */
  List<ExtraPart> added(int covered) {
    List<Integer> added = new ArrayList<>();
    while (added.size() < MOST) {
      List<Integer> more = next(added);
      if (more.isEmpty()) {
        break;
      }
      added.addAll(more);
    }
    List<ExtraPart> parts = new ArrayList<>();
    for (int i = 0; i < added.size(); i++) {
      Extras.Part jet = jets.get(added.get(i));
      int served = covered + served(added.subList(0, i + 1));
      parts.add(new ExtraPart(jet.kind(), jet.index(), served));
    }
    return parts;
  }

  /** The jet, or the two, to add next; none if nothing more is gained. */
  private List<Integer> next(List<Integer> added) {
    int before = served(added);
    int gain = 0;
    List<Integer> best = List.of();
    for (int jet = 0; jet < jets.size(); jet++) {
      int more = served(with(added, jet)) - before;
      if (more > gain) {
        gain = more;
        best = List.of(jet);
      }
    }
    if (added.size() + 2 > MOST || lacking.size() - before <= 2 * gain) {
      return best;
    }
    gain *= 2;
    for (int pilot = 0; pilot < pilots; pilot++) {
      for (int main = pilots; main < jets.size(); main++) {
        int more = served(with(with(added, pilot), main)) - before;
        if (more > gain) {
          gain = more;
          best = List.of(pilot, main);
        }
      }
    }
    return best.size() == 2 && served(with(added, best.get(1))) > served(with(added, best.get(0)))
        ? List.of(best.get(1), best.get(0))
        : best;
  }

  private static List<Integer> with(List<Integer> jets, int more) {
    List<Integer> all = new ArrayList<>(jets);
    all.add(more);
    return all;
  }

  private int served(List<Integer> added) {
    BitSet enough = new BitSet();
    for (int jet : added) {
      enough.set(jets.get(jet).lacking());
      for (int other : added) {
        if (jet < pilots && other >= pilots) {
          enough.set(extras.lackingJets(jet, other - pilots));
        }
      }
    }
    return (int) lacking.stream().filter(enough::intersects).count();
  }
}
