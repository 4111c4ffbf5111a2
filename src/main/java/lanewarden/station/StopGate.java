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

  /** A stop that could not be signed, for a trouble that comes after the danger. */
  static StationException unsigned(StationException why) {
    Trouble trouble = why.trouble();
    return StationException.stuck(
        new Trouble(
            "The stop is NOT signed: the line is NOT stopped here. Call it out now.",
            trouble.what() + " " + trouble.why(),
            "Nobody shoots. "
                + trouble.remedy()
                + " Then stop it again; until then only the range officer's word stops it.",
            "STOP-UNSIGNED",
            trouble.kind()));
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
