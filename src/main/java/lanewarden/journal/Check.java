package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Consequence;
import lanewarden.rules.Doubt;
import lanewarden.rules.Overrun;
import lanewarden.rules.Phase;
import lanewarden.rules.Rule;
import lanewarden.rules.SetUp;
import lanewarden.rules.Shot;
import lanewarden.rules.Verdict;

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
 * @param weighed which figures of it were weighed or measured at the line, by their names in {@link
 *     SetUp}; the others are as declared
 * @param ticked the conditions that were ticked
 * @param shots every reading taken, void ones included, in order
 * @param refused lines refused while it ran
 * @param wasOver whether it was ever over: by a verdict, also one that was taken back, or by what
 *     was read, though a tick or the band was still open
 * @param verdict the verdict that stands, if one does
 * @param closed how it left the line, if it did
 * @param inQuestion whether a hold puts its outcome in question: it then counts neither for nor
 *     against the competitor, who may be called again
 */
public record Check(
    long number,
    Fact.CheckOpened opened,
    Instant at,
    String signer,
    String ruleBook,
    Phase phase,
    SetUp setUp,
    Set<String> weighed,
    Set<String> ticked,
    List<TakenShot> shots,
    List<Fact.LineRefused> refused,
    boolean wasOver,
    Optional<GivenVerdict> verdict,
    Optional<Fact.CheckClosed> closed,
    boolean inQuestion) {

  /** Copies the lists. */
  public Check {
    weighed = Set.copyOf(weighed);
    ticked = Set.copyOf(ticked);
    shots = List.copyOf(shots);
    refused = List.copyOf(refused);
  }

  /**
   * A verdict with its entry.
   *
   * @param sequence of the entry that gave it
   * @param at when it was given
   * @param signer thumbprint of the key that signed it
   */
  public record GivenVerdict(long sequence, Instant at, String signer, Fact.VerdictGiven fact) {

    /**
     * What follows it, as signed; empty where nothing was. Of who was not admitted older versions
     * signed that a judge rules, and let the archer come back all the same: it is read as that.
     */
    public Optional<Consequence> follows() {
      Consequence signed = fact.follows();
      return fact.outcome() == Outcome.NOT_ADMITTED && signed == Consequence.JUDGE
          ? Optional.of(Consequence.RECHECK)
          : Optional.ofNullable(signed);
    }

    /** The same in a sentence, as far as it can be said without counting re-checks. */
    public Optional<Sentence> followsInWords() {
      return follows().map(next -> inWords(fact.outcome(), next));
    }

    /** What follows an outcome, in a sentence. */
    public static Sentence inWords(Outcome outcome, Consequence follows) {
      return Sentence.of(
          outcome == Outcome.NOT_ADMITTED && follows == Consequence.RECHECK
              ? Sequel.ANOTHER_SET_UP
              : follows);
    }
  }

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
        Set.of(),
        List.of(),
        List.of(),
        false,
        Optional.empty(),
        Optional.empty(),
        false);
  }

  /** The shots as the rules judge them. */
  public List<Shot> judged() {
    return shots.stream()
        .<Shot>map(
            s ->
                s.stands()
                    ? new Shot.Read(s.reading().speed(), s.kept() != null)
                    : new Shot.Voided())
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

  /**
   * The sequences of the readings that count by a rule: those that stand, without those that the
   * bow cannot give.
   */
  public List<Long> counted(Rule rule) {
    return doubtedBy(rule).shots().stream()
        .filter(TakenShot::counts)
        .map(TakenShot::sequence)
        .toList();
  }

  /** What by a rule speaks against readings of it. */
  public List<Doubt> doubts(Rule rule) {
    return rule.doubts(setUp, judged());
  }

  /** Whether the arrow was weighed at the line: else its mass is as declared, or not known. */
  public boolean isArrowWeighed() {
    return setUp.arrowMass() != null && weighed.contains(SetUp.ARROW_MASS);
  }

  /**
   * What the archer may be told more about: empty unless it stands over, its readings say the same,
   * nothing puts it in question, and the arrow was weighed at the line.
   */
  public Optional<Overrun> overrun(Rule rule) {
    Verdict said = judgedBy(rule);
    boolean over = said instanceof Verdict.Over && outcome().equals(Optional.of(Outcome.OVER));
    if (!over || inQuestion || !isArrowWeighed()) {
      return Optional.empty();
    }
    List<Fact.ReadingTaken> counted =
        doubtedBy(rule).shots().stream()
            .filter(TakenShot::isSettled)
            .map(TakenShot::reading)
            .toList();
    Optional<Speed> uncertainty =
        counted.stream()
            .flatMap(reading -> Optional.ofNullable(reading.uncertainty()).stream())
            .max(Speed::compareTo);
    return Optional.of(
        new Overrun(
            rule, setUp, counted.stream().map(Fact.ReadingTaken::speed).toList(), uncertainty));
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
   * no void, however well reasoned, turns a fail into a check that never was, and neither does
   * ending a check that only lacks a tick or its band. What is in question uses up none.
   */
  public boolean usesRecheck() {
    return !inQuestion
        && (outcome().map(Outcome.OVER::equals).orElse(false)
            || (wasOver && !outcome().equals(Optional.of(Outcome.WITHIN))));
  }

  /** Whether it came to an outcome by shots, which a doubt about the instrument then touches. */
  public boolean restsOnInstrument() {
    return !shots.isEmpty() && (verdict.isPresent() || wasOver);
  }

  /** Whether the competitor has left the line. */
  public boolean isClosed() {
    return closed.isPresent();
  }

  /**
   * Whether what was read makes the competitor over, whatever is still missing: with every
   * condition ticked, and in whatever band it lies.
   */
  public boolean isOverButForFormalities(Rule rule) {
    return BareRule.of(rule).judge(setUp, ticked, judged()) instanceof Verdict.Over;
  }

  /** The same, with every reading in doubt let count. */
  public boolean isOverIfAllCount(Rule rule) {
    return BareRule.of(rule).judge(setUp, ticked, BareRule.letCount(judged()))
        instanceof Verdict.Over;
  }

  /** The check with one more reading. */
  public Check take(long sequence, Fact.ReadingTaken reading) {
    return changed(to -> to.shots = plus(shots, new TakenShot(sequence, reading)));
  }

  Check refuse(Fact.LineRefused line) {
    return changed(to -> to.refused = plus(refused, line));
  }

  /** A void takes back the verdict that rested on the reading; the rule is asked anew. */
  public Check declareVoid(Fact.ReadingVoided fact) {
    return changed(
        to -> {
          to.shots = shot(fact.reading(), s -> s.declareVoid(fact));
          to.verdict = Optional.empty();
        });
  }

  /** A reading in doubt counts. */
  public Check keep(Fact.ReadingKept fact) {
    return changed(to -> to.shots = shot(fact.reading(), s -> s.keep(fact)));
  }

  Check flag(Fact.ReadingFlagged fact) {
    return changed(to -> to.shots = shot(fact.reading(), s -> s.flag(fact)));
  }

  private List<TakenShot> shot(long sequence, UnaryOperator<TakenShot> change) {
    return shots.stream().map(s -> s.sequence() == sequence ? change.apply(s) : s).toList();
  }

  /** Another set-up takes back the verdict that rested on the one before. */
  public Check state(SetUpStated fact) {
    return changed(
        to -> {
          to.setUp = fact.setUp();
          to.weighed = more(weighed, fact.weighed(setUp));
          to.verdict = Optional.empty();
        });
  }

  /** The check with one more condition ticked. */
  public Check tick(Fact.ConditionTicked fact) {
    return changed(to -> to.ticked = more(ticked, Set.of(fact.condition())));
  }

  /**
   * The check with what by this rule speaks against its readings, and with a note that it was over,
   * if it is but for formalities.
   */
  Check notedBy(Rule rule) {
    return doubtedBy(rule).overBy(rule);
  }

  private Check doubtedBy(Rule rule) {
    Map<Integer, Doubt.Kind> found =
        doubts(rule).stream().collect(Collectors.toMap(Doubt::shot, Doubt::kind));
    return changed(
        to ->
            to.shots =
                IntStream.range(0, shots.size())
                    .mapToObj(i -> shots.get(i).doubted(found.get(i)))
                    .toList());
  }

  private Check overBy(Rule rule) {
    return wasOver || !isOverButForFormalities(rule) ? this : changed(to -> to.wasOver = true);
  }

  /**
   * The check as it leaves the line undecided: who would be over if the readings in doubt counted
   * is noted as that, since nobody said that they do not.
   */
  Check leftBy(Rule rule) {
    boolean over = outcome().isEmpty() && isOverIfAllCount(rule);
    return wasOver || !over ? this : changed(to -> to.wasOver = true);
  }

  Check decide(GivenVerdict given) {
    return changed(
        to -> {
          to.wasOver = wasOver || given.fact().outcome() == Outcome.OVER;
          to.verdict = Optional.of(given);
        });
  }

  Check close(Fact.CheckClosed fact) {
    return changed(to -> to.closed = Optional.of(fact));
  }

  /** Puts its outcome in question, or clears it of that. */
  Check question(boolean now) {
    return changed(to -> to.inQuestion = now);
  }

  private Check changed(Consumer<CheckDraft> change) {
    CheckDraft draft = new CheckDraft(this);
    change.accept(draft);
    return draft.done();
  }

  private static Set<String> more(Set<String> known, Set<String> further) {
    Set<String> more = new LinkedHashSet<>(known);
    more.addAll(further);
    return more;
  }

  private static <T> List<T> plus(List<T> list, T one) {
    List<T> longer = new ArrayList<>(list);
    longer.add(one);
    return longer;
  }
}
