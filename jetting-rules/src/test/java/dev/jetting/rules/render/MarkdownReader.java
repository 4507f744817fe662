package dev.jetting.rules.render;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** A general reader of Markdown with tables, to see what others would see. */
final class MarkdownReader {

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private MarkdownReader() {}

  static Node read(String markdown) {
    return PARSER.parse(markdown);
  }

  /** Every kind of node in a document. */
  static Set<String> kinds(Node node) {
    Set<String> kinds = new TreeSet<>();
    all(node).forEach(each -> kinds.add(each.getClass().getSimpleName()));
    return kinds;
  }

  /** The plain text of each node of a kind, in the order of the document. */
  static List<String> texts(Node document, Class<? extends Node> kind) {
    return all(document).stream().filter(kind::isInstance).map(MarkdownReader::text).toList();
  }

  private static String text(Node node) {
    return all(node).stream()
        .map(
            each ->
                each instanceof Text text
                    ? text.getLiteral()
                    : each instanceof HardLineBreak ? "\n" : "")
        .collect(joining());
  }

  static List<String> cells(Node document) {
    return texts(document, TableCell.class);
  }

  private static List<Node> all(Node node) {
    List<Node> found = new ArrayList<>(List.of(node));
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      found.addAll(all(child));
    }
    return found;
  }
}
