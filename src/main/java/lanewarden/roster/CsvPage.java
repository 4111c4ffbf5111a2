package lanewarden.roster;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.reader.RecordType;
import java.util.ArrayList;
import java.util.List;
import lanewarden.written.WrittenFault;

/**
 * A CSV text in rows of cells that know their places; strict as RFC 4180 section 2 writes it.
 *
 * <p>Lines may end in CR LF, LF or CR, and empty lines are passed over; the number of fields in a
 * row is left to the reader of the rows. For one thread.
 */
final class CsvPage {
  private final String file;
  private final String text;
  private final List<Integer> lineStarts = new ArrayList<>();
  private final List<List<Cell>> rows = new ArrayList<>();
  private final List<WrittenFault> faults = new ArrayList<>();

  private CsvPage(String file, String text) {
    this.file = file;
    this.text = text;
    lineStarts.add(0);
    for (int at = endOfLine(0); at >= 0; at = endOfLine(at)) {
      lineStarts.add(at);
    }
  }

  static CsvPage of(String file, String text) {
    CsvPage page = new CsvPage(file, text);
    page.parse();
    return page;
  }

  /** Those that could be read, in the order of the file. */
  List<List<Cell>> rows() {
    return rows;
  }

  /** What is no CSV, in the order of the file; reading stops at a quote that goes wrong. */
  List<WrittenFault> faults() {
    return faults;
  }

  private void parse() {
    Rows handler = new Rows();
    try {
      CsvReader.builder()
          .skipEmptyLines(true)
          .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
          .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
          .allowUnclosedQuote(false)
          .build(handler, text)
          .forEach(rows::add);
    } catch (CsvParseException e) {
      Cell wrong = handler.cellAt(String.valueOf(e.getMessage()));
      faults.add(
          fault(
              wrong,
              "a quoted field to be closed, then a comma or the end of the line",
              wrong.text(),
              "close the quotes, and double every quote that stands inside them"));
    }
  }

  private WrittenFault fault(Cell at, String expected, String found, String mend) {
    return new WrittenFault(file, at.line(), at.column(), expected, found, mend);
  }

  /** Where the line after the one at {@code from} starts, or -1 if there is none. */
  private int endOfLine(int from) {
    for (int at = from; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == '\n' || (c == '\r' && !text.startsWith("\n", at + 1))) {
        return at + 1;
      }
    }
    return -1;
  }

  /** Follows the parser through the text, field by field, to know the places. */
  private final class Rows extends CsvCallbackHandler<List<Cell>> {
    private RecordType type = RecordType.DATA;
    private List<Cell> cells = new ArrayList<>();
    private int at;
    private int line;

    @Override
    protected void beginRecord(long startingLine) {
      type = RecordType.DATA;
      cells = new ArrayList<>();
      line = (int) startingLine;
      at = lineStarts.get(line - 1);
    }

    @Override
    protected void addField(char[] buffer, int offset, int length, boolean quoted) {
      String content = new String(buffer, offset, length);
      Cell cell = cellAt(content);
      cells.add(cell);
      long quotes = content.chars().filter(c -> c == '"').count();
      if (quotes > 0 && !quoted) {
        faults.add(
            fault(
                cell,
                "no double quote inside a field without quotes around it",
                content,
                "put quotes around the whole field and double the one inside, or take it out"));
      }
      // as written: the content, its quotes doubled and two around it, and the comma behind
      at += length + 1 + (quoted ? 2 + (int) quotes : 0);
      while (line < lineStarts.size() && lineStarts.get(line) < at) {
        line++;
      }
    }

    /** A cell at the place reached. */
    Cell cellAt(String content) {
      return new Cell(content, line, text.codePointCount(lineStarts.get(line - 1), at) + 1);
    }

    @Override
    protected void setComment(char[] buffer, int offset, int length) {
      throw new IllegalStateException("comments are not asked for");
    }

    @Override
    protected void setEmpty() {
      type = RecordType.EMPTY;
    }

    @Override
    protected RecordType getRecordType() {
      return type;
    }

    @Override
    protected int getFieldCount() {
      return cells.size();
    }

    @Override
    protected List<Cell> buildRecord() {
      return List.copyOf(cells);
    }
  }
}
