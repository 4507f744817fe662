package dev.jetting.rules.search;

import dev.jetting.core.air.Air;
import dev.jetting.core.mixture.Setup;
import dev.jetting.core.mixture.table.MixtureTable;
import dev.jetting.core.parts.NeedleJet;
import dev.jetting.core.parts.Screw;
import dev.jetting.core.parts.Setting;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.units.ClipPosition;
import dev.jetting.units.Cutaway;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Every combination of the choices, as far as the work is shared. For each slide and each day that
 * is the air side, the pilot's fuel for each pilot jet and screw, and the main jets.
 */
final class Space {

  /** A needle hung in one of its grooves, by the indices of the choices. */
  record NeedleGroove(int needle, int clip) {}

  final Choices choices;
  final Setup setup;
  final List<Air> days;
  final List<NeedleGroove> hung;
  final int screws;
  final int pilots;
  final int mains;
  final int openings;

  private final Function<Setup, MixtureTable> tables;
  private final @Nullable Slide[] slides;

  /** A slide's tables; the first day is today. */
  static final class Slide {
    final MixtureTable[] day;
    final MixtureTable.Pilot[][] pilot;
    final MixtureTable.MainJet[][] main;

    private final double[][] overrunLambda;

    /** Fuel of each pilot on each day: opening by opening. */
    final double[][][] pilotFuel;

    final double[][] leastPilot;
    final double[][] mostPilot;

    /** Fuel with which λ is 1, on each day. */
    final double[][] fuelAtOne;

    Slide(int days, int pilots, int openings) {
      day = new MixtureTable[days];
      pilot = new MixtureTable.Pilot[days][];
      main = new MixtureTable.MainJet[days][];
      overrunLambda = new double[days][pilots];
      pilotFuel = new double[days][pilots][openings];
      leastPilot = new double[days][openings];
      mostPilot = new double[days][openings];
      fuelAtOne = new double[days][openings];
    }

    /** λ of a pilot on the overrun, on the day when it is leanest. */
    double overrunLambda(int pilot) {
      double leanest = 0;
      for (double[] onDay : overrunLambda) {
        leanest = Math.max(leanest, onDay[pilot]);
      }
      return leanest;
    }
  }

  /**
   * @param tables makes the table of a setup at the openings of an assessment
   */
  Space(SetupSheet sheet, Choices choices, Function<Setup, MixtureTable> tables) {
    this.choices = choices;
    this.tables = tables;
    setup = sheet.setup();
    days = sheet.days();
    hung = new ArrayList<>();
    for (int needle = 0; needle < choices.needles().size(); needle++) {
      int clips = choices.needles().get(needle).part().clips().size();
      for (int clip = 0; clip < clips; clip++) {
        hung.add(new NeedleGroove(needle, clip));
      }
    }
    screws = choices.screws().size();
    pilots = choices.pilotJets().size() * screws;
    mains = choices.mainJets().size();
    openings = AssessedSetting.openings().size();
    slides = new Slide[choices.cutaways().size()];
    for (int i = 0; i < slides.length; i++) {
      slides[i] = fits(cutaway(i)) ? new Slide(days.size(), pilots, openings) : null;
    }
  }

  /** Fills the tables, a piece of work for each slide and day. */
  void fill(Work work) {
    work.pieces(slides.length * days.size(), worker -> this::fill);
  }

  /** Fills the tables on the caller's thread. */
  void fill() {
    for (int piece = 0; piece < slides.length * days.size(); piece++) {
      fill(piece);
    }
  }

  private void fill(int piece) {
    int index = piece / days.size();
    int d = piece % days.size();
    Slide slide = slides[index];
    if (slide == null) {
      return;
    }
    Setup that =
        setup.withAir(days.get(d)).withSetting(setup.setting().withCutaway(cutaway(index)));
    MixtureTable table = tables.apply(that);
    slide.day[d] = table;
    slide.main[d] =
        choices.mainJets().stream()
            .map(choice -> table.mainJet(choice.part()))
            .toArray(MixtureTable.MainJet[]::new);
    slide.pilot[d] = new MixtureTable.Pilot[pilots];
    for (int p = 0; p < pilots; p++) {
      slide.pilot[d][p] =
          table.pilot(choices.pilotJets().get(p / screws).part(), choices.screws().get(p % screws));
      slide.overrunLambda[d][p] = slide.pilot[d][p].overrunLambda();
    }
    for (int i = 0; i < openings; i++) {
      slide.fuelAtOne[d][i] = table.fuelAtOne(i);
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      for (int p = 0; p < pilots; p++) {
        double fuel = slide.pilot[d][p].fuel(i);
        slide.pilotFuel[d][p][i] = fuel;
        least = Math.min(least, fuel);
        most = Math.max(most, fuel);
      }
      slide.leastPilot[d][i] = least;
      slide.mostPilot[d][i] = most;
    }
  }

  int slides() {
    return slides.length;
  }

  /** The tables of a slide; null where it cannot stand in the carburettor. */
  @Nullable Slide slide(int index) {
    return slides[index];
  }

  /** The ring on a day. */
  MixtureTable.Ring ring(Slide slide, int day, int needleJet, NeedleGroove h) {
    NeedlePosition needle = choices.needles().get(h.needle).part();
    return slide.day[day].ring(jet(needleJet), needle.needle(), needle.clips().get(h.clip));
  }

  boolean fits(int needleJet, NeedleGroove h) {
    return choices.needles().get(h.needle).part().needle().cylinder().millimetres()
        < jet(needleJet).bore().millimetres();
  }

  private boolean fits(Cutaway cutaway) {
    return cutaway.millimetres() < setup.setting().carburettor().bore().millimetres();
  }

  private Cutaway cutaway(int index) {
    return choices.cutaways().get(index).part();
  }

  private NeedleJet jet(int index) {
    return choices.needleJets().get(index).part();
  }

  /** Combinations that cannot be put together. */
  long impossible() {
    long each = (long) pilots * mains;
    long count = 0;
    for (Slide slide : slides) {
      if (slide == null) {
        count += each * hung.size() * choices.needleJets().size();
        continue;
      }
      for (int jet = 0; jet < choices.needleJets().size(); jet++) {
        for (NeedleGroove h : hung) {
          count += fits(jet, h) ? 0 : each;
        }
      }
    }
    return count;
  }

  ChoiceIndices pick(int slide, int needleJet, NeedleGroove h, int pilot, int main) {
    return new ChoiceIndices(
        pilot / screws, pilot % screws, slide, needleJet, h.needle, h.clip, main);
  }

  Setting setting(ChoiceIndices pick) {
    Setting s = setup.setting();
    NeedlePosition needle = choices.needles().get(pick.needle()).part();
    ClipPosition clip = needle.clips().get(pick.clip());
    return Setting.builder()
        .carburettor(s.carburettor())
        .intake(s.intake())
        .pilotJet(choices.pilotJets().get(pick.pilotJet()).part())
        .screw(new Screw(s.screw().kind(), choices.screws().get(pick.screw())))
        .cutaway(choices.cutaways().get(pick.cutaway()).part())
        .idleLift(s.idleLift())
        .needleJet(choices.needleJets().get(pick.needleJet()).part())
        .needle(needle.needle())
        .clip(clip)
        .mainJet(choices.mainJets().get(pick.mainJet()).part())
        .floats(s.floats())
        .build();
  }
}
