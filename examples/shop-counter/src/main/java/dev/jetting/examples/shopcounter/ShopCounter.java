package dev.jetting.examples.shopcounter;

import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.web.Counter;
import dev.jetting.examples.shopcounter.web.Limits;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Starts the shop counter.
 *
 * <p>From the root of the project: {@code mvn -q -Pshop-counter -pl examples/shop-counter -am
 * process-classes}, then open the address that it prints.
 */
@Command(
    name = "shop-counter",
    mixinStandardHelpOptions = true,
    version = "shop-counter of jetting",
    description = "Serves the shop counter until it is stopped.",
    showDefaultValues = true)
public final class ShopCounter implements Callable<Integer> {

  @Option(names = "--host", description = "The address to listen on; 0.0.0.0 opens it to all.")
  private String host = "127.0.0.1";

  @Option(names = "--port", description = "The port to listen on; 0 takes a free one.")
  private int port = 8095;

  @Option(names = "--database", description = "The database file; made where there is none.")
  private Path database = Path.of(System.getProperty("user.home"), "shop-counter.db");

  @Option(
      names = "--catalogue",
      description = "The catalogue that kits are checked against; an invented one without it.")
  private @Nullable Path catalogue;

  @Option(names = "--parts", description = "A list of its parts, CSV; may be given again.")
  private List<Path> parts = List.of();

  private ShopCounter() {}

  /**
   * Starts the program.
   *
   * @param args the arguments; {@code --help} lists them
   */
  public static void main(String[] args) {
    int exit = new CommandLine(new ShopCounter()).execute(args);
    if (exit != 0) {
      System.exit(exit);
    }
  }

  @Override
  public Integer call() throws IOException {
    Logger.getLogger("").setLevel(Level.WARNING);
    Counter counter = Counter.start(host, port, database, stock(), Limits.ofACounter());
    Runtime.getRuntime().addShutdownHook(new Thread(counter::close));
    System.out.println("Shop counter: http://" + host + ":" + counter.port() + "/");
    return 0;
  }

  private Stock stock() throws IOException {
    return catalogue == null ? Stock.demo() : Stock.read(catalogue, parts);
  }
}
