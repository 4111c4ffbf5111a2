package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.LedgerException;
import lanewarden.written.Literal;
import lanewarden.written.TablePath;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenToml;

/**
 * The serial port that an event's settings name, and another one in its place.
 *
 * @param event whose settings they are
 * @param now the port's path or name, as the settings say
 */
public record InstrumentPort(EventFolder event, String now) {
  private static final String KEY = "port";
  private static final List<String> ORDER = List.of("format", "station", "profile", "instrument");

  /**
   * The port of an event's instrument.
   *
   * @throws StationException if the settings cannot be read, or readings do not come over a port
   */
  public static InstrumentPort of(EventFolder event) throws StationException {
    Optional<String> none = none(event);
    if (none.isPresent()) {
      throw StationException.misstep(
          "NO-PORT",
          "No port was changed.",
          none.get(),
          "For an instrument on a port, write instrument = \"serial\" and its port into "
              + event.path().resolve(EventFolder.SETTINGS)
              + ".");
    }
    return new InstrumentPort(event, event.settings().port());
  }

  /**
   * Why an event's instrument is on no port; empty if it is on one.
   *
   * @throws StationException if the settings cannot be read
   */
  public static Optional<String> none(EventFolder event) throws StationException {
    return switch (event.settings().kind()) {
      case SERIAL -> Optional.empty();
      case TYPED -> Optional.of("The readings of this event are typed in.");
      default -> Optional.of("The readings of this event come from the simulator.");
    };
  }

  /**
   * Writes another port into the settings, where everything else stays byte for byte. It counts
   * from the next opening of the line, which takes the settings into the ledger.
   *
   * @throws StationException if they cannot have it, the event's line is open, or the disk refuses;
   *     then they are as they were
   */
  public void change(String port) throws StationException {
    requireClosed();
    Path file = event.path().resolve(EventFolder.SETTINGS);
    try {
      byte[] changed =
          WrittenToml.read(file.toString(), Files.readAllBytes(file))
              .set(TablePath.top(), KEY, Literal.text(port), ORDER)
              .utf8();
      StationSettings.read(file.toString(), changed);
      WholeFile.put(file, changed);
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  /** At an open line the old port would go on to be listened to, and nobody would know. */
  private void requireClosed() throws StationException {
    try {
      event.requireNoWriter();
    } catch (LedgerException e) {
      throw StationException.of("No port was changed.", e);
    }
  }
}
