package dev.jetting.examples.shopcounter.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.text.Argument;
import dev.jetting.rules.text.Message;
import dev.jetting.units.QuantityException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Map;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Turns whatever went wrong into one form: RFC 9457 for a program, a page for a person. */
final class Problems {

  private static final Logger LOG = Logger.getLogger(Problems.class.getName());
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Templates templates;

  Problems(Templates templates) {
    this.templates = templates;
  }

  void catchAll(RoutesConfig routes) {
    routes.exception(Problem.class, this::answer);
    routes.exception(JsonInputException.class, (e, request) -> answer(of(e), request));
    routes.exception(QuantityException.class, (e, request) -> answer(of(e), request));
    routes.exception(
        IllegalArgumentException.class,
        (e, request) -> answer(Problem.unusable(Words.words(e)), request));
    routes.exception(HttpResponseException.class, (e, request) -> answer(of(e), request));
    routes.exception(Exception.class, (e, request) -> answer(unexpected(e), request));
    routes.error(404, request -> answer(Problem.notFound(), request));
  }

  static Problem of(JsonInputException e) {
    return Problem.unusable(Words.words(e))
        .with("path", String.valueOf(e.path()))
        .with("value", String.valueOf(e.value()))
        .with("allowed", String.valueOf(e.allowed()))
        .with("line", e.line());
  }

  private static Problem of(QuantityException e) {
    return Problem.unusable(Words.words(e))
        .with("value", e.value())
        .with("unit", e.unit())
        .with("allowed", e.allowed());
  }

  private static Problem of(HttpResponseException e) {
    if (e.getStatus() == 404) {
      return Problem.notFound();
    }
    return Problem.of(
        e.getStatus(),
        "problem.refused",
        Message.plain("{why}").with("why", Argument.name(String.valueOf(e.getMessage()))));
  }

  /** A fault of ours: the log keeps what happened, the visitor gets the number of its line. */
  private static Problem unexpected(Exception e) {
    String number = UUID.randomUUID().toString();
    LOG.log(Level.SEVERE, e, () -> "fault " + number);
    return Problem.of(
        500, "problem.fault", Words.message("problem.fault.detail", "number", number));
  }

  private void answer(Problem problem, Context request) {
    request.status(problem.status());
    Words words = Languages.of(request);
    Map<String, Object> members = problem.members(request.path(), words);
    if (members.get("retryAfterSeconds") instanceof Integer seconds) {
      request.header("Retry-After", seconds.toString());
    }
    if (isForAProgram(request)) {
      request.header("Content-Language", words.tag());
      request.contentType("application/problem+json").result(json(members));
    } else {
      templates.show(
          request,
          "problem.jte",
          Map.of("title", words.say(problem.title()), "detail", words.say(problem.detail())));
    }
  }

  private static boolean isForAProgram(Context request) {
    String accept = request.header("Accept");
    return request.path().startsWith("/api/") || accept == null || !accept.contains("text/html");
  }

  private static byte[] json(Map<String, Object> members) {
    try {
      return JSON.writeValueAsBytes(members);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
