package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;

/** What another roster changes for the competitors, told to the official who adopts it. */
record RosterChange(Roster before, Roster now) {

  /** How many changes a notice lists. */
  private static final int LISTED = 6;

  /** The notice with every change that matters at the line, or with how many there are. */
  Trouble notice() {
    List<String> changes = changes();
    String listed = String.join("; ", changes.subList(0, Math.min(LISTED, changes.size())));
    String more = changes.size() > LISTED ? "; and " + (changes.size() - LISTED) + " more" : "";
    return new Trouble(
        "Another roster is in force from now on.",
        EventFolder.ROSTER
            + " was changed since the last sign-in: "
            + (changes.isEmpty() ? "nothing but arrow masses, draw weights or the order" : listed)
            + more
            + ".",
        "Compare with what the organizer told you. You signed it in; it stands in the ledger and the report.",
        "ROSTER-CHANGED",
        Trouble.Kind.USAGE);
  }

  private List<String> changes() {
    List<String> changes = new ArrayList<>();
    for (Competitor old : before.competitors()) {
      Optional<Competitor> same = now.bib(old.bib());
      if (same.isEmpty()) {
        changes.add(old.bib() + " " + old.name() + " is gone");
      } else if (!same.get().division().equals(old.division())) {
        changes.add(
            old.bib()
                + " "
                + old.name()
                + " goes from "
                + old.division()
                + " to "
                + same.get().division());
      } else if (!same.get().name().equals(old.name())) {
        changes.add(old.bib() + " " + old.name() + " is now " + same.get().name());
      }
    }
    for (Competitor fresh : now.competitors()) {
      if (before.bib(fresh.bib()).isEmpty()) {
        changes.add(fresh.bib() + " " + fresh.name() + " is new in " + fresh.division());
      }
    }
    return changes;
  }
}
