package dev.jetting.rules.kit;

import dev.jetting.core.parts.FloatValve;
import dev.jetting.core.parts.Needle;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.units.Area;
import dev.jetting.units.Cutaway;
import dev.jetting.units.InvalidValueException;
import dev.jetting.units.JetBore;
import dev.jetting.units.JetFlow;
import dev.jetting.units.ScrewKind;
import dev.jetting.units.Sentence;
import java.util.Objects;

/** What the mixture model has to know of a part. */
public sealed interface PartShape {

  /**
   * Whether a part of this shape can be of a kind.
   *
   * @param kind the kind
   * @return true if it can
   */
  boolean suits(SeriesKind kind);

  /**
   * A pilot or main jet numbered by its bore.
   *
   * @param bore the bore
   */
  record JetByBore(JetBore bore) implements PartShape {
    /**
     * Checks for null.
     *
     * @param bore the bore
     */
    public JetByBore {
      Objects.requireNonNull(bore, "bore");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.PILOT_JET || kind == SeriesKind.MAIN_JET;
    }
  }

  /**
   * A pilot or main jet numbered by its flow; its series names the bench.
   *
   * @param flow the flow on that bench
   */
  record JetByFlow(JetFlow flow) implements PartShape {
    /**
     * Checks for null.
     *
     * @param flow the flow on that bench
     */
    public JetByFlow {
      Objects.requireNonNull(flow, "flow");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.PILOT_JET || kind == SeriesKind.MAIN_JET;
    }
  }

  /**
   * A needle jet.
   *
   * @param needleJet its geometry
   */
  record NeedleJetShape(NeedleJet needleJet) implements PartShape {
    /**
     * Checks for null.
     *
     * @param needleJet its geometry
     */
    public NeedleJetShape {
      Objects.requireNonNull(needleJet, "needleJet");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.NEEDLE_JET;
    }
  }

  /**
   * A needle.
   *
   * @param needle its geometry
   */
  record NeedleShape(Needle needle) implements PartShape {
    /**
     * Checks for null.
     *
     * @param needle its geometry
     */
    public NeedleShape {
      Objects.requireNonNull(needle, "needle");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.NEEDLE;
    }
  }

  /**
   * A slide.
   *
   * @param cutaway its cutaway
   */
  record Slide(Cutaway cutaway) implements PartShape {
    /**
     * Checks for null.
     *
     * @param cutaway its cutaway
     */
    public Slide {
      Objects.requireNonNull(cutaway, "cutaway");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.SLIDE;
    }
  }

  /**
   * A screw of the pilot circuit.
   *
   * @param kind what it meters
   * @param areaPerTurn area that one turn out opens, more than zero
   */
  record PilotScrew(ScrewKind kind, Area areaPerTurn) implements PartShape {
    /**
     * Checks the area.
     *
     * @param kind what it meters
     * @param areaPerTurn area that one turn out opens, more than zero
     * @throws IllegalArgumentException if the area is zero
     */
    public PilotScrew {
      Objects.requireNonNull(kind, "kind");
      if (areaPerTurn.squareMillimetres() <= 0) {
        throw InvalidValueException.of(
            Sentence.of("error.name.area-per-screw-turn"),
            areaPerTurn,
            Sentence.of("error.more-than").with("low", new Sentence.Amount(0, "mm²")));
      }
    }

    @Override
    public boolean suits(SeriesKind other) {
      return other == SeriesKind.SCREW;
    }
  }

  /**
   * A float valve.
   *
   * @param floatValve its seat, and the supply that it is meant for
   */
  record Valve(FloatValve floatValve) implements PartShape {
    /**
     * Checks for null.
     *
     * @param floatValve its seat, and the supply that it is meant for
     */
    public Valve {
      Objects.requireNonNull(floatValve, "floatValve");
    }

    @Override
    public boolean suits(SeriesKind kind) {
      return kind == SeriesKind.FLOAT_VALVE;
    }
  }
}
