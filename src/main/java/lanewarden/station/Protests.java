package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.journal.Objection;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Speed;
import lanewarden.roster.Competitor;
import lanewarden.rules.Division;

/**
 * Protests, rulings and corrections: what is signed about a check that is disputed or was written
 * down wrongly. Nothing that was signed before is changed by it.
 *
 * <p>At a line, whoever is on duty signs; else the official who opened it.
 */
public final class Protests {

  /** Where it is signed. */
  @FunctionalInterface
  interface Desk {
    /** Signs what is done; what stands on the docket then. */
    Docket sign(Deed deed) throws StationException;
  }

  /** What somebody does, as things stand. */
  @FunctionalInterface
  interface Deed {
    /**
     * @param signer thumbprint of the key that will sign
     */
    List<Fact> facts(Book book, String signer) throws StationException;
  }

  private final Desk desk;
  private final TypedEntry typedEntry;

  Protests(Desk desk, TypedEntry typedEntry) {
    this.desk = desk;
    this.typedEntry = typedEntry;
  }

  /**
   * Takes down a protest, a spot check, a re-test or a referral.
   *
   * @param check its number
   * @param by who files it, in words
   * @param ground why, in that person's words
   * @return the protest as it was filed
   * @throws StationException if there is no such check, it is not decided yet, or it is a recheck
   */
  public Protest file(long check, ProtestFact.Cause occasion, String by, String ground)
      throws StationException {
    Docket after =
        desk.sign(
            (book, signer) -> {
              ProtestFact fact =
                  new ProtestFact.ProtestFiled(
                      known(check, book).number(), occasion, Reason.of(by), Reason.of(ground));
              refuse(book.standing().objection(fact, signer));
              return List.of(fact);
            });
    return last(after.protests());
  }

  /**
   * A judge rules.
   *
   * @param protest its number
   * @param stands the number of the check whose outcome counts from here on
   * @param consequence for the archer, in the judge's words
   * @return the protest with its ruling
   * @throws StationException if anything speaks against the ruling
   */
  public Protest rule(
      long protest, ProtestFact.Answer answer, long stands, String consequence, String reason)
      throws StationException {
    return desk.sign(
            (book, signer) -> {
              Recheck.known(protest, book.standing());
              ProtestFact fact =
                  new ProtestFact.ProtestRuled(
                      protest, answer, stands, Reason.of(consequence), Reason.of(reason));
              refuse(book.standing().objection(fact, signer));
              return List.of(fact);
            })
        .protest(protest)
        .orElseThrow();
  }

  /**
   * A check is another competitor's; it takes effect when somebody else confirms it.
   *
   * @param bib on the roster in force
   */
  public Correction correctBib(long check, String bib, String reason) throws StationException {
    return correct(
        check,
        (found, book) -> {
          Optional<Competitor> right = book.roster().bib(bib);
          if (right.isEmpty()) {
            throw StationException.misstep(
                Trouble.NO_SUCH_COMPETITOR,
                "Nothing was corrected.",
                "No bib on the roster is \"" + bib.strip() + "\".",
                "Check the bib with the archer; a late entry must be put on the roster first.");
          }
          return ProtestFact.CorrectionMade.ofBib(
              check, right.get().bib(), right.get().name(), Reason.of(reason));
        });
  }

  /** A check is of another division; it takes effect when somebody else confirms it. */
  public Correction correctDivision(long check, String division, String reason)
      throws StationException {
    return correct(
        check,
        (found, book) ->
            ProtestFact.CorrectionMade.ofDivision(check, division.strip(), Reason.of(reason)));
  }

  /**
   * A reading was mistyped; it takes effect when somebody else confirms it.
   *
   * @param shot of the check, from 1
   * @param speed the right one; without a unit it is in that of the mistyped one
   */
  public Correction correctReading(long check, int shot, String speed, String reason)
      throws StationException {
    return correct(
        check,
        (found, book) -> {
          if (shot < 1 || shot > found.shots().size()) {
            throw StationException.misstep(
                "NO-SUCH-SHOT",
                "Nothing was corrected.",
                "Check "
                    + check
                    + " has "
                    + found.shots().size()
                    + " shots, and no shot "
                    + shot
                    + ".",
                "Name one that it has.");
          }
          TakenShot mistyped = found.shots().get(shot - 1);
          return ProtestFact.CorrectionMade.ofReading(
              check, mistyped.sequence(), read(speed, mistyped), Reason.of(reason));
        });
  }

  private Speed read(String typed, TakenShot mistyped) throws StationException {
    Signal signal = typedEntry.read(typed, mistyped.reading().speed().unit());
    if (signal instanceof Signal.Heard heard) {
      return heard.reading().speed();
    }
    throw StationException.misstep(
        "CORRECTION-NO-SPEED",
        "Nothing was corrected.",
        signal instanceof Signal.Refused refused
            ? refused.refusal().words()
            : "\"" + typed.strip() + "\" is no speed.",
        "Type the speed as the display showed it.");
  }

  /** What a correction of a check says. */
  @FunctionalInterface
  private interface Correcting {
    ProtestFact.CorrectionMade of(Check check, Book book) throws StationException;
  }

  private Correction correct(long check, Correcting correcting) throws StationException {
    Docket after =
        desk.sign(
            (book, signer) -> {
              ProtestFact.CorrectionMade made = correcting.of(known(check, book), book);
              refuse(book.standing().objection(made, signer));
              return List.of(made);
            });
    return last(after.corrections());
  }

  /**
   * Somebody else confirms a correction, which takes effect: where the rule is asked anew, its
   * verdict is signed with it.
   *
   * @param correction its number
   * @return the correction with its confirmation
   * @throws StationException if there is none, anything speaks against it, or the line is held
   */
  public Correction confirm(long correction) throws StationException {
    return desk.sign(
            (book, signer) -> {
              new StopGate(book.standing()).requireClear();
              new InstrumentGate(book.standing()).requireNoHold();
              ProtestFact fact = new ProtestFact.CorrectionConfirmed(correction);
              Optional<Correction> made = book.standing().docket().correction(correction);
              if (made.isEmpty()) {
                throw StationException.misstep(
                    "NO-SUCH-CORRECTION",
                    "Nothing was confirmed.",
                    "The ledger has no correction " + correction + ".",
                    "Take the number that was told when it was made.");
              }
              refuse(book.standing().objection(fact, signer));
              List<Fact> facts = new ArrayList<>(List.of(fact));
              facts.addAll(judgedAnew(book.standing().corrected(made.get()), book));
              return facts;
            })
        .correction(correction)
        .orElseThrow();
  }

  /** What the rule says of a check whose verdict a correction took back. */
  private static List<Fact> judgedAnew(Check right, Book book) {
    if (right.verdict().isPresent()) {
      return List.of();
    }
    Division division = book.division(right);
    List<Fact> facts = new ArrayList<>(Flagging.on(right, division));
    Ruling.on(right, division).ifPresent(facts::add);
    return facts;
  }

  private static Check known(long number, Book book) throws StationException {
    Optional<Check> check = book.standing().find(number);
    if (check.isEmpty()) {
      throw StationException.misstep(
          "NO-SUCH-CHECK",
          "Nothing was signed.",
          "The ledger has no check " + number + ".",
          "Take the number from the report or the slip: it is that of the entry that opened it.");
    }
    return check.get();
  }

  private static void refuse(Optional<Objection> objection) throws StationException {
    if (objection.isPresent()) {
      throw StationException.stuck(Objected.trouble(objection.get()));
    }
  }

  private static <T> T last(List<T> all) {
    return all.get(all.size() - 1);
  }
}
