package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenRefused;

/**
 * A rule book as it is written in a file, in force or not.
 *
 * @param event the event's name
 * @param edition as its organizer numbers it
 * @param sha256 of the file, 64 hex digits
 * @param divisions in the order of the file
 */
public record WrittenRules(String event, String edition, String sha256, List<Division> divisions) {

  /**
   * Reads one.
   *
   * @param fileOrFolder the file itself, or an event's folder
   * @throws StationException if it cannot be read or is faulty, with every fault
   */
  public static WrittenRules read(Path fileOrFolder) throws StationException {
    return of(book(fileOrFolder));
  }

  /** What stands in a rule book. */
  static WrittenRules of(RuleBook book) {
    return new WrittenRules(book.event(), book.edition(), book.sha256(), book.divisions());
  }

  /** The file of a rule book, in an event's folder where that is named. */
  static Path fileAt(Path fileOrFolder) {
    return Files.isDirectory(fileOrFolder)
        ? fileOrFolder.resolve(EventFolder.RULE_BOOK)
        : fileOrFolder;
  }

  /** The rule book itself. */
  static RuleBook book(Path fileOrFolder) throws StationException {
    Path file = fileAt(fileOrFolder);
    try {
      return RuleBook.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  /**
   * The division with this code alone, or all of them.
   *
   * @param code blank for all
   * @throws StationException if there is none with this code
   */
  public List<Division> wanted(String code) throws StationException {
    return code.isBlank() ? divisions : List.of(division(code));
  }

  /** The division with this code, if there is one. */
  public Optional<Division> find(String code) {
    return divisions.stream().filter(d -> d.code().equalsIgnoreCase(code.strip())).findFirst();
  }

  /**
   * The division with this code.
   *
   * @throws StationException if there is none
   */
  public Division division(String code) throws StationException {
    return find(code)
        .orElseThrow(() -> none("The rule book has no division " + code.strip() + "."));
  }

  /**
   * The division that is to stand beside another one of this rule book.
   *
   * @param named its code; no file or folder is called so
   * @throws StationException if there is none
   */
  public Division besideItself(String named) throws StationException {
    String what = named.strip();
    return find(what)
        .orElseThrow(
            () -> none("There is no file " + what + ", and the rule book has no such division."));
  }

  private StationException none(String why) {
    return StationException.misstep("NO-SUCH-DIVISION", "Nothing was told.", why, codes());
  }

  /**
   * Requires the division that is to stand beside the one with the same code of another rule book.
   *
   * @throws StationException if there is none
   */
  public void requireNamesake(String code) throws StationException {
    if (find(code).isEmpty()) {
      throw StationException.misstep(
          "BESIDE-NONE",
          "Nothing was put beside it.",
          "That rule book has no division " + code.strip() + ".",
          codes());
    }
  }

  private String codes() {
    return "Its divisions are "
        + String.join(", ", divisions.stream().map(Division::code).toList())
        + ".";
  }
}
