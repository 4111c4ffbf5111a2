package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;

/** The official leaves the line, for now or for the day: what that amounts to. */
record Leaving(Book book) {

  /** A check that runs stays where it is. */
  List<Fact> signedOut() {
    return List.of(new FrameFact.OfficialSignedOut(official()));
  }

  /** An official who did nothing for too long is signed out; what the next one is to know of it. */
  Trouble forgotten(Duty duty, StationSettings settings) throws StationException {
    String name = official();
    String still = "nothing was done for " + settings.signOutText();
    book.append(duty.ready(), List.of(new FrameFact.OfficialSignedOut(name, still)));
    duty.end();
    return new Trouble(
        name + " was signed out.",
        "At this table " + still + ", as the station's settings say.",
        "Sign in again. A check that runs is still at the line.",
        "SIGNED-OUT",
        Trouble.Kind.USAGE);
  }

  private String official() {
    return book.standing().official().orElse("");
  }

  /**
   * A decided check at the line ends, the official signs out, the line closes.
   *
   * @param reason why without the verification that is due
   */
  List<Fact> closed(Optional<String> reason) throws StationException {
    List<Fact> facts = new ArrayList<>();
    Optional<CheckView> atLine = book.check();
    if (atLine.isPresent()) {
      facts.add(new OpenCheck(atLine.get()).closed());
    }
    facts.addAll(signedOut());
    facts.add(new Fact.StationClosed(reason.orElse(null)));
    return facts;
  }
}
