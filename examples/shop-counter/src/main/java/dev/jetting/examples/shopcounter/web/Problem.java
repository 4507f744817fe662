package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.text.Message;
import java.io.Serial;
import java.util.LinkedHashMap;
import java.util.Map;

/** A request that cannot be served, as RFC 9457 for a program and as a page for a person. */
final class Problem extends RuntimeException {

  @Serial private static final long serialVersionUID = 1L;

  private final int status;
  private final transient Message title;
  private final transient Message detail;
  private final transient Map<String, Object> more = new LinkedHashMap<>();

  private Problem(int status, Message title, Message detail) {
    super(Words.english().say(detail));
    this.status = status;
    this.title = title;
    this.detail = detail;
  }

  static Problem notFound() {
    return of(404, "problem.not-found", Words.message("problem.not-found.detail"));
  }

  static Problem unusable(Message detail) {
    return of(422, "problem.unusable", detail);
  }

  static Problem tooLarge(int most) {
    return of(413, "problem.too-large", Words.message("problem.too-large.detail", "most", most));
  }

  static Problem tooMany(int seconds) {
    return of(429, "problem.too-many", Words.message("problem.too-many.detail", "seconds", seconds))
        .with("retryAfterSeconds", seconds);
  }

  static Problem foreign() {
    return of(403, "problem.foreign", Words.message("problem.foreign.detail"));
  }

  static Problem notNow(String detail) {
    return of(409, "problem.not-now", Words.message(detail));
  }

  static Problem of(int status, String title, Message detail) {
    return new Problem(status, Words.message(title), detail);
  }

  Problem with(String name, Object value) {
    more.put(name, value);
    return this;
  }

  int status() {
    return status;
  }

  Message title() {
    return title;
  }

  Message detail() {
    return detail;
  }

  /** The members of RFC 9457, and those of this problem's own. */
  Map<String, Object> members(String path, Words words) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("type", "about:blank");
    members.put("title", words.say(title));
    members.put("status", status);
    members.put("detail", words.say(detail));
    members.put("instance", path);
    members.putAll(more);
    return members;
  }
}
