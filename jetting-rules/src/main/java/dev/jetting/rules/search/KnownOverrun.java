package dev.jetting.rules.search;

import dev.jetting.core.calibration.Calibration;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;

/** The overrun of each slide and pilot, as modelled or as is known, whichever is the leaner. */
final class KnownOverrun {

  private final boolean[][] tooLean;

  KnownOverrun(SetupSheet sheet, Space space, double limit, Calibration calibration) {
    tooLean = new boolean[space.slides()][space.pilots];
    for (int slide = 0; slide < space.slides(); slide++) {
      for (int p = 0; p < space.pilots && space.slide(slide) != null; p++) {
        SetupSheet with = sheet.withSetup(with(sheet.setup(), space, slide, p));
        double lambda = AssessedSetting.leanestOverrun(with, calibration).lambda().value();
        tooLean[slide][p] = lambda > limit;
      }
    }
  }

  private static Setup with(Setup setup, Space space, int slide, int p) {
    Setting setting = setup.setting();
    Screw screw = new Screw(setting.screw().kind(), space.choices.screws().get(p % space.screws));
    return setup.withSetting(
        setting
            .withCutaway(space.choices.cutaways().get(slide).part())
            .withPilotJet(space.choices.pilotJets().get(p / space.screws).part())
            .withScrew(screw));
  }

  boolean isTooLean(int slide, int pilot) {
    return tooLean[slide][pilot];
  }
}
