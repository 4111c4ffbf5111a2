package lanewarden.ledger;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * Another program that asks a database something and closes it again, as a browser of them does.
 */
final class ReadingProgram {
  private ReadingProgram() {}

  /**
   * Prints the first answer.
   *
   * @param arguments the file and the question
   */
  public static void main(String[] arguments) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + arguments[0]);
        Statement statement = connection.createStatement();
        ResultSet answer = statement.executeQuery(arguments[1])) {
      System.out.println(answer.next() ? answer.getString(1) : "");
    } catch (SQLException refused) {
      System.out.println(refused.getMessage());
    }
  }
}
