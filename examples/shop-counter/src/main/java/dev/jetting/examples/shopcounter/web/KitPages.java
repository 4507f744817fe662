package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.kit.KitCheck;
import dev.jetting.examples.shopcounter.kit.KitChecks;
import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.kit.KitDepth;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The kit check for a seller. */
final class KitPages {

  private final KitChecks checks;
  private final Stock stock;
  private final Templates templates;
  private final Limits limits;

  KitPages(KitChecks checks, Stock stock, Templates templates, Limits limits) {
    this.checks = checks;
    this.stock = stock;
    this.templates = templates;
    this.limits = limits;
  }

  void on(RoutesConfig routes) {
    routes.get("/kits", this::form);
    routes.post("/kits", this::begin);
    routes.get("/kits/{id}", this::show);
  }

  private void form(Context request) {
    templates.show(
        request,
        "kits.jte",
        Map.of(
            "catalogue",
            stock.catalogue().title(),
            "example",
            stock.example(),
            "most",
            limits.kitBytes()));
  }

  private void begin(Context request) throws IOException {
    KitCheck check = begin(Visitor.of(request), request.formParam("depth"), text(request));
    request.redirect("/kits/" + check.id(), HttpStatus.SEE_OTHER);
  }

  /** Begins a check, or says why not. */
  KitCheck begin(String visitor, @Nullable String depth, String text) {
    int kits = KitChecks.lines(text).size();
    if (text.isBlank()) {
      throw Problem.unusable(Words.message("kits.none"));
    }
    if (kits > limits.kits()) {
      throw Problem.unusable(Words.message("kits.too-many", "kits", kits, "most", limits.kits()));
    }
    return checks.begin(visitor, depth(depth), text).orElseThrow(() -> Problem.tooMany(10));
  }

  private static KitDepth depth(@Nullable String name) {
    String asked = Objects.requireNonNullElse(name, "setting");
    return Arrays.stream(KitDepth.values())
        .filter(depth -> depth.name().toLowerCase(Locale.ROOT).equals(asked))
        .findFirst()
        .orElseThrow(() -> Problem.unusable(Words.message("kits.unknown-depth", "depth", asked)));
  }

  private static String text(Context request) throws IOException {
    UploadedFile file = request.isMultipartFormData() ? request.uploadedFile("file") : null;
    if (file != null && file.size() > 0) {
      try (InputStream in = file.content()) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      }
    }
    return Objects.requireNonNullElse(request.formParam("kits"), "");
  }

  private void show(Context request) {
    KitCheck check =
        checks.find(Visitor.of(request), request.pathParam("id")).orElseThrow(Problem::notFound);
    boolean partly = "check".equals(request.header("X-Part"));
    templates.show(request, partly ? "check.jte" : "kit.jte", Map.of("check", check));
  }
}
