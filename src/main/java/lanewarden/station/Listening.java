package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.ProfileTrial;
import lanewarden.chronograph.ReplayInstrument;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.SerialInstrument;
import lanewarden.written.WrittenRefused;

/**
 * An instrument that is only listened to, without an event: to set it up and to try its cable.
 *
 * <p>Whatever it says is told on the instrument's own thread, one thing after the other.
 */
public final class Listening implements AutoCloseable {
  private static final String NOTHING_PLAYED = "Nothing was played.";

  /**
   * Something that is wrong with the profile, or with how the instrument is set.
   *
   * @param key the part of the profile to look at, for example {@code [port] baud}
   * @param words what was seen, why it does not fit, and what to change
   */
  public record Misfit(String key, String words) {

    /** All that a trial finds, the cause before its consequences. */
    static List<Misfit> foundBy(ProfileTrial trial) {
      return trial.findings().stream().map(f -> new Misfit(f.key(), f.words())).toList();
    }
  }

  private final Instrument instrument;
  private final Wire wire;

  private Listening(Instrument instrument, SentenceProfile profile) {
    this.instrument = instrument;
    this.wire = new Wire(profile);
  }

  /** The system paths of the serial ports that are here now. */
  public static List<String> ports() {
    return SerialInstrument.ports();
  }

  /** An instrument on a serial port, which may be missing yet. */
  public static Listening toPort(String port, Path profile, Surroundings here)
      throws StationException {
    SentenceProfile speaks = profile(profile);
    return new Listening(new SerialInstrument(port, speaks, here.clock(), here.nanos()), speaks);
  }

  /** The instrument of an event on its serial port, or both where two stand in series. */
  public static Listening toEvent(EventFolder folder, Surroundings here) throws StationException {
    if (folder.settings().kind() == StationSettings.Kind.SIMULATOR) {
      throw StationException.misstep(
          "SIMULATED",
          "Nothing was listened to.",
          "The settings name the simulator, which says nothing while nobody is called.",
          "Write instrument = \"serial\" and the port into station.toml, or name a port.");
    }
    return new Listening(Ports.open(folder, Optional.empty(), here), folder.profile());
  }

  /**
   * A capture, played back.
   *
   * @param pace 1 waits as long as the capture did, 0 not at all
   */
  public static Listening toCapture(Path capture, Path profile, double pace, Surroundings here)
      throws StationException {
    Pace.require(pace, NOTHING_PLAYED);
    try {
      Capture played = Capture.read(capture.toString(), Files.readAllBytes(capture));
      SentenceProfile speaks = profile(profile);
      return new Listening(new ReplayInstrument(played, speaks, here.clock(), pace), speaks);
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  /**
   * The pace of a capture as it is typed; blank for 0.
   *
   * @throws StationException if it is no number, or none that makes sense
   */
  public static double pace(String typed) throws StationException {
    return typed.isBlank() ? 0 : Pace.typed(typed, NOTHING_PLAYED);
  }

  /** One that the program carries counts where no file is called so. */
  private static SentenceProfile profile(Path file) throws StationException {
    boolean packed = Packed.profiles().stream().anyMatch(p -> Path.of(p.file()).equals(file));
    try {
      if (packed && !Files.exists(file)) {
        return SentenceProfile.read(file.toString(), Packed.profileFile(file.toString()).bytes());
      }
      return SentenceProfile.read(file.toString(), Files.readAllBytes(file));
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  /** The instrument's name. */
  public String name() {
    return instrument.name();
  }

  /** Begins to listen; call it once. A capture ends with {@link Overheard.Kind#LINK_CLOSED}. */
  public void start(Consumer<Overheard> ear) {
    instrument.start(
        signal -> {
          wire.hear(signal);
          ear.accept(Overheard.of(signal));
        });
  }

  /** What was heard so far, and what does not fit between profile and instrument. */
  public WireView wire() {
    return wire.view(name());
  }

  /** Ends listening; the port is free on return. */
  @Override
  public void close() {
    instrument.close();
  }
}
