package dev.jetting.examples.shopcounter.web;

import io.javalin.http.Context;
import java.net.URI;

/** What is asked of each request, and said with each answer, for safety. */
final class Guard {

  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
          + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private final Rates rates;

  Guard(Rates rates) {
    this.rates = rates;
  }

  void before(Context request) {
    request.header("Content-Security-Policy", POLICY);
    request.header("X-Content-Type-Options", "nosniff");
    request.header("Referrer-Policy", "same-origin");
    request.header("Cache-Control", "no-store");
    if (!request.path().startsWith(Assets.PATH)) {
      rates.take(request.ip());
    }
    if (!request.method().name().equals("GET") && isForeign(request)) {
      throw Problem.foreign();
    }
  }

  /** A browser names the site whose page sends a change; a shop's own program names none. */
  private static boolean isForeign(Context request) {
    String origin = request.header("Origin");
    return origin != null && !authority(origin).equals(request.header("Host"));
  }

  private static String authority(String origin) {
    try {
      return String.valueOf(URI.create(origin).getAuthority());
    } catch (IllegalArgumentException e) {
      return "";
    }
  }
}
