package lanewarden.kiosk.rulebook;

/** Something that the curve supposes and no rule says, with a value to begin with. */
public enum Supposition {
  /** From one arrow of an archer to the next, a standard deviation. */
  ARROWS("suppose.arrows", "2 ft/s"),
  /** The instrument's uncertainty that is new with each reading. */
  READING("suppose.reading", "0.5 ft/s"),
  /** The instrument's uncertainty that all readings share. */
  CALIBRATION("suppose.calibration", "1 ft/s"),
  /** Shots that give no reading that stands. */
  VOIDS("suppose.voids", "5 %"),
  /** How far over the limit an archer is who should fail. */
  EXCESS("suppose.excess", "5 ft/s"),
  /** Mass of the arrow. */
  ARROW("suppose.arrow", "400 gr"),
  /** Draw weight as set. */
  DRAW("suppose.draw", "50 lbf"),
  /** Draw weight as certified. */
  CERTIFIED("suppose.certified", "50 lbf");

  private final String words;
  private final String start;

  Supposition(String words, String start) {
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
