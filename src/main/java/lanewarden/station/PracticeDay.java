package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.bench.Comparison;
import lanewarden.bench.Practice;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenRefused;

/** The set-ups of a practice file beside each other. */
public final class PracticeDay {

  private PracticeDay() {}

  /**
   * Reads a practice file and compares its set-ups.
   *
   * @param rules a rule book or an event's folder with one, whose limits are looked at, if any
   * @throws StationException if a file cannot be read or is faulty, with every fault
   */
  public static Comparison compare(Path file, Optional<Path> rules) throws StationException {
    Practice practice = read(file);
    Optional<RuleBook> book =
        rules.isPresent() ? Optional.of(WrittenRules.book(rules.get())) : Optional.empty();
    return Comparison.of(practice, book);
  }

  /** The practice file itself. */
  static Practice read(Path file) throws StationException {
    try {
      return Practice.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }
}
