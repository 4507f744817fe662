package dev.jetting.rules.render;

import java.util.regex.Pattern;

/** Plain text as Markdown that shows just this text, on one line, in a table cell as well. */
final class MarkdownText {

  /** Punctuation that begins markup, an entity or HTML anywhere in a line. */
  private static final Pattern ANYWHERE = Pattern.compile("[\\\\`*_\\[\\]<>|~&#]");

  /** What begins a list, a rule or an underlined heading at the start of a block only. */
  private static final Pattern AT_START =
      Pattern.compile("^(?=[-+=:](?![0-9]))|(?<=^[0-9]{1,9})(?=[.)](?: |$))");

  private MarkdownText() {}

  static String escaped(String plain) {
    String markdown = ANYWHERE.matcher(TextPage.oneLine(plain)).replaceAll("\\\\$0");
    return AT_START.matcher(markdown).replaceAll("\\\\");
  }
}
