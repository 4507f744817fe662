/**
 * Typed quantities of carburettor setting: jet sizes, clip positions, screw turns, mixture
 * strength, and the pressures, temperatures and flows around them.
 */
@SuppressWarnings("module") // the modules that "number" is shared with are compiled after this one
module dev.jetting.units {
  requires static org.jspecify;

  exports dev.jetting.units;
  exports dev.jetting.units.number to
      dev.jetting.core,
      dev.jetting.rules;
}
