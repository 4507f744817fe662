package dev.jetting.examples.shopcounter.web;

import java.io.Serial;
import java.util.LinkedHashMap;
import java.util.Map;

/** A request that cannot be served, as RFC 9457 for a program and as a page for a person. */
final class Problem extends RuntimeException {

  @Serial private static final long serialVersionUID = 1L;

  private final int status;
  private final String title;
  private final transient Map<String, Object> more = new LinkedHashMap<>();

  private Problem(int status, String title, String detail) {
    super(detail);
    this.status = status;
    this.title = title;
  }

  static Problem notFound() {
    return new Problem(
        404, "Not found", "There is nothing at this address, or it belongs to another visitor.");
  }

  static Problem unusable(String detail) {
    return new Problem(422, "Input that cannot be used", detail);
  }

  static Problem tooLarge(int most) {
    return new Problem(
        413, "Too large", "What was sent is too large. Allowed: at most " + most + " bytes.");
  }

  static Problem tooMany(int seconds) {
    Problem problem =
        new Problem(429, "Too many requests", "Too many requests. Try again in " + seconds + " s.");
    return problem.with("retryAfterSeconds", seconds);
  }

  static Problem foreign() {
    return new Problem(403, "From another site", "A change must come from a page of this program.");
  }

  static Problem of(int status, String title, String detail) {
    return new Problem(status, title, detail);
  }

  Problem with(String name, Object value) {
    more.put(name, value);
    return this;
  }

  int status() {
    return status;
  }

  String title() {
    return title;
  }

  String detail() {
    return String.valueOf(getMessage());
  }

  /** The members of RFC 9457, and those of this problem's own. */
  Map<String, Object> members(String path) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("type", "about:blank");
    members.put("title", title);
    members.put("status", status);
    members.put("detail", detail());
    members.put("instance", path);
    members.putAll(more);
    return members;
  }
}
