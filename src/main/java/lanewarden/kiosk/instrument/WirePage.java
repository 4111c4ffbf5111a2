package lanewarden.kiosk.instrument;

import java.util.List;
import lanewarden.kiosk.look.Sign;

/**
 * What came over the wire, in the words of the screen.
 *
 * @param title whose wire it is
 * @param counted how much came
 * @param verdict whether the profile fits
 * @param findings what does not fit, the cause before its consequences
 * @param lines what came, the newest first
 * @param nothing what is said where nothing came
 */
public record WirePage(
    String title,
    String counted,
    Said verdict,
    List<Finding> findings,
    List<Line> lines,
    String nothing) {

  /** A sign and what it says. */
  public record Said(Sign sign, String words) {}

  /**
   * Something that does not fit.
   *
   * @param key the part of the profile to look at
   */
  public record Finding(String key, String words) {}

  /**
   * Something that came.
   *
   * @param time of day
   * @param word what became of it
   * @param speed of a reading, else blank
   * @param bytes as received, in printable ASCII; blank for a change of the link
   * @param words of a refusal, the reason; of a change of the link, what happened
   */
  public record Line(
      Sign sign, String time, String word, String speed, String bytes, String words) {

    /** All of it in one sentence. */
    String spoken() {
      return String.join(
          ", ",
          List.of(time, word, speed, words, bytes).stream().filter(s -> !s.isBlank()).toList());
    }
  }
}
