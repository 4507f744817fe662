package dev.jetting.rules.kit;

import dev.jetting.units.InvalidValueException;
import dev.jetting.units.OneLine;
import dev.jetting.units.QuantityException;
import dev.jetting.units.Refusal;
import dev.jetting.units.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** One row of a list, read column by column; blank is the same as absent. */
final class Row {

  /** Without the blanks before it, which a long row of them would be looked through for again. */
  private static final Pattern SEPARATOR = Pattern.compile(";\\s*+");

  private static final int LONGEST = 60;

  private final long line;
  private final Map<String, String> cells;

  Row(long line, Map<String, String> cells, List<String> columns) {
    this.line = line;
    this.cells = cells;
    Set<String> unknown = new TreeSet<>(cells.keySet());
    columns.forEach(unknown::remove);
    for (String column : unknown) {
      throw refused(
          shown(column),
          Sentence.refused(
              Sentence.of("error.unknown-column"), Sentence.plain(String.join(", ", columns))));
    }
  }

  Optional<String> text(String column) {
    return Optional.ofNullable(cells.get(column)).map(String::strip).filter(s -> !s.isEmpty());
  }

  String required(String column) {
    return text(column)
        .orElseThrow(
            () ->
                refused(
                    column,
                    Sentence.refused(Sentence.of("error.missing"), Sentence.of("error.text"))));
  }

  /**
   * Reads a cell with the parser of its quantity, whose error names value, unit and what is
   * allowed.
   */
  <Q> Q required(String column, Function<String, Q> parse) {
    String text = text(column).orElse("");
    return made(column, () -> parse.apply(text));
  }

  <Q> Optional<Q> optional(String column, Function<String, Q> parse) {
    return text(column).map(text -> made(column, () -> parse.apply(text)));
  }

  /** Texts with semicolons between. */
  List<String> list(String column) {
    List<String> texts = new ArrayList<>();
    text(column).stream()
        .flatMap(SEPARATOR::splitAsStream)
        .map(String::stripTrailing)
        .forEach(texts::add);
    return texts;
  }

  <E extends Enum<E>> E constant(String column, Class<E> type) {
    String text = text(column).orElse("");
    List<String> names = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      String name = constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
      if (name.equals(text)) {
        return constant;
      }
      names.add(name);
    }
    throw refused(
        column,
        Sentence.refused(Sentence.plain(quoted(text)), Sentence.plain(String.join(", ", names))));
  }

  int whole(String column) {
    String text = text(column).orElse("");
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw refused(
          column, Sentence.refused(Sentence.plain(quoted(text)), Sentence.of("error.whole")));
    }
  }

  /** Makes a value of the row; errors of its checks name the place. */
  <T> T made(String column, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (RowException e) {
      throw e;
    } catch (InvalidValueException e) {
      String at = e.field().replaceFirst("[.\\[].*", "");
      throw refused(cells.containsKey(at) ? at : column, e.sentence());
    } catch (IllegalArgumentException e) {
      throw refused(column, Refusal.of(e));
    }
  }

  /** Checks what the row makes; the column bears the last name of the field that is refused. */
  void inRange(Runnable check) {
    try {
      check.run();
    } catch (InvalidValueException e) {
      String column = e.field().substring(e.field().lastIndexOf('.') + 1);
      throw refused(column, e.withoutField());
    } catch (QuantityException e) { // of a flow, the only size that has to be converted
      throw refused("flow", e.sentence());
    }
  }

  RowException refused(String column, Sentence problem) {
    return new RowException(line, column, text(column).orElse(""), problem);
  }

  static String quoted(String text) {
    return OneLine.quoted(text);
  }

  private static String shown(String column) {
    return OneLine.shown(column, LONGEST);
  }
}
