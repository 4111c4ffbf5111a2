package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.bench.Comparison;
import lanewarden.bench.Practice;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

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

  /**
   * A practice day as it is kept in a ledger.
   *
   * @param title what it is called
   * @throws StationException if the title is none
   */
  static Fact kept(Practice practice, String title) throws StationException {
    String plain = title.strip();
    if (plain.isEmpty() || plain.length() > Station.LONGEST_REASON || !WrittenText.isPlain(plain)) {
      throw StationException.misstep(
          "PRACTICE-TITLE",
          "Nothing was signed.",
          "The title is empty, too long, or holds characters that cannot be seen.",
          "Say in at most " + Station.LONGEST_REASON + " characters what was shot, and when.");
    }
    return new FrameFact.PracticeKept(
        plain,
        String.valueOf(Path.of(practice.file()).getFileName()),
        practice.sha256(),
        practice.text());
  }

  /** The practice file itself. */
  static Practice read(Path file) throws StationException {
    if (Files.isDirectory(file)) {
      throw StationException.misstep(
          "SHOTS-FOLDER",
          "No shots were read from " + file + ".",
          "It is a folder.",
          "Name a file of shots, such as a practice-1.csv in it.");
    }
    try {
      return Practice.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }
}
