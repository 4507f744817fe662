package dev.jetting.rules.kit;

import dev.jetting.units.JetBore;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The parts that a kit can do without, all of them at once. No engine's best setting has them, no
 * recommendation uses them, and they are not the main jets to have in reserve.
 */
final class NeverUsed {

  /** Sizes of main jet to keep above each recommended one, as the rule main-jet-kit asks for. */
  private static final int RESERVE = 2;

  private final Catalogue catalogue;
  private final Kit kit;
  private final PartsInKit parts;

  private NeverUsed(Catalogue catalogue, Kit kit, PartsInKit parts) {
    this.catalogue = catalogue;
    this.kit = kit;
    this.parts = parts;
  }

  /**
   * Reports the unused parts if every recommended machine was computed with every fuel, and the kit
   * serves some engine of each and would not serve more with other jets. Further jets might need a
   * part that nothing needs now.
   */
  static void find(
      Catalogue catalogue,
      Kit kit,
      List<Fitted> fitted,
      List<MachineResult> machines,
      Supplier<PartsInKit> parts,
      KitFindings findings) {
    boolean known =
        fitted.size() == kit.recommendations().size()
            && !machines.isEmpty()
            && machines.stream().allMatch(NeverUsed::isServed);
    if (known) {
      new NeverUsed(catalogue, kit, parts.get()).report(fitted, machines, findings);
    }
  }

  private static boolean isServed(MachineResult machine) {
    return machine
        .coverage()
        .filter(coverage -> coverage.share().value() > 0 && coverage.extras().isEmpty())
        .isPresent();
  }

  private void report(List<Fitted> fitted, List<MachineResult> machines, KitFindings findings) {
    Set<String> kept = new HashSet<>();
    machines.forEach(machine -> machine.coverage().ifPresent(c -> kept.addAll(c.used())));
    kit.recommendations().forEach(says -> kept.addAll(recommended(says)));
    fitted.forEach(each -> kept.addAll(reserve(each)));
    for (int i = 0; i < kit.parts().size(); i++) {
      String id = kit.parts().get(i);
      boolean chosen =
          catalogue
              .part(id)
              .map(catalogue::kind)
              .filter(kind -> kind != SeriesKind.SCREW && kind != SeriesKind.FLOAT_VALVE)
              .isPresent();
      if (chosen && kept.add(id)) {
        findings.neverUsed("parts[" + i + "]", id);
      }
    }
  }

  private static List<String> recommended(Recommendation says) {
    return List.of(says.pilotJet(), says.slide(), says.needleJet(), says.needle(), says.mainJet());
  }

  /** The kit's next bigger main jets, those of one size together. */
  private List<String> reserve(Fitted fitted) {
    JetBore main = fitted.setting().mainJet();
    List<Part> bigger =
        parts.parts().stream()
            .filter(part -> catalogue.kind(part) == SeriesKind.MAIN_JET)
            .filter(part -> catalogue.boreOf(part).compareTo(main) > 0)
            .toList();
    List<JetBore> sizes =
        bigger.stream().map(catalogue::boreOf).distinct().sorted().limit(RESERVE).toList();
    return bigger.stream()
        .filter(part -> sizes.contains(catalogue.boreOf(part)))
        .map(Part::id)
        .toList();
  }
}
