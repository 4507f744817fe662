package dev.jetting.examples.shopcounter.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.jetting.examples.shopcounter.words.Refusal;
import dev.jetting.examples.shopcounter.words.Words;
import dev.jetting.rules.SetupSheet;
import dev.jetting.rules.json.SessionJson;
import dev.jetting.rules.json.SheetJson;
import dev.jetting.rules.text.Message;
import dev.jetting.rules.tuning.TuningSession;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The machines of all visitors. Every question names the visitor, and only his machines answer. */
public final class Machines {

  /** So that one visitor cannot fill the disk. */
  public static final int MOST = 200;

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String COLUMNS = "SELECT id, name, sheet, session, changed FROM machine";

  private final Database database;
  private final Clock clock;

  /**
   * Creates the store.
   *
   * @param database the database
   * @param clock what time it is
   */
  public Machines(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * Returns the visitor's machines, the one changed last first.
   *
   * @param visitor the visitor
   * @return the machines
   */
  public List<Machine> of(String visitor) {
    return database.transact(
        connection ->
            machines(connection, COLUMNS + " WHERE visitor = ? ORDER BY changed DESC", visitor));
  }

  /**
   * Returns one of the visitor's machines.
   *
   * @param visitor the visitor
   * @param id the machine's id
   * @return the machine; empty where there is none or it is another visitor's
   */
  public Optional<Machine> find(String visitor, String id) {
    return database.transact(
        connection ->
            machines(connection, COLUMNS + " WHERE visitor = ? AND id = ?", visitor, id).stream()
                .findFirst());
  }

  /**
   * Adds a machine.
   *
   * @param visitor the visitor
   * @param sheet the setting that is on it
   * @return its id
   * @throws IllegalArgumentException if the visitor has {@value #MOST} machines
   */
  public String add(String visitor, SetupSheet sheet) {
    byte[] random = new byte[12];
    RANDOM.nextBytes(random);
    String id = HexFormat.of().formatHex(random);
    return database.transact(
        connection -> {
          if (machines(connection, COLUMNS + " WHERE visitor = ?", visitor).size() >= MOST) {
            throw new Refusal(Words.message("problem.machines", "most", MOST));
          }
          update(
              connection,
              "INSERT INTO machine (id, visitor, name, sheet, changed)" + " VALUES (?, ?, ?, ?, ?)",
              id,
              visitor,
              sheet.title(),
              SheetJson.write(sheet),
              now());
          log(connection, id, Entry.Kind.ENTERED, plain(sheet.title()), sheet);
          return id;
        });
  }

  /**
   * Keeps a machine's session, with the setting that is on it now and a line in its log.
   *
   * @param visitor the visitor
   * @param id the machine
   * @param session the session
   * @param kind what was done
   * @param what what was done; it is kept in every language
   */
  public void keep(
      String visitor, String id, TuningSession session, Entry.Kind kind, Message what) {
    Map<String, String> texts = Words.everywhere(what);
    database.transact(connection -> keep(connection, visitor, id, session, kind, texts));
  }

  /**
   * Writes a line into a machine's log.
   *
   * @param visitor the visitor
   * @param id the machine
   * @param text the note
   */
  public void note(String visitor, String id, String text) {
    database.transact(
        connection -> {
          if (!machines(connection, COLUMNS + " WHERE visitor = ? AND id = ?", visitor, id)
              .isEmpty()) {
            log(connection, id, Entry.Kind.NOTED, plain(text), null);
          }
          return id;
        });
  }

  /**
   * Removes a machine and its log.
   *
   * @param visitor the visitor
   * @param id the machine
   */
  public void remove(String visitor, String id) {
    database.transact(
        connection ->
            update(connection, "DELETE FROM machine WHERE visitor = ? AND id = ?", visitor, id));
  }

  /**
   * Returns a machine's log, the newest line first.
   *
   * @param visitor the visitor
   * @param id the machine
   * @return at most a thousand lines
   */
  public List<Entry> log(String visitor, String id) {
    String sql =
        "SELECT at, kind, texts FROM entry JOIN machine ON machine.id = entry.machine"
            + " WHERE visitor = ? AND machine = ? ORDER BY entry.id DESC LIMIT 1000";
    return database.transact(
        connection -> {
          List<Entry> entries = new ArrayList<>();
          try (PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(statement, visitor, id);
            ResultSet rows = statement.executeQuery();
            while (rows.next()) {
              entries.add(
                  new Entry(
                      Instant.parse(rows.getString(1)),
                      Entry.Kind.valueOf(rows.getString(2)),
                      texts(rows.getString(3))));
            }
          }
          return entries;
        });
  }

  private int keep(
      Connection connection,
      String visitor,
      String id,
      TuningSession session,
      Entry.Kind kind,
      Map<String, String> texts)
      throws SQLException {
    SetupSheet sheet = session.now();
    int changed =
        update(
            connection,
            "UPDATE machine SET sheet = ?, session = ?, changed = ? WHERE visitor = ? AND id = ?",
            SheetJson.write(sheet),
            SessionJson.write(session),
            now(),
            visitor,
            id);
    if (changed == 1) {
      log(connection, id, kind, texts, sheet);
    }
    return changed;
  }

  private void log(
      Connection connection,
      String id,
      Entry.Kind kind,
      Map<String, String> texts,
      @Nullable SetupSheet sheet)
      throws SQLException {
    update(
        connection,
        "INSERT INTO entry (machine, at, kind, texts, sheet) VALUES (?, ?, ?, ?, ?)",
        id,
        now(),
        kind.name(),
        json(texts),
        sheet == null ? null : SheetJson.write(sheet));
  }

  private static Map<String, String> plain(String text) {
    return Map.of(Entry.PLAIN, text);
  }

  private static String json(Map<String, String> texts) {
    try {
      return JSON.writeValueAsString(texts);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, String> texts(String json) {
    try {
      return JSON.readValue(json, new TypeReference<LinkedHashMap<String, String>>() {});
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private String now() {
    return clock.instant().toString();
  }

  private static List<Machine> machines(Connection connection, String sql, String... arguments)
      throws SQLException {
    List<Machine> machines = new ArrayList<>();
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      bind(statement, arguments);
      ResultSet rows = statement.executeQuery();
      while (rows.next()) {
        machines.add(machine(rows));
      }
    }
    return machines;
  }

  private static Machine machine(ResultSet row) throws SQLException {
    SetupSheet sheet = SheetJson.read(row.getString(3));
    String session = row.getString(4);
    return new Machine(
        row.getString(1),
        row.getString(2),
        sheet,
        session == null ? TuningSession.beginning(sheet) : SessionJson.read(session),
        Instant.parse(row.getString(5)));
  }

  private static int update(Connection connection, String sql, @Nullable String... arguments)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      bind(statement, arguments);
      return statement.executeUpdate();
    }
  }

  private static void bind(PreparedStatement statement, @Nullable String... arguments)
      throws SQLException {
    for (int i = 0; i < arguments.length; i++) {
      statement.setString(i + 1, arguments[i]);
    }
  }
}
