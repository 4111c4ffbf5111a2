package lanewarden.roster;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.quantity.Extremes;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Sentence;
import lanewarden.written.CsvCell;
import lanewarden.written.FileTold;
import lanewarden.written.Fingerprint;
import lanewarden.written.NearMatch;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/** The competitors of one event, read from one CSV file (RFC 4180) with a header line. */
public final class Roster {

  /** A competitor and the place of its division in the file. */
  record Listed(Competitor competitor, int line, int column) {}

  private final String file;
  private final List<Listed> listed;
  private final List<Competitor> competitors;
  private final String text;
  private final String sha256;

  Roster(String file, List<Listed> listed, byte[] utf8) {
    this.file = file;
    this.listed = List.copyOf(listed);
    this.competitors = listed.stream().map(Listed::competitor).toList();
    this.text = new String(utf8, StandardCharsets.UTF_8);
    this.sha256 = Fingerprint.sha256(utf8);
  }

  /**
   * Reads a roster.
   *
   * <p>The header names the columns {@code bib,name,division} and, where declared, {@code
   * arrow-mass}, {@code draw-weight}, {@code certified-draw-weight}, {@code draw-length} and {@code
   * brace-height}, whose values carry their unit and may be empty.
   *
   * @param file its name, for the faults; nothing is opened
   * @param utf8 the file's bytes, with or without a byte-order mark
   * @throws WrittenRefused if anything is wrong, with every fault; nothing is half-read
   */
  public static Roster read(String file, byte[] utf8) throws WrittenRefused {
    return RosterPage.read(file, utf8, Extremes.LIGHTEST_ARROW);
  }

  /**
   * Reads a roster that was signed already: what it was read as then, it stays. It differs from
   * {@link #read} in that no arrow is too light.
   *
   * @param text as its entry has it
   * @throws WrittenRefused if it is no roster
   */
  public static Roster signed(String file, String text) throws WrittenRefused {
    return RosterPage.read(
        file, text.getBytes(StandardCharsets.UTF_8), Mass.of("0", MassUnit.GRAIN));
  }

  /** The name of its file, for faults. */
  String file() {
    return file;
  }

  /** In the order of the file; at least one. */
  public List<Competitor> competitors() {
    return competitors;
  }

  /** The competitor with this bib, in small or capital letters. */
  public Optional<Competitor> bib(String bib) {
    return competitors.stream().filter(c -> c.bib().equalsIgnoreCase(bib.strip())).findFirst();
  }

  /**
   * Those whom the typed text may mean: first the very bib, then bibs that start so, then names of
   * which a part starts with each typed word; capitals and accents do not matter.
   *
   * @param typed nothing but spaces finds nobody
   * @param most the longest answer wanted, zero or more
   */
  public List<Competitor> search(String typed, int most) {
    return new Lookup(typed).in(competitors, most);
  }

  /**
   * What is wrong between this roster and a rule book: a fault for every competitor whose division
   * is not among its codes.
   */
  public List<WrittenFault> faultsAgainst(Set<String> divisionCodes) {
    List<WrittenFault> faults = new ArrayList<>();
    for (Listed entry : listed) {
      String division = entry.competitor().division();
      if (!divisionCodes.contains(division)) {
        faults.add(
            stranger(file, new CsvCell(division, entry.line(), entry.column()), divisionCodes));
      }
    }
    return faults;
  }

  /** The fault of a division that is none of the rule book's. */
  static WrittenFault stranger(String file, CsvCell division, Set<String> divisionCodes) {
    return new WrittenFault(
        file,
        division.line(),
        division.column(),
        Sentence.of(RosterTold.DIVISION, String.join(", ", divisionCodes)),
        Sentence.verbatim("\"" + division.text() + "\""),
        NearMatch.of(division.text(), divisionCodes)
            .map(near -> Sentence.of(FileTold.NEAR_TEXT, near))
            .orElse(Sentence.of(RosterTold.CORRECT)));
  }

  /** The file's whole text: its UTF-8 bytes are the file's. */
  public String text() {
    return text;
  }

  /** SHA-256 of the file's bytes in 64 hexadecimal digits. */
  public String sha256() {
    return sha256;
  }
}
