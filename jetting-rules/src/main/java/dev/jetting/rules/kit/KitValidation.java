package dev.jetting.rules.kit;

import dev.jetting.rules.RankedFinding;
import dev.jetting.rules.RulebookEdition;
import dev.jetting.rules.Severity;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What is to be said of a kit before anyone buys it. The same kit, catalogue, rulebook and depth
 * give the same result, byte for byte.
 *
 * @param schemaVersion version of the result's form, {@link #SCHEMA_VERSION}
 * @param kit id of the kit
 * @param depth how far it was looked into
 * @param rulebook which rules recommended settings were held against
 * @param passes whether nothing speaks against selling it, as far as it was looked into. Except for
 *     what is waived, the kit has no finding of danger, its recommended settings pass, and its
 *     coverage is not below the least; never a promise
 * @param findings what was found on the kit itself, the most dangerous first
 * @param machines what was found on each machine with each fuel, in the order of the kit and its
 *     market; none at depth {@link KitDepth#FIT} and for a setting that cannot be put together
 * @param unusedWaivers waivers of the kit that waived nothing, or did not cover a finding
 */
public record KitValidation(
    int schemaVersion,
    String kit,
    KitDepth depth,
    RulebookEdition rulebook,
    boolean passes,
    List<RankedFinding> findings,
    List<MachineResult> machines,
    List<UnusedKitWaiver> unusedWaivers) {

  /** The version of the result's form that this library writes and reads. */
  public static final int SCHEMA_VERSION = 1;

  /**
   * Copies the lists.
   *
   * @param schemaVersion version of the result's form, {@link #SCHEMA_VERSION}
   * @param kit id of the kit
   * @param depth how far it was looked into
   * @param rulebook which rules recommended settings were held against
   * @param passes whether nothing speaks against selling it, as far as it was looked into
   * @param findings what was found on the kit itself, the most dangerous first
   * @param machines what was found on each machine with each fuel
   * @param unusedWaivers waivers of the kit that waived nothing, or did not cover a finding
   */
  public KitValidation {
    Objects.requireNonNull(kit, "kit");
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(rulebook, "rulebook");
    findings = List.copyOf(findings);
    machines = List.copyOf(machines);
    unusedWaivers = List.copyOf(unusedWaivers);
  }

  /**
   * How many findings there are, those on machines included.
   *
   * @param severity their severity
   * @return zero or more
   */
  public int count(Severity severity) {
    return (int)
        Stream.concat(
                findings.stream(),
                machines.stream().flatMap(machine -> machine.findings().stream()))
            .filter(found -> found.severity() == severity)
            .count();
  }
}
