package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.ledger.SigningKey;
import org.jspecify.annotations.Nullable;

/** What is signed when an official comes on duty. */
final class Arrival {
  private final Book book;
  private final Book.Adoption adoption;

  /**
   * @param adoption what changed in the files since somebody signed in last
   */
  Arrival(Book book, Book.Adoption adoption) {
    this.book = book;
    this.adoption = adoption;
  }

  /** What the official must know of the files. */
  @Nullable Trouble notice() {
    return adoption.notice().orElse(null);
  }

  /**
   * The facts, in order.
   *
   * @param opening the station as it is now; signed where it is another than was signed last
   * @throws StationException if the key may not sign here
   */
  List<Fact> of(SigningKey key, Fact.StationOpened opening, Proving proving)
      throws StationException {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.OfficialSignedIn(book.nameOf(key)));
    if (!book.standing().opened().equals(Optional.of(opening))) {
      facts.add(opening);
    }
    proving.planned(book.standing()).ifPresent(facts::add);
    adoption.roster().ifPresent(facts::add);
    return facts;
  }
}
