package dev.jetting.rules;

import java.util.List;

/** The usual cautions of the trade; they stand in every report. */
final class Caution {

  private Caution() {}

  static final List<String> ALL =
      List.of(
          "A lean two-stroke seizes, and a seizure can lock the wheel: cover the clutch.",
          "Never hold a closed throttle against the engine after a long open run: pull the clutch"
              + " or open up a little, so that fuel and oil reach it.",
          "Do plug chops off public roads, where somebody can run out and nobody follows.",
          "Petrol vapour burns: change jets outdoors, with the engine cold, no flame and no spark"
              + " near.",
          "Exhaust, cylinder and plug stay hot long after the engine has stopped.",
          "What the engine's builder says, and the law of the place, go before this report.",
          "A calculation on assumed coefficients is no measurement: start from the rich side and"
              + " confirm with plug chops, one change at a time.");
}
