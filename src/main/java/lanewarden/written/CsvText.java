package lanewarden.written;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.List;

/** Rows of cells as one CSV text (RFC 4180), a line a row. */
public final class CsvText {

  private CsvText() {}

  /** The text; a cell is put into quotes where it needs them. */
  public static String of(List<List<String>> rows) {
    StringWriter text = new StringWriter();
    CsvWriter writer =
        CsvWriter.builder().bufferSize(0).lineDelimiter(LineDelimiter.LF).build(text);
    rows.forEach(writer::writeRecord);
    return text.toString();
  }
}
