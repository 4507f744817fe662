package dev.jetting.rules;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.Collectors;

/**
 * Rules that somebody publishes as a module of their own, found through {@link ServiceLoader}.
 *
 * <p>An implementation has a public constructor without parameters and is named in the provider's
 * module descriptor ({@code provides dev.jetting.rules.RulePack with …}) or in {@code
 * META-INF/services}.
 */
public interface RulePack {

  /** {@return the pack's id, unique among the packs loaded together} */
  String id();

  /** {@return the pack's version} */
  String version();

  /** {@return its rules, each id once} */
  List<Rule> rules();

  /**
   * Loads the packs that a class loader finds.
   *
   * @param loader the class loader; the library has none of its own choice
   * @return the packs by their id, whatever the order of the class path
   * @throws IllegalArgumentException if two packs have one id
   * @throws java.util.ServiceConfigurationError if a provider cannot be made
   */
  static List<RulePack> load(ClassLoader loader) {
    return ordered(
        ServiceLoader.load(RulePack.class, loader).stream()
            .map(ServiceLoader.Provider::get)
            .toList());
  }

  /** The packs by their id. */
  private static List<RulePack> ordered(Collection<RulePack> packs) {
    packs.stream()
        .collect(Collectors.groupingBy(RulePack::id, Collectors.counting()))
        .forEach(
            (id, count) -> {
              if (count > 1) {
                throw new IllegalArgumentException(
                    "rule pack id " + id + " " + count + " times: allowed once");
              }
            });
    return packs.stream().sorted(Comparator.comparing(RulePack::id)).toList();
  }
}
