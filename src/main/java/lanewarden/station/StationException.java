package lanewarden.station;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Sentence;

/** A use case that could not be carried out; nothing was written. */
public final class StationException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Trouble trouble;

  StationException(Trouble trouble) {
    super(trouble.toString());
    this.trouble = trouble;
  }

  private StationException(Trouble trouble, Throwable cause) {
    super(trouble.toString(), cause);
    this.trouble = trouble;
  }

  /** A wrong step of a person. */
  static StationException misstep(String code, String what, String why, String remedy) {
    return new StationException(new Trouble(what, why, remedy, code, Trouble.Kind.USAGE));
  }

  /**
   * A figure or a text that cannot be taken.
   *
   * @param place what was expected and found, and the mend, for screens
   */
  static StationException misstep(
      String code, String what, String why, String remedy, Sentence place) {
    return new StationException(
        new Trouble(what, why, remedy, code, Trouble.Kind.USAGE, Optional.empty(), List.of(place)));
  }

  /** Something else must be mended first. */
  static StationException stuck(Trouble trouble) {
    return new StationException(trouble);
  }

  /** The trouble that a lower room's exception means. */
  static StationException of(Exception cause) {
    return new StationException(Trouble.of(cause), cause);
  }

  /** What was to be done and was not, because of a lower room's exception. */
  static StationException of(String what, Exception cause) {
    Trouble found = Trouble.of(cause);
    return new StationException(
        new Trouble(
            what,
            found.what() + " " + found.why(),
            found.remedy(),
            found.code(),
            found.kind(),
            found.pause(),
            found.places()),
        cause);
  }

  /** What happened, why, what to do, code. */
  public Trouble trouble() {
    return trouble;
  }
}
