package lanewarden.journal;

import java.util.Arrays;
import java.util.Optional;

/** Why a verification of the instrument is made. */
public enum Occasion {
  /** Before the first competitor after the line opened. */
  OPENING("opening"),
  /** As many competitors were called as may be between two verifications. */
  INTERVAL("interval"),
  /** Before the line closes. */
  CLOSING("closing"),
  /** To lift a hold. */
  AFTER_HOLD("after a hold"),
  /** An official wants it. */
  ON_REQUEST("on request");

  private final String word;

  Occasion(String word) {
    this.word = word;
  }

  /** The one that the ledger has in these words; empty where they are of none. */
  public static Optional<Occasion> of(String word) {
    return Arrays.stream(values()).filter(occasion -> occasion.word.equals(word)).findFirst();
  }

  /** The words in the ledger. */
  public String word() {
    return word;
  }
}
