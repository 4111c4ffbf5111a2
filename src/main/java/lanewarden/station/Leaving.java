package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;

/** The official leaves the line, for now or for the day: what that amounts to. */
record Leaving(Book book) {

  /** A check that runs stays where it is. */
  List<Fact> signedOut() {
    return List.of(new Fact.OfficialSignedOut(book.standing().official().orElse("")));
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
