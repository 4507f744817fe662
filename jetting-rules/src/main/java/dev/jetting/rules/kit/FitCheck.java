package dev.jetting.rules.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    Map<String, Part> included = included(family);
    needlesForNoNeedleJet(included);
    List<Fitted> fitted = new ArrayList<>();
    for (int i = 0; i < kit.recommendations().size(); i++) {
      new RecommendationFit(catalogue, family, included, kit.recommendations().get(i), i, findings)
          .fitted()
          .ifPresent(fitted::add);
    }
    return fitted;
  }

  /** The parts of the kit that the catalogue has, by their ids. */
  private Map<String, Part> included(Optional<Family> family) {
    Map<String, Part> included = new HashMap<>();
    for (int i = 0; i < kit.parts().size(); i++) {
      String id = kit.parts().get(i);
      Optional<Part> part = catalogue.part(id);
      if (part.isEmpty()) {
        findings.unknown(subject(i), id);
      } else {
        included.put(id, part.get());
        if (family.isPresent()) {
          fits(i, part.get(), family.get());
        }
      }
    }
    return included;
  }

  private static String subject(int place) {
    return "parts[" + place + "]";
  }

  private void fits(int place, Part part, Family family) {
    if (!catalogue.fits(part, family)) {
      findings.doesNotFit(subject(place), part, family);
    } else if (part.shape() instanceof PartShape.PilotScrew screw
        && screw.kind() != family.carburettor().pilot().screwKind()) {
      findings.screwKind(subject(place), screw.kind(), family.carburettor().pilot().screwKind());
    }
  }

  /** A needle that goes into no needle jet of the kit cannot be used, whatever is recommended. */
  private void needlesForNoNeedleJet(Map<String, Part> included) {
    double widest = 0;
    double thickest = 0;
    for (Part part : included.values()) {
      if (part.shape() instanceof PartShape.NeedleJetShape tube) {
        widest = Math.max(widest, tube.needleJet().bore().millimetres());
      } else if (part.shape() instanceof PartShape.NeedleShape rod) {
        thickest = Math.max(thickest, rod.needle().cylinder().millimetres());
      }
    }
    for (int i = 0; widest > 0 && thickest >= widest && i < kit.parts().size(); i++) {
      Part part = included.get(kit.parts().get(i));
      if (part != null
          && part.shape() instanceof PartShape.NeedleShape rod
          && rod.needle().cylinder().millimetres() >= widest) {
        findings.needleForNoNeedleJet(subject(i), rod.needle(), widest);
      }
    }
  }
}
