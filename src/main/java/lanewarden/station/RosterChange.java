package lanewarden.station;

import java.util.List;
import lanewarden.roster.Roster;
import lanewarden.roster.RosterDifference;

/** What another roster changes for the competitors, told to the official who adopts it. */
record RosterChange(Roster before, Roster now) {

  /** How many changes a notice lists. */
  private static final int LISTED = 6;

  /** The notice with every change that matters at the line, or with how many there are. */
  Trouble notice() {
    List<String> changes = RosterDifference.between(before, now).inWords();
    String listed = String.join("; ", changes.subList(0, Math.min(LISTED, changes.size())));
    String more = changes.size() > LISTED ? "; and " + (changes.size() - LISTED) + " more" : "";
    return new Trouble(
        "Another roster is in force from now on.",
        EventFolder.ROSTER
            + " was changed since the last sign-in: "
            + (changes.isEmpty() ? "nothing but the order" : listed)
            + more
            + ".",
        "Compare with what the organizer told you. You signed it in; it stands in the ledger and the report.",
        "ROSTER-CHANGED",
        Trouble.Kind.USAGE);
  }
}
