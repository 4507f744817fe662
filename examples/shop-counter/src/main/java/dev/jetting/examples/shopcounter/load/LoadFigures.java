package dev.jetting.examples.shopcounter.load;

import dev.jetting.examples.shopcounter.kit.Stock;
import dev.jetting.examples.shopcounter.web.Counter;
import dev.jetting.examples.shopcounter.web.Limits;
import dev.jetting.rules.AssessedSetting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.standard.StandardRulebook;
import dev.jetting.rules.tuning.Check;
import dev.jetting.rules.tuning.Evidence;
import dev.jetting.rules.tuning.Instrument;
import dev.jetting.rules.tuning.Observation;
import dev.jetting.rules.tuning.PlugColour;
import dev.jetting.rules.tuning.Tuner;
import dev.jetting.rules.tuning.TuningSession;
import dev.jetting.units.EngineSpeed;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;

/**
 * Measures how many reports and session steps a second the counter answers, beside the library
 * alone. The client runs in the same process and takes its share of the processors.
 *
 * <p>From the root of the project: {@code mvn -q -Pshop-counter-load -pl examples/shop-counter -am
 * process-classes}.
 */
public final class LoadFigures {

  private static final int CLIENTS = 2;
  private static final String SECRET = "a secret of the load figures' own, long enough";
  private static final String DEMO =
      "/dev/jetting/examples/shopcounter/demo/lean-in-the-middle.json";

  private final Duration each;
  private final String address;
  private final HttpClient client = HttpClient.newHttpClient();

  private LoadFigures(Duration each, String address) {
    this.each = each;
    this.address = address;
  }

  /**
   * How fast something is answered.
   *
   * @param perSecond answers a second
   * @param millis processor time of an answer with its request, ms, which other programs on the
   *     machine change little
   */
  public record Figure(double perSecond, double millis) {}

  /** What is done again and again. */
  private interface Work {
    void run() throws IOException, InterruptedException;
  }

  /**
   * Measures and prints a table.
   *
   * @param args none
   * @throws Exception if a request is refused or the database file cannot be made
   */
  public static void main(String[] args) throws Exception {
    Map<String, Figure> figures = measure(Duration.ofSeconds(10));
    System.out.println("| what | a second | ms of processor each |\n|---|---|---|");
    figures.forEach(
        (what, figure) ->
            System.out.printf(
                Locale.ROOT, "| %s | %.0f | %.1f |%n", what, figure.perSecond(), figure.millis()));
  }

  /**
   * Measures.
   *
   * @param each for how long each figure is measured, after as long a warm-up
   * @return a figure for each kind of answer, by what is answered
   * @throws Exception if a request is refused or the database file cannot be made
   */
  public static Map<String, Figure> measure(Duration each) throws Exception {
    Path folder = Files.createTempDirectory("shop-counter-load");
    Limits wide = new Limits(Integer.MAX_VALUE / 2, 1e6, 300_000, 2_000_000, 1000, 4);
    try (Counter counter =
        Counter.start("127.0.0.1", 0, folder.resolve("load.db"), Stock.demo(), wide)) {
      return new LoadFigures(each, "http://127.0.0.1:" + counter.port()).figures();
    } finally {
      try (var files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }

  private Map<String, Figure> figures() throws Exception {
    SetupSheet sheet = sheet();
    String json = SheetJson.write(sheet);
    String machine = machine();
    TuningSession session = read(sheet);
    Tuner tuner = Tuner.readingWith(Set.of(Instrument.PLUG, Instrument.FEEL));
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put(
        "reports by the library alone",
        figure(() -> StandardRulebook.rulebook().evaluate(AssessedSetting.of(sheet)).passes()));
    figures.put(
        "reports through `POST /api/report`",
        figure(() -> answered(request("/api/report").POST(BodyPublishers.ofString(json)))));
    figures.put(
        "pictures of a changed part, the whole page",
        figure(() -> answered(request(machine + "?main=100").GET())));
    readOnTheCounter(machine);
    figures.put("next steps by the library alone", figure(() -> tuner.next(session)));
    figures.put(
        "session steps, the whole page",
        figure(() -> answered(request(machine + "/session").GET())));
    return figures;
  }

  private String machine() throws IOException, InterruptedException {
    HttpResponse<String> added =
        client.send(
            request("/machines/demo/lean-in-the-middle").POST(BodyPublishers.noBody()).build(),
            BodyHandlers.ofString());
    return added.headers().firstValue("Location").map(URI::create).orElseThrow().getPath();
  }

  /** A session under way: the checks done, and full throttle read. */
  private static TuningSession read(SetupSheet sheet) {
    EngineSpeed speed = sheet.setup().engine().loadLine().at(ThrottleOpening.FULL);
    return TuningSession.beginning(sheet)
        .checking(EnumSet.allOf(Check.class))
        .observing(
            new Observation(ThrottleOpening.FULL, speed, new Evidence.Colour(PlugColour.DARK)));
  }

  /** The same at the counter. */
  private void readOnTheCounter(String machine) throws IOException, InterruptedException {
    String checks =
        Arrays.stream(Check.values())
            .map(check -> "check=" + check.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining("&"));
    posted(machine + "/session/checks", checks);
    posted(machine + "/session/reading", "at=full&seen=dark");
  }

  private void posted(String path, String form) throws IOException, InterruptedException {
    HttpRequest.Builder request =
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(form));
    int status = client.send(request.build(), BodyHandlers.discarding()).statusCode();
    if (status != 303) {
      throw new IOException("answered " + status);
    }
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(address + path))
        .header("Authorization", "Bearer " + SECRET)
        .header("Accept", "text/html");
  }

  private void answered(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer = client.send(request.build(), BodyHandlers.ofByteArray());
    if (answer.statusCode() != 200 || answer.body().length == 0) {
      throw new IOException("answered " + answer.statusCode());
    }
  }

  private Figure figure(Work work) throws InterruptedException, ExecutionException {
    run(work);
    return run(work);
  }

  private Figure run(Work work) throws InterruptedException, ExecutionException {
    ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
    try {
      long begin = System.nanoTime();
      long busy = processorNanos();
      List<Callable<Long>> all = new ArrayList<>();
      for (int i = 0; i < CLIENTS; i++) {
        all.add(() -> times(work));
      }
      long done = 0;
      for (Future<Long> one : clients.invokeAll(all)) {
        done += one.get();
      }
      return new Figure(
          done / ((System.nanoTime() - begin) / 1e9), (processorNanos() - busy) / 1e6 / done);
    } finally {
      clients.shutdown();
    }
  }

  private static long processorNanos() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private long times(Work work) throws IOException, InterruptedException {
    long end = System.nanoTime() + each.toNanos();
    long done = 0;
    do {
      work.run();
      done++;
    } while (System.nanoTime() < end);
    return done;
  }

  private static SetupSheet sheet() throws IOException {
    try (InputStream in = Objects.requireNonNull(LoadFigures.class.getResourceAsStream(DEMO))) {
      return SheetJson.read(in);
    }
  }
}
