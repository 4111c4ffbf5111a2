package lanewarden.chronograph;

/** Why bytes did not become a reading. */
public enum Reason {
  /** Part of a line only: cut off, or joined midway. */
  TORN("torn"),
  /** Longer than any line of the instrument. */
  OVERLONG("overlong"),
  /** The checksum does not fit the line. */
  CHECKSUM("wrong checksum"),
  /** Not in the form of the instrument's sentence. */
  PATTERN("not the sentence"),
  /** A line that was already taken, sent twice. */
  REPEATED("repeated"),
  /** The instrument says that it has no number. */
  NOT_A_NUMBER("not a number"),
  /** A number that no arrow of this event can have. */
  OUT_OF_RANGE("out of range"),
  /** The instrument itself says that the measurement is not good. */
  STATUS("bad status"),
  /** A unit that is not known, or missing. */
  UNIT("unknown unit"),
  /** The speeds that one line says, by number or by gate times, contradict each other. */
  GATES("gate times disagree"),
  /** A later gate was passed before an earlier one, or with it. */
  REVERSED("gates reversed"),
  /** Two instruments in series measured the same arrow too differently. */
  DISAGREE("instruments disagree"),
  /** Of two instruments in series only one measured, or it cannot be told which arrow. */
  UNPAIRED("heard by one instrument only");

  private final String word;

  Reason(String word) {
    this.word = word;
  }

  /** A word or two for people. */
  public String word() {
    return word;
  }
}
