package lanewarden.station;

import java.util.Optional;

/**
 * What holds for one opening of a line alone; the settings stay as they are.
 *
 * @param port a serial port instead of what the settings say
 * @param pace of the archers of a rehearsal: 1 as captured, 0 without waiting; empty for the usual
 */
public record OpeningTerms(Optional<String> port, Optional<Double> pace) {
  private static final String NOTHING_OPENED = "Nothing was opened.";

  /** As the settings say. */
  public static final OpeningTerms USUAL = new OpeningTerms(Optional.empty(), Optional.empty());

  /**
   * As they are typed; what is blank is as usual.
   *
   * @throws StationException if the pace is none
   */
  public static OpeningTerms typed(String port, String pace) throws StationException {
    return new OpeningTerms(
        Optional.of(port.strip()).filter(one -> !one.isEmpty()),
        pace.isBlank() ? Optional.empty() : Optional.of(Pace.typed(pace, NOTHING_OPENED)));
  }

  /** Nobody shall wait for archers who do not come. */
  void requireUseAt(EventFolder folder) throws StationException {
    if (pace.isPresent() && !CheckInLine.isRehearsed(folder, port)) {
      throw StationException.misstep(
          "PACE-UNUSED",
          NOTHING_OPENED,
          "A pace was given, and no archers are invented: the readings "
              + (port.isPresent() ? "come from " + port.get() : "are those of real arrows")
              + ".",
          "Leave the pace empty, or open an event whose readings come from the simulator, without"
              + " a port.");
    }
  }
}
