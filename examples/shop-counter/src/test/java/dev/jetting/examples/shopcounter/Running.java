package dev.jetting.examples.shopcounter;

import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.web.Counter;
import dev.jetting.examples.shopcounter.web.Limits;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A counter that runs on a free port and a database of its own. */
final class Running implements AutoCloseable {

  /** Limits that no test reaches by accident. */
  static final Limits WIDE = new Limits(100_000, 10_000, 300_000, 2_000_000, 1000, 4);

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final Path folder;
  private final Counter counter;

  private Running(Path folder, Counter counter) {
    this.folder = folder;
    this.counter = counter;
  }

  static Running start() {
    return start(WIDE);
  }

  static Running start(Limits limits) {
    try {
      Path folder = Files.createTempDirectory("shop-counter");
      Path file = folder.resolve("counter.db");
      return new Running(folder, Counter.start("127.0.0.1", 0, file, Stock.demo(), limits));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  Set<String> apiOperations() {
    return counter.apiOperations();
  }

  String address(String path) {
    return "http://127.0.0.1:" + counter.port() + path;
  }

  /** Asks as a program does, under a secret of its own. */
  HttpResponse<String> get(String secret, String path) {
    return send(request(secret, path).GET());
  }

  HttpResponse<String> postForm(String secret, String path, Map<String, String> form) {
    String body =
        form.entrySet().stream()
            .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    return send(
        request(secret, path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  HttpResponse<String> postJson(String secret, String path, String body) {
    return send(
        request(secret, path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  HttpRequest.Builder request(String secret, String path) {
    return HttpRequest.newBuilder(URI.create(address(path)))
        .header("Authorization", "Bearer " + secret.repeat(32).substring(0, 32));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return CLIENT.send(request.build(), BodyHandlers.ofString());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** Adds a machine of the scenario and returns its path. */
  String demo(String secret, String name) {
    HttpResponse<String> answer = postForm(secret, "/machines/demo/" + name, Map.of());
    return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
  }

  @Override
  public void close() {
    counter.close();
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
      Files.delete(folder);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
