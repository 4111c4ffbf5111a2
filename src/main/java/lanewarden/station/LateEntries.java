package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lanewarden.journal.Fact;
import lanewarden.roster.LateEntry;
import lanewarden.roster.Roster;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/** Puts late entries on the roster: into its file, and signed into the ledger. */
record LateEntries(EventFolder folder, Book book) {

  /** Signs a roster. */
  @FunctionalInterface
  interface Signing {
    void sign(Fact.RosterAdopted roster) throws StationException;
  }

  /**
   * The file is written first: were the ledger first and the disk refused the file, the next
   * sign-in would adopt the roster without the entry again. Where nothing can be signed the file
   * becomes what it was.
   */
  void add(LateEntry entry, Signing signing) throws StationException {
    Roster before = folder.roster();
    if (!before.sha256().equals(book.roster().sha256())) {
      throw StationException.misstep(
          "ROSTER-EDITED",
          "Nobody was put on the roster.",
          EventFolder.ROSTER + " was changed since the last sign-in, and nobody has signed that.",
          "Sign out and in again: that signs the changed roster. Then add the late entry.");
    }
    Roster after = joined(entry, before);
    write(after);
    try {
      signing.sign(new Fact.RosterAdopted(EventFolder.ROSTER, after.sha256(), after.text()));
    } catch (StationException | RuntimeException e) {
      restore(before, e);
      throw e;
    }
  }

  private Roster joined(LateEntry entry, Roster before) throws StationException {
    if (!divisions().contains(entry.division())) {
      throw refused(
          "\"" + entry.division() + "\" is no division of the rule book in force.",
          "Take one of these: " + String.join(", ", divisions()) + ".");
    }
    try {
      return entry.joining(before);
    } catch (WrittenRefused e) {
      WrittenFault fault = e.faults().get(0);
      throw refused(
          fault.expected() + " is wanted; there is " + fault.found() + ".",
          "Give a bib that nobody else has, and the name.");
    }
  }

  private static StationException refused(String why, String remedy) {
    return StationException.misstep("LATE-ENTRY", "Nobody was put on the roster.", why, remedy);
  }

  private void write(Roster roster) throws StationException {
    Path file = folder.path().resolve(EventFolder.ROSTER);
    try {
      WholeFile.put(file, roster.text().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  private void restore(Roster before, Exception why) {
    try {
      write(before);
    } catch (StationException e) {
      why.addSuppressed(e);
    }
  }

  /** The codes of the divisions that one can enter. */
  List<String> divisions() {
    return book.ruleBook().divisions().stream().map(division -> division.code()).toList();
  }
}
