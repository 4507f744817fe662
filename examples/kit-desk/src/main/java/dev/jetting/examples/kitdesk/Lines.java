package dev.jetting.examples.kitdesk;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;

/**
 * The lines of a file in UTF-8, a byte order mark left out. However long a line is, no more of it
 * is in memory than is allowed; lines end as {@link java.io.BufferedReader#readLine} has it.
 */
final class Lines implements Closeable {

  /** Allowed in a line: the million characters that the readers of JSON take, in UTF-8. */
  static final int MOST_BYTES = 3_000_000;

  private static final byte[] BYTE_ORDER_MARK = "\ufeff".getBytes(StandardCharsets.UTF_8);

  private final InputStream in;
  private final MessageDigest digest = Sha256.digest();
  private final byte[] buffer = new byte[1 << 16];
  private int at;
  private int filled;
  private long number;

  private Lines(InputStream in) {
    this.in = in;
  }

  static Lines of(InputStream in) throws IOException {
    Lines lines = new Lines(in);
    lines.filled = in.readNBytes(lines.buffer, 0, BYTE_ORDER_MARK.length);
    if (java.util.Arrays.equals(
        lines.buffer, 0, lines.filled, BYTE_ORDER_MARK, 0, BYTE_ORDER_MARK.length)) {
      lines.at = lines.filled;
    }
    return lines;
  }

  /** The next line; empty at the end of the file. */
  Optional<Line> next() throws IOException {
    return next(false);
  }

  /** All that is left, as one line. */
  Optional<Line> rest() throws IOException {
    return next(true);
  }

  private Optional<Line> next(boolean all) throws IOException {
    if (!fill()) {
      return Optional.empty();
    }
    number++;
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    long length = 0;
    while (fill()) {
      int end = all ? filled : end();
      digest.update(buffer, at, end - at);
      kept.write(buffer, at, (int) Math.min(end - at, Math.max(0, MOST_BYTES - length)));
      length += end - at;
      at = end;
      if (at < filled) {
        passEnd();
        break;
      }
    }
    return Optional.of(line(kept.toByteArray(), length));
  }

  private boolean fill() throws IOException {
    if (at == filled) {
      at = 0;
      filled = Math.max(0, in.read(buffer));
    }
    return at < filled;
  }

  private int end() {
    int end = at;
    while (end < filled && buffer[end] != '\n' && buffer[end] != '\r') {
      end++;
    }
    return end;
  }

  private void passEnd() throws IOException {
    boolean maybeTwo = buffer[at++] == '\r';
    if (maybeTwo && fill() && buffer[at] == '\n') {
      at++;
    }
  }

  private Line line(byte[] kept, long length) {
    String its = Sha256.hex(digest);
    if (length > MOST_BYTES) {
      return new Line(number, "", length + " bytes: allowed at most " + MOST_BYTES, its);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(kept)).toString();
      return new Line(number, text, "", its);
    } catch (CharacterCodingException e) {
      return new Line(number, "", "bytes that are not UTF-8: allowed UTF-8", its);
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
