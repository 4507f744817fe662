package dev.jetting.rules.search;

/** Goes through the settings of a piece of work. Belongs to one worker. */
interface Sweeping {

  /** A piece of work: a slide with a needle jet. */
  void piece(int index);

  /** How many settings were worked out, in full or until they proved not to matter. */
  long workedOut();
}
