package lanewarden.station;

import java.util.List;
import java.util.Optional;
import lanewarden.bench.Advice;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.PastChecks;
import lanewarden.journal.Place;
import lanewarden.journal.Sequel;
import lanewarden.journal.Standing;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;
import lanewarden.rules.Doubt;
import lanewarden.rules.Missing;
import lanewarden.rules.Side;
import lanewarden.rules.SpeedLimit;
import lanewarden.rules.Verdict;

/**
 * A check as the screens show it: folded from the ledger, beside the rule that governs it.
 *
 * @param check what the ledger says of it
 * @param division whose rule judges it, as it stood when the check was opened
 * @param rechecksLeft how many more checks the rule allows if this one fails
 * @param place where the instrument stands, if that is said
 */
public record CheckView(Check check, Division division, int rechecksLeft, Optional<Place> place) {
  private static final int SHOWN = 1;

  /** A check by itself, wherever the instrument stands. */
  CheckView(Check check, Division division, int rechecksLeft) {
    this(check, division, rechecksLeft, Optional.empty());
  }

  /**
   * A check with its rule, as things stand.
   *
   * @throws IllegalStateException if its rule is not known
   */
  static CheckView of(Standing standing, Check check) {
    Division division =
        division(standing, check)
            .orElseThrow(() -> new IllegalStateException("no rule for check " + check.number()));
    int fails = standing.pastBefore(check).fails().size();
    return new CheckView(
        check, division, Math.max(0, division.rule().aftermath().rechecks() - fails));
  }

  /** The division whose rule governs a check, if it is known. */
  static Optional<Division> division(Standing standing, Check check) {
    return standing
        .ruleBook(check.ruleBook())
        .flatMap(book -> book.division(check.opened().division()));
  }

  /** The same check, measured by an instrument that stands here. */
  CheckView seenFrom(Optional<Place> itsPlace) {
    return new CheckView(check, division, rechecksLeft, itsPlace);
  }

  /**
   * About how fast the arrow left the bow if it flew this fast through the instrument: for people,
   * never for a verdict. Empty where distance or arrow mass is not known, and where it {@link
   * #hasNoSpeedAtBow cannot be computed}.
   */
  public Optional<Speed> atBow(Speed reading) {
    Mass arrow = check.setUp().arrowMass();
    return arrow == null
        ? Optional.empty()
        : place
            .flatMap(at -> WrittenAccuracy.drag(at, arrow).atBow(at.distance(), reading))
            .map(speed -> speed.to(unit(), SHOWN));
  }

  /** Whether distance and arrow are known, but are such that no speed at the bow follows. */
  public boolean hasNoSpeedAtBow(Speed reading) {
    return place.isPresent() && check.setUp().arrowMass() != null && atBow(reading).isEmpty();
  }

  /** The fastest speed that keeps the limit for this set-up; empty where none applies. */
  public Optional<Speed> fastest() {
    return division.rule().fastest(check.setUp());
  }

  /** The speed limit as written, where it is what governs this set-up. */
  public Optional<Speed> limit() {
    return division
        .rule()
        .speed()
        .filter(clause -> fastest().equals(Optional.of(clause.allowed())))
        .map(SpeedLimit::limit);
  }

  /** The unit in which speeds are shown where none is written. */
  public SpeedUnit unit() {
    return division.rule().unit();
  }

  /** How many shots may be taken; none where nothing is measured. */
  public int shotsAllowed() {
    return division.rule().shooting().map(how -> how.plan().allowed()).orElse(0);
  }

  /** The signed outcome, if there is one. */
  public Optional<Outcome> outcome() {
    return check.outcome();
  }

  /** Why it ended as it did, or what is missing, in plain words: as signed, if it is. */
  public String words() {
    return why().toString();
  }

  /**
   * The same with its figures. A verdict is signed in words: they have their figures as long as the
   * rule, asked anew, says the very same; else they stand as they were signed.
   */
  public Sentence why() {
    Sentence now = verdict().why();
    return check
        .verdict()
        .map(given -> given.fact().reason())
        .filter(signed -> !signed.equals(now.toString()))
        .map(Sentence::verbatim)
        .orElse(now);
  }

