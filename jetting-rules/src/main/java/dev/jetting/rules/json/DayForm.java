package dev.jetting.rules.json;

import dev.jetting.rules.json.ProfileForm.EffectForm;
import dev.jetting.rules.json.ProfileForm.GridForm;
import dev.jetting.rules.json.ProfileForm.MixtureForm;
import dev.jetting.rules.json.ProfileForm.RiskForm;
import dev.jetting.rules.risk.RiskProfile;
import java.util.List;
import java.util.Optional;

/**
 * The lean risk on another day, in JSON.
 *
 * @param grid the openings, with what is the same on every day; left out where it is that of {@code
 *     profile}
 * @param mixture the mixture by the model
 * @param risk the lean risk
 * @param effects what each part does; left out where that is not stated
 */
record DayForm(
    Optional<GridForm> grid,
    MixtureForm mixture,
    RiskForm risk,
    Optional<List<EffectForm>> effects) {

  static DayForm of(RiskProfile day, GridForm today) {
    ProfileForm form = ProfileForm.of(day);
    return new DayForm(
        Optional.of(form.grid()).filter(grid -> !grid.equals(today)),
        form.mixture(),
        form.risk(),
        Optional.of(form.effects()).filter(effects -> !effects.isEmpty()));
  }

  RiskProfile profile(GridForm today) {
    return new ProfileForm(grid.orElse(today), mixture, risk, effects.orElse(List.of())).profile();
  }
}
