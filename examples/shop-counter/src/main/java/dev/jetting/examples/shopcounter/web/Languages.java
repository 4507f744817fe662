package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.words.Words;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Locale.LanguageRange;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The language of a request: the visitor's choice, or else what the browser asks for, or else
 * English. The machine's locale plays no part.
 */
final class Languages {

  /** Where a choice is sent; {@code to} is the page to go back to. */
  static final String PATH = "/language/{tag}";

  private static final String COOKIE = "language";
  private static final int A_YEAR = 365 * 24 * 3600;
  private static final Map<String, String> NAMES =
      Map.of("en", "English", "de", "Deutsch", "it", "Italiano");

  private static final List<Locale> LOCALES =
      Words.LANGUAGES.stream().map(Locale::forLanguageTag).toList();

  /** A page of this program: no other host, and nothing that a browser takes for one. */
  private static final Pattern OWN_PAGE = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]*");

  private Languages() {}

  /** The words in which a request is answered. */
  static Words of(Context request) {
    String chosen = request.cookie(COOKIE);
    return Words.of(
        chosen != null && Words.LANGUAGES.contains(chosen)
            ? chosen
            : asked(request.header("Accept-Language")));
  }

  /** The language that a browser asks for; English where it names none that there is. */
  static String asked(@Nullable String header) {
    try {
      List<LanguageRange> ranges =
          LanguageRange.parse(Objects.requireNonNullElse(header, "en")).stream()
              .filter(range -> range.getWeight() > 0)
              .toList();
      return Optional.ofNullable(Locale.lookup(ranges, LOCALES))
          .map(Locale::toLanguageTag)
          .orElse("en");
    } catch (IllegalArgumentException e) {
      return "en"; // a header of another form
    }
  }

  static Page page(Context request) {
    Words words = of(request);
    String here = URLEncoder.encode(here(request), StandardCharsets.UTF_8);
    return new Page(
        words,
        Words.LANGUAGES.stream()
            .map(
                tag ->
                    new Page.Language(
                        tag,
                        Objects.requireNonNull(NAMES.get(tag), tag),
                        "/language/" + tag + "?to=" + here,
                        tag.equals(words.tag())))
            .toList());
  }

  /** Keeps a choice and goes back to the page where it was made. */
  static void choose(Context request) {
    String tag = request.pathParam("tag");
    if (!Words.LANGUAGES.contains(tag)) {
      throw Problem.notFound();
    }
    boolean secure = request.scheme().equals("https");
    request.cookie(new Cookie(COOKIE, tag, "/", A_YEAR, secure, true, "", SameSite.LAX));
    request.redirect(own(request.queryParam("to")), HttpStatus.SEE_OTHER);
  }

  /** The page that a visitor looks at: where a form was refused, the one it stands on. */
  private static String here(Context request) {
    if (request.method().name().equals("GET")) {
      String query = request.queryString();
      return own(query == null ? request.path() : request.path() + "?" + query);
    }
    String referer = request.header("Referer");
    try {
      URI from = URI.create(Objects.requireNonNullElse(referer, "/"));
      return Objects.equals(from.getAuthority(), request.header("Host"))
          ? own(from.getRawPath())
          : "/";
    } catch (IllegalArgumentException e) {
      return "/";
    }
  }

  private static String own(@Nullable String path) {
    return path != null && OWN_PAGE.matcher(path).matches() ? path : "/";
  }
}
