package dev.jetting.examples.kitdesk;

import dev.jetting.core.parts.Setting;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.JsonInputException;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.kit.Catalogue;
import dev.jetting.rules.kit.CatalogueChoices;
import dev.jetting.rules.kit.Family;
import dev.jetting.rules.risk.RiskModel;
import dev.jetting.rules.search.Choices;
import dev.jetting.rules.search.Cost;
import dev.jetting.rules.search.Found;
import dev.jetting.rules.search.PartKind;
import dev.jetting.rules.search.Run;
import dev.jetting.rules.search.SettingSearch;
import dev.jetting.units.TradeStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Looks for the best settings that a catalogue allows. */
@Command(
    name = "search",
    mixinStandardHelpOptions = true,
    versionProvider = KitDesk.Version.class,
    header = "Looks through every setting that a catalogue allows on an engine.",
    description = {
      "",
      "The sheet states engine, air, fuel and riding, and the setting that is there now.",
      ""
    },
    sortOptions = false)
final class Search implements Callable<Integer> {

  /** The most settings to hold against the rulebook, until enough of them are right. */
  private static final int MOST = 100;

  @Mixin private CatalogueOptions catalogue = new CatalogueOptions();

  @Option(names = "--sheet", paramLabel = "FILE", description = "Setup sheet (JSON).")
  private @Nullable String sheet;

  @Option(
      names = "--family",
      paramLabel = "ID",
      description = "Family of its carburettor; the only one that has its name unless given.")
  private @Nullable String family;

  @Option(
      names = "--own",
      paramLabel = "ID",
      description = "A part that is there already; may be given again.")
  private Set<String> owned = Set.of();

  @Option(
      names = "--sheet-not-owned",
      description = "Count the parts of the sheet's setting as parts to buy too.")
  private boolean sheetNotOwned;

  @Option(
      names = "--keep",
      paramLabel = "KIND",
      description =
          "Keep what the sheet has: pilot-jet, screw, slide, needle-jet, needle, clip, main-jet;"
              + " may be given again.")
  private List<String> kept = List.of();

  @Option(names = "--buy", paramLabel = "N", description = "The most new parts, a number.")
  private @Nullable Integer mostParts;

  @Option(names = "--pay", paramLabel = "PRICE", description = "New parts of at most this price.")
  private @Nullable String pay;

  @Option(
      names = "--top",
      paramLabel = "K",
      defaultValue = "10",
      description = "How many settings to show, 1 to 100; 10 unless given.")
  private int top = 10;

  @Option(
      names = "--front",
      paramLabel = "COST",
      description =
          "Show the right ones that no other beats in risk, distance and cost at once: parts or"
              + " price.")
  private @Nullable String front;

