package lanewarden.written;

import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Sentence;

/**
 * A CSV file (RFC 4180) with a header line that names its columns, read into its other lines.
 *
 * @param kind the columns that it may have
 * @param headerExample what its header may be, for example {@code bib,name,division}
 * @param line what a line of it is, with its article
 * @param writeHeader the mend where there is nothing: a header, and a line for each
 * @param addLines the mend where there is a header only
 */
public record CsvTable<C extends Enum<C> & CsvColumn>(
    Class<C> kind,
    String headerExample,
    Sentence.Form line,
    Sentence.Form writeHeader,
    Sentence.Form addLines) {

  /**
   * Every line that has as many fields as the header; none where the header lacks a column.
   *
   * @param file its name, for the faults
   * @param faults takes what is wrong with the header and the number of fields
   * @throws WrittenRefused if it is no text at all
   */
  public List<CsvRow<C>> read(String file, byte[] utf8, CsvFaults faults) throws WrittenRefused {
    List<List<CsvCell>> rows = CsvPage.rows(WrittenText.of(file, utf8), faults);
    if (rows.isEmpty()) {
      if (faults.none()) {
        faults.note(
            new CsvCell("", 1, 1),
            Sentence.of(CsvTold.HEADER_LIKE, headerExample),
            Sentence.of(FileTold.NOTHING),
            Sentence.of(writeHeader));
      }
      return List.of();
    }
    CsvHeader<C> header = new CsvHeader<>(kind, rows.get(0), faults);
    if (rows.size() == 1 && faults.none()) {
      faults.note(
          rows.get(0).get(0),
          Sentence.of(line),
          Sentence.of(CsvTold.HEADER_ONLY),
          Sentence.of(addLines));
    }
    return header.complete() ? rows(header, rows.subList(1, rows.size()), faults) : List.of();
  }

  private List<CsvRow<C>> rows(CsvHeader<C> header, List<List<CsvCell>> rows, CsvFaults faults) {
    List<CsvRow<C>> read = new ArrayList<>();
    int width = header.width();
    for (List<CsvCell> row : rows) {
      if (row.size() == width) {
        read.add(new CsvRow<>(header, row, faults));
      } else {
        faults.note(
            row.get(Math.min(width, row.size() - 1)),
            Sentence.of(CsvTold.FIELDS, width),
            String.valueOf(row.size()),
            Sentence.of(CsvTold.MEND_COMMAS));
      }
    }
    return read;
  }
}
