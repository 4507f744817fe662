package dev.jetting.examples.shopcounter.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Who asks: a random secret in a cookie, or in the header {@code Authorization: Bearer …} of a
 * program. The database keeps its digest alone, so the file gives nobody away.
 */
final class Visitor {

  private static final String COOKIE = "counter";
  private static final int SECRET_BYTES = 32;
  private static final int A_YEAR = 365 * 24 * 3600;
  private static final SecureRandom RANDOM = new SecureRandom();

  private Visitor() {}

  /** The visitor of a request; one who brings no secret is given one. */
  static String of(Context request) {
    String known = request.attribute(COOKIE);
    if (known != null) {
      return known;
    }
    String secret = brought(request);
    if (secret.length() < SECRET_BYTES) {
      secret = give(request);
    }
    String visitor = digest(secret);
    request.attribute(COOKIE, visitor);
    return visitor;
  }

  /** Whether a request brings a secret. */
  static boolean isKnown(Context request) {
    return brought(request).length() >= SECRET_BYTES;
  }

  private static String brought(Context request) {
    String header = request.header("Authorization");
    if (header != null && header.startsWith("Bearer ")) {
      return header.substring("Bearer ".length()).strip();
    }
    String cookie = request.cookie(COOKIE);
    return cookie == null ? "" : cookie;
  }

  private static String give(Context request) {
    byte[] random = new byte[SECRET_BYTES];
    RANDOM.nextBytes(random);
    String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    boolean secure = request.scheme().equals("https");
    request.cookie(new Cookie(COOKIE, secret, "/", A_YEAR, secure, true, "", SameSite.STRICT));
    return secret;
  }

  private static String digest(String secret) {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha256.digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
