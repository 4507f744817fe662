package dev.jetting.examples.kitdesk;

import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Standing;
import java.util.ArrayList;
import java.util.List;

/**
 * The settings that a page shows of those that were found.
 *
 * @param settings those that are right; where none is, those that come nearest
 * @param passedOver those that are not shown because the rulebook is against them
 * @param more how many others there are to tell of
 * @param moreRight how many of these are right
 */
record Shown(
    List<JudgedSetting> settings, List<JudgedSetting> passedOver, int more, int moreRight) {

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
        ? new Shown(against.stream().limit(most).toList(), List.of(), 0, 0)
        : new Shown(right, against, 0, 0);
  }

  /** Of a front, all of which is an answer. */
  static Shown front(Found found, SettingJudge judge, int most) {
    List<FoundSetting> candidates = candidates(found.settings());
    List<JudgedSetting> right =
        candidates.stream().map(judge::judge).filter(JudgedSetting::right).toList();
    List<JudgedSetting> shown =
        right.isEmpty()
            ? candidates.stream().limit(most).map(judge::judge).toList()
            : right.stream().limit(most).toList();
    int moreRight = Math.max(0, right.size() - shown.size());
    return new Shown(shown, List.of(), found.settings().size() - shown.size(), moreRight);
  }

  boolean anyRight() {
    return settings.stream().anyMatch(JudgedSetting::right);
  }

  /** Those whose mixture is right; all where there are none. */
  private static List<FoundSetting> candidates(List<FoundSetting> found) {
    List<FoundSetting> right =
        found.stream().filter(each -> each.standing() == Standing.RIGHT).toList();
    return right.isEmpty() ? found : right;
  }
}
