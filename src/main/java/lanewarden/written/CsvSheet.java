package lanewarden.written;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewarden.quantity.Sentence;

/**
 * A table as a spreadsheet saves it: with a header of any words, and commas, semicolons or tabs
 * between its fields, whichever its first line has most of.
 *
 * @param header the cells of the first line
 * @param rows the other lines that have as many fields
 * @param faults a fault for every line that has not
 */
public record CsvSheet(List<CsvCell> header, List<List<CsvCell>> rows, List<WrittenFault> faults) {

  /** Copies the lists. */
  public CsvSheet {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
    faults = List.copyOf(faults);
  }

  /**
   * Reads a table.
   *
   * @param file its name, for the faults; nothing is opened
   * @param utf8 the file's bytes, with or without a byte-order mark
   * @throws WrittenRefused if it is no text, has nothing but a header, or a quote goes wrong in it
   */
  public static CsvSheet read(String file, byte[] utf8) throws WrittenRefused {
    String text = WrittenText.of(file, utf8);
    CsvFaults faults = new CsvFaults(file);
    List<List<CsvCell>> all = CsvPage.rows(text, separator(text), faults);
    faults.refuseIfAny();
    if (all.size() < 2) {
      faults.note(
          new CsvCell("", 1, 1),
          Sentence.of(CsvTold.HEADER_AND_ROWS),
          Sentence.of(all.isEmpty() ? FileTold.NOTHING : CsvTold.ONE_LINE),
          Sentence.of(CsvTold.SAVE_WHOLE));
    }
    faults.refuseIfAny();
    int width = all.get(0).size();
    List<List<CsvCell>> rows = new ArrayList<>();
    List<WrittenFault> uneven = new ArrayList<>();
    for (List<CsvCell> row : all.subList(1, all.size())) {
      if (row.size() == width) {
        rows.add(row);
      } else {
        uneven.add(
            new WrittenFault(
                file,
                row.get(0).line(),
                0,
                Sentence.of(CsvTold.FIELDS, width),
                Sentence.verbatim(String.valueOf(row.size())),
                Sentence.of(CsvTold.FILL_UP)));
      }
    }
    return new CsvSheet(all.get(0), rows, uneven);
  }

  private static char separator(String text) {
    String first = text.lines().filter(line -> !line.isEmpty()).findFirst().orElse("");
    char most = ',';
    for (char one : new char[] {';', '\t'}) {
      if (count(first, one) > count(first, most)) {
        most = one;
      }
    }
    return most;
  }

  private static long count(String text, char one) {
    return text.chars().filter(c -> c == one).count();
  }

  /** One line of a CSV file (RFC 4180, with LF behind it), quoted where it must be. */
  public static String line(List<String> fields) {
    StringWriter line = new StringWriter();
    CsvWriter.builder()
        .bufferSize(0)
        .lineDelimiter(LineDelimiter.LF)
        .build(line)
        .writeRecord(fields);
    return line.toString();
  }

  /** A header's words without what people write differently: capitals, blanks and signs. */
  public static String plain(String header) {
    return header.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }
}
