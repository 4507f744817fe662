package dev.jetting.examples.shopcounter.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** The style sheets and scripts, from the jar; their address changes when their bytes do. */
public final class Assets {

  static final String PATH = "/assets/";

  private static final String OWN = "/dev/jetting/examples/shopcounter/static/";
  private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

  private static final Map<String, byte[]> FILES =
      read(
          OWN + "counter.css",
          OWN + "counter.js",
          OWN + "picture.js",
          OWN + "mark.svg",
          UPLOT + "uPlot.iife.min.js",
          UPLOT + "uPlot.min.css");

  private static final String VERSION = version();

  private Assets() {}

  /**
   * Returns the address of a file.
   *
   * @param name the file's name
   * @return the path
   */
  public static String path(String name) {
    return PATH + VERSION + "/" + name;
  }

  static void serve(Context request) {
    byte[] bytes = FILES.get(request.pathParam("name"));
    if (bytes == null) {
      throw Problem.notFound();
    }
    request.header("Cache-Control", "public, max-age=31536000, immutable");
    request.contentType(type(request.pathParam("name"))).result(bytes);
  }

  private static String type(String name) {
    if (name.endsWith(".css")) {
      return "text/css; charset=utf-8";
    }
    return name.endsWith(".svg") ? "image/svg+xml" : "text/javascript; charset=utf-8";
  }

  private static Map<String, byte[]> read(String... resources) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String resource : resources) {
      try (InputStream in = Assets.class.getResourceAsStream(resource)) {
        if (in == null) {
          throw new IllegalStateException("missing in the jar: " + resource);
        }
        files.put(resource.substring(resource.lastIndexOf('/') + 1), in.readAllBytes());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return files;
  }

  private static String version() {
    int hash = 17;
    for (byte[] bytes : FILES.values()) {
      hash = 31 * hash + Arrays.hashCode(bytes);
    }
    return Integer.toHexString(hash);
  }
}
