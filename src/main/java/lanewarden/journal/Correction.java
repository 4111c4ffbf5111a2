package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.quantity.Speed;
import lanewarden.rules.Rule;

/**
 * A correction, as folded from the ledger.
 *
 * @param number the sequence of the entry that made it
 * @param at when it was made
 * @param signer thumbprint of the key of the official who made it
 * @param fact what is right, and why
 * @param before what stood there, which the ledger keeps
 * @param confirmations everything that was signed as its confirmation, in order
 */
public record Correction(
    long number,
    Instant at,
    String signer,
    ProtestFact.CorrectionMade fact,
    String before,
    List<Confirmed> confirmations) {

  /** The source of a reading that an official typed, as it stands in the ledger. */
  public static final String TYPED = "typed";

  /** Copies the list. */
  public Correction {
    confirmations = List.copyOf(confirmations);
  }

  /**
   * Something signed as a confirmation.
   *
   * @param sequence of its entry
   * @param at when
   * @param signer thumbprint of the key that signed it
   * @param objection why it changes nothing; empty where it does
   */
  public record Confirmed(
      long sequence, Instant at, String signer, Optional<Objection> objection) {}

  /** The confirmation with which it took effect, if it did. */
  public Optional<Confirmed> confirmation() {
    return confirmations.stream().filter(given -> given.objection().isEmpty()).findFirst();
  }

  /** Whether it waits for a second signature. */
  public boolean isOpen() {
    return confirmation().isEmpty();
  }

  /** Whether it took effect on what the rule judges: then its verdict is given anew. */
  public boolean askedAnew() {
    return fact.what() != ProtestFact.Part.BIB && !isOpen();
  }

  /** What is right, as text. */
  public String after() {
    return after(fact);
  }

  private static String after(ProtestFact.CorrectionMade fact) {
    return switch (fact.what()) {
      case BIB -> bib(fact) + " " + name(fact);
      case DIVISION -> division(fact);
      case READING -> speed(fact).toString();
    };
  }

  /** What stands in a check where it says what is right; empty where the check has no such. */
  static Optional<String> before(ProtestFact.CorrectionMade fact, Check check) {
    return switch (fact.what()) {
      case BIB -> Optional.of(check.opened().bib() + " " + check.opened().name());
      case DIVISION -> Optional.of(check.opened().division());
      case READING -> reading(fact, check).map(reading -> reading.speed().toString());
    };
  }

  private static Optional<Fact.ReadingTaken> reading(ProtestFact.CorrectionMade fact, Check check) {
    return check.shots().stream()
        .filter(shot -> isMeant(fact, shot))
        .map(TakenShot::reading)
        .findFirst();
  }

  Correction confirm(Confirmed given, String stoodThere) {
    List<Confirmed> more = new ArrayList<>(confirmations);
    more.add(given);
    return new Correction(number, at, signer, fact, stoodThere, more);
  }

  /**
   * Why a correction would change nothing in a check; empty where it would.
   *
   * @param rules that judge a check, where they are known
   */
  static Optional<Objection> against(
      ProtestFact.CorrectionMade fact, Check check, Function<Check, Optional<Rule>> rules) {
    if (before(fact, check).equals(Optional.of(after(fact)))) {
      return Optional.of(Objection.NOTHING_NEW);
    }
    boolean judged =
        fact.what() != ProtestFact.Part.DIVISION || rules.apply(written(fact, check)).isPresent();
    boolean typed =
        fact.what() != ProtestFact.Part.READING
            || reading(fact, check).filter(reading -> reading.source().equals(TYPED)).isPresent();
    return !judged
        ? Optional.of(Objection.NO_DIVISION)
        : typed ? Optional.empty() : Optional.of(Objection.MEASURED);
  }

  /**
   * The check as it counts with the correction. Another division or reading takes back its verdict,
   * so that the rule is asked anew.
   *
   * @param rules that judge a check, where they are known
   */
  public Check appliedTo(Check check, Function<Check, Optional<Rule>> rules) {
    Check right = written(fact, check);
    if (fact.what() == ProtestFact.Part.BIB) {
      return right;
    }
    CheckDraft anew = new CheckDraft(right);
    anew.verdict = Optional.empty();
    // Over by what stood there wrongly is no fail; over by what was voided before stays one
    anew.wasOver = check.wasOver() && rules.apply(check).filter(r -> isOver(check, r)).isEmpty();
    Check noted = rules.apply(right).map(anew.done()::notedBy).orElseGet(anew::done);
    return noted.isClosed() ? rules.apply(noted).map(noted::leftBy).orElse(noted) : noted;
  }

  private static boolean isOver(Check check, Rule rule) {
    return check.isOverButForFormalities(rule) || check.isOverIfAllCount(rule);
  }

  private static Check written(ProtestFact.CorrectionMade fact, Check check) {
    CheckDraft right = new CheckDraft(check);
    Fact.CheckOpened was = check.opened();
    switch (fact.what()) {
      case BIB -> right.opened = opening(was, bib(fact), name(fact), was.division());
      case DIVISION -> right.opened = opening(was, was.bib(), was.name(), division(fact));
      case READING ->
          right.shots =
              check.shots().stream()
                  .map(shot -> isMeant(fact, shot) ? shot.correct(speed(fact)) : shot)
                  .toList();
    }
    return right.done();
  }

  private static boolean isMeant(ProtestFact.CorrectionMade fact, TakenShot shot) {
    return Objects.equals(shot.sequence(), fact.reading());
  }

  private static String bib(ProtestFact.CorrectionMade fact) {
    return Objects.requireNonNull(fact.bib());
  }

  private static String name(ProtestFact.CorrectionMade fact) {
    return Objects.requireNonNull(fact.name());
  }

  private static String division(ProtestFact.CorrectionMade fact) {
    return Objects.requireNonNull(fact.division());
  }

  private static Speed speed(ProtestFact.CorrectionMade fact) {
    return Objects.requireNonNull(fact.speed());
  }

  private static Fact.CheckOpened opening(
      Fact.CheckOpened was, String bib, String name, String division) {
    return new Fact.CheckOpened(
        bib,
        name,
        division,
        was.attempt(),
        was.arrowMass(),
        was.drawWeight(),
        was.certifiedDrawWeight(),
        was.drawLength(),
        was.braceHeight(),
        was.grounds(),
        was.protest());
  }
}
