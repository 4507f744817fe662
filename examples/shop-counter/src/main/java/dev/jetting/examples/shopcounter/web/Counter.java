package dev.jetting.examples.shopcounter.web;

import dev.jetting.examples.shopcounter.kit.KitChecks;
import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.store.Database;
import dev.jetting.examples.shopcounter.store.Machines;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The running program. */
public final class Counter implements AutoCloseable {

  private final Javalin server;
  private final KitChecks checks;

  private Counter(Javalin server, KitChecks checks) {
    this.server = server;
    this.checks = checks;
  }

  /**
   * Starts the program.
   *
   * @param host the address to listen on
   * @param port the port; 0 takes a free one
   * @param file the database file
   * @param stock the catalogue that kits are checked against
   * @param limits how much one visitor may ask for
   * @return the running program
   */
  public static Counter start(String host, int port, Path file, Stock stock, Limits limits) {
    Clock clock = Clock.systemUTC();
    Machines machines = new Machines(Database.open(file), clock);
    KitChecks checks = new KitChecks(stock, limits.checks());
    Templates templates = new Templates();
    Guard guard = new Guard(new Rates(limits, clock));
    Javalin server =
        Javalin.create(
            config -> {
              plain(config, limits);
              config.routes.before(guard::before);
              config.routes.get(Assets.PATH + "{version}/{name}", Assets::serve);
              config.routes.get("/favicon.ico", r -> r.redirect(Assets.path("mark.svg")));
              config.routes.get(Languages.PATH, Languages::choose);
              new MachinePages(machines, templates).on(config.routes);
              new SessionPages(machines, templates).on(config.routes);
              new KitPages(checks, stock, templates, limits).on(config.routes);
              new Api(machines, stock, templates, limits).on(config.routes);
              new Problems(templates).catchAll(config.routes);
            });
    return new Counter(server.start(host, port), checks);
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

  /** {@return the operations for programs, each as its method in small letters and its path} */
  public Set<String> apiOperations() {
    return server.unsafe.internalRouter.allHttpHandlers().stream()
        .map(handler -> handler.endpoint)
        .filter(endpoint -> endpoint.path.startsWith("/api/"))
        .map(endpoint -> endpoint.method.name().toLowerCase(Locale.ROOT) + " " + endpoint.path)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Override
  public void close() {
    server.stop();
    checks.close();
  }
}
