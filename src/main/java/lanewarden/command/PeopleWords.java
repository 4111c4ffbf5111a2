package lanewarden.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.station.KeyOffice;
import lanewarden.station.StationException;

/**
 * Officials enrolled, suspended, replaced and readmitted, and the seal of reports made, as the
 * organizer types it at the line. Each act asks for the organizer's passphrase.
 *
 * @param office where it is signed
 * @param organizerKey where the organizer's key is, or empty for its place in the folder
 * @param secrets where passphrases come from
 * @param ear takes what was done
 */
record PeopleWords(
    KeyOffice office, Optional<Path> organizerKey, Secrets secrets, Consumer<Notice> ear) {
  private static final String ORGANIZER = "the organizer";
  private static final Pattern AS_JUDGE =
      Pattern.compile("(.+?)\\s+as\\s+judge", Pattern.CASE_INSENSITIVE);

  /** For example {@code Cy Moor} or {@code Cy Moor as judge}. */
  void enrol(String rest, LineSource typed) throws StationException, CommandRefused, IOException {
    Matcher judge = AS_JUDGE.matcher(rest);
    String name = judge.matches() ? judge.group(1) : rest;
    secrets.expect(2, () -> requireName(name, LineWord.ENROL));
    KeyOffice.Organizer organizer = organizer(typed);
    char[] fresh = secrets.fresh(name, typed);
    if (judge.matches()) {
      office.enrolJudge(organizer, name, fresh);
    } else {
      office.enrol(organizer, name, fresh);
    }
    tell(name);
  }

  /** For example {@code Cy Moor because of a bow in this division}. */
  void suspend(String rest, LineSource typed) throws StationException, CommandRefused, IOException {
    Matcher because = LineSession.BECAUSE.matcher(rest);
    secrets.expect(1, () -> requireReason(because, LineWord.SUSPEND));
    office.suspend(organizer(typed), because.group(1), because.group(2));
    tell(because.group(1));
  }

  /** For example {@code Cy Moor because the key is lost}. */
  void replace(String rest, LineSource typed) throws StationException, CommandRefused, IOException {
    Matcher because = LineSession.BECAUSE.matcher(rest);
    secrets.expect(2, () -> requireReason(because, LineWord.REPLACE));
    String name = because.group(1);
    KeyOffice.Organizer organizer = organizer(typed);
    office.replace(organizer, name, secrets.fresh(name, typed), because.group(2));
    tell(name);
  }

  /** For example {@code Cy Moor}. */
  void readmit(String name, LineSource typed) throws StationException, CommandRefused, IOException {
    secrets.expect(1, () -> requireName(name, LineWord.READMIT));
    office.readmit(organizer(typed), name);
    tell(name);
  }

  /** Makes the seal of reports, as after the loss of its key. */
  void seal(LineSource typed) throws StationException, CommandRefused, IOException {
    secrets.expect(1, () -> {});
    Path made = office.makeReportSeal(organizerKey, secrets.of(ORGANIZER, typed));
    ear.accept(
        Notice.of("seal", made + " is made; the SHA-256 of its certificate stands on every report")
            .with("key", made.toString()));
  }

  private KeyOffice.Organizer organizer(LineSource typed)
      throws StationException, CommandRefused, IOException {
    return office.organizer(organizerKey, secrets.of(ORGANIZER, typed));
  }

  /** The name's last key: those before it are suspended. */
  private void tell(String name) throws StationException {
    office.officials().stream()
        .filter(official -> official.name().equals(name.strip()))
        .reduce((before, after) -> after)
        .map(OfficialNotice::of)
        .ifPresent(ear);
  }

  private static void requireName(String name, LineWord word) throws CommandRefused {
    if (name.isBlank()) {
      throw CommandRefused.misstep(
          "NO-NAME", "Nothing was signed.", "It takes a name.", "Type: " + word.form());
    }
  }

  private static void requireReason(Matcher because, LineWord word) throws CommandRefused {
    if (!because.matches()) {
      throw CommandRefused.misstep(
          "REASON-MISSING",
          "Nothing was signed.",
          "It takes a name and a reason.",
          "Type: " + word.form());
    }
  }
}
