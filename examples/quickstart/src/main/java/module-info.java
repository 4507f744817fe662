import org.jspecify.annotations.NullMarked;

/** A program that embeds the library as an outsider would: only its published API. */
@NullMarked
module dev.jetting.examples.quickstart {
  requires dev.jetting.rules;
  requires info.picocli;
  requires static org.jspecify;

  opens dev.jetting.examples.quickstart to
      info.picocli;
}
