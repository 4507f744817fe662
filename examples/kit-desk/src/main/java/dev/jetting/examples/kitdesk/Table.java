package dev.jetting.examples.kitdesk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Columns of text under their names; numbers to the right. */
final class Table {

  private final List<String[]> rows = new ArrayList<>();
  private final boolean[] right;
  private String gap = "  ";

  /** Names of the columns; one that begins with {@code >} holds numbers. */
  Table(String... columns) {
    right = new boolean[columns.length];
    String[] names = new String[columns.length];
    for (int i = 0; i < columns.length; i++) {
      right[i] = columns[i].startsWith(">");
      names[i] = right[i] ? columns[i].substring(1) : columns[i];
    }
    rows.add(names);
  }

  void row(Object... cells) {
    rows.add(Arrays.stream(cells).map(String::valueOf).toArray(String[]::new));
  }

  /** Whole lines below the last row, that keep to no column. */
  void note(String lines) {
    rows.add(new String[] {lines});
  }

  private boolean isNote(String[] row) {
    return row.length < right.length;
  }

  /** With one blank between the columns in place of two. */
  void narrow() {
    gap = " ";
  }

  /** How many columns of text a row may take. */
  int width() {
    return IntStream.of(widths()).map(each -> gap.length() + each).sum();
  }

  private int[] widths() {
    return IntStream.range(0, right.length)
        .map(
            i ->
                rows.stream()
                    .filter(row -> !isNote(row))
                    .mapToInt(row -> width(row[i]))
                    .max()
                    .orElse(0))
        .toArray();
  }

  /** Each line begins with what is between the columns and ends without any blank. */
  String text() {
    int[] widths = widths();
    StringBuilder text = new StringBuilder();
    for (String[] row : rows) {
      if (isNote(row)) {
        text.append(row[0]);
        continue;
      }
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.length; i++) {
        String blanks = " ".repeat(widths[i] - width(row[i]));
        line.append(gap).append(right[i] ? blanks + row[i] : row[i] + blanks);
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  /** Shortens a text to at most the given columns, on one line. */
  static String fitted(String text, int columns) {
    String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]+", " ");
    return width(line) <= columns
        ? line
        : line.substring(0, line.offsetByCodePoints(0, columns - 1)) + "…";
  }
}
