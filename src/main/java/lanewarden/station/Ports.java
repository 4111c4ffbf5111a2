package lanewarden.station;

import java.util.Optional;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.ReadByEye;
import lanewarden.chronograph.SerialInstrument;
import lanewarden.chronograph.SeriesInstrument;

/** The instruments that an event's settings name, but no simulated ones: one, or two in series. */
final class Ports {

  private Ports() {}

  /**
   * Not started yet.
   *
   * @param port of the first instrument, instead of what the settings say
   */
  static Instrument open(EventFolder folder, Optional<String> port, Surroundings here)
      throws StationException {
    StationPapers papers = folder.papers();
    StationSettings settings = papers.settings();
    if (port.isEmpty() && settings.kind() == StationSettings.Kind.TYPED) {
      return new ReadByEye(here.clock());
    }
    Instrument first =
        new SerialInstrument(
            port.orElse(settings.port()), papers.profile(), here.clock(), here.nanos());
    if (settings.second().isEmpty()) {
      return first;
    }
    SecondInstrument second = settings.second().get();
    if (second.kind() == StationSettings.Kind.SIMULATOR
        || port.equals(Optional.of(second.port()))) {
      throw StationException.misstep(
          "SECOND-INSTRUMENT",
          "No instrument was listened to.",
          "The settings have a second instrument, and it is "
              + (second.kind() == StationSettings.Kind.SIMULATOR
                  ? "a simulated one, which confirms no arrow."
                  : "on " + second.port() + " already."),
          "Write a port of its own for the second instrument into station.toml, or take the"
              + " section [second] out.");
    }
    return new SeriesInstrument(
        first,
        new SerialInstrument(
            second.port(), papers.second().orElseThrow(), here.clock(), here.nanos()),
        second.agreement(),
        second.within(),
        here.clock(),
        here.nanos());
  }
}
