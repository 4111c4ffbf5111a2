package lanewarden.kiosk.rulebook;

/** A number that the organizer supposes to plan lanes and samples. */
public enum LaneFigure {
  COMPETITORS("lanes.competitors", "120"),
  MINUTES("lanes.minutes", "180"),
  SHOTS("lanes.shots", "4"),
  SECONDS_A_SHOT("lanes.seconds", "20"),
  SECONDS_A_CHANGE("lanes.change", "30"),
  LANES("lanes.lanes", "2"),
  DRAWN("lanes.drawn", "120"),
  OVER_LIMIT("lanes.over", "2"),
  CAUGHT("lanes.caught", "90 %");

  private final String words;
  private final String start;

  LaneFigure(String words, String start) {
    this.words = words;
    this.start = start;
  }

  /** The key of its name on the screen. */
  public String words() {
    return words;
  }

  /** The value it has to begin with. */
  public String start() {
    return start;
  }
}
