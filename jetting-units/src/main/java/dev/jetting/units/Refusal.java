package dev.jetting.units;

/**
 * An error at invalid input that carries what it says as data. Each exception of this library that
 * readers and builders throw at what a person wrote is one.
 */
public interface Refusal {

  /** {@return what the error says: a key and typed values} */
  Sentence sentence();

  /**
   * Returns what any error says.
   *
   * @param error the error
   * @return its sentence; its message in plain words where it is none of this library
   */
  static Sentence of(Throwable error) {
    return error instanceof Refusal refusal
        ? refusal.sentence()
        : Sentence.plain(String.valueOf(error.getMessage()));
  }
}
