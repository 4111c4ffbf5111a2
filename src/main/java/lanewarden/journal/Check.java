package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import lanewarden.rules.Phase;
import lanewarden.rules.Rule;
import lanewarden.rules.SetUp;
import lanewarden.rules.Shot;
import lanewarden.rules.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One check of one competitor, as folded from the ledger.
 *
 * @param number the sequence of the entry that opened it
 * @param opened who was called, and in which division
 * @param at when it was opened
 * @param signer thumbprint of the official's key that opened it
 * @param ruleBook hash of the rule book in force when it was opened
 * @param phase of the event when it was opened
 * @param setUp bow and arrow as stated last
 * @param ticked the conditions that were ticked
 * @param shots every reading taken, void ones included, in order
 * @param refused lines refused while it ran
 * @param wasOver whether a verdict of over was ever given in it, also one that was taken back
 * @param verdict the verdict that stands, if one does
 * @param closed how it left the line, if it did
 */
public record Check(
    long number,
    Fact.CheckOpened opened,
    Instant at,
    String signer,
    String ruleBook,
    Phase phase,
    SetUp setUp,
    Set<String> ticked,
    List<TakenShot> shots,
    List<Fact.LineRefused> refused,
    boolean wasOver,
    Optional<GivenVerdict> verdict,
    Optional<Fact.CheckClosed> closed) {

  /** Copies the lists. */
  public Check {
    ticked = Set.copyOf(ticked);
    shots = List.copyOf(shots);
    refused = List.copyOf(refused);
  }

  /**
   * A shot of a check.
   *
   * @param sequence of the entry that took the reading
   * @param reading what was read
   * @param voided why it does not count, or null if it does
   */
  public record TakenShot(
      long sequence, Fact.ReadingTaken reading, Fact.@Nullable ReadingVoided voided) {

    /** Whether the reading counts. */
    public boolean stands() {
      return voided == null;
    }
  }

  /**
   * A verdict with its entry.
   *
   * @param sequence of the entry that gave it
   * @param at when it was given
   * @param signer thumbprint of the key that signed it
   */
  public record GivenVerdict(long sequence, Instant at, String signer, Fact.VerdictGiven fact) {}

  static Check opened(
      long number,
      Fact.CheckOpened opened,
      Instant at,
      String signer,
      String ruleBook,
      Phase phase) {
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        opened.setUp(),
        Set.of(),
        List.of(),
        List.of(),
        false,
        Optional.empty(),
        Optional.empty());
  }

  /** The shots as the rules judge them. */
  public List<Shot> judged() {
    return shots.stream()
        .<Shot>map(s -> s.stands() ? new Shot.Read(s.reading().speed()) : new Shot.Voided())
        .toList();
  }

  /** What a rule says of it as it stands. */
  public Verdict judgedBy(Rule rule) {
    return rule.judge(setUp, ticked, judged());
  }

  /** The sequences of the readings that stand. */
  public List<Long> standing() {
    return shots.stream().filter(TakenShot::stands).map(TakenShot::sequence).toList();
  }

  /** The last reading that stands, which is the one a hasty official wants to void. */
  public Optional<TakenShot> lastStanding() {
    return shots.stream().filter(TakenShot::stands).reduce((first, second) -> second);
  }

  /** The outcome that stands, if one does. */
  public Optional<Outcome> outcome() {
    return verdict.map(v -> v.fact().outcome());
  }

  /**
   * Whether this check uses up a re-check: it is over, or it was and did not come back within. So
   * no void, however well reasoned, turns a fail into a check that never was.
   */
  public boolean usesRecheck() {
    return outcome().map(Outcome.OVER::equals).orElse(false)
        || (wasOver && !outcome().equals(Optional.of(Outcome.WITHIN)));
  }

  /** Whether the competitor has left the line. */
  public boolean isClosed() {
    return closed.isPresent();
  }

  /** The check with one more reading. */
  public Check take(long sequence, Fact.ReadingTaken reading) {
    return with(plus(shots, new TakenShot(sequence, reading, null)), verdict);
  }

  Check refuse(Fact.LineRefused line) {
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        setUp,
        ticked,
        shots,
        plus(refused, line),
        wasOver,
        verdict,
        closed);
  }

  /** A void takes back the verdict that rested on the reading; the rule is asked anew. */
  public Check declareVoid(Fact.ReadingVoided fact) {
    UnaryOperator<TakenShot> mark =
        s -> s.sequence() == fact.reading() ? new TakenShot(s.sequence(), s.reading(), fact) : s;
    return with(shots.stream().map(mark).toList(), Optional.empty());
  }

  /** Another set-up takes back the verdict that rested on the one before. */
  public Check state(Fact.SetUpStated fact) {
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        fact.setUp(),
        ticked,
        shots,
        refused,
        wasOver,
        Optional.empty(),
        closed);
  }

  /** The check with one more condition ticked. */
  public Check tick(Fact.ConditionTicked fact) {
    Set<String> more = new LinkedHashSet<>(ticked);
    more.add(fact.condition());
    return new Check(
        number, opened, at, signer, ruleBook, phase, setUp, more, shots, refused, wasOver, verdict,
        closed);
  }

  Check decide(GivenVerdict given) {
    boolean over = wasOver || given.fact().outcome() == Outcome.OVER;
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        setUp,
        ticked,
        shots,
        refused,
        over,
        Optional.of(given),
        closed);
  }

  Check close(Fact.CheckClosed fact) {
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        setUp,
        ticked,
        shots,
        refused,
        wasOver,
        verdict,
        Optional.of(fact));
  }

  private Check with(List<TakenShot> newShots, Optional<GivenVerdict> newVerdict) {
    return new Check(
        number,
        opened,
        at,
        signer,
        ruleBook,
        phase,
        setUp,
        ticked,
        newShots,
        refused,
        wasOver,
        newVerdict,
        closed);
  }

  private static <T> List<T> plus(List<T> list, T one) {
    List<T> longer = new ArrayList<>(list);
    longer.add(one);
    return longer;
  }
}
