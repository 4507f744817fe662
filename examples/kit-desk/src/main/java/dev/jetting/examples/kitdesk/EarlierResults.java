package dev.jetting.examples.kitdesk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The results that a file has from before, one by one; the file is only read. What the program
 * wrote it reads again, however long; a last line without its end is left out.
 */
final class EarlierResults implements Closeable {

  private static final ObjectReader READER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxStringLength(Integer.MAX_VALUE).build())
                  .build())
          .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build()
          .readerFor(ResultLine.class);

  private final String name;
  private final long start;
  private final long end;
  private final @Nullable MappingIterator<ResultLine> lines;

  private EarlierResults(
      String name, long start, long end, @Nullable MappingIterator<ResultLine> lines) {
    this.name = name;
    this.start = start;
    this.end = end;
    this.lines = lines;
  }

  /** No results, and no file that has them. */
  static EarlierResults none() {
    return new EarlierResults("", 0, 0, null);
  }

  /**
   * Those of a file.
   *
   * @throws UnusableException if its head is not this one, or no beginning of it
   */
  static EarlierResults of(Path file, ResultHead head) throws UnusableException, IOException {
    String name = "--out " + file;
    if (!Files.isRegularFile(file)) {
      throw new UnusableException(name + ": cannot be gone on with: allowed a plain file");
    }
    byte[] wanted = head.line().getBytes(StandardCharsets.UTF_8);
    InputStream in = Files.newInputStream(file);
    try {
      byte[] first = in.readNBytes(wanted.length);
      if (first.length < wanted.length
          && Arrays.equals(first, Arrays.copyOf(wanted, first.length))) {
        in.close();
        return new EarlierResults(name, 0, 0, null);
      }
      if (!Arrays.equals(first, wanted)) {
        try (Lines lines = Lines.of(Files.newInputStream(file))) {
          head.check(name, lines.next().map(Line::text).orElse(""));
        }
        throw new UnusableException(name + ", line 1: is no result file's head as --out writes it");
      }
      return new EarlierResults(name, wanted.length, end(file), READER.readValues(in));
    } catch (JsonProcessingException e) {
      in.close();
      throw new UnusableException(name + ", line 2: is no result: " + e.getOriginalMessage());
    } catch (UnusableException | IOException e) {
      in.close();
      throw e;
    }
  }

  /** Where the last whole line ends. */
  private static long end(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file)) {
      ByteBuffer chunk = ByteBuffer.allocate(1 << 16);
      long from = channel.size();
      while (from > 0) {
        int length = (int) Math.min(from, chunk.capacity());
        from -= length;
        chunk.clear().limit(length);
        while (chunk.hasRemaining() && channel.read(chunk, from + chunk.position()) >= 0) {
          // One read may bring less than was asked for.
        }
        for (int i = length - 1; i >= 0; i--) {
          if (chunk.get(i) == '\n') {
            return from + i + 1;
          }
        }
      }
      return 0;
    }
  }

  /** In bytes, where results can go on. */
  long end() {
    return end;
  }

  /** The next result; empty when there are no more. */
  Optional<ResultLine> next() throws UnusableException, IOException {
    // The iterator stands after a result, with the end of its line still to come.
    if (lines == null || start + lines.getCurrentLocation().getByteOffset() + 1 >= end) {
      return Optional.empty();
    }
    try {
      ResultLine line = lines.nextValue();
      if (line != null && line.isWhole()) {
        return Optional.of(line);
      }
      throw noResult("allowed line, input and either validation or problem");
    } catch (JsonProcessingException e) {
      throw noResult(e.getOriginalMessage());
    }
  }

  private UnusableException noResult(String why) {
    long line = lines == null ? 1 : lines.getCurrentLocation().getLineNr() + 1L;
    return new UnusableException(name + ", line " + line + ": is no result: " + why);
  }

  @Override
  public void close() throws IOException {
    if (lines != null) {
      lines.close();
    }
  }
}