  /** Whether the rule asks for a shot now. */
  public boolean takesShots() {
    return outcome().isEmpty() && verdict().takesShots();
  }

  /** What speaks against readings of the check, in the order of the shots. */
  public List<Doubt> doubts() {
    return check.doubts(division.rule());
  }

  /** The shots of which an official must say whether they count. */
  public List<TakenShot> openDoubts() {
    return doubts().stream()
        .filter(Doubt::isOpen)
        .map(doubt -> check.shots().get(doubt.shot()))
        .toList();
  }

  /** The figures of bow and arrow that must be stated before the check can go on. */
  public List<String> missingFigures() {
    return outcome().isEmpty()
            && verdict() instanceof Verdict.NotDecided open
            && open.missing() instanceof Missing.SetUpFigures figures
        ? figures.figures()
        : List.of();
  }

  /** The conditions that are still to be ticked, in the rule's own words and order. */
  public List<String> unticked() {
    return division.rule().conditions().stream()
        .filter(condition -> !check.ticked().contains(condition))
        .toList();
  }

  /** What the rule says follows this outcome, for people; empty where nothing does. */
  public Optional<Sentence> follows() {
    Long protest = check.opened().protest();
    if (protest != null) {
      return outcome().map(decided -> Sentence.of(Sequel.RULING, protest));
    }
    return check.inQuestion()
        ? Optional.of(Sentence.of(Sequel.IN_QUESTION))
        : check.verdict().flatMap(this::follows);
  }

  /** Whether it stands beside another check, under a protest. */
  public boolean isRecheck() {
    return check.opened().protest() != null;
  }

  private Optional<Sentence> follows(Check.GivenVerdict given) {
    boolean counts =
        given.fact().outcome() == Outcome.OVER
            && given.follows().equals(Optional.of(Consequence.RECHECK));
    return counts ? Optional.of(rechecks()) : given.followsInWords();
  }

  private Sentence rechecks() {
    return switch (rechecksLeft) {
      case 0 -> Sentence.of(Sequel.NONE_LEFT);
      case 1 -> Sentence.of(Sequel.ONE_LEFT);
      default -> Sentence.of(Sequel.SOME_LEFT, rechecksLeft);
    };
  }

  /**
   * Whether the competitor may be called once more after this outcome, as far as this check says.
   */
  public boolean mayComeBack() {
    if (isRecheck()) {
      return false;
    }
    if (check.inQuestion()) {
      return true;
    }
    boolean fails = outcome().filter(o -> o != Outcome.WITHIN).isPresent();
    return fails
        && new PastChecks(List.of(check)).consequence().isEmpty()
        && (!check.usesRecheck() || rechecksLeft > 0);
  }

  /** The limit that governs this set-up in words; empty where none applies or one is unknown. */
  public Optional<Sentence> limitInWords() {
    return division.rule().limitInWords(check.setUp());
  }

  /** Whether a speed equal to the limit exceeds it. */
  public boolean isBelow() {
    return division.rule().speed().filter(clause -> clause.side() == Side.BELOW).isPresent();
  }

  /** Whether the rule has a limit of any kind, be it for some set-ups only. */
  public boolean isLimited() {
    return division.rule().speed().isPresent() || division.rule().energy().isPresent();
  }

  /** The least arrow that is admitted with the draw weight stated, where a clause asks for one. */
  public Optional<Mass> leastArrow() {
    return division.rule().equipment().leastArrow(check.setUp());
  }

  /**
   * What would bring the set-up inside, where the check is over and its arrow was weighed at the
   * line: for the archer, never part of the verdict. Takes some milliseconds.
   */
  public Optional<Advice> advice() {
    return check.overrun(division.rule()).map(Advice::on);
  }

  /** Whether there would be advice if the arrow were weighed. */
  public boolean wantsWeighing() {
    return outcome().equals(Optional.of(Outcome.OVER))
        && !check.inQuestion()
        && !check.isArrowWeighed();
  }

  /** What the rule says of the check as it stands. */
  Verdict verdict() {
    return check.judgedBy(division.rule());
  }
}
