package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/** Reads a capture file, strictly: one fault and the file is refused whole. */
final class WrittenCapture {
  /** Characters of a strange line that are shown. */
  private static final int SAMPLE = 60;

  private static final Pattern CHUNK = Pattern.compile("([0-9]{1,7}) (.+)");

  private final String file;
  private final List<WrittenFault> faults = new ArrayList<>();
  private final Map<String, List<Capture.Chunk>> sections = new LinkedHashMap<>();
  private List<Capture.Chunk> current = new ArrayList<>();

  private WrittenCapture(String file) {
    this.file = file;
  }

  static Capture read(String file, byte[] utf8) throws WrittenRefused {
    WrittenCapture written = new WrittenCapture(file);
    written.sections.put("", written.current);
    // Split at the line feed only: any other line break inside the file is a fault to be shown
    String[] lines = WrittenText.of(file, utf8).split("\n", -1);
    written.requireCapture(lines);
    for (int i = 0; i < lines.length; i++) {
      written.line(lines[i], i + 1);
    }
    if (written.sections.values().stream().allMatch(List::isEmpty) && written.faults.isEmpty()) {
      written.fault(0, 0, "at least one line of bytes", "none", "record something first");
    }
    if (!written.faults.isEmpty()) {
      throw new WrittenRefused(file, written.faults);
    }
    return new Capture(written.sections);
  }

  /**
   * Refuses a file in which not one line has the form of a capture's, once and for all of them.
   *
   * @throws WrittenRefused if it has two lines or more, and none of them is of a capture
   */
  private void requireCapture(String[] lines) throws WrittenRefused {
    int first = 0;
    int strange = 0;
    for (int i = 0; i < lines.length; i++) {
      if (lines[i].startsWith("@") || CHUNK.matcher(lines[i]).lookingAt()) {
        return;
      }
      if (!lines[i].isEmpty() && !lines[i].startsWith("#")) {
        first = strange == 0 ? i : first;
        strange++;
      }
    }
    if (strange > 1) {
      String line = lines[first];
      throw WrittenRefused.because(
          new WrittenFault(
              file,
              first + 1,
              1,
              "a capture: lines such as \"500 $A,1\\r\\n\", milliseconds since the chunk before"
                  + " and the bytes",
              strange
                  + " lines, none of them so; the first is \""
                  + RawBytes.ofText(line.length() > SAMPLE ? line.substring(0, SAMPLE) : line)
                  + (line.length() > SAMPLE ? "…" : "")
                  + "\"",
              "this seems to be the bytes alone, as another program wrote them: record the"
                  + " instrument anew with its times, or write a time and one space before each"
                  + " line and \\r\\n where its line ended"));
    }
  }

  private void line(String line, int number) {
    if (line.isEmpty() || line.startsWith("#")) {
      return;
    }
    if (line.startsWith("@")) {
      label(line, number);
      return;
    }
    Matcher chunk = CHUNK.matcher(line);
    if (!chunk.matches()) {
      fault(
          number,
          1,
          "\"# comment\", \"@ label\" or \"<milliseconds> <bytes>\"",
          "\"" + RawBytes.ofText(line) + "\"",
          "write the milliseconds since the chunk before, one space, the bytes");
      return;
    }
    try {
      int column = chunk.start(2);
      add(Integer.parseInt(chunk.group(1)), bytes(chunk.group(2), number, column), number);
    } catch (Unreadable e) {
      faults.add(e.fault);
    }
  }

  private void add(int millis, RawBytes bytes, int number) {
    if (millis > Capture.Chunk.LONGEST_WAIT) {
      fault(
          number,
          1,
          "at most " + Capture.Chunk.LONGEST_WAIT + " ms",
          millis + " ms",
          "shorten the wait");
      return;
    }
    current.add(new Capture.Chunk(millis, bytes));
  }

  private RawBytes bytes(String escaped, int number, int column) throws Unreadable {
    try {
      return RawBytes.parse(escaped);
    } catch (IllegalArgumentException e) {
      throw new Unreadable(
          new WrittenFault(
              file,
              number,
              column + 1,
              "escaped bytes",
              "\"" + RawBytes.ofText(escaped) + "\"",
              String.valueOf(e.getMessage())));
    }
  }

  private void label(String line, int number) {
    String label = line.substring(1).strip();
    if (!line.startsWith("@ ") || label.isEmpty()) {
      fault(number, 1, "\"@ label\"", "\"" + line + "\"", "write @, a space and the label");
    } else if (label.lines().count() > 1) {
      fault(
          number,
          3,
          "a label of one line",
          "a carriage return in it",
          "end every line of a capture with a line feed alone");
    } else if (sections.containsKey(label)) {
      fault(number, 3, "each label once", "\"" + label + "\" again", "give it another name");
    } else {
      current = new ArrayList<>();
      sections.put(label, current);
    }
  }

  private void fault(int line, int column, String expected, String found, String mend) {
    faults.add(new WrittenFault(file, line, column, expected, found, mend));
  }

  private static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient WrittenFault fault;

    Unreadable(WrittenFault fault) {
      super(fault.toString(), null, false, false);
      this.fault = fault;
    }
  }
}
