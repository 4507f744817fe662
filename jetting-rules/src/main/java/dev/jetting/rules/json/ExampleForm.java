package dev.jetting.rules.json;

import com.google.common.collect.ImmutableSortedMap;
import dev.jetting.rules.Outcome;
import java.util.Map;
import java.util.Optional;

/**
 * An example of a rule in JSON: a setup sheet and the outcome there.
 *
 * @param on name of the sheet that is edited
 * @param edits the value to put at each JSON Pointer (RFC 6901) into the sheet's document
 * @param expect the outcome
 * @param subject what a finding is on
 * @param limit the limit that the outcome states, a quantity with its unit
 */
record ExampleForm(
    String on,
    Optional<Map<String, JsonText>> edits,
    Outcome.Status expect,
    Optional<String> subject,
    Optional<String> limit) {

  ExampleForm {
    edits = edits.map(ImmutableSortedMap::copyOf); // the order of the document means nothing
  }
}
