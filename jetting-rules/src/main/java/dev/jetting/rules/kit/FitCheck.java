package dev.jetting.rules.kit;

import com.google.common.collect.ImmutableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether what is in a kit, and what is said of it, can be put together. */
final class FitCheck {

  private final Catalogue catalogue;
  private final Kit kit;
  private final KitFindings findings;

  private FitCheck(Catalogue catalogue, Kit kit, KitFindings findings) {
    this.catalogue = catalogue;
    this.kit = kit;
    this.findings = findings;
  }

  /** The recommendations that could be put together; what could not is found. */
  static List<Fitted> of(Catalogue catalogue, Kit kit, KitFindings findings) {
    return new FitCheck(catalogue, kit, findings).fitted();
  }

  private List<Fitted> fitted() {
    Optional<Family> family = catalogue.family(kit.family());
    if (family.isEmpty()) {
      findings.unknown("family", kit.family());
    }
    if (catalogue.market(kit.market()).isEmpty()) {
      findings.unknown("market", kit.market());
    }
    for (int i = 0; i < kit.parts().size(); i++) {
      included("parts[" + i + "]", kit.parts().get(i), family);
    }
    needlesForNoNeedleJet();
    Set<String> included = ImmutableSet.copyOf(kit.parts());
    List<Fitted> fitted = new ArrayList<>();
    for (int i = 0; i < kit.recommendations().size(); i++) {
      new RecommendationFit(catalogue, family, included, kit.recommendations().get(i), i, findings)
          .fitted()
          .ifPresent(fitted::add);
    }
    return fitted;
  }

  private void included(String subject, String id, Optional<Family> family) {
    Optional<Part> part = catalogue.part(id);
    if (part.isEmpty()) {
      findings.unknown(subject, id);
    } else if (family.isPresent()) {
      fits(subject, part.get(), family.get());
    }
  }

  private void fits(String subject, Part part, Family family) {
    if (!catalogue.fits(part, family)) {
      findings.doesNotFit(subject, part, family);
    } else if (part.shape() instanceof PartShape.PilotScrew screw
        && screw.kind() != family.carburettor().pilot().screwKind()) {
      findings.screwKind(subject, screw.kind(), family.carburettor().pilot().screwKind());
    }
  }

  /** A needle that goes into no needle jet of the kit cannot be used, whatever is recommended. */
  private void needlesForNoNeedleJet() {
    double widest = 0;
    for (String id : kit.parts()) {
      if (catalogue.part(id).map(Part::shape).orElse(null) instanceof PartShape.Tube tube) {
        widest = Math.max(widest, tube.needleJet().bore().millimetres());
      }
    }
    for (int i = 0; widest > 0 && i < kit.parts().size(); i++) {
      if (catalogue.part(kit.parts().get(i)).map(Part::shape).orElse(null)
              instanceof PartShape.Rod rod
          && rod.needle().cylinder().millimetres() >= widest) {
        findings.needleForNoNeedleJet("parts[" + i + "]", rod.needle(), widest);
      }
    }
  }
}
