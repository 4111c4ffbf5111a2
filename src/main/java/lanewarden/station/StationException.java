package lanewarden.station;

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
            what, found.what() + " " + found.why(), found.remedy(), found.code(), found.kind()),
        cause);
  }

  /** What happened, why, what to do, code. */
  public Trouble trouble() {
    return trouble;
  }
}
