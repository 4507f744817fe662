package dev.jetting.rules.json;

/**
 * Distinguishes the project's types from those of a caller who registers the module with a mapper.
 */
final class Ours {

  private Ours() {}

  static boolean is(Class<?> type) {
    return type.getPackageName().startsWith("dev.jetting.");
  }
}
