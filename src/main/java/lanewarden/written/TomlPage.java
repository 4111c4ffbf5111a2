package lanewarden.written;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewarden.quantity.Sentence;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * A TOML file being read: collects every fault, then refuses the file whole.
 *
 * <p>Read the values through {@link #root()}, then call {@link #refuseIfFaulty()} before using any
 * of them. For one thread.
 */
public final class TomlPage {
  private final String file;
  private final String[] lines;
  private final List<WrittenFault> faults = new ArrayList<>();
  private final Section root;

  private TomlPage(String file, String text, TomlParseResult toml) {
    this.file = file;
    this.lines = text.split("\n", -1);
    this.root = new Section(this, toml, TablePath.top(), new Place(1, 1));
  }

  /**
   * Parses the file.
   *
   * @throws WrittenRefused if it is too large, not UTF-8 or not TOML, with every syntax fault
   */
  public static TomlPage read(String file, byte[] bytes) throws WrittenRefused {
    String text = WrittenText.of(file, bytes);
    return new TomlPage(file, text, parse(file, text));
  }

  /**
   * Parses the text, whatever is in it.
   *
   * @throws WrittenRefused if it is not TOML, with every syntax fault
   */
  static TomlParseResult parse(String file, String text) throws WrittenRefused {
    TomlParseResult toml = parsed(file, text);
    if (toml.hasErrors()) {
      List<WrittenFault> faults = new ArrayList<>();
      for (TomlParseError error : toml.errors()) {
        faults.add(
            new WrittenFault(
                file,
                error.position().line(),
                error.position().column(),
                Sentence.of(TomlTold.TOML),
                TomlMend.found(String.valueOf(error.getMessage())),
                TomlMend.of(String.valueOf(error.getMessage()))));
      }
      throw new WrittenRefused(file, faults);
    }
    return toml;
  }

  private static TomlParseResult parsed(String file, String text) throws WrittenRefused {
    try {
      return Toml.parse(text);
    } catch (StackOverflowError e) {
      // the parser descends into every list and table; its stack is all that ends
      throw WrittenRefused.because(
          new WrittenFault(
              file,
              0,
              0,
              Sentence.of(TomlTold.NESTED),
              Sentence.of(TomlTold.TOO_DEEP),
              Sentence.of(TomlTold.LIST_LIKE)));
    }
  }

  /** The file's name as given. */
  public String file() {
    return file;
  }

  /** The top level of the file. */
  public Section root() {
    return root;
  }

  /** Notes one more fault. */
  public void fault(WrittenFault fault) {
    faults.add(fault);
  }

  /** Whether a fault was found so far. */
  public boolean faulty() {
    return !faults.isEmpty();
  }

  /**
   * Ends the reading.
   *
   * @throws WrittenRefused with every fault, in the order of the file, if there is one
   */
  public void refuseIfFaulty() throws WrittenRefused {
    if (!faults.isEmpty()) {
      throw new WrittenRefused(file, faults());
    }
  }

  /** Every fault found so far, in the order of the file. */
  public List<WrittenFault> faults() {
    return faults.stream()
        .sorted(Comparator.comparingInt(WrittenFault::line).thenComparingInt(WrittenFault::column))
        .toList();
  }

  /**
   * Where an item of a list stands: the parser's own position is that of the line ends and comments
   * before it.
   */
  Place itemFrom(TomlPosition before) {
    int line = before.line();
    String text = lines[line - 1];
    int at = text.offsetByCodePoints(0, before.column() - 1);
    while (text.substring(at).isBlank() || text.substring(at).stripLeading().startsWith("#")) {
      text = lines[line++];
      at = 0;
    }
    while (Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return new Place(line, text.codePointCount(0, at) + 1);
  }

  /** A place in the file, line and column from 1. */
  record Place(int line, int column) {}
}
