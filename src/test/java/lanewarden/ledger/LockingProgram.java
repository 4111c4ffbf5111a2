package lanewarden.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** Another program that holds a database locked until its input ends. */
final class LockingProgram {
  private LockingProgram() {}

  public static void main(String[] arguments) throws SQLException, IOException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + arguments[0]);
        Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      System.out.write("held\n".getBytes(StandardCharsets.US_ASCII));
      System.out.flush();
      while (System.in.read() >= 0) {
        // Until whoever started it lets go
      }
    }
  }
}
