import org.jspecify.annotations.NullMarked;

/** A program that embeds the library as an outsider would: only its published API. */
@NullMarked
@SuppressWarnings("requires-automatic") // Hipparchus has no module descriptors
module dev.jetting.examples.tuningtrial {
  requires com.fasterxml.jackson.databind;
  requires dev.jetting.rules;
  requires hipparchus.core;
  requires static org.jspecify;

  opens dev.jetting.examples.tuningtrial to
      com.fasterxml.jackson.databind;
}
