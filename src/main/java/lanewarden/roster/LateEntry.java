package lanewarden.roster;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvSheet;
import lanewarden.written.WrittenRefused;

/**
 * Somebody who enters after the roster was made.
 *
 * @param bib as it stands on the archer
 * @param name as it is to be written
 * @param division its code
 */
public record LateEntry(String bib, String name, String division) {

  /**
   * The roster with one more line at its end. Every byte before stays; a column that a late entry
   * does not state stays empty.
   *
   * @throws WrittenRefused if the bib is taken or is none, or a field is blank
   */
  public Roster joining(Roster roster) throws WrittenRefused {
    String before = roster.text();
    List<String> fields = new ArrayList<>();
    for (CsvCell column :
        CsvSheet.read(roster.file(), before.getBytes(StandardCharsets.UTF_8)).header()) {
      fields.add(field(column.text()));
    }
    String ended = before.endsWith("\n") || before.endsWith("\r") ? before : before + "\n";
    return Roster.signed(roster.file(), ended + CsvSheet.line(fields));
  }

  private String field(String column) {
    if (column.equals(Column.BIB.title())) {
      return bib;
    }
    if (column.equals(Column.NAME.title())) {
      return name;
    }
    return column.equals(Column.DIVISION.title()) ? division : "";
  }
}
