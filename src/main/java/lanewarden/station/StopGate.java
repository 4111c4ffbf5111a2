package lanewarden.station;

import java.util.Optional;
import lanewarden.journal.LineStop;
import lanewarden.journal.Standing;

/** What keeps everything at the line from going on while it is not clear. */
record StopGate(Standing standing) {

  /** Why nothing goes on; empty while the line is clear. */
  Optional<Trouble> closed() {
    return standing.stop().map(StopGate::notClear);
  }

  /** Refuses a call, a reading and whatever could bring a verdict while the line is not clear. */
  void requireClear() throws StationException {
    Optional<Trouble> trouble = closed();
    if (trouble.isPresent()) {
      throw StationException.stuck(trouble.get());
    }
  }

  /** A stop that waits to be signed, for a trouble that comes after the danger. */
  static Trouble waiting(Trouble why) {
    return new Trouble(
        "The stop is NOT signed yet, and no reading is taken before it is. Call it out now.",
        why.what() + " " + why.why(),
        "Nobody shoots. "
            + why.remedy()
            + " It is tried again by itself; until it is signed the range officer's word is all that"
            + " stops the line.",
        "STOP-WAITS",
        why.kind());
  }

  /** A stop that nobody could sign. */
  static Trouble unsigned(Trouble why) {
    return new Trouble(
        "The stop is NOT signed: the line is NOT stopped here. Call it out now.",
        why.what() + " " + why.why(),
        "Nobody shoots. "
            + why.remedy()
            + " Then stop it again; until then only the range officer's word stops it.",
        "STOP-UNSIGNED",
        why.kind());
  }

  private static Trouble notClear(LineStop stop) {
    return new Trouble(
        "The line is not clear: nobody is called, and no reading and no verdict is taken.",
        stop.reason()
            .map(reason -> "It was stopped for safety: " + reason + ".")
            .orElse("It was stopped for safety; why was not said."),
        "Let down, no arrow on the string. When the range officer has cleared the line, the official"
            + " on duty says so at the line, or types clear in a terminal.",
        "LINE-NOT-CLEAR",
        Trouble.Kind.USAGE);
  }
}
