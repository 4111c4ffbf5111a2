package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.SigningKey;

/**
 * Somebody signs at the open line without taking it over; under the station's lock.
 *
 * <p>While an official is on duty only what the visitor does is signed: a sign-in would say that
 * the official left. What was heard before is written first, by the official. While nobody is on
 * duty the visitor signs in and out around it, and what was heard goes on waiting.
 */
record Visit(Book book, Duty duty, Intake intake) {

  /** Signs a deed, and returns what was signed. */
  List<Fact> sign(SigningKey visitor, Protests.Deed deed) throws StationException {
    String name = book.nameOf(visitor);
    if (duty.isOn()) {
      // Its answer is not needed, its order is: readings before what is decided about them
      SigningKey unused = duty.ready();
    }
    List<Fact> facts = new ArrayList<>(deed.facts(book, visitor.thumbprint()));
    if (!duty.isOn()) {
      intake.requireWritten();
      facts.add(0, new Fact.OfficialSignedIn(name));
      facts.add(new FrameFact.OfficialSignedOut(name));
    }
    book.append(visitor, facts);
    return facts;
  }
}
