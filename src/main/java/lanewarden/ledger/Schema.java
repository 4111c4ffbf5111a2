package lanewarden.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The ledger's table and guards, as made and as found. */
final class Schema {
  /** "LNWD" in the SQLite header's application id. */
  static final int APPLICATION_ID = 0x4C4E5744;

  /** The format version, in the SQLite header's user version. */
  static final int FORMAT = 1;

  static final String TABLE = "entry";

  private static final Pattern EMPTY_LINE = Pattern.compile("\n\n");
  private static final Pattern NAME = Pattern.compile("CREATE (?:TABLE|TRIGGER) (\\w+) ");

  private final Map<String, String> statements = new LinkedHashMap<>();

  Schema() {
    for (String block : EMPTY_LINE.split(resource(), -1)) {
      String statement = block.strip();
      Matcher name = NAME.matcher(statement);
      if (name.lookingAt()) {
        statements.put(name.group(1), statement);
      }
    }
  }

  private static String resource() {
    try (InputStream sql = Schema.class.getResourceAsStream("schema.sql")) {
      if (sql == null) {
        throw new IllegalStateException("schema.sql is missing from the program.");
      }
      return new String(sql.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new IllegalStateException("schema.sql cannot be read from the program.", unreadable);
    }
  }

  void make(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String sql : statements.values()) {
        statement.execute(sql);
      }
      statement.execute("PRAGMA application_id = " + APPLICATION_ID);
      statement.execute("PRAGMA user_version = " + FORMAT);
    }
  }

  /** Names and texts of everything in the file's schema. */
  private static Map<String, String> found(Connection connection) throws SQLException {
    Map<String, String> found = new LinkedHashMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("SELECT name, sql FROM sqlite_schema")) {
      while (rows.next()) {
        found.put(String.valueOf(rows.getString(1)), String.valueOf(rows.getString(2)));
      }
    }
    return found;
  }

  /** Whether the file holds our table, whatever became of its guards. */
  boolean hasTable(Connection connection) throws SQLException {
    return String.valueOf(statements.get(TABLE)).equals(found(connection).get(TABLE));
  }

  /** What differs from the schema as made, each as a sentence. */
  List<String> differences(Connection connection) throws SQLException {
    Map<String, String> found = found(connection);
    List<String> differences = new ArrayList<>();
    statements.forEach(
        (name, sql) -> {
          String there = found.remove(name);
          if (there == null) {
            differences.add("The guard " + name + " is missing from the file.");
          } else if (!there.equals(sql)) {
            differences.add("The guard " + name + " is not as it was made.");
          }
        });
    found.keySet().forEach(name -> differences.add("The file holds a foreign part, " + name + "."));
    return differences;
  }

  static long number(Connection connection, String pragma) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA " + pragma)) {
      return row.next() ? row.getLong(1) : -1;
    }
  }
}
