package dev.jetting.rules.json;

import com.google.common.collect.ImmutableMap;
import dev.jetting.core.typical.MachineValue;

/** Names of enum constants in documents of earlier versions, which are read and never written. */
final class FormerNames {

  /** Before mixture model 4, inlets had an open share and a blowback. */
  private static final ImmutableMap<String, Object> OF_MACHINE_VALUES =
      ImmutableMap.of(
          "blowback", MachineValue.INLET_CLOSES, "open-share", MachineValue.INLET_OPENS);

  private FormerNames() {}

  /** The constants of a type by their former names. */
  static ImmutableMap<String, Object> of(Class<?> type) {
    return type == MachineValue.class ? OF_MACHINE_VALUES : ImmutableMap.of();
  }
}
