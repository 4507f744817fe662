package dev.jetting.examples.tuningtrial;

import dev.jetting.rules.risk.ModelUncertainty;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.units.Probability;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Tunes many engines in every way. The same engines and riders meet each way, and the same seed
 * gives the same figures on every machine.
 *
 * @param riskModel by which the library tunes
 * @param truth how far the engines really differ, by the library's own names
 * @param seed of everything that is drawn
 */
record Trial(RiskModel riskModel, ModelUncertainty truth, long seed) {

  /** The trial of the published figures. */
  static final Trial PUBLISHED =
      new Trial(RiskModel.assumed(), RiskModel.assumed().uncertainty(), 20_261_125);

  /** Every way in some worlds, for owners who accept a risk. */
  List<Row> rows(List<World> worlds, int engines, int acceptedPercent) {
    List<Machine> machines = machines(acceptedPercent);
    List<Row> rows = new ArrayList<>();
    for (RowKey key : RowKey.in(worlds, acceptedPercent)) {
      rows.add(row(key.world(), key.way(), machines, engines, acceptedPercent));
    }
    return rows;
  }

  List<Machine> machines(int acceptedPercent) {
    return Machine.all(riskModel, Probability.ofPercent(acceptedPercent));
  }

  /** One way in one world. */
  Row row(World world, Way way, List<Machine> machines, int engines, int acceptedPercent) {
    List<Course> courses =
        IntStream.range(0, engines)
            .parallel()
            .mapToObj(i -> course(world, way, machines.get(i % machines.size()), seed + i))
            .toList();
    return Row.of(world, way, acceptedPercent, courses);
  }

  private Course course(World world, Way way, Machine machine, long engineSeed) {
    var sheet = way == Way.HABIT_TAKEN_OVER ? machine.takenOver() : machine.start();
    TrueEngine engine = world.engine(sheet, truth, engineSeed);
    Rider rider = new Rider(way.instrument(), world.skill(), engineSeed);
    return way.byLibrary()
        ? new ByLibrary(engine, rider, riskModel, world).tune(sheet)
        : ByHabit.tune(engine, sheet, rider, riskModel);
  }
}
