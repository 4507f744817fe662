import org.jspecify.annotations.NullMarked;

/**
 * The rules API: from a setup sheet to an assessed setting, its lean risk over the throttle range,
 * and the report of a rulebook.
 */
@NullMarked
@SuppressWarnings("requires-automatic") // hipparchus has no module descriptor of its own
module dev.jetting.rules {
  requires transitive dev.jetting.core;
  requires transitive com.fasterxml.jackson.databind;
  requires com.google.common;
  requires hipparchus.core;
  requires static org.jspecify;

  exports dev.jetting.rules;
  exports dev.jetting.rules.advice;
  exports dev.jetting.rules.json;
  exports dev.jetting.rules.kit;
  exports dev.jetting.rules.render;
  exports dev.jetting.rules.risk;
  exports dev.jetting.rules.search;
  exports dev.jetting.rules.standard;
  exports dev.jetting.rules.text;
  exports dev.jetting.rules.tuning;

  uses dev.jetting.rules.RulePack;

  provides com.fasterxml.jackson.databind.Module with
      dev.jetting.rules.json.JettingModule;

  // Its package-private records stand in JSON for types that are no records.
  opens dev.jetting.rules.json to
      com.fasterxml.jackson.databind;
}
