package dev.jetting.examples.tuningtrial;

import java.util.ArrayList;
import java.util.List;

/**
 * Which row of the trial.
 *
 * @param world where the engines come from
 * @param way how they are tuned
 * @param acceptedPercent the risk that the owners accept
 */
record RowKey(World world, Way way, int acceptedPercent) {

  /** Risk that is accepted in every world. */
  private static final int LITTLE = 1;

  /** Risk that is accepted in those that are tried twice. */
  private static final int MUCH = 10;

  /** Every row, in the order of the tables. */
  static List<RowKey> all() {
    List<RowKey> keys = new ArrayList<>(in(List.of(World.values()), LITTLE));
    keys.addAll(in(World.TRIED_TWICE, MUCH));
    return keys;
  }

  /** Every way in some worlds. */
  static List<RowKey> in(List<World> worlds, int acceptedPercent) {
    List<RowKey> keys = new ArrayList<>();
    for (World world : worlds) {
      for (Way way : Way.values()) {
        if (world.isFor(way)) {
          keys.add(new RowKey(world, way, acceptedPercent));
        }
      }
    }
    return keys;
  }

  static RowKey of(Row row) {
    return new RowKey(row.world(), row.way(), row.acceptedPercent());
  }

  /** Where owners accept more risk, a quarter of the engines shows as much. */
  int engines(int engines) {
    return acceptedPercent == LITTLE ? engines : (engines + 3) / 4;
  }

  /**
   * Whether a name means it.
   *
   * @param name a world, a world and a way, or those and the accepted risk, such as {@code
   *     AIR_LEAK/LIBRARY_PLUG/1}
   */
  boolean isNamed(String name) {
    return (this + "/").startsWith(name + "/");
  }

  @Override
  public String toString() {
    return world + "/" + way + "/" + acceptedPercent;
  }
}
