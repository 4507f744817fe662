package dev.jetting.examples.shopcounter.kit;

import dev.jetting.rules.kit.KitDepth;
import dev.jetting.rules.kit.KitValidator;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** The kit checks of all visitors; each visitor finds his own. */
public final class KitChecks implements AutoCloseable {

  private static final int KEPT = 100;
  private static final SecureRandom RANDOM = new SecureRandom();

  private final KitValidator validator;
  private final int atOnce;
  private final ExecutorService workers;
  private final Map<String, KitCheck> checks = new LinkedHashMap<>();

  /**
   * Creates the checks.
   *
   * @param stock the catalogue that kits are checked against
   * @param atOnce the most checks that wait or run at once
   */
  public KitChecks(Stock stock, int atOnce) {
    this.validator = KitValidator.of(stock.catalogue());
    this.atOnce = atOnce;
    this.workers =
        Executors.newFixedThreadPool(
            Runtime.getRuntime().availableProcessors(),
            work -> {
              Thread thread = new Thread(work, "kit check");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Begins a check.
   *
   * @param visitor who asks
   * @param depth how far to look
   * @param text a kit, or a kit a line
   * @return the check; empty where too many run already
   */
  public synchronized Optional<KitCheck> begin(String visitor, KitDepth depth, String text) {
    if (checks.values().stream().filter(check -> !check.finished()).count() >= atOnce) {
      return Optional.empty();
    }
    byte[] random = new byte[12];
    RANDOM.nextBytes(random);
    String id = HexFormat.of().formatHex(random);
    KitCheck check = new KitCheck(id, visitor, depth, lines(text));
    checks.put(id, check);
    checks.keySet().stream()
        .limit(Math.max(0, checks.size() - KEPT))
        .toList()
        .forEach(checks::remove);
    workers.execute(() -> check.run(validator));
    return Optional.of(check);
  }

  /**
   * Finds a check.
   *
   * @param visitor who asks
   * @param id the check
   * @return the check; empty where there is none or it is another visitor's
   */
  public synchronized Optional<KitCheck> find(String visitor, String id) {
    return Optional.ofNullable(checks.get(id)).filter(check -> check.visitor().equals(visitor));
  }

  /**
   * Splits a text into kits: each line that holds a whole object is one, otherwise all is one.
   *
   * @param text the text
   * @return the kits, as they stand there
   */
  public static List<String> lines(String text) {
    List<String> lines = text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
    boolean aKitALine = lines.stream().allMatch(l -> l.startsWith("{") && l.length() > 2);
    return aKitALine && !lines.isEmpty() ? lines : List.of(text.strip());
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}
