package dev.jetting.examples.shopcounter.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The database file. Each change is one transaction in a write-ahead log that is on disk before the
 * visitor gets an answer, so a kill at any moment loses no answered change.
 */
public final class Database {

  private static final String MIGRATIONS = "classpath:dev/jetting/examples/shopcounter/migrations";
  private static final int BUSY_MILLISECONDS = 5000;

  private final DataSource source;

  private Database(DataSource source) {
    this.source = source;
  }

  /**
   * Opens a database file and brings its tables up to date.
   *
   * @param file the file; created where there is none
   * @return the database
   */
  public static Database open(Path file) {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setBusyTimeout(BUSY_MILLISECONDS);
    config.enforceForeignKeys(true);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    Flyway.configure().dataSource(source).locations(MIGRATIONS).load().migrate();
    return new Database(source);
  }

  /** Work with a connection. */
  interface Work<T> {
    T on(Connection connection) throws SQLException;
  }

  /** Does work in one transaction: all of it happens, or nothing. */
  <T> T transact(Work<T> work) {
    try (Connection connection = source.getConnection()) {
      connection.setAutoCommit(false);
      try {
        T result = work.on(connection);
        connection.commit();
        return result;
      } catch (SQLException | RuntimeException e) {
        connection.rollback();
        throw e;
      }
    } catch (SQLException e) {
      throw new IllegalStateException("the database refused: " + e.getMessage(), e);
    }
  }
}
