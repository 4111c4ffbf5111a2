package lanewarden.kiosk.protest;

import lanewarden.journal.Correction;
import lanewarden.station.Protests;
import lanewarden.station.StationException;

/**
 * A part of a check that may have been written down wrongly.
 *
 * @param words for people
 * @param mending how it is corrected
 */
record Wrong(String words, Mending mending) {

  /** How a part is corrected. */
  @FunctionalInterface
  interface Mending {
    Correction sign(Protests protests, String right, String reason) throws StationException;
  }

  Correction correct(Protests protests, String right, String reason) throws StationException {
    return mending.sign(protests, right, reason);
  }
}
