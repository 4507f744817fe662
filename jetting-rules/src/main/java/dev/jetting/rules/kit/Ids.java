package dev.jetting.rules.kit;

import java.util.Objects;

/** The names by which the things of a catalogue call each other. */
final class Ids {

  private Ids() {}

  static void check(String what, String id) {
    if (Objects.requireNonNull(id, "id").isBlank()) {
      throw new IllegalArgumentException(
          "id of the " + what + " is blank: allowed any text with a visible character");
    }
  }
}
