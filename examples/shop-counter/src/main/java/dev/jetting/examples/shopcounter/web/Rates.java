package dev.jetting.examples.shopcounter.web;

import java.time.Clock;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/** How many requests each address may still make: a bucket of tokens that fills again. */
final class Rates {

  private static final int MOST_ADDRESSES = 10_000;

  private final Limits limits;
  private final Clock clock;
  private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true);

  private record Bucket(double tokens, long millisecond) {}

  Rates(Limits limits, Clock clock) {
    this.limits = limits;
    this.clock = clock;
  }

  /** Takes a token, or refuses. */
  synchronized void take(String address) {
    long now = clock.millis();
    Bucket bucket = buckets.getOrDefault(address, new Bucket(limits.burst(), now));
    double gained = (now - bucket.millisecond) / 1000.0 * limits.perSecond();
    double tokens = Math.min(limits.burst(), bucket.tokens + gained);
    if (tokens < 1) {
      throw Problem.tooMany((int) Math.ceil((1 - tokens) / limits.perSecond()));
    }
    buckets.put(address, new Bucket(tokens - 1, now));
    forgetTheOldest();
  }

  private void forgetTheOldest() {
    Iterator<String> oldest = buckets.keySet().iterator();
    while (buckets.size() > MOST_ADDRESSES) {
      oldest.next();
      oldest.remove();
    }
  }
}
