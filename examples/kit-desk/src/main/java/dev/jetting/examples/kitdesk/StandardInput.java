package dev.jetting.examples.kitdesk;

import java.io.InputStream;

/** What is piped into the program. It can be read once, so it replaces one file only. */
final class StandardInput {

  private final InputStream in;
  private boolean taken;

  StandardInput(InputStream in) {
    this.in = in;
  }

  InputStream open() throws UnusableException {
    if (taken) {
      throw new UnusableException("- for two files: allowed for one, for it can be read only once");
    }
    taken = true;
    return in;
  }
}
