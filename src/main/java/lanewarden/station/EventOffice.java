package lanewarden.station;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.bench.Practice;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.SigningKey;

/**
 * What is signed into an event's ledger while no station runs: the draw, another rule book,
 * protests and corrections, another station's head, a practice day.
 *
 * @param folder the event's
 * @param here where time comes from
 */
public record EventOffice(EventFolder folder, Surroundings here) {

  /**
   * The rule book that came into force.
   *
   * @param ruleBook its hash, 64 hex digits
   * @param remark what the organizer is to know of it, though it hindered nothing
   */
  public record Adopted(String ruleBook, Optional<Trouble> remark) {}

  /**
   * Puts the rule book that now lies in the folder in force; the organizer signs it.
   *
   * @param keyFile where the organizer's key rests, or empty for its place in the folder
   * @param passphrase of the organizer's key; is wiped
   * @param reason in the organizer's words
   * @throws StationException as {@link Proceedings#adoptRuleBook} does, and if a station runs
   */
  public Adopted adoptRuleBook(Optional<Path> keyFile, char[] passphrase, String reason)
      throws StationException {
    SigningKey organizer =
        new OrganizersKeyFile(folder, Optional.empty(), here.clock()).open(keyFile, passphrase);
    try (Book book = open()) {
      Optional<Trouble> remark = book.adoptRuleBook(organizer, folder.ruleBook(), reason);
      return new Adopted(book.ruleBook().sha256(), remark);
    }
  }

  /**
   * Draws those of a division who are to be checked; the official signs it. A roster that was
   * changed in the folder is taken in force first, as at every sign-in.
   *
   * @param passphrase of the official's key; is wiped
   * @param seed the digits that were thrown before witnesses
   * @return the draw as it was signed
   * @throws StationException as {@link Proceedings#draw} does, and if a station runs
   */
  public Fact.DrawMade draw(String official, char[] passphrase, String division, String seed)
      throws StationException {
    SigningKey key = folder.key(official, passphrase, here.clock());
    try (Book book = open()) {
      Fact in = new Fact.OfficialSignedIn(book.nameOf(key));
      Fact out = new FrameFact.OfficialSignedOut(book.nameOf(key));
      Optional<Fact> roster = book.adoption(folder).roster();
      if (roster.isPresent()) {
        book.append(key, List.of(in, roster.get(), out));
      }
      Fact.DrawMade draw = book.draw(division, seed);
      book.append(key, List.of(in, draw, out));
      return draw;
    }
  }

  /**
   * Protests, rulings and corrections, each signed by an official who signs in for it.
   *
   * @param passphrase of the official's key; is wiped
   * @throws StationException if the passphrase is wrong; each act throws too if a station runs
   */
  public Protests protests(String official, char[] passphrase) throws StationException {
    SigningKey key = folder.key(official, passphrase, here.clock());
    return new Protests(
        deed -> signed(key, deed), new TypedEntry(folder.profile().plausible(), here.clock()));
  }

  private Docket signed(SigningKey key, Protests.Deed deed) throws StationException {
    try (Book book = open()) {
      List<Fact> facts = new ArrayList<>();
      facts.add(new Fact.OfficialSignedIn(book.nameOf(key)));
      facts.addAll(deed.facts(book, key.thumbprint()));
      facts.add(new FrameFact.OfficialSignedOut(book.nameOf(key)));
      book.append(key, facts);
      return book.standing().docket();
    }
  }

  /**
   * Signs the head of another station's ledger, so that this ledger bears witness to it.
   *
   * @param passphrase of the official's key; is wiped
   * @param station the other station's name
   * @param head as printed on a slip or report of it
   * @return the number of the entry
   * @throws StationException if the head has another form, is of this very station, or a station
   *     runs
   */
  public long witness(String official, char[] passphrase, String station, String head)
      throws StationException {
    SigningKey key = folder.key(official, passphrase, here.clock());
    try (Book book = open()) {
      Fact seen = book.witnessed(station, head);
      String name = book.nameOf(key);
      book.append(
          key,
          List.of(new Fact.OfficialSignedIn(name), seen, new FrameFact.OfficialSignedOut(name)));
      return book.head().sequence() - 1;
    }
  }

  /**
   * Keeps the shots of a practice day with the event: the official signs the whole file.
   *
   * @param passphrase of the official's key; is wiped
   * @param file as {@link Practice#read} reads it
   * @param title what it is called
   * @return the number of the entry
   * @throws StationException if the file is faulty, the title is none, or a station runs
   */
  public long keepPractice(String official, char[] passphrase, Path file, String title)
      throws StationException {
    SigningKey key = folder.key(official, passphrase, here.clock());
    Fact kept = PracticeDay.kept(PracticeDay.read(file), title);
    try (Book book = open()) {
      String name = book.nameOf(key);
      book.append(
          key,
          List.of(new Fact.OfficialSignedIn(name), kept, new FrameFact.OfficialSignedOut(name)));
      return book.head().sequence() - 1;
    }
  }

  private Book open() throws StationException {
    return Book.open(folder, here.clock(), here.nanos());
  }
}
