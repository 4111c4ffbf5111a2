package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The invented event that the program carries with it, to try everything without an archer.
 *
 * <p>Its passphrase is known to everybody, so its ledger proves nothing.
 *
 * @param folder where it lies
 */
public record DemoEvent(EventFolder folder) {

  /** The official who is on duty in {@link #script}. */
  public static final String OFFICIAL = "Ada Fernhollow";

  /** Every key of the demo event is sealed with it. */
  public static final String PASSPHRASE = "three quiet arrows";

  private static final String SECOND_OFFICIAL = "Tobin Marsh";
  private static final String ORGANIZER = "Wilhelmina Rookwood";
  private static final String STATION = "Demo line";

  /**
   * Opens the demo event in a folder, and makes it where there is none.
   *
   * @throws StationException if something else is in the folder
   */
  public static DemoEvent in(Path path, Surroundings here) throws StationException {
    DemoEvent there = new DemoEvent(new EventFolder(path));
    if (there.folder().isMade()) {
      there.refuseOther();
      return there;
    }
    return make(path, here);
  }

  /**
   * Takes the demo event away, if it is there, and makes it anew.
   *
   * @throws StationException if something else is in the folder, or a station has the event open;
   *     then everything is as before
   */
  public static DemoEvent anew(Path path, Surroundings here) throws StationException {
    DemoEvent there = new DemoEvent(new EventFolder(path));
    if (there.folder().isMade()) {
      there.refuseOther();
      // Opening it proves that no other station is writing in it
      Book.open(there.folder(), here.clock(), here.nanos()).close();
      try {
        Leftovers.remove(path);
      } catch (IOException e) {
        throw StationException.of(e);
      }
    }
    return make(path, here);
  }

  private static DemoEvent make(Path path, Surroundings here) throws StationException {
    EventFolder made =
        new NewEvent(
                Packed.file("/demo-data/" + EventFolder.RULE_BOOK),
                Packed.file("/demo-data/" + EventFolder.ROSTER),
                Packed.file("/config/profiles/gate-timer.toml"),
                STATION,
                StationSettings.Kind.SIMULATOR,
                "",
                person(ORGANIZER),
                List.of(person(OFFICIAL), person(SECOND_OFFICIAL)),
                Optional.of(Packed.file("/demo-data/gate-timer.capture")))
            .make(path, here.clock(), here.nanos(), here.random());
    return new DemoEvent(made);
  }

  /** What the official types on the morning of the demo event, a line each. */
  public static List<String> script() throws StationException {
    String text = new String(Packed.file("/demo-data/morning.txt").bytes(), StandardCharsets.UTF_8);
    return text.lines().toList();
  }

  /** Whether anybody was called yet. */
  public boolean isBegun(Surroundings here) throws StationException {
    try (Book book = Book.open(folder, here.clock(), here.nanos())) {
      return !book.standing().checks().isEmpty();
    }
  }

  private void refuseOther() throws StationException {
    StationSettings settings = folder.settings();
    boolean demo =
        settings.kind() == StationSettings.Kind.SIMULATOR
            && settings.station().equals(STATION)
            && Files.exists(folder.path().resolve(EventFolder.REHEARSAL));
    if (!demo) {
      throw StationException.of(new FileAlreadyExistsException(folder.path().toString()));
    }
  }

  private static NewEvent.Person person(String name) {
    return new NewEvent.Person(name, PASSPHRASE.toCharArray());
  }
}
