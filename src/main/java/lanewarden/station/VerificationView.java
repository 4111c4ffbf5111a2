package lanewarden.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * How far the instrument can be believed, for screens and terminals; immutable.
 *
 * @param planned whether this station verifies its instrument
 * @param rounds every verification, in order
 * @param held the hold that stands
 * @param stop why nobody is called: a hold, a verification that goes on or is due; what to do
 * @param callsLeft how many competitors may be called before one is due; empty for no such limit
 * @param again those whose last check is in question: bib and name
 */
public record VerificationView(
    boolean planned,
    List<Round> rounds,
    Optional<Held> held,
    Optional<Trouble> stop,
    OptionalInt callsLeft,
    List<String> again) {

  /** How a verification stands. */
  public enum State {
    /** Shots are missing. */
    RUNNING,
    /** Within its limits. */
    PASSED,
    /** Out of its limits, be it that it was broken off. */
    OUT,
    /** Ended by an official before all shots were taken, and those taken say nothing. */
    BROKEN_OFF
  }

  /**
   * A verification.
   *
   * @param number the sequence of the entry that began it
   * @param shots how many are to be taken
   * @param known the speed that the reference is known to have, if it is
   * @param words bias and spread so far or in the end; why, where it was broken off
   */
  public record Round(
      long number,
      Instant at,
      String occasion,
      String reference,
      Optional<Speed> known,
      int shots,
      String mostBias,
      String mostSpread,
      List<Shot> taken,
      State state,
      Sentence words) {

    /** Whether the last shot waits for the second instrument's value. */
    public boolean awaitsReference() {
      return taken.stream().anyMatch(shot -> shot.reference().isEmpty());
    }
  }

  /**
   * A shot of a verification.
   *
   * @param number from 1
   * @param source where the reading came from, in words
   * @param reference empty while it is still to be typed
   */
  public record Shot(int number, Speed speed, String source, Optional<Speed> reference) {
    private static final int SHOWN = 4;

    /** Station minus reference, m/s, exact; empty while the reference is not known. */
    public Optional<BigDecimal> bias() {
      return reference.map(known -> speed.si().subtract(known.si()));
    }

    /** The same in the unit of the reference, rounded; empty while the reference is not known. */
    public Optional<String> biasInWords() {
      return reference.map(known -> inUnit(speed.si().subtract(known.si()), known.unit()));
    }

    private static String inUnit(BigDecimal si, SpeedUnit unit) {
      BigDecimal value = si.divide(unit.inSi(), SHOWN, RoundingMode.HALF_EVEN);
      return value.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }
  }

  /**
   * A hold.
   *
   * @param number the sequence of the entry that put it on
   * @param reason why; the newest comparison, where a later verification was out of limits too
   * @param byHand whether an official put it on, and may lift it
   * @param checks that it puts in question
   */
  public record Held(long number, Instant at, String reason, boolean byHand, List<Long> checks) {}

  static VerificationView of(Standing standing, boolean planned) {
    return new VerificationView(
        planned,
        rounds(standing),
        standing.hold().map(hold -> held(hold, standing)),
        new InstrumentGate(standing).closed(),
        standing.callsLeft(),
        standing.toBeCheckedAgain().stream()
            .map(check -> check.opened().bib() + " " + check.opened().name())
            .toList());
  }

  /** Every verification of the instrument, in order. */
  static List<Round> rounds(Standing standing) {
    return standing.verifications().stream().map(VerificationView::round).toList();
  }

  /** The verification that goes on. */
  public Optional<Round> running() {
    return last().filter(round -> round.state() == State.RUNNING);
  }

  /** The verification begun last. */
  public Optional<Round> last() {
    return rounds.isEmpty() ? Optional.empty() : Optional.of(rounds.get(rounds.size() - 1));
  }

  /** How the instrument kept its aim from shot to shot; empty before two shots can be compared. */
  public Optional<InstrumentChart> chart() {
    return InstrumentChart.of(rounds);
  }

  private static Held held(Hold hold, Standing standing) {
    return new Held(
        hold.number(),
        hold.at(),
        new InstrumentGate(standing).reason(hold),
        hold.byHand(),
        hold.fact().checks());
  }

  private static Round round(InstrumentVerification verification) {
    Fact.VerificationBegan began = verification.began();
    return new Round(
        verification.number(),
        verification.at(),
        began.occasion(),
        began.known() == null ? began.reference() : began.reference() + ", " + began.known(),
        Optional.ofNullable(began.known()),
        began.shots(),
        began.mostBias(),
        began.mostSpread(),
        verification.shots().stream()
            .map(
                shot ->
                    new Shot(
                        shot.fact().shot(),
                        shot.fact().speed(),
                        shot.fact().source(),
                        Optional.ofNullable(shot.reference())))
            .toList(),
        state(verification),
        words(verification));
  }

  private static State state(InstrumentVerification verification) {
    if (verification.isRunning()) {
      return State.RUNNING;
    }
    if (verification.isGood()) {
      return State.PASSED;
    }
    return verification.isBrokenOff()
            && Comparison.of(verification).filter(Comparison::convicts).isEmpty()
        ? State.BROKEN_OFF
        : State.OUT;
  }

  private static Sentence words(InstrumentVerification verification) {
    Optional<Sentence> shots = Comparison.of(verification).map(Comparison::inWords);
    if (verification.ended().isEmpty()) {
      return shots.orElse(Sentence.of(Verified.NO_SHOT));
    }
    Fact.VerificationEnded ended = verification.ended().get().fact();
    Sentence words =
        Stream.concat(
                shots.stream(),
                Stream.of(
                    Verified.brokenOff(verification.shots().size(), verification.began().shots())))
            .filter(known -> known.toString().equals(ended.words()))
            .findFirst()
            .orElseGet(() -> Sentence.verbatim(ended.words()));
    return ended.reason() == null ? words : Sentence.of(Verified.BECAUSE, words, ended.reason());
  }
}
