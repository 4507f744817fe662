package dev.jetting.examples.kitdesk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests by which two files, or two lines, are known to be the same. */
final class Sha256 {

  private Sha256() {}

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java platform has it
    }
  }

  /** Of what the digest was given; it can be used again after. */
  static String hex(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }

  static String of(String text) {
    MessageDigest digest = digest();
    digest.update(text.getBytes(StandardCharsets.UTF_8));
    return hex(digest);
  }
}
