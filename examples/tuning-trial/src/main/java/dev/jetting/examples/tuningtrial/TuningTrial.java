package dev.jetting.examples.tuningtrial;
import dev.jetting.rules.risk.*;
import java.util.*;
import java.util.stream.*;
public class TuningTrial {
  public static void main(String[] a) {
    int n = Integer.parseInt(a[0]);
    RiskModel risk = RiskModel.assumed();
    long t0 = System.nanoTime();
    List<Machine> ms = Machine.all(risk);
    System.out.println("start " + (System.nanoTime() - t0) / 1e9);
    for (Machine m : ms) System.out.println(m.name() + " " + m.sheet().setup().setting().mainJet()+ " " + m.sheet().setup().setting().pilotJet()+ " " + m.sheet().setup().setting().needleJet()+ " " + m.sheet().setup().setting().clip()+ " " + m.sheet().setup().setting().cutaway()+ " " + m.sheet().setup().setting().needle().id());
    for (boolean richer : new boolean[] {false, true}) for (String who : new String[] {"W", "P", "H"}) {
      t0 = System.nanoTime();
      List<Course> cs = IntStream.range(0, n).parallel().mapToObj(i -> {
        Machine m = ms.get(i % ms.size());
        long seed = 1000 + i;
        TrueEngine e = richer ? RicherEngine.draw(m.sheet().setup(), risk.uncertainty(), seed) : AssumedEngine.draw(m.sheet().setup(), risk.uncertainty(), seed);
        Rider r = new Rider(who.equals("W") ? Rider.Means.WIDEBAND : Rider.Means.PLUG, richer ? Rider.Skill.HUMAN : Rider.Skill.AS_ASSUMED, seed);
        return who.equals("H") ? ByHabit.tune(e, m.sheet(), r, risk) : ByLibrary.tune(e, m.sheet(), r, risk);
      }).toList();
      System.out.printf(Locale.ROOT, "%s %s start lean %.3f end lean %.4f tests %.2f changes %.2f held %.3f heldStart %.3f richer start %.3f end %.3f gaveUp %d risk %.4f  %.2f s%n", richer ? "richer" : "assumed", who,
        cs.stream().mapToInt(c -> c.start().leanAnywhere() ? 1 : 0).average().getAsDouble(),
        cs.stream().mapToInt(c -> c.end().leanAnywhere() ? 1 : 0).average().getAsDouble(),
        cs.stream().mapToInt(Course::tests).average().getAsDouble(),
        cs.stream().mapToInt(Course::changes).average().getAsDouble(),
        cs.stream().mapToInt(Course::held).average().getAsDouble() / 33,
        cs.stream().mapToInt(Course::heldAtStart).average().getAsDouble() / 33,
        cs.stream().mapToDouble(c -> c.start().richer()).average().getAsDouble(),
        cs.stream().mapToDouble(c -> c.end().richer()).average().getAsDouble(),
        cs.stream().filter(Course::gaveUp).count(),
        cs.stream().mapToDouble(Course::risk).average().getAsDouble(),
        (System.nanoTime() - t0) / 1e9);
    }
  }
}
