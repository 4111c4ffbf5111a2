package lanewarden.ledger;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The lines of an exported file as rows. A line's sequence is the one that is signed in it; where
 * that cannot be read, the one behind the line before. Owned by one thread.
 */
final class LineRows implements RowSource {
  private static final int MOST_ROWS = 256;
  private static final int MOST_BYTES = 1 << 20;

  /** Signed bytes, four thirds of the payload, and the payload once more. */
  private static final int LONGEST = 3 * Draft.LONGEST_BODY;

  private static final String WHAT = "The exported entries were not read to the end.";

  private final Path file;
  private final InputStream in;

  /** Where each line begins, and of which entry it is; by line, from 0. */
  private long[] starts = new long[MOST_ROWS];

  private long[] sequences = new long[MOST_ROWS];
  private int lines;
  private long at;
  private long last;

  LineRows(Path file) throws LedgerException {
    this.file = file;
    try {
      this.in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    } catch (NoSuchFileException missing) {
      throw new LedgerException(
          "LEDGER-MISSING", WHAT, "There is no file " + file + ".", "Check the path.", missing);
    } catch (IOException failed) {
      throw fault(failed);
    }
  }

  private LedgerException fault(IOException failed) {
    return new LedgerException(
        "LEDGER-IO",
        WHAT,
        file + " could not be read; the system says: " + failed + ".",
        "Check the path and the right to read it.",
        failed);
  }

  /** A file of lines has no guards that could differ. */
  @Override
  public List<String> differences() {
    return List.of();
  }

  @Override
  public List<Row> next() throws LedgerException {
    List<Row> batch = new ArrayList<>(MOST_ROWS);
    long until = at + MOST_BYTES;
    try {
      while (batch.size() < MOST_ROWS && at < until) {
        long start = at;
        Optional<Row.Line> row = read(in, last + 1, lines + 1);
        if (row.isEmpty()) {
          break;
        }
        last = row.get().sequence();
        note(start);
        batch.add(row.get());
      }
    } catch (IOException failed) {
      throw fault(failed);
    }
    return batch;
  }

  private void note(long start) {
    if (lines == starts.length) {
      starts = Arrays.copyOf(starts, 2 * lines);
      sequences = Arrays.copyOf(sequences, 2 * lines);
    }
    starts[lines] = start;
    sequences[lines] = last;
    lines++;
  }

  @Override
  public Optional<Row.Line> row(long sequence) throws LedgerException {
    int line = 0;
    while (line < lines && sequences[line] != sequence) {
      line++;
    }
    if (line == lines) {
      return Optional.empty();
    }
    long before = at;
    try (RandomAccessFile again = new RandomAccessFile(file.toFile(), "r")) {
      again.seek(starts[line]);
      try (InputStream from =
          new BufferedInputStream(Channels.newInputStream(again.getChannel()))) {
        return read(from, sequence, line + 1);
      }
    } catch (IOException failed) {
      throw fault(failed);
    } finally {
      at = before;
    }
  }

  /** The next line; nothing at the end. */
  private Optional<Row.Line> read(InputStream from, long expected, long number) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream(2048);
    int b = from.read();
    if (b < 0) {
      return Optional.empty();
    }
    while (b >= 0 && b != '\n') {
      if (line.size() <= LONGEST) {
        line.write(b);
      }
      at++;
      b = from.read();
    }
    at++;
    byte[] bytes = line.toByteArray();
    boolean whole = b == '\n' && bytes.length <= LONGEST;
    return Optional.of(row(bytes, whole, expected, number));
  }

  /**
   * A line as a row.
   *
   * @param whole whether a line end stands behind it
   * @param expected the sequence to give it where none can be read in it
   * @param number which line of the file it is, from 1
   */
  static Row.Line row(byte[] line, boolean whole, long expected, long number) {
    Optional<byte[]> jws = EntryLine.jws(line);
    if (jws.isEmpty()) {
      return new Row.Line(expected, number, null, false);
    }
    try {
      byte[] payload = Jws.read(jws.get()).payload();
      return new Row.Line(
          PayloadText.sequence(payload).orElse(expected),
          number,
          jws.get(),
          whole && EntryLine.agrees(line, jws.get(), payload));
    } catch (Malformed unsigned) {
      // The examiner says what is wrong with it
      return new Row.Line(expected, number, jws.get(), false);
    }
  }

  @Override
  public void close() throws LedgerException {
    try {
      in.close();
    } catch (IOException failed) {
      throw fault(failed);
    }
  }
}
