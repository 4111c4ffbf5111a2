package lanewarden.rules;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.written.KeyPlace;
import lanewarden.written.TablePath;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * What a rule book that is still being written says so far.
 *
 * @param divisions in the order of the file; those in whose section something is wrong are empty
 * @param faults every fault, in the order of the file; none where the rule book would be taken
 */
public record DraftRules(List<Optional<Division>> divisions, List<WrittenFault> faults) {

  /** The name of the tables that hold the divisions. */
  public static final String DIVISION = "division";

  /** Copies the lists. */
  public DraftRules {
    divisions = List.copyOf(divisions);
    faults = List.copyOf(faults);
  }

  /**
   * Reads as much as is right.
   *
   * @param fileName for the faults; nothing is opened
   * @throws WrittenRefused if it is not TOML, or of another format
   */
  public static DraftRules read(String fileName, byte[] utf8) throws WrittenRefused {
    return RuleBookPage.draft(fileName, utf8);
  }

  /** Whether any of the faults is in the n-th division's section, counted from 1. */
  static boolean isFaulty(List<WrittenFault> faults, int nth) {
    TablePath section = TablePath.nth(DIVISION, nth);
    return faults.stream()
        .map(WrittenFault::place)
        .filter(Objects::nonNull)
        .map(KeyPlace::table)
        .anyMatch(section::equals);
  }
}
