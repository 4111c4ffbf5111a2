package lanewarden.written;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.reader.RecordType;
import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Sentence;

/**
 * A CSV text in rows of cells that know their places; strict as RFC 4180 section 2 writes it.
 *
 * <p>Lines may end in CR LF, LF or CR, and empty lines are passed over; the number of fields in a
 * row is left to the reader of the rows. For one thread.
 */
final class CsvPage {
  private final String text;
  private final char separator;
  private final CsvFaults faults;
  private final List<Integer> lineStarts = new ArrayList<>();

  private CsvPage(String text, char separator, CsvFaults faults) {
    this.text = text;
    this.separator = separator;
    this.faults = faults;
    lineStarts.add(0);
    for (int at = endOfLine(0); at >= 0; at = endOfLine(at)) {
      lineStarts.add(at);
    }
  }

  /** Every row; after a quote that goes wrong the rest cannot be told apart and is left out. */
  static List<List<CsvCell>> rows(String text, CsvFaults faults) {
    return rows(text, ',', faults);
  }

  /** The same where something else than a comma stands between the fields. */
  static List<List<CsvCell>> rows(String text, char separator, CsvFaults faults) {
    return new CsvPage(text, separator, faults).rows();
  }

  private List<List<CsvCell>> rows() {
    List<List<CsvCell>> rows = new ArrayList<>();
    Follower follower = new Follower();
    try {
      CsvReader.builder()
          .fieldSeparator(separator)
          .skipEmptyLines(true)
          .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
          .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
          .allowUnclosedQuote(false)
          .build(follower, text)
          .forEach(rows::add);
    } catch (CsvParseException e) {
      // the library names the line only: the place reached, and what stands there, say more
      faults.note(
          follower.cellAt(""),
          Sentence.of(CsvTold.QUOTES_CLOSED),
          follower.restOfLine(),
          Sentence.of(CsvTold.CLOSE_QUOTES));
    }
    return rows;
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
  private final class Follower extends CsvCallbackHandler<List<CsvCell>> {
    private RecordType type = RecordType.DATA;
    private List<CsvCell> cells = new ArrayList<>();
    private int at;
    private int line;
    private int column;

    @Override
    protected void beginRecord(long startingLine) {
      type = RecordType.DATA;
      cells = new ArrayList<>();
      line = (int) startingLine;
      at = lineStarts.get(line - 1);
      column = 1;
    }

    @Override
    protected void addField(char[] buffer, int offset, int length, boolean quoted) {
      String content = new String(buffer, offset, length);
      CsvCell cell = cellAt(content);
      cells.add(cell);
      long quotes = content.chars().filter(c -> c == '"').count();
      if (quotes > 0 && !quoted) {
        faults.note(
            cell, Sentence.of(CsvTold.NO_QUOTE), content, Sentence.of(CsvTold.QUOTES_AROUND));
      }
      // as written: the content, its quotes doubled and two around it, and the comma behind
      advance(at + length + 1 + (quoted ? 2 + (int) quotes : 0));
    }

    private void advance(int to) {
      while (line < lineStarts.size() && lineStarts.get(line) < to) {
        at = lineStarts.get(line);
        line++;
        column = 1;
      }
      // past the last field of the text there is no comma to step over
      int end = Math.min(to, text.length());
      column += text.codePointCount(at, end);
      at = end;
    }

    /** A cell at the place reached. */
    CsvCell cellAt(String content) {
      return new CsvCell(content, line, column);
    }

    /** What is written from the place reached to the end of its line. */
    String restOfLine() {
      int end = line < lineStarts.size() ? lineStarts.get(line) : text.length();
      return text.substring(at, end).strip();
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
    protected List<CsvCell> buildRecord() {
      return List.copyOf(cells);
    }
  }
}
