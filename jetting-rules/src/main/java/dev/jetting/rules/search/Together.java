package dev.jetting.rules.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The few extra jets that serve most engines together, chosen one after the other. A setting has
 * one pilot and one main jet, so that what each of them and each two make right is all there is to
 * know, and choosing is counting.
 */
final class Together {

  /** A few (assumed: what a seller may think of adding to a box). */
  private static final int MOST = 3;

  private final List<Extras.Part> pilotJets;
  private final List<Extras.Part> mainJets;
  private final List<Extras.Part> jets = new ArrayList<>();
  private final List<Set<List<Extras.Part>>> lacking;

  /**
   * @param parts the extra parts
   * @param lacking engine by engine, the extra parts of each setting that they would make right
   */
  Together(List<Extras.Part> parts, List<Set<List<Extras.Part>>> lacking) {
    this.pilotJets = ofKind(parts, PartKind.PILOT_JET);
    this.mainJets = ofKind(parts, PartKind.MAIN_JET);
    jets.addAll(pilotJets);
    jets.addAll(mainJets);
    this.lacking = lacking.stream().filter(lack -> !lack.isEmpty()).toList();
  }

  private static List<Extras.Part> ofKind(List<Extras.Part> parts, PartKind kind) {
    return parts.stream().filter(part -> part.kind() == kind).toList();
  }

  /** The jets to add, each with how many engines are covered once it is, of so many before. */
  List<ExtraPart> added(int covered) {
    List<Extras.Part> added = new ArrayList<>();
    while (added.size() < MOST) {
      List<Extras.Part> more = better(added);
      if (more.isEmpty()) {
        break;
      }
      added.addAll(more);
    }
    List<ExtraPart> told = new ArrayList<>();
    for (int i = 0; i < added.size(); i++) {
      Extras.Part jet = added.get(i);
      int served = covered + served(added.subList(0, i + 1));
      told.add(new ExtraPart(jet.kind(), jet.index(), served));
    }
    return told;
  }

  /** The jet, or the two, to add next; none if nothing more is gained. */
  private List<Extras.Part> better(List<Extras.Part> added) {
    int before = served(added);
    int gain = 0;
    List<Extras.Part> best = List.of();
    for (Extras.Part jet : jets) {
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
    for (Extras.Part pilot : pilotJets) {
      for (Extras.Part main : mainJets) {
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

  private static List<Extras.Part> with(List<Extras.Part> jets, Extras.Part more) {
    List<Extras.Part> all = new ArrayList<>(jets);
    all.add(more);
    return all;
  }

  private int served(List<Extras.Part> added) {
    List<List<Extras.Part>> enough = new ArrayList<>();
    for (Extras.Part jet : added) {
      enough.add(List.of(jet));
      for (Extras.Part other : added) {
        if (jet.kind() == PartKind.PILOT_JET && other.kind() == PartKind.MAIN_JET) {
          enough.add(List.of(jet, other));
        }
      }
    }
    return (int) lacking.stream().filter(lack -> enough.stream().anyMatch(lack::contains)).count();
  }
}
