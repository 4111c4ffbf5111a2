package lanewarden.command;

import lanewarden.station.Trouble;

/** A command that could not be carried out as it was given. */
final class CommandRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Trouble trouble;

  CommandRefused(Trouble trouble) {
    super(trouble.toString());
    this.trouble = trouble;
  }

  /** A wrong word or file. */
  static CommandRefused misstep(String code, String what, String why, String remedy) {
    return new CommandRefused(new Trouble(what, why, remedy, code, Trouble.Kind.USAGE));
  }

  Trouble trouble() {
    return trouble;
  }
}
