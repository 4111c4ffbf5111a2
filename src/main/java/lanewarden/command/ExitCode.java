package lanewarden.command;

import lanewarden.station.Trouble;

/** What the program says to the shell that started it. */
final class ExitCode {
  static final int FINE = 0;
  static final int BUG = 1;
  static final int USAGE = 2;
  static final int PROOF = 3;
  static final int ENVIRONMENT = 4;

  private ExitCode() {}

  /** The exit code of a trouble that ended a command. */
  static int of(Trouble trouble) {
    return switch (trouble.kind()) {
      case BUG -> BUG;
      case USAGE -> USAGE;
      case PROOF -> PROOF;
      case ENVIRONMENT -> ENVIRONMENT;
    };
  }
}
