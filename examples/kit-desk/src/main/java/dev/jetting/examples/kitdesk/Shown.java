package dev.jetting.examples.kitdesk;

import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.FoundSetting;
import dev.jetting.rules.search.Standing;
import java.util.List;

/**
 * The settings that a page shows of those that were found.
 *
 * @param settings those that are right; where none is, those that come nearest
 * @param right how many of all that were found are right
 */
record Shown(List<JudgedSetting> settings, int right) {

  static Shown of(Found found, SettingJudge judge, int most) {
    List<FoundSetting> candidates = candidates(found.settings());
    List<JudgedSetting> right =
        candidates.stream().map(judge::judge).filter(JudgedSetting::right).toList();
    return new Shown(
        right.isEmpty()
            ? candidates.stream().limit(most).map(judge::judge).toList()
            : right.stream().limit(most).toList(),
        right.size());
  }

  /** Those whose mixture is right; all where there are none. */
  private static List<FoundSetting> candidates(List<FoundSetting> found) {
    List<FoundSetting> right =
        found.stream().filter(each -> each.standing() == Standing.RIGHT).toList();
    return right.isEmpty() ? found : right;
  }
}
