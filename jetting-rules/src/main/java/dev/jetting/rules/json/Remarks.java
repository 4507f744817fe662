package dev.jetting.rules.json;

import dev.jetting.rules.json.RuleRemark.Kind;
import dev.jetting.rules.text.Message;
import java.util.ArrayList;
import java.util.List;

/** Collects remarks on places of a document, up to a number that a person may read. */
final class Remarks {

  /** A stranger's file may give cause for a hundred thousand. */
  static final int MOST = 200;

  /** A remark whose place is known by its path only. */
  private record Remark(Path path, Kind kind, String ruleId, Message words) {}

  private final List<Remark> remarks = new ArrayList<>();

  /** Adds a remark, unless there are enough. */
  void add(Path path, Kind kind, String ruleId, Message words) {
    if (!isFull()) {
      remarks.add(new Remark(path, kind, ruleId, words));
    }
  }

  /** Whether there are enough. */
  boolean isFull() {
    return remarks.size() >= MOST;
  }

  int size() {
    return remarks.size();
  }

  /** The kinds of the remarks from one on. */
  List<Kind> kinds(int from) {
    return remarks.subList(from, remarks.size()).stream().map(Remark::kind).toList();
  }

  /** The remarks with line and column; the document is read once for them all. */
  List<RuleRemark> in(Document document) {
    Places places = document.places(remarks.stream().map(Remark::path).toList());
    return remarks.stream()
        .map(
            remark ->
                new RuleRemark(
                    remark.kind(),
                    remark.ruleId(),
                    remark.path().pointer(),
                    places.of(remark.path()).getLineNr(),
                    places.of(remark.path()).getColumnNr(),
                    remark.words()))
        .toList();
  }
}
