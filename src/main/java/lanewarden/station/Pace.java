package lanewarden.station;

/** How long what was captured takes when it is played: 1 as long as it did, 0 no time at all. */
final class Pace {
  private static final String MEND =
      "Take 0 for no waiting, 1 for the time that it took, 0.5 for half of it.";

  private Pace() {}

  /**
   * A pace as it is typed.
   *
   * @param undone says what was not done if it is none
   * @throws StationException if it is no number, or none that makes sense
   */
  static double typed(String typed, String undone) throws StationException {
    double pace;
    try {
      pace = Double.parseDouble(typed.strip());
    } catch (NumberFormatException e) {
      throw refused(typed.strip(), undone);
    }
    require(pace, undone);
    return pace;
  }

  /**
   * Refuses one that makes no sense.
   *
   * @param undone says what was not done then
   */
  static void require(double pace, String undone) throws StationException {
    if (!Double.isFinite(pace) || pace < 0) {
      throw refused(Double.toString(pace), undone);
    }
  }

  private static StationException refused(String pace, String undone) {
    return StationException.misstep(
        "PACE-REFUSED", undone, "The pace is a number, 0 or more, not " + pace + ".", MEND);
  }
}
