package lanewarden.kiosk.protest;

import java.util.Optional;
import lanewarden.kiosk.look.Sign;

/**
 * One line of the docket, or of the checks that were found.
 *
 * @param check the check that it leads to
 * @param protest the protest that it is about
 * @param correction the correction that it is about
 * @param sign shape of what it is
 * @param title what and who
 * @param words the rest of it
 * @param state what waits, or how it ended
 * @param open whether something waits
 */
public record DocketLine(
    long check,
    Optional<Long> protest,
    Optional<Long> correction,
    Sign sign,
    String title,
    String words,
    String state,
    boolean open) {

  /** Whether this is about the same as another, however that stands now. */
  boolean isSame(DocketLine other) {
    return check == other.check
        && protest.equals(other.protest)
        && correction.equals(other.correction);
  }

  /** The whole in sentences, for those who hear the screen. */
  public String spoken() {
    return String.join(". ", title, words, state);
  }
}
