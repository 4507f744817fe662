package dev.jetting.rules.render;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** Whatever text comes from outside, a general reader of Markdown shows just that text. */
class MarkdownTextProperties {

  @Property(tries = 2000)
  void escaped_anyText_isShownAsItIs(@ForAll("hostile") String text) {
    String shown = TextPage.oneLine(text);
    String escaped = MarkdownText.escaped(text);
    Node document =
        MarkdownReader.read(
            "# %1$s\n\n%1$s\n\n- %1$s\\\n  %1$s\n\n| a | b |\n|---|---|\n| %1$s | end |\n"
                .replace("%1$s", escaped));

    assertThat(MarkdownReader.kinds(document))
        .isSubsetOf(
            "Document",
            "Heading",
            "Paragraph",
            "Text",
            "BulletList",
            "ListItem",
            "HardLineBreak",
            "TableBlock",
            "TableHead",
            "TableBody",
            "TableRow",
            "TableCell");
    assertThat(MarkdownReader.texts(document, Heading.class)).containsExactly(shown);
    assertThat(MarkdownReader.texts(document, Paragraph.class)).contains(shown);
    assertThat(MarkdownReader.texts(document, ListItem.class)).hasSize(1);
    assertThat(MarkdownReader.cells(document)).containsExactly("a", "b", shown, "end");
  }

  /** Pieces that mean something to Markdown, and words between them; never blank. */
  @Provide
  Arbitrary<String> hostile() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "\\",
            "`",
            "``",
            "*",
            "**",
            "_",
            "{",
            "}",
            "[",
            "]",
            "(",
            ")",
            "<",
            ">",
            "#",
            "##",
            "+",
            "-",
            "---",
            "===",
            ".",
            "!",
            "|",
            "~~",
            "&",
            "&amp;",
            "&#42;",
            "@",
            ":",
            ":--",
            "1.",
            "12)",
            "a",
            "λ",
            "word",
            " ",
            "  ",
            "\n",
            "\n\n",
            "\t",
            "<b>",
            "</b>",
            "<!--",
            "-->",
            "https://",
            "http://a.example",
            "www.",
            "www.a.example",
            "a@b.example",
            "mailto:",
            "[a](b)",
            "![a](b)",
            "[a]: b",
            "\"",
            "'",
            "/",
            "%",
            "=",
            "$",
            "^");
    return pieces
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(list -> String.join("", list))
        .filter(text -> !TextPage.oneLine(text).isEmpty());
  }
}
