import org.jspecify.annotations.NullMarked;

/** A program for sellers of parts that embeds the library as an outsider would. */
@NullMarked
module dev.jetting.examples.kitdesk {
  requires com.fasterxml.jackson.dataformat.csv;
  requires dev.jetting.rules;
  requires info.picocli;
  requires me.tongfei.progressbar;
  requires static org.jspecify;

  opens dev.jetting.examples.kitdesk to
      com.fasterxml.jackson.databind,
      info.picocli;
}
