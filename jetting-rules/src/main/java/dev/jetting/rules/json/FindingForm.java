package dev.jetting.rules.json;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import dev.jetting.rules.Finding;
import dev.jetting.rules.Measure;
import dev.jetting.rules.Remedy;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import java.util.Map;
import java.util.Optional;

/**
 * A finding, in JSON.
 *
 * @param subject path of the part or circuit it is about, such as {@code setting.needleJet}
 * @param measured what was measured
 * @param limit what it was held against
 * @param margin limit less measured, or measured less limit: below zero by how much the rule
 *     failed, in the unit of both
 * @param band where in the throttle range
 * @param worst the opening and the engine speed at which it is worst; left out where no single
 *     opening is
 * @param message one sentence that says what is wrong, with {@code {name}} for each attribute
 * @param attributes the values that the message shows, by name, in English
 * @param key the key of the message, by which it is found in other languages
 * @param arguments the values that the message shows, by name, as typed values
 * @param remedy what to change
 */
record FindingForm(
    String subject,
    Measure measured,
    Measure limit,
    Measure margin,
    ThrottleBand band,
    Optional<Finding.Spot> worst,
    String message,
    Map<String, String> attributes,
    Optional<String> key,
    Optional<Map<String, Argument>> arguments,
    Remedy remedy) {

  static FindingForm of(Finding finding) {
    Map<String, Argument> values = finding.words().arguments();
    return new FindingForm(
        finding.subject(),
        finding.measured(),
        finding.limit(),
        finding.margin(),
        finding.band(),
        finding.worst(),
        finding.message(),
        finding.attributes(),
        Optional.of(finding.words().key()).filter(key -> !key.isEmpty()),
        Optional.of(values)
            .filter(v -> v.values().stream().anyMatch(a -> MessageForm.typed(a).isPresent())),
        finding.remedy());
  }

  /** The attributes of typed values are made anew: they are not what a program reads. */
  Finding finding() {
    return new Finding(
        subject,
        measured,
        limit,
        margin,
        band,
        worst,
        new Message(
            key.orElse(""),
            message,
            arguments.orElseGet(
                () -> ImmutableSortedMap.copyOf(Maps.transformValues(attributes, Argument::name)))),
        remedy);
  }
}
