package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.store.Database;
import dev.jetting.examples.shopcounter.store.Machines;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.nio.file.Path;
import java.time.Clock;

/** The running program. */
public final class Counter implements AutoCloseable {

  private final Javalin server;

  private Counter(Javalin server) {
    this.server = server;
  }

  /**
   * Starts the program.
   *
   * @param host the address to listen on
   * @param port the port; 0 takes a free one
   * @param file the database file
   * @param clock what time it is
   * @param limits how much one visitor may ask for
   * @return the running program
   */
  public static Counter start(String host, int port, Path file, Clock clock, Limits limits) {
    Machines machines = new Machines(Database.open(file), clock);
    Templates templates = new Templates();
    Guard guard = new Guard(new Rates(limits, clock));
    Javalin server =
        Javalin.create(
            config -> {
              plain(config, limits);
              config.routes.before(guard::before);
              config.routes.get(Assets.PATH + "{version}/{name}", Assets::serve);
              new MachinePages(machines, templates).on(config.routes);
              new Problems(templates).catchAll(config.routes);
            });
    return new Counter(server.start(host, port));
  }

  private static void plain(JavalinConfig config, Limits limits) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = limits.kitBytes();
    config.jetty.multipartConfig.maxFileSize(limits.kitBytes(), SizeUnit.BYTES);
    config.jetty.multipartConfig.maxTotalRequestSize(limits.kitBytes() + 4096L, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(limits.kitBytes(), SizeUnit.BYTES);
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
  }

  /** {@return the port that it listens on} */
  public int port() {
    return server.port();
  }

  @Override
  public void close() {
    server.stop();
  }
}
