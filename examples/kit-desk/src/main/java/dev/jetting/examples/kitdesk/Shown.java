package dev.jetting.examples.kitdesk;

import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The settings that a page shows of those that were found.
 *
 * @param settings those that are right; where none is, those that come nearest
 * @param more others like them, for which the page has no room
 * @param passedOver those that are not shown because the rulebook is against them
 * @param among what these were found among: the best of all, or a front
 */
record Shown(
    List<JudgedSetting> settings,
    List<JudgedSetting> more,
    List<JudgedSetting> passedOver,
    String among) {

  /** Of the best of all settings the first that are right. */
  static Shown best(Found found, SettingJudge judge, int most) {
    List<JudgedSetting> right = new ArrayList<>();
    List<JudgedSetting> against = new ArrayList<>();
    for (FoundSetting candidate : candidates(found.settings())) {
      if (right.size() < most) {
        JudgedSetting judged = judge.judge(candidate);
        (judged.right() ? right : against).add(judged);
      }
    }
    return right.isEmpty()
        ? new Shown(against.stream().limit(most).toList(), List.of(), List.of(), "best")
        : new Shown(right, List.of(), against, "best");
  }

  /** The settings of a front. Each is an answer. */
  static Shown front(Found found, SettingJudge judge, int most) {
    List<JudgedSetting> judged = found.settings().stream().map(judge::judge).toList();
    List<JudgedSetting> right = judged.stream().filter(JudgedSetting::right).toList();
    List<JudgedSetting> against = judged.stream().filter(each -> !each.right()).toList();
    List<JudgedSetting> answer = right.isEmpty() ? against : right;
    int room = Math.min(most, answer.size());
    return new Shown(
        answer.subList(0, room),
        answer.subList(room, answer.size()),
        right.isEmpty() ? List.of() : against,
        "front");
  }

  boolean anyRight() {
    return settings.stream().anyMatch(JudgedSetting::right);
  }

  /** Those that are shown, and those for which there is no room. */
  List<JudgedSetting> all() {
    return Stream.concat(settings.stream(), more.stream()).toList();
  }

  /** Those whose mixture is right; all where there are none. */
  private static List<FoundSetting> candidates(List<FoundSetting> found) {
    List<FoundSetting> right =
        found.stream().filter(each -> each.standing() == Standing.RIGHT).toList();
    return right.isEmpty() ? found : right;
  }
}
