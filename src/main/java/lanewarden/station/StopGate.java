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

  private static Trouble notClear(LineStop stop) {
    return new Trouble(
        "The line is not clear: nobody is called, and no reading and no verdict is taken.",
        stop.reason()
            .map(reason -> "It was stopped for safety: " + reason + ".")
            .orElse("It was stopped for safety; why was not said."),
        "Let down, no arrow on the string. When the range officer has cleared the line, the official"
            + " on duty says so: at a terminal, type clear.",
        "LINE-NOT-CLEAR",
        Trouble.Kind.USAGE);
  }
}
