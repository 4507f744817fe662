package dev.jetting.rules.json;

import dev.jetting.core.air.Air;
import dev.jetting.rules.risk.RiddenSpeeds;
import dev.jetting.rules.risk.Riding;
import dev.jetting.rules.risk.RidingProfile;
import dev.jetting.units.Probability;
import java.util.Optional;

/**
 * What the owner rides, in JSON.
 *
 * @param acceptedRisk accepted probability that the mixture is too lean, at any throttle opening;
 *     more than 0, at most 0.5
 * @param profile how much of the riding falls on which throttle opening
 * @param coldest the air of the coldest day and lowest place he rides in
 * @param hottest the air of the hottest day or highest place he rides in
 * @param speeds the engine speeds at which he rides an opening; left out where they are assumed
 */
record RidingForm(
    Probability acceptedRisk,
    RidingProfile profile,
    Air coldest,
    Air hottest,
    Optional<RiddenSpeeds> speeds) {

  static RidingForm of(Riding riding) {
    return new RidingForm(
        riding.acceptedRisk(),
        riding.profile(),
        riding.coldest(),
        riding.hottest(),
        Optional.of(riding.speeds()).filter(speeds -> !speeds.equals(RiddenSpeeds.assumed())));
  }

  Riding riding() {
    return Riding.builder()
        .acceptedRisk(acceptedRisk)
        .profile(profile)
        .coldest(coldest)
        .hottest(hottest)
        .speeds(speeds.orElse(RiddenSpeeds.assumed()))
        .build();
  }
}
