package lanewarden.station;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * Another rule book takes the place of the one in force. Verdicts that were given, and the check at
 * the line, keep the one they had.
 *
 * @param inForce the one that is to be replaced
 * @param roster the competitors, each of whom must find a rule
 */
record RuleBookChange(RuleBook inForce, Roster roster) {

  /** The code of the notice that the file in the folder is not the one in force. */
  static final String SEEN = "RULE-BOOK-CHANGED";

  /** The code of the remark that a changed rule book has the edition of the one before. */
  private static final String EDITION_SAME = "EDITION-SAME";

  /**
   * What the organizer is to sign.
   *
   * @param now the file in the folder
   * @throws StationException if it is the one in force, lacks a division, or the reason is none
   */
  Fact to(RuleBook now, String reason) throws StationException {
    if (now.sha256().equals(inForce.sha256())) {
      throw StationException.misstep(
          "RULE-BOOK-SAME",
          "No rule book was put in force.",
          EventFolder.RULE_BOOK + " in the folder is the very one that is in force already.",
          "Save the changed rule book there first.");
    }
    LinkedHashSet<String> codes =
        new LinkedHashSet<>(now.divisions().stream().map(Division::code).toList());
    List<WrittenFault> strangers = roster.faultsAgainst(codes);
    if (!strangers.isEmpty()) {
      throw StationException.of(new WrittenRefused(strangers.get(0).file(), strangers));
    }
    return new Fact.RuleBookAdopted(
        EventFolder.RULE_BOOK, now.sha256(), now.text(), Reason.of(reason));
  }

  /** What the organizer is to know of it, though it hinders nothing. */
  Optional<Trouble> remark(RuleBook now) {
    if (!now.edition().equals(inForce.edition())) {
      return Optional.empty();
    }
    return Optional.of(
        new Trouble(
            "Another rule book is in force, under the same edition.",
            "Both call themselves edition "
                + now.edition()
                + ", so that nobody can tell by it which of the two is meant.",
            "Give the rule book another edition, save it and put it in force once more; or let it"
                + " be: the report names each by its hash.",
            EDITION_SAME,
            Trouble.Kind.USAGE));
  }
}
