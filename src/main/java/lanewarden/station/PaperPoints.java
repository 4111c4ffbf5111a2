package lanewarden.station;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.journal.Fact;
import lanewarden.journal.Standing;
import lanewarden.roster.Roster;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;
import lanewarden.written.WrittenFault;

/** What a check-up finds between the files of an event and what its ledger has in force. */
record PaperPoints(EventFolder folder, Standing standing) {
  private static final int SHOWN_HASH = 12;

  /** In force is what was signed, not what lies in the folder. */
  Point ruleBook() {
    Optional<RuleBook> force = standing.ruleBook();
    if (force.isEmpty()) {
      return unfinished(Subject.RULE_BOOK);
    }
    String found =
        "In force: "
            + counted(force.get().divisions().size(), "division")
            + ", hash "
            + force.get().sha256().substring(0, SHOWN_HASH);
    try {
      boolean same = folder.ruleBook().sha256().equals(force.get().sha256());
      return same
          ? Point.good(Subject.RULE_BOOK, found + "; the file is the same.", "")
          : new Point(
              Subject.RULE_BOOK,
              State.ATTENTION,
              found + "; the file is another.",
              "",
              "The one in force goes on governing. Put its text back, or have the organizer put the"
                  + " file in force with a reason.");
    } catch (StationException e) {
      return Point.unread(Subject.RULE_BOOK, "The file", e.trouble());
    }
  }

  private static Point unfinished(Subject subject) {
    return new Point(
        subject,
        State.WRONG,
        "None is in force: the making of the event was cut short.",
        "",
        "Make the event again in another folder.");
  }

  Point roster() {
    Optional<Fact.RosterAdopted> force = standing.roster();
    Optional<RuleBook> rules = standing.ruleBook();
    if (force.isEmpty() || rules.isEmpty()) {
      return unfinished(Subject.ROSTER);
    }
    try {
      Roster file = folder.roster();
      return roster(file, force.get(), rules.get());
    } catch (StationException e) {
      return Point.unread(Subject.ROSTER, "The file", e.trouble());
    }
  }

  private static Point roster(Roster file, Fact.RosterAdopted force, RuleBook rules) {
    String found = counted(file.competitors().size(), "competitor");
    List<WrittenFault> strangers =
        file.faultsAgainst(
            new LinkedHashSet<>(rules.divisions().stream().map(Division::code).toList()));
    if (!strangers.isEmpty()) {
      return new Point(
          Subject.ROSTER,
          State.WRONG,
          found + ", " + strangers.size() + " of them in a division that the rule book has not.",
          strangers.get(0).toString(),
          "Correct the division in the file, or have the organizer put a rule book in force that"
              + " has it.");
    }
    return file.sha256().equals(force.sha256())
        ? Point.good(Subject.ROSTER, found + ", every division known.", "")
        : new Point(
            Subject.ROSTER,
            State.ATTENTION,
            found + ", every division known; the file was changed since it was taken over.",
            "",
            "Nothing, if the change is meant: it is signed when the next official signs in, who is"
                + " told what changed.");
  }

  /** Whether the line may go on, as far as the instrument goes. */
  Point verification(Optional<StationSettings> settings) {
    Optional<Trouble> closed = new InstrumentGate(standing).closed();
    if (closed.isPresent()) {
      return new Point(
          Subject.VERIFICATION,
          standing.hold().isPresent() ? State.WRONG : State.ATTENTION,
          closed.get().what(),
          closed.get().why(),
          closed.get().remedy());
    }
    Optional<VerificationPlan> plan = settings.flatMap(StationSettings::verification);
    OptionalInt left = standing.callsLeft();
    return Point.good(
        Subject.VERIFICATION,
        "None is due now. "
            + plan.map(PaperPoints::planned).orElse("None is planned.")
            + (left.isPresent()
                ? " Until the next, " + counted(left.getAsInt(), "competitor") + " may be called."
                : ""),
        "");
  }

  private static String planned(VerificationPlan plan) {
    return "Planned: "
        + (plan.beforeOpening() ? "before the first competitor, " : "")
        + (plan.every().isPresent() ? "every " + plan.every().getAsInt() + " competitors, " : "")
        + (plan.atEnd() ? "at the end, " : "")
        + plan.shots()
        + " shots each.";
  }

  private static String counted(long count, String one) {
    return counted(count, one, one + "s");
  }

  /** A number of things. */
  static String counted(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