  @Option(
      names = "--read",
      description =
          "Somebody has read this engine: use the whole accepted risk. Unless given, a setting"
              + " counts as lean above a fifth of it.")
  private boolean read;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write a JSON object for each setting to a new file.")
  private @Nullable Path out;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "1 to 64; as many as processors unless given.")
  private @Nullable Integer threads;

  @ParentCommand private @Nullable KitDesk desk;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() throws UnusableException, IOException {
    try (Interruption interruption = Interruption.awaited()) {
      int exitCode = search(Objects.requireNonNull(desk, "desk"), interruption);
      page().flush();
      return exitCode;
    }
  }

  private PrintWriter page() {
    return Objects.requireNonNull(spec, "spec").commandLine().getOut();
  }

  private int search(KitDesk parent, Interruption interruption)
      throws UnusableException, IOException {
    if (top < 1 || top > MOST) {
      throw new UnusableException("--top " + top + ": allowed 1 to " + MOST);
    }
    CatalogueFiles files = catalogue.read(parent.in());
    Catalogue parts = files.catalogue();
    MessageDigest digest = Sha256.digest();
    SetupSheet given = sheet(parent, digest);
    Family of = family(parts, given);
    Setting asGiven = given.setup().setting();
    SetupSheet moved = with(given, SheetCarburettor.fitted(asGiven, of));
    CatalogueChoices fitting = fitting(parts, of, moved);
    Choices choices = choices(fitting, moved, moved.equals(given));
    SetupSheet fitted = with(moved, new SheetParts(moved.setup().setting()).calledAs(choices));
    Choices kept = keeping(choices, fitted);
    SettingSearch search = search(fitted, kept, fitting);
    SettingJudge judge = new SettingJudge(search, fitted, fitting, choices);
    try (FoundFile results = FoundFile.create(out)) {
      Found found = found(parent, search, interruption);
      Shown shown = front == null ? Shown.best(found, judge, top) : Shown.front(found, judge, top);
      results.write(
          searched(files, Sha256.hex(digest), of, found, shown),
          OwnFittings.of(fitted.setup().setting(), parts, of),
          shown.all());
      page()
          .print(
              FoundText.of(
                  fitted,
                  of,
                  SheetCarburettor.said(asGiven, of) + kept(search, fitted),
                  found,
                  shown,
                  none(found)));
      return shown.anyRight() ? ExitCode.OK : ExitCode.FAILED;
    }
  }

  /** What the ranking keeps in hand, in a line or none. */
  private String kept(SettingSearch search, SetupSheet fitted) {
    return read
        ? ""
        : KitText.wrapped(
            "A setting counts as lean above "
                + TradeStyle.probability(search.spendable())
                + ": nobody has read this engine, so most of the accepted "
                + TradeStyle.probability(fitted.riding().acceptedRisk())
                + " stays in hand. With --read all of it counts.",
            "",
            "");
  }

  /** What was searched, for programs that read the results. */
  private Map<String, Object> searched(
      CatalogueFiles files, String sheetDigest, Family of, Found found, Shown shown)
      throws IOException {
    Map<String, Object> searched = new LinkedHashMap<>();
    searched.put("program", KitDesk.Version.text());
    searched.put("rulebook", SettingJudge.rulebook());
    searched.put("catalogue", files.digest());
    searched.put("parts", files.partsDigests());
    searched.put("sheet", sheetDigest);
    searched.put("family", of.id());
    searched.put("found", front == null ? "best" : "front by " + front);
    searched.put("combinations", found.combinations());
    searched.put("impossible", found.impossible());
    searched.put("complete", found.complete());
    searched.put("passedOver", shown.passedOver().size());
    return searched;
  }

  private static SetupSheet with(SetupSheet sheet, Setting setting) {
    return sheet.withSetup(sheet.setup().withSetting(setting));
  }

  /** The catalogue's parts for the carburettor, those of the sheet among what is owned. */
  private CatalogueChoices fitting(Catalogue parts, Family of, SetupSheet sheet) {
    Set<String> there = new TreeSet<>(owned);
    if (!sheetNotOwned) {
      there.addAll(new SheetParts(sheet.setup().setting()).ids(parts, of));
    }
    return CatalogueChoices.of(parts, of, there, Choices.of(sheet).screws());
  }

  /** These, and those of the sheet as far as they are on this carburettor. */
  private Choices choices(CatalogueChoices fitting, SetupSheet sheet, boolean sameCarburettor) {
    return sameCarburettor && !sheetNotOwned
        ? new SheetParts(sheet.setup().setting()).with(fitting.choices())
        : fitting.choices();
  }

  /** Why nothing may have been found. */
  private String none(Found found) {
    if (!found.complete()) {
      return "None of those that were looked at.";
    }
    if (found.impossible() == found.combinations()) {
      return "None: no needle goes into a needle jet.";
    }
    List<String> limits = new ArrayList<>();
    if (mostParts != null) {
      limits.add("--buy " + mostParts);
    }
    if (pay != null) {
      limits.add("--pay " + pay);
    }
    if (front != null) {
      limits.add("the lean risk that --front shows, at most 25 % unless more is accepted");
    }
    return "None within " + String.join(" and ", limits) + ".";
  }

  private SetupSheet sheet(KitDesk parent, MessageDigest digest)
      throws UnusableException, IOException {
    if (sheet == null && !catalogue.isDemo()) {
      throw new UnusableException("no --sheet: allowed a setup sheet, or - for standard input");
    }
    Source source = sheet == null ? Source.demo("sheet.json") : Source.of(sheet, parent.in());
    try (InputStream in = new DigestInputStream(source.open(), digest)) {
      return SheetJson.read(in);
    } catch (JsonInputException e) {
      throw new UnusableException(source.name() + ": " + e.getMessage());
    }
  }

  private Family family(Catalogue parts, SetupSheet given) throws UnusableException {
    String carburettor = given.setup().setting().carburettor().id();
    List<Family> families =
        parts.families().stream()
            .filter(
                each ->
                    family == null
                        ? each.carburettor().id().equals(carburettor)
                        : each.id().equals(family))
            .toList();
    if (families.size() != 1) {
      throw new UnusableException(
          (family == null
                  ? "carburettor \"" + carburettor + "\" of the sheet"
                  : "--family " + family)
              + ": allowed one of "
              + parts.families().stream().map(Family::id).collect(Collectors.joining(", ")));
    }
    return families.get(0);
  }

  private Choices keeping(Choices choices, SetupSheet fitted) throws UnusableException {
    Choices left = choices;
    for (String each : kept) {
      left = left.keeping(Words.constant("--keep", PartKind.class, each), fitted.setup().setting());
    }
    return left;
  }

  private SettingSearch search(SetupSheet fitted, Choices choices, CatalogueChoices fitting)
      throws UnusableException {
    SettingSearch search = SettingSearch.of(fitted, choices, RiskModel.assumed());
    if (read) {
      search = search.spending(1);
    }
    if (mostParts != null) {
      search = search.buyingAtMost(mostParts);
    }
    if (front != null && Words.cost(front) == Cost.PRICE) {
      Unpriced.check("--front price", choices, fitting);
    }
    if (pay != null) {
      BigDecimal most = Words.price(pay);
      Unpriced.check("--pay " + pay, choices, fitting);
      search = search.payingAtMost(most);
    }
    return search;
  }

  private Found found(KitDesk parent, SettingSearch search, Interruption interruption)
      throws UnusableException {
    int most = Words.threads(threads);
    ExecutorService workers = Executors.newFixedThreadPool(most);
    try (Bar bar = Bar.of("settings", 0, parent.err(), parent.terminal())) {
      Run run = Run.on(most, workers).reportingTo(bar::of).until(interruption::requested);
      return front == null ? search.best(MOST, run) : search.front(Words.cost(front), run);
    } finally {
      workers.shutdownNow();
    }
  }
}
