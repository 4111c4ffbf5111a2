package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * A verification of the station's instrument against a reference, as folded from the ledger.
 *
 * @param number the sequence of the entry that began it
 * @param began what was agreed before the first shot
 * @param at when it began
 * @param signer thumbprint of the official's key that began it
 * @param shots in the order taken
 * @param ended how it ended, if it did
 */
public record InstrumentVerification(
    long number,
    Fact.VerificationBegan began,
    Instant at,
    String signer,
    List<Shot> shots,
    Optional<Ended> ended) {

  /** Copies the list. */
  public InstrumentVerification {
    shots = List.copyOf(shots);
  }

  /**
   * A shot through both.
   *
   * @param sequence of the entry that took it
   * @param fact what the station's instrument read
   * @param reference what the reference says, or null while that is still to be typed
   */
  public record Shot(long sequence, Fact.VerificationShot fact, @Nullable Speed reference) {}

  /**
   * The end with its entry.
   *
   * @param sequence of the entry that ended it
   */
  public record Ended(long sequence, Fact.VerificationEnded fact) {}

  /** Whether it goes on. */
  public boolean isRunning() {
    return ended.isEmpty();
  }

  /** Whether it ended within its limits. */
  public boolean isGood() {
    return ended.filter(end -> end.fact().passed()).isPresent();
  }

  /** Whether it ended before all its shots were taken. */
  public boolean isBrokenOff() {
    return ended.filter(end -> end.fact().reason() != null).isPresent();
  }

  /** Whether the last shot has no reference value yet. */
  public boolean awaitsReference() {
    return shots.stream().anyMatch(shot -> shot.reference() == null);
  }

  /** Whether all its shots are taken, each with its reference value. */
  public boolean isComplete() {
    return shots.size() >= began.shots() && !awaitsReference();
  }

  /** With one more shot. */
  public InstrumentVerification take(long sequence, Fact.VerificationShot fact) {
    List<Shot> more = new ArrayList<>(shots);
    more.add(new Shot(sequence, fact, fact.reference()));
    return new InstrumentVerification(number, began, at, signer, more, ended);
  }

  /**
   * With the reference value of a shot that had none.
   *
   * @throws IllegalArgumentException if no shot of that number waits for one
   */
  public InstrumentVerification take(Fact.ReferenceTyped fact) {
    List<Shot> same = new ArrayList<>(shots);
    int index = fact.shot() - 1;
    if (index < 0 || index >= same.size() || same.get(index).reference() != null) {
      throw new IllegalArgumentException(
          "shot " + fact.shot() + " of verification " + number + " waits for no reference value");
    }
    Shot shot = same.get(index);
    same.set(index, new Shot(shot.sequence(), shot.fact(), fact.reference()));
    return new InstrumentVerification(number, began, at, signer, same, ended);
  }

  InstrumentVerification end(Ended end) {
    return new InstrumentVerification(number, began, at, signer, shots, Optional.of(end));
  }
}
